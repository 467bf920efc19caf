package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javax.swing.JPopupMenu;
import javax.swing.RowSorter;
import javax.swing.SortOrder;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.table.TableColumn;
import javax.swing.table.TableColumnModel;
import javax.swing.table.TableRowSorter;

/**
 * A table that is only read: it sorts, copies for a spreadsheet, lets Tab through, makes columns as
 * wide as their texts, and shows those that one wants, in the order in which one wants them. A menu
 * says what one can do with it.
 */
public final class TidyTable extends TextTable {
  private static final long serialVersionUID = 1L;
  private static final int NARROWEST = 32;

  private final transient TableState state;
  private final transient TableMemory memory;
  private final transient List<TableColumn> all;
  private transient TableChoice choice;
  private transient Optional<IntConsumer> open = Optional.empty();
  private boolean arranging;

  /** A table that remembers how one wants it. */
  public TidyTable(TableState state, TableMemory memory) {
    super(
        state.name(),
        state.columns().stream().map(TableState.Column::label).toList(),
        state.rows());
    this.state = state;
    this.memory = memory;
    this.all = IntStream.range(0, getColumnCount()).mapToObj(getColumnModel()::getColumn).toList();
    setAutoCreateColumnsFromModel(false);
    setRowSorter(new ThreeWaySorter(getModel()));
    arrange(memory.of(state.name(), state.ids()));
    getRowSorter().addRowSorterListener(e -> sorted());
    keys();
    ContextMenu.on(this, this::menu, this::cursor);
    ContextMenu.byPointer(getTableHeader(), at -> TableMenu.ofColumn(this, columnAt(at)));
  }

  /** Sorts upwards, downwards, and then no more. */
  private static final class ThreeWaySorter extends TableRowSorter<javax.swing.table.TableModel> {
    ThreeWaySorter(javax.swing.table.TableModel model) {
      super(model);
      for (int c = 0; c < model.getColumnCount(); c++) {
        setComparator(c, new TextOrder());
      }
    }

    @Override
    public void toggleSortOrder(int column) {
      boolean down =
          !getSortKeys().isEmpty()
              && getSortKeys().get(0).getColumn() == column
              && getSortKeys().get(0).getSortOrder() == SortOrder.DESCENDING;
      if (down) {
        setSortKeys(List.of());
      } else {
        super.toggleSortOrder(column);
      }
    }
  }

  private void keys() {
    Act.within(this, "TAB", this::transferFocus);
    Act.within(this, "shift TAB", this::transferFocusBackward);
    Act.within(this, "ctrl C", () -> selected().copy());
    Act.named(this, "copy", () -> selected().copy());
    Act.within(this, "ctrl shift C", () -> everything().copy());
    Act.within(this, "ctrl shift LEFT", () -> move(false));
    Act.within(this, "ctrl shift RIGHT", () -> move(true));
  }

  private void move(boolean right) {
    columnAt(Optional.empty()).ifPresent(id -> change(choice.move(id, right)));
  }

