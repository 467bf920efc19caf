package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.ContextMenu;
import hullalmanac.ui.widget.Marks;
import hullalmanac.ui.widget.Typing;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.DefaultCellEditor;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableColumn;

/**
 * A table one writes in by keys alone: typing begins to write, Enter takes the text and goes down,
 * arrows go where they point and with Shift choose several cells, Tab leaves the table.
 */
final class EditGrid extends JTable {
  private static final long serialVersionUID = 1L;
  private static final int ROWS_MEASURED = 60;

  private final transient Sheet sheet;
  private final transient Telling telling;
  private final Cells cells;
  private final transient GridCopies copies = new GridCopies(this);

  /** Tells which cell is chosen or written in, and what stands in it. */
  interface Telling {
    void say(String row, String field, String text);
  }

  EditGrid(SheetState.Grid state, Sheet sheet, Telling telling) {
    super();
    this.sheet = sheet;
    this.telling = telling;
    this.cells = new Cells(state);
    setModel(cells);
    setName(state.id());
    getAccessibleContext()
        .setAccessibleName(state.heading().isEmpty() ? state.id() : state.heading());
    setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
    setCellSelectionEnabled(true);
    setSurrendersFocusOnKeystroke(true);
    putClientProperty("terminateEditOnFocusLost", true);
    setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
    getTableHeader().setReorderingAllowed(false);
    headerAtLeft();
    setDefaultEditor(Object.class, new Editor());
    keys();
    getSelectionModel().addListSelectionListener(e -> tell());
    getColumnModel().getSelectionModel().addListSelectionListener(e -> tell());
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            if (!onCell() && getRowCount() > 0) {
              changeSelection(0, 0, false, false);
            }
          }
        });
    fit();
  }

  /** The grid as a table. */
  private final class Cells extends AbstractTableModel {
    private static final long serialVersionUID = 1L;
    private transient SheetState.Grid state;

    Cells(SheetState.Grid state) {
      this.state = state;
    }

    @Override
    public int getRowCount() {
      return state.rows().size();
    }

    @Override
    public int getColumnCount() {
      return state.columns().size();
    }

    @Override
    public String getColumnName(int column) {
      return state.columns().get(column).label();
    }

    @Override
    public Object getValueAt(int row, int column) {
      return state.rows().get(row).cells().get(column);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return !(state.columns().get(column).input() instanceof Input.Fixed);
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
      String text = value.toString();
      if (isCellEditable(row, column) && !text.equals(getValueAt(row, column))) {
        sheet.enter(at(row, column), text);
      }
    }

    At at(int row, int column) {
      return new At(state.id(), state.rows().get(row).id(), state.columns().get(column).id());
    }

    void show(SheetState.Grid now) {
      boolean sameRows = ids(now).equals(ids(state));
      state = now;
      if (sameRows) {
        fireTableRowsUpdated(0, Math.max(0, getRowCount() - 1));
      } else {
        fireTableDataChanged();
      }
    }

    private List<String> ids(SheetState.Grid grid) {
      return grid.rows().stream().map(SheetState.GridRow::id).toList();
    }
  }

  /** A field in a cell, which says while one types what is understood. */
  private final class Editor extends DefaultCellEditor {
    private static final long serialVersionUID = 1L;

    Editor() {
      super(new JTextField());
      JTextField field = (JTextField) getComponent();
      field.setBorder(javax.swing.BorderFactory.createEmptyBorder(0, 4, 0, 4));
      field.getAccessibleContext().setAccessibleName("Cell");
      Act.on(field, "ENTER", () -> goDown(1));
      Act.on(field, "DOWN", () -> goDown(1));
      Act.on(field, "shift ENTER", () -> goDown(-1));
      Act.on(field, "UP", () -> goDown(-1));
      Typing.in(
          field,
          () -> {
            if (isEditing()) {
              At at = cells.at(getEditingRow(), getEditingColumn());
              telling.say(at.row(), at.field(), field.getText());
            }
          });
    }
  }

  @Override
  public Component prepareEditor(javax.swing.table.TableCellEditor editor, int row, int column) {
    Component c = super.prepareEditor(editor, row, column);
    if (c instanceof JTextField field) {
      field.selectAll();
    }
    return c;
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    if (onCell()) {
      Rectangle cell = getCellRect(getSelectedRow(), getSelectedColumn(), false);
      Marks.chosen(g, cell);
      if (isFocusOwner()) {
        Marks.cursor(g, cell);
      }
    }
  }

  private void keys() {
    Act.within(this, "TAB", this::leave);
    Act.within(this, "shift TAB", this::leaveBack);
    Act.within(this, "ctrl V", this::pasteTexts);
    Act.within(this, "ctrl C", () -> copies.chosen().copy());
    Act.named(this, "copy", () -> copies.chosen().copy());
    Act.within(this, "ctrl shift C", () -> copies.everything().copy());
    Act.within(this, "DELETE", this::clear);
    Act.within(this, "ctrl DELETE", this::removeRow);
    ContextMenu.on(this, this::menu, this::cursor);
  }

  /** The menu of the cell under the pointer, or of those chosen. */
  private JPopupMenu menu(Optional<Point> pointer) {
    take();
    pointer.ifPresent(
        p -> {
          if (rowAtPoint(p) >= 0 && !isCellSelected(rowAtPoint(p), columnAtPoint(p))) {
            changeSelection(rowAtPoint(p), columnAtPoint(p), false, false);
          }
        });
    return copies.menu();
  }

  private Point cursor() {
    Rectangle cell = getCellRect(Math.max(0, leadRow()), Math.max(0, leadColumn()), false);
    scrollRectToVisible(cell);
    return new Point(cell.x, cell.y + cell.height);
  }

  private int leadRow() {
    return getSelectionModel().getLeadSelectionIndex();
  }

  private int leadColumn() {
    return getColumnModel().getSelectionModel().getLeadSelectionIndex();
  }

  /** Takes what is being written and goes to the cell so many rows below, if there is one. */
  private void goDown(int rows) {
    int row = getEditingRow();
    int column = getEditingColumn();
    take();
    int next = Math.max(0, Math.min(getRowCount() - 1, row + rows));
    requestFocusInWindow();
    changeSelection(next, column, false, false);
  }

  private void leave() {
    take();
    transferFocus();
  }

  private void leaveBack() {
    take();
    transferFocusBackward();
  }

  private boolean onCell() {
    return leadRow() >= 0
        && leadColumn() >= 0
        && leadRow() < getRowCount()
        && isCellSelected(leadRow(), leadColumn());
  }

  /** Empties the cells chosen that can be written in, those beside each other in one act. */
  void clear() {
    int[] columns = writable();
    if (columns.length == 1 && getSelectedRowCount() == 1) {
      cells.setValueAt("", getSelectedRow(), columns[0]);
      return;
    }
    for (int from = 0, to; from < columns.length; from = to) {
      to = from + 1;
      while (to < columns.length && columns[to] == columns[to - 1] + 1) {
        to++;
      }
      sheet.paste(
          cells.at(getSelectedRow(), columns[from]),
          Collections.nCopies(getSelectedRowCount(), Collections.nCopies(to - from, "")));
    }
  }

  /** The columns chosen that can be written in; none where no cell is chosen. */
  int[] writable() {
    return onCell()
        ? IntStream.of(getSelectedColumns()).filter(c -> cells.isCellEditable(0, c)).toArray()
        : new int[0];
  }

  private void removeRow() {
    if (onCell()) {
      sheet.remove(cells.state.id(), cells.state.rows().get(leadRow()).id());
    }
  }

  SheetState.Grid state() {
    return cells.state;
  }

  void pasteTexts() {
    JTextArea pad = new JTextArea();
    pad.paste();
    if (onCell() && !pad.getText().isEmpty()) {
      paste(pad.getText());
    }
  }

  /** Takes rows of texts parted by tabs from the chosen cell on. */
  void paste(String text) {
    List<List<String>> rows =
        text.lines().map(line -> Arrays.asList(line.split("\t", -1))).toList();
    sheet.paste(cells.at(getSelectedRow(), getSelectedColumn()), rows);
  }

  private void tell() {
    if (telling == null) {
      return;
    }
    if (onCell() && cells.isCellEditable(leadRow(), leadColumn())) {
      At at = cells.at(leadRow(), leadColumn());
      String text = cells.getValueAt(leadRow(), leadColumn()).toString();
      String hint = hint(leadColumn());
      telling.say(at.row(), at.field(), text);
      setToolTipText(hint.isEmpty() ? null : hint);
    } else {
      telling.say("", "", "");
    }
  }

  private String hint(int column) {
    Input input = cells.state.columns().get(column).input();
    return input instanceof Input.Choice choice ? String.join(", ", choice.words()) : "";
  }

  /** As wide as what it lies in, unless its texts need more. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getPreferredSize().width < getParent().getWidth();
  }

  /** Narrow, so that a bar below it is given room where it is needed. */
  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return new Dimension(0, getPreferredSize().height);
  }

  /** Takes what is being written. */
  void take() {
    if (isEditing()) {
      getCellEditor().stopCellEditing();
    }
  }

  void show(SheetState.Grid state) {
    int row = getSelectedRow();
    int column = getSelectedColumn();
    cells.show(state);
    if (row >= 0 && row < getRowCount() && getSelectedRow() < 0) {
      changeSelection(row, Math.max(0, column), false, false);
    }
    tell();
  }

  private void headerAtLeft() {
    if (getTableHeader().getDefaultRenderer() instanceof javax.swing.JLabel label) {
      label.setHorizontalAlignment(javax.swing.SwingConstants.LEADING);
    }
  }

  private void fit() {
    if (cells == null) {
      return;
    }
    int gap = getFontMetrics(getFont()).charWidth('m');
    for (int c = 0; c < getColumnCount(); c++) {
      int widest = getFontMetrics(getFont()).stringWidth(getColumnName(c)) + gap;
      for (int r = 0; r < Math.min(ROWS_MEASURED, getRowCount()); r++) {
        String text = String.valueOf(getValueAt(r, c));
        widest = Math.max(widest, getFontMetrics(getFont()).stringWidth(text));
      }
      TableColumn column = getColumnModel().getColumn(c);
      column.setPreferredWidth(widest + gap);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setRowHeight(
        com.formdev.flatlaf.util.UIScale.scale(javax.swing.UIManager.getInt("Table.rowHeight")));
    if (cells != null) {
      headerAtLeft();
    }
    fit();
  }
}
