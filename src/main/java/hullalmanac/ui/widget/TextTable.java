package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** Texts in rows and columns that are only read, the columns as wide as their texts. */
public class TextTable extends JTable {
  private static final long serialVersionUID = 1L;
  private static final int ROWS_MEASURED = 60;

  private final Set<Integer> figures;
  private final boolean made;

  public TextTable(String name, List<String> labels, List<List<String>> rows) {
    super(new Texts(labels, rows));
    figures =
        IntStream.range(0, labels.size())
            .filter(c -> Figures.only(rows.stream().map(r -> r.get(c)).toList()))
            .boxed()
            .collect(Collectors.toUnmodifiableSet());
    made = true;
    setName(name);
    getAccessibleContext().setAccessibleName(name);
    setShowVerticalLines(false);
    setFillsViewportHeight(false);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    Figures.heads(this, figures::contains);
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

  @Override
  public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
    Component cell = super.prepareRenderer(renderer, row, column);
    if (cell instanceof JLabel text) {
      Figures.place(text, figures.contains(convertColumnIndexToModel(column)));
    }
    return cell;
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
      fit();
    }
  }
}
