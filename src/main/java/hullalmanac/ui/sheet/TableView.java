package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.SideScroll;
import hullalmanac.ui.widget.TidyTable;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;

/** A table that is only read; it stays in its place when its rows become others. */
final class TableView extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient TableMemory memory;
  private transient Optional<SheetState.Table> shown = Optional.empty();

  TableView(TableMemory memory) {
    super(new BorderLayout());
    this.memory = memory;
    setOpaque(false);
  }

  void show(SheetState.Table table) {
    if (shown.equals(Optional.of(table))) {
      return;
    }
    shown = Optional.of(table);
    removeAll();
    if (table.rows().isEmpty()) {
      add(Labels.quiet(table.empty()));
    } else {
      add(new SideScroll(read(table)));
    }
    revalidate();
    repaint();
  }

  private TidyTable read(SheetState.Table table) {
    // A heading may say how many rows there are; what is remembered goes by the columns.
    TidyTable view =
        new TidyTable(
            TableState.of(String.join(", ", table.columns()), table.columns(), table.rows()),
            memory);
    if (!table.heading().isEmpty()) {
      view.getAccessibleContext().setAccessibleName(table.heading());
    }
    return view;
  }
}
