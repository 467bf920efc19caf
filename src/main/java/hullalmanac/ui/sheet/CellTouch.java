package hullalmanac.ui.sheet;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.BiConsumer;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/** A touch that goes down and up in the same cell; it may slip a little within. */
final class CellTouch extends MouseAdapter {
  private final JTable table;
  private final BiConsumer<Integer, Integer> touched;
  private Point down = new Point(-1, -1);

  /**
   * @param touched gets row and column
   */
  CellTouch(JTable table, BiConsumer<Integer, Integer> touched) {
    this.table = table;
    this.touched = touched;
  }

  @Override
  public void mousePressed(MouseEvent e) {
    down = cell(e);
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    if (SwingUtilities.isLeftMouseButton(e) && cell(e).equals(down)) {
      touched.accept(down.y, down.x);
    }
  }

  private Point cell(MouseEvent e) {
    return new Point(table.columnAtPoint(e.getPoint()), table.rowAtPoint(e.getPoint()));
  }
}
