package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Figures;
import java.awt.Point;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;

/** The grid as a table. */
final class GridCells extends AbstractTableModel {
  private static final long serialVersionUID = 1L;
  private transient SheetState.Grid state;
  private Set<Integer> figures;
  private final transient Sheet sheet;

  GridCells(SheetState.Grid state, Sheet sheet) {
    this.state = state;
    this.figures = figures(state);
    this.sheet = sheet;
  }

  SheetState.Grid state() {
    return state;
  }

  SheetState.Column column(int column) {
    return state.columns().get(column);
  }

  /** Where a field of the sheet stands: its column as x, its row as y. */
  Optional<Point> find(At at) {
    int row = ids(state).indexOf(at.row());
    int column = state.columns().stream().map(SheetState.Column::id).toList().indexOf(at.field());
    return row < 0 || column < 0 ? Optional.empty() : Optional.of(new Point(column, row));
  }

  /** Whether a touch does something. */
  boolean isPress(int row, int column) {
    return row >= 0
        && row < getRowCount()
        && column >= 0
        && column(column).input() instanceof Input.Press
        && !getValueAt(row, column).toString().isEmpty();
  }

  /** Whether a cell needs a look. */
  boolean isMarked(int row, int column) {
    return state.rows().get(row).marked().contains(column);
  }

  /** Whether nothing but numbers and amounts of money stands in a column. */
  boolean isFigures(int column) {
    return figures.contains(column);
  }

  private static Set<Integer> figures(SheetState.Grid state) {
    return IntStream.range(0, state.columns().size())
        .filter(c -> Figures.only(state.rows().stream().map(r -> r.cells().get(c)).toList()))
        .boxed()
        .collect(Collectors.toUnmodifiableSet());
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
    return state.columns().get(column).input().written();
  }

  @Override
  public void setValueAt(Object value, int row, int column) {
    String text = value.toString();
    // The same text once more in a cell that needs a look says that it is right.
    boolean news = !text.equals(getValueAt(row, column)) || isMarked(row, column);
    if (isCellEditable(row, column) && news) {
      sheet.enter(at(row, column), text);
    }
  }

  At at(int row, int column) {
    return new At(state.id(), state.rows().get(row).id(), state.columns().get(column).id());
  }

  /** Whether a state is of the rows that are shown. */
  boolean hasRowsOf(SheetState.Grid other) {
    return ids(other).equals(ids(state));
  }

  /** The row ids, downwards. */
  List<String> rows() {
    return ids(state);
  }

  void show(SheetState.Grid now) {
    boolean sameRows = hasRowsOf(now);
    state = now;
    figures = figures(now);
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
