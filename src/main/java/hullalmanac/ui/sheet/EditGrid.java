package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.ContextMenu;
import hullalmanac.ui.widget.Figures;
import hullalmanac.ui.widget.Marks;
import hullalmanac.ui.widget.Typing;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
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
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.ChangeEvent;
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
  private final GridCells cells;
  private final transient GridCopies copies = new GridCopies(this);

  /**
   * Tells which cell is chosen or written in, and what stands in it; without row and field for one
   * that is only read.
   */
  interface Telling {
    void say(String row, String field, String text);
  }

  EditGrid(SheetState.Grid state, Sheet sheet, Telling telling) {
    super();
    this.sheet = sheet;
    this.telling = telling;
    this.cells = new GridCells(state, sheet);
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
    Figures.heads(this, cells::isFigures);
    setDefaultEditor(Object.class, new Editor());
    setDefaultRenderer(Object.class, new MarkedCell());
    keys();
    presses(state);
    getSelectionModel().addListSelectionListener(e -> tell());
    getColumnModel().getSelectionModel().addListSelectionListener(e -> tell());
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            if (!onCell() && getRowCount() > 0) {
              changeSelection(0, firstWritten(), false, false);
            }
          }
        });
    fit();
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
      Act.when(field, "RIGHT", () -> atEdge(field, field.getText().length()), () -> goAside(1));
      Act.when(field, "LEFT", () -> atEdge(field, 0), () -> goAside(-1));
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
      field.setHorizontalAlignment(Figures.side(cells.isFigures(column)));
      field.selectAll();
    }
    return c;
  }

  /**
   * A table takes what is being written when its columns get other widths, as they do when a bar
   * comes beside the page; here one writes on.
   */
  @Override
  public void columnMarginChanged(ChangeEvent e) {
    resizeAndRepaint();
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

  private int firstWritten() {
    for (int c = 0; c < getColumnCount(); c++) {
      if (cells.column(c).input().written()) {
        return c;
      }
    }
    return 0;
  }

  /** Cells that are pressed: by a touch, by Enter or Space, and by a key from all of their row. */
  private void presses(SheetState.Grid state) {
    for (int c = 0; c < state.columns().size(); c++) {
      int column = c;
      if (state.columns().get(c).input() instanceof Input.Press press) {
        getColumnModel().getColumn(c).setCellRenderer(new PressCell());
        Act.within(this, press.key(), () -> press(getSelectedRow(), column));
      }
    }
    addMouseListener(new CellTouch(this, this::press));
  }

  private void press(int row, int column) {
    if (cells.isPress(row, column)) {
      take();
      sheet.press(cells.at(row, column));
    }
  }

  @Override
  protected boolean processKeyBinding(KeyStroke key, KeyEvent e, int condition, boolean pressed) {
    boolean enterOrSpace =
        key.getModifiers() == 0
            && (key.getKeyCode() == KeyEvent.VK_ENTER || key.getKeyCode() == KeyEvent.VK_SPACE);
    boolean onPress = !isEditing() && cells.isPress(getSelectedRow(), getSelectedColumn());
    if (enterOrSpace && pressed && onPress) {
      press(getSelectedRow(), getSelectedColumn());
      return true;
    }
    return super.processKeyBinding(key, e, condition, pressed);
  }

  /** Goes on in the cell, and with the text, where another grid of the same kind was left. */
  void goOnFrom(EditGrid before) {
    Optional<At> at = before.chosen();
    Optional<String> text = before.written();
    if (at.flatMap(cells::find).isPresent()) {
      text.ifPresent(t -> before.removeEditor());
      goOn(at.orElseThrow(), text);
    }
  }

  private Optional<At> chosen() {
    return getSelectedRow() < 0 || getSelectedColumn() < 0
        ? Optional.empty()
        : Optional.of(cells.at(getSelectedRow(), getSelectedColumn()));
  }

  /** What is being written; absent while nothing is. */
  private Optional<String> written() {
    return isEditing() && getEditorComponent() instanceof JTextField field
        ? Optional.of(field.getText())
        : Optional.empty();
  }

  private void goOn(At at, Optional<String> text) {
    Point cell = cells.find(at).orElseThrow();
    changeSelection(cell.y, cell.x, false, false);
    if (text.isPresent()
        && editCellAt(cell.y, cell.x)
        && getEditorComponent() instanceof JTextField field) {
      field.setText(text.get());
      field.requestFocusInWindow();
    }
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

  /** Whether the cursor can go no further in a field, in which nothing is chosen. */
  private static boolean atEdge(JTextField field, int edge) {
    return field.getCaretPosition() == edge && field.getSelectionStart() == field.getSelectionEnd();
  }

  /** Takes what is being written and goes to the cell so many columns aside, if there is one. */
  private void goAside(int columns) {
    int row = getEditingRow();
    int column = getEditingColumn();
    take();
    requestFocusInWindow();
    changeSelection(
        row, Math.max(0, Math.min(getColumnCount() - 1, column + columns)), false, false);
  }

  /** Goes to the first cell one can write in of a row. */
  void goTo(String row) {
    int at = cells.rows().indexOf(row);
    changeSelection(at, firstWritten(), false, false);
    requestFocusInWindow();
  }

  List<String> rows() {
    return cells.rows();
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
      At at = cells.at(leadRow(), 0);
      sheet.remove(at.block(), at.row());
    }
  }

  SheetState.Grid state() {
    return cells.state();
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
    if (onCell()) {
      At at = cells.at(leadRow(), leadColumn());
      String text = cells.getValueAt(leadRow(), leadColumn()).toString();
      if (!cells.isCellEditable(leadRow(), leadColumn())) {
        telling.say("", "", text);
        return;
      }
      String hint = hint(leadColumn());
      telling.say(at.row(), at.field(), text);
      setToolTipText(hint.isEmpty() ? null : hint);
    } else {
      telling.say("", "", "");
    }
  }

  private String hint(int column) {
    Input input = cells.column(column).input();
    return input instanceof Input.Choice choice
        ? String.join(", ", choice.words())
        : input instanceof Input.Suggest suggest ? String.join(", ", suggest.words()) : "";
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
    Optional<At> chosen = chosen();
    Optional<String> text = written();
    boolean others = !cells.hasRowsOf(state);
    if (others && text.isPresent()) {
      removeEditor();
    }
    cells.show(state);
    widenPresses();
    if (others || state.columns().stream().anyMatch(c -> c.input() instanceof Input.Fixed)) {
      fit();
    }
    if (others && chosen.flatMap(cells::find).isPresent()) {
      goOn(chosen.orElseThrow(), text);
    } else if (row >= 0 && row < getRowCount() && getSelectedRow() < 0) {
      changeSelection(row, Math.max(0, column), false, false);
    }
    tell();
  }

  private void fit() {
    if (cells == null) {
      return;
    }
    int gap = getFontMetrics(getFont()).charWidth('m');
    for (int c = 0; c < getColumnCount(); c++) {
      int widest = getFontMetrics(getFont()).stringWidth(getColumnName(c)) + gap;
      for (int r = 0; r < Math.min(ROWS_MEASURED, getRowCount()); r++) {
        widest = Math.max(widest, width(r, c));
      }
      TableColumn column = getColumnModel().getColumn(c);
      column.setPreferredWidth(widest + gap);
    }
  }

  private int width(int row, int column) {
    String text = String.valueOf(getValueAt(row, column));
    return cells.column(column).input() instanceof Input.Press
        ? new PressCell().width(this, text)
        : getFontMetrics(getFont()).stringWidth(text)
            + (cells.isFigures(column) ? Figures.room() : 0)
            + (cells.isMarked(row, column) ? 2 * getFontMetrics(getFont()).charWidth('m') : 0);
  }

  /** What is pressed says itself what it does, so it is never cut. */
  private void widenPresses() {
    for (int c = 0; c < getColumnCount(); c++) {
      for (int r = 0; r < getRowCount(); r++) {
        TableColumn column = getColumnModel().getColumn(c);
        if (cells.isPress(r, c) && column.getPreferredWidth() < width(r, c)) {
          fit();
        }
      }
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setRowHeight(
        com.formdev.flatlaf.util.UIScale.scale(javax.swing.UIManager.getInt("Table.rowHeight")));
    fit();
  }
}
