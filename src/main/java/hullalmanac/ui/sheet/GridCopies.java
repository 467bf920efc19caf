package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.ContextMenu;
import hullalmanac.ui.widget.CopiedRows;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JPopupMenu;

/** What of a grid can be copied, and the menu that says so. */
record GridCopies(EditGrid grid) {
  /** The cells chosen, as they can be pasted into a grid again. */
  CopiedRows chosen() {
    List<List<String>> rows = new ArrayList<>();
    for (int row : grid.getSelectedRows()) {
      rows.add(
          IntStream.of(grid.getSelectedColumns())
              .mapToObj(c -> String.valueOf(grid.getValueAt(row, c)))
              .toList());
    }
    return new CopiedRows(List.of(), rows);
  }

  /** All of it under the columns' labels, with the rows' labels in front. */
  CopiedRows everything() {
    SheetState.Grid state = grid.state();
    boolean labelled = !state.labels().isEmpty();
    List<String> header =
        new ArrayList<>(state.columns().stream().map(SheetState.Column::label).toList());
    List<List<String>> rows = new ArrayList<>();
    for (SheetState.GridRow row : state.rows()) {
      List<String> cells = new ArrayList<>(row.cells());
      if (labelled) {
        cells.add(0, row.label());
      }
      rows.add(cells);
    }
    if (labelled) {
      header.add(0, state.labels());
    }
    return new CopiedRows(header, rows);
  }

  /** What one can do with the cells chosen. */
  JPopupMenu menu() {
    int cells = grid.getSelectedRowCount() * grid.getSelectedColumnCount();
    JPopupMenu menu = new JPopupMenu();
    menu.setName("menu of " + grid.getName());
    menu.add(
            ContextMenu.item(
                cells > 1 ? "Copy " + cells + " cells" : "Copy", "ctrl C", () -> chosen().copy()))
        .setEnabled(cells > 0);
    menu.add(ContextMenu.item("Copy all", "ctrl shift C", () -> everything().copy()));
    menu.addSeparator();
    menu.add(ContextMenu.item("Paste", "ctrl V", grid::pasteTexts)).setEnabled(cells > 0);
    menu.add(
            ContextMenu.item(
                cells > 1 ? "Clear " + cells + " cells" : "Clear", "DELETE", grid::clear))
        .setEnabled(grid.writable().length > 0);
    return menu;
  }
}
