package hullalmanac.ui.sheet;

import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Figures;
import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** Shows a cell of a grid, with a sign in front where it needs a look. */
final class MarkedCell extends DefaultTableCellRenderer {
  private static final long serialVersionUID = 1L;

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
    super.getTableCellRendererComponent(table, value, chosen, focused, row, column);
    boolean marked = table.getModel() instanceof GridCells cells && cells.isMarked(row, column);
    setIcon(
        marked
            ? new LookSign(chosen ? table.getSelectionForeground() : Theme.colour("look"))
            : null);
    Figures.place(this, table.getModel() instanceof GridCells cells && cells.isFigures(column));
    getAccessibleContext().setAccessibleDescription(marked ? "needs a look" : null);
    return this;
  }
}
