package hullalmanac.ui.widget;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;

/**
 * A table that is only read: it sorts, copies for a spreadsheet, lets Tab through and makes columns
 * as wide as their texts.
 */
public final class TidyTable extends JTable {
  private static final long serialVersionUID = 1L;
  private static final int ROWS_MEASURED = 60;
  private static final int LEADING_EDGE = javax.swing.SwingConstants.LEADING;

  public TidyTable(String name, List<String> columns, List<List<String>> rows) {
    super(new Texts(columns, rows));
    setName(name);
    getAccessibleContext().setAccessibleName(name);
    setAutoCreateRowSorter(true);
    setShowVerticalLines(false);
    setFillsViewportHeight(false);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    getTableHeader().setReorderingAllowed(false);
    headerAtLeft();
    fit();
    act(KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0), "leave", this::transferFocus);
    act(
        KeyStroke.getKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK),
        "leave back",
        this::transferFocusBackward);
    act(
        KeyStroke.getKeyStroke(KeyEvent.VK_C, InputEvent.CTRL_DOWN_MASK),
        "copy rows",
        this::copyRows);
  }

  private static final class Texts extends DefaultTableModel {
    private static final long serialVersionUID = 1L;

    Texts(List<String> columns, List<List<String>> rows) {
      super(columns.toArray(), 0);
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

  private void act(KeyStroke key, String name, Runnable act) {
    Action action =
        new AbstractAction(name) {
          private static final long serialVersionUID = 1L;

          @Override
          public void actionPerformed(ActionEvent e) {
            act.run();
          }
        };
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
    getActionMap().put(name, action);
  }

  private void copyRows() {
    Toolkit.getDefaultToolkit()
        .getSystemClipboard()
        .setContents(new StringSelection(selectedAsText()), null);
  }

  /** The selected rows with a header, fields parted by tabs; all rows when none is selected. */
  String selectedAsText() {
    List<String> lines = new ArrayList<>();
    List<String> header = new ArrayList<>();
    for (int c = 0; c < getColumnCount(); c++) {
      header.add(getColumnName(c));
    }
    lines.add(String.join("\t", header));
    for (int r = 0; r < getRowCount(); r++) {
      if (getSelectedRowCount() == 0 || isRowSelected(r)) {
        List<String> cells = new ArrayList<>();
        for (int c = 0; c < getColumnCount(); c++) {
          cells.add(String.valueOf(getValueAt(r, c)).replace('\t', ' '));
        }
        lines.add(String.join("\t", cells));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private void headerAtLeft() {
    if (getTableHeader().getDefaultRenderer() instanceof javax.swing.JLabel label) {
      label.setHorizontalAlignment(LEADING_EDGE);
    }
  }

  private void fit() {
    int gap = getFontMetrics(getFont()).charWidth('m') * 2;
    for (int c = 0; c < getColumnCount(); c++) {
      int widest = getFontMetrics(getFont()).stringWidth(getColumnName(c)) + gap;
      for (int r = 0; r < Math.min(ROWS_MEASURED, getRowCount()); r++) {
        widest =
            Math.max(
                widest, getFontMetrics(getFont()).stringWidth(String.valueOf(getValueAt(r, c))));
      }
      TableColumn column = getColumnModel().getColumn(c);
      column.setPreferredWidth(widest + gap);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (getColumnModel().getColumnCount() > 0) {
      setRowHeight(
          com.formdev.flatlaf.util.UIScale.scale(javax.swing.UIManager.getInt("Table.rowHeight")));
      headerAtLeft();
      fit();
    }
  }
}
