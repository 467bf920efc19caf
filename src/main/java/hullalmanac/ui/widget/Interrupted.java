package hullalmanac.ui.widget;

import java.awt.Component;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Where the cursor was when something came over it, to go on there. A cell of a table that was
 * being written in is written on with the text that had been begun.
 */
public final class Interrupted {
  private final Component place;
  private final Optional<Cell> cell;

  private record Cell(JTable table, int row, int column, String text, int caret) {}

  private Interrupted(Component place, Optional<Cell> cell) {
    this.place = place;
    this.cell = cell;
  }

  /** What has the cursor in a component's window, or is about to get it. */
  public static Interrupted in(Component component) {
    Component place = Typing.place(component);
    return new Interrupted(
        place, place instanceof JTextComponent text ? cell(text) : Optional.empty());
  }

  private static Optional<Cell> cell(JTextComponent text) {
    return SwingUtilities.getAncestorOfClass(JTable.class, text) instanceof JTable table
            && table.isEditing()
        ? Optional.of(
            new Cell(
                table,
                table.getEditingRow(),
                table.getEditingColumn(),
                text.getText(),
                text.getCaretPosition()))
        : Optional.empty();
  }

  /** Puts the cursor back; says whether that could be done. */
  public boolean goOn() {
    if (cell.isPresent() && cell.get().table().isShowing()) {
      goOn(cell.get());
      return true;
    }
    if (place == null || !place.isShowing()) {
      return false;
    }
    place.requestFocusInWindow();
    return true;
  }

  private static void goOn(Cell cell) {
    JTable table = cell.table();
    boolean there = cell.row() < table.getRowCount() && cell.column() < table.getColumnCount();
    if (there
        && (table.isEditing() || table.editCellAt(cell.row(), cell.column()))
        && table.getEditorComponent() instanceof JTextComponent text) {
      text.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
      text.setText(cell.text());
      text.setCaretPosition(cell.caret());
      text.requestFocusInWindow();
    } else {
      table.requestFocusInWindow();
    }
  }
}