  /** Lets a row be opened, by Enter, two clicks or its menu. */
  public void onOpen(IntConsumer act) {
    open = Optional.of(act);
    Act.within(this, "ENTER", () -> openRow(getSelectedRow()));
    setToolTipText("Enter or two clicks open it");
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
              openRow(rowAtPoint(e.getPoint()));
            }
          }
        });
  }

  boolean opens() {
    return open.isPresent();
  }

  /** Opens a row as it stands, if there is one. */
  void openRow(int row) {
    if (row >= 0 && row < getRowCount()) {
      open.ifPresent(act -> act.accept(convertRowIndexToModel(row)));
    }
  }

  TableState state() {
    return state;
  }

  TableChoice choice() {
    return choice;
  }

  /** Shows it as one wants it from now on, and remembers that. */
  void change(TableChoice now) {
    keep(now);
    arrange(now);
  }

  private void keep(TableChoice now) {
    choice = now;
    memory.keep(state.name(), now, state.ids());
  }

  private void arrange(TableChoice now) {
    arranging = true;
    choice = now;
    Optional<String> column = columnAt(Optional.empty());
    TableColumnModel columns = getColumnModel();
    while (columns.getColumnCount() > 0) {
      columns.removeColumn(columns.getColumn(0));
    }
    now.shown().forEach(id -> columns.addColumn(all.get(state.ids().indexOf(id))));
    fit();
    getRowSorter().setSortKeys(now.sort().map(this::key).map(List::of).orElse(List.of()));
    int back = Math.max(0, column.map(now.shown()::indexOf).orElse(0));
    columns.getSelectionModel().setSelectionInterval(back, back);
    arranging = false;
  }

  private RowSorter.SortKey key(TableChoice.Sort by) {
    return new RowSorter.SortKey(
        state.ids().indexOf(by.column()), by.down() ? SortOrder.DESCENDING : SortOrder.ASCENDING);
  }

  private void sorted() {
    if (!arranging) {
      keep(
          choice.sortedBy(
              getRowSorter().getSortKeys().stream()
                  .findFirst()
                  .filter(k -> k.getSortOrder() != SortOrder.UNSORTED)
                  .map(
                      k ->
                          new TableChoice.Sort(
                              state.ids().get(k.getColumn()),
                              k.getSortOrder() == SortOrder.DESCENDING))));
    }
  }

  @Override
  public void columnMoved(TableColumnModelEvent e) {
    super.columnMoved(e);
    if (choice != null && !arranging && e.getFromIndex() != e.getToIndex()) {
      keep(choice.inOrder(IntStream.range(0, getColumnCount()).mapToObj(this::id).toList()));
    }
  }

  /** Once a column was dragged wider, all stay as they lie then. */
  @Override
  public void doLayout() {
    super.doLayout();
    if (choice != null
        && getTableHeader() != null
        && getTableHeader().getResizingColumn() != null) {
      Map<String, Integer> widths = new HashMap<>();
      for (int c = 0; c < getColumnCount(); c++) {
        widths.put(id(c), Math.max(1, UIScale.unscale(getColumnModel().getColumn(c).getWidth())));
      }
      keep(choice.widths(widths));
    }
  }

  private String id(int column) {
    return state.ids().get(convertColumnIndexToModel(column));
  }

  /** The column under the pointer, or the one that the cursor is in. */
  private Optional<String> columnAt(Optional<Point> pointer) {
    int column =
        pointer
            .map(this::columnAtPoint)
            .orElseGet(getColumnModel().getSelectionModel()::getLeadSelectionIndex);
    return getColumnCount() == 0
        ? Optional.empty()
        : Optional.of(id(column < 0 || column >= getColumnCount() ? 0 : column));
  }

  /** What one can do with the row under the pointer, or with those chosen. */
  JPopupMenu menu(Optional<Point> pointer) {
    int first = Math.min(0, getRowCount() - 1);
    int row = pointer.map(this::rowAtPoint).orElseGet(() -> Math.max(first, getSelectedRow()));
    if (row >= 0 && !isRowSelected(row)) {
      setRowSelectionInterval(row, row);
    }
    return TableMenu.of(this, row, columnAt(pointer));
  }

  private Point cursor() {
    int row = Math.max(0, getSelectionModel().getLeadSelectionIndex());
    int column = Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex());
    Rectangle cell = getCellRect(row, column, false);
    scrollRectToVisible(cell);
    return new Point(cell.x, cell.y + cell.height);
  }

  /** The chosen rows under the columns' labels; all rows when none is chosen. */
  CopiedRows selected() {
    return getSelectedRowCount() == 0 ? everything() : copied(getSelectedRows());
  }

  /** All rows, as they stand. */
  CopiedRows everything() {
    return copied(IntStream.range(0, getRowCount()).toArray());
  }

  private CopiedRows copied(int[] chosen) {
    List<String> header = new ArrayList<>();
    for (int c = 0; c < getColumnCount(); c++) {
      header.add(getColumnName(c));
    }
    List<List<String>> rows = new ArrayList<>();
    for (int row : chosen) {
      rows.add(
          IntStream.range(0, getColumnCount())
              .mapToObj(c -> String.valueOf(getValueAt(row, c)))
              .toList());
    }
    return new CopiedRows(header, rows);
  }

  /** A text that its column is too narrow for is said whole. */
  @Override
  public String getToolTipText(MouseEvent e) {
    int row = rowAtPoint(e.getPoint());
    int column = columnAtPoint(e.getPoint());
    if (row >= 0 && column >= 0) {
      String text = String.valueOf(getValueAt(row, column));
      int needs =
          prepareRenderer(getCellRenderer(row, column), row, column).getPreferredSize().width;
      if (needs > getCellRect(row, column, false).width) {
        return text;
      }
    }
    return super.getToolTipText(e);
  }

  @Override
  void fit() {
    if (all == null) {
      return;
    }
    for (TableColumn column : all) {
      String id = state.ids().get(column.getModelIndex());
      column.setMinWidth(UIScale.scale(NARROWEST));
      column.setPreferredWidth(
          choice
              .column(id)
              .flatMap(TableChoice.Column::width)
              .map(w -> UIScale.scale((int) w))
              .orElseGet(() -> needed(column.getModelIndex())));
    }
  }

  /** As wide as what it lies in, unless its columns need more. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getPreferredSize().width < getParent().getWidth();
  }

  /** Narrow: what is wider than its window is scrolled. */
  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return new Dimension(0, getPreferredSize().height);
  }
}
