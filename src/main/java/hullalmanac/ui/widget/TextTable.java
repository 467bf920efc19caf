package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;

/** Texts in rows and columns that are only read, the columns as wide as their texts. */
public class TextTable extends JTable {
  private static final long serialVersionUID = 1L;
  private static final int ROWS_MEASURED = 60;

  private final boolean made;

  public TextTable(String name, List<String> labels, List<List<String>> rows) {
    super(new Texts(labels, rows));
    made = true;
    setName(name);
    getAccessibleContext().setAccessibleName(name);
    setShowVerticalLines(false);
    setFillsViewportHeight(false);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    headerAtLeft();
    fit();
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    for (int row : getSelectedRows()) {
      Marks.chosen(g, getCellRect(row, 0, true));
    }
    if (isFocusOwner()) {
      Marks.cursor(g, getVisibleRect());
    }
  }

  private static final class Texts extends DefaultTableModel {
    private static final long serialVersionUID = 1L;

    Texts(List<String> labels, List<List<String>> rows) {
      super(labels.toArray(), 0);
      rows.forEach(r -> addRow(r.toArray()));
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return false;
    }

    @Override
    public Class<?> getColumnClass(int column) {
      return String.class;
    }
  }

  private void headerAtLeft() {
    if (getTableHeader().getDefaultRenderer() instanceof JLabel label) {
      label.setHorizontalAlignment(SwingConstants.LEADING);
    }
  }

  /** Gives each column the width it wants. */
  void fit() {
    for (int c = 0; c < getColumnCount(); c++) {
      TableColumn column = getColumnModel().getColumn(c);
      column.setPreferredWidth(needed(column.getModelIndex()));
    }
  }

  /** The width that a column of the model needs for its texts. */
  final int needed(int column) {
    FontMetrics metrics = getFontMetrics(getFont());
    int gap = metrics.charWidth('m') * 2;
    int widest = metrics.stringWidth(getModel().getColumnName(column)) + gap;
    for (int r = 0; r < Math.min(ROWS_MEASURED, getModel().getRowCount()); r++) {
      widest =
          Math.max(widest, metrics.stringWidth(String.valueOf(getModel().getValueAt(r, column))));
    }
    return widest + gap;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (made) {
      setRowHeight(UIScale.scale(UIManager.getInt("Table.rowHeight")));
      headerAtLeft();
      fit();
    }
  }
}
