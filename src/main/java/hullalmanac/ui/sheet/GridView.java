package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Labels;
import java.awt.BorderLayout;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A grid of a sheet, with a line under it that says what the chosen cell means. */
final class GridView extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Sheet sheet;
  private final String block;
  private final EditGrid grid;
  private final JTextArea said = Labels.wrapped("", true);

  GridView(SheetState.Grid state, Sheet sheet) {
    super(new BorderLayout());
    this.sheet = sheet;
    this.block = state.id();
    setOpaque(false);
    grid = new EditGrid(state, sheet, this::say);
    if (state.rows().isEmpty()) {
      add(Labels.quiet(state.empty()), BorderLayout.NORTH);
    } else {
      add(grid.getTableHeader(), BorderLayout.NORTH);
      add(grid);
      said.setRows(1);
      add(said, BorderLayout.SOUTH);
    }
  }

  private void say(String row, String field, String text) {
    Said now = row.isEmpty() ? Said.NOTHING : sheet.say(new At(block, row, field), text);
    said.setText(now.refused() ? "Not taken: " + now.words() : now.words());
  }

  void show(SheetState.Grid state) {
    grid.show(state);
  }

  void take() {
    grid.take();
  }
}
