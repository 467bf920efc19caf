package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.SideScroll;
import hullalmanac.ui.widget.TextTable;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/**
 * A grid of a sheet, with a line under it that says what the chosen cell means. Where it is wider
 * than the window it scrolls sideways, under labels that stay.
 */
final class GridView extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Sheet sheet;
  private final String block;
  private final EditGrid grid;
  private final JTextArea said = Labels.wrapped("", true);

  GridView(SheetState.Grid state, Sheet sheet) {
    super(new BorderLayout());
    this.sheet = sheet;
    this.block = state.id();
    setOpaque(false);
    grid = new EditGrid(state, sheet, this::say);
    if (state.rows().isEmpty()) {
      add(Labels.quiet(state.empty()), BorderLayout.NORTH);
    } else {
      add(scrolled(state));
      said.setRows(1);
      add(said, BorderLayout.SOUTH);
    }
  }

  private JScrollPane scrolled(SheetState.Grid state) {
    JScrollPane scroll = new SideScroll(grid);
    if (!state.labels().isEmpty()) {
      TextTable labels = labels(state);
      scroll.setRowHeaderView(labels);
      scroll.setCorner(JScrollPane.UPPER_LEFT_CORNER, labels.getTableHeader());
    }
    return scroll;
  }

  private static TextTable labels(SheetState.Grid state) {
    TextTable labels =
        new TextTable(
            state.labels(),
            List.of(state.labels()),
            state.rows().stream().map(r -> List.of(r.label())).toList());
    labels.setFocusable(false);
    labels.setRowSelectionAllowed(false);
    labels.getTableHeader().setReorderingAllowed(false);
    labels.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
    labels.setPreferredScrollableViewportSize(
        new Dimension(labels.getPreferredSize().width, labels.getPreferredSize().height));
    return labels;
  }

  private void say(String row, String field, String text) {
    Said now = row.isEmpty() ? new Said(text, false) : sheet.say(new At(block, row, field), text);
    said.setText(now.refused() ? "Not taken: " + now.words() : now.words());
  }

  void show(SheetState.Grid state) {
    grid.show(state);
  }

  List<String> rows() {
    return grid.rows();
  }

  /** Goes to the first cell one can write in of a row. */
  void goTo(String row) {
    grid.goTo(row);
  }

  void take() {
    grid.take();
  }

  /** Goes on in the cell, and with the text, where another view of the same grid was left. */
  void goOnFrom(GridView before) {
    grid.goOnFrom(before.grid);
  }
}
