package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.TidyTable;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;

/** A table that is only read; it stays in its place when its rows become others. */
final class TableView extends JPanel {
  private static final long serialVersionUID = 1L;

  private transient Optional<SheetState.Table> shown = Optional.empty();

  TableView() {
    super(new BorderLayout());
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
      TidyTable view = new TidyTable(table.heading(), table.columns(), table.rows());
      add(view.getTableHeader(), BorderLayout.NORTH);
      add(view);
    }
    revalidate();
    repaint();
  }
}
