package hullalmanac.ui.widget;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JTable;
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
    Act.within(this, "TAB", this::transferFocus);
    Act.within(this, "shift TAB", this::transferFocusBackward);
    Act.within(this, "ctrl C", this::copyRows);
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

  /** Shows other rows. */
  public void show(List<List<String>> rows) {
    DefaultTableModel model = (DefaultTableModel) getModel();
    List<List<String>> now = new ArrayList<>();
    for (int r = 0; r < model.getRowCount(); r++) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < model.getColumnCount(); c++) {
        cells.add(String.valueOf(model.getValueAt(r, c)));
      }
      now.add(cells);
    }
    if (!now.equals(rows)) {
      model.setRowCount(0);
      rows.forEach(r -> model.addRow(r.toArray()));
      fit();
    }
  }

  /** Lets a row be opened, by Enter or two clicks. */
  public void onOpen(IntConsumer open) {
    Runnable chosen =
        () -> {
          if (getSelectedRow() >= 0) {
            open.accept(convertRowIndexToModel(getSelectedRow()));
          }
        };
    Act.within(this, "ENTER", chosen);
    setToolTipText("Enter or two clicks open it");
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
              chosen.run();
            }
          }
        });
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

  /** The whole of a text for which there is no room. */
  @Override
  public String getToolTipText(MouseEvent e) {
    int row = rowAtPoint(e.getPoint());
    int column = columnAtPoint(e.getPoint());
    if (row < 0 || column < 0) {
      return super.getToolTipText(e);
    }
    String text = String.valueOf(getValueAt(row, column));
    boolean room =
        getFontMetrics(getFont()).stringWidth(text) <= getColumnModel().getColumn(column).getWidth();
    return room ? super.getToolTipText(e) : text;
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
