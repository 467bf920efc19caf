package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Choosing, copying and clearing several cells of a grid, without a display. */
class EditGridTest {
  private static final SheetState.Grid GRID =
      new SheetState.Grid(
          "surfaces",
          "What was looked at",
          "Surface",
          List.of(column("water", "Water"), column("gloss", "Gloss")),
          List.of(
              new SheetState.GridRow("a", "topsides, port", List.of("beads", "86 87")),
              new SheetState.GridRow("b", "transom", List.of("sheets", "<70"))),
          "");

  private final List<String> noted = new ArrayList<>();
  private final List<String> said = new ArrayList<>();

  private static SheetState.Column column(String id, String label) {
    return new SheetState.Column(id, label, new Input.Line(""));
  }

  private final class Noting implements Sheet {
    @Override
    public void onChange(Consumer<SheetState> view) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void show(Fleet fleet) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {
      noted.add("enter " + at.row() + " " + at.field() + " [" + text + "]");
    }

    @Override
    public void paste(At corner, List<List<String>> texts) {
      noted.add("paste " + corner.row() + " " + corner.field() + " " + texts);
    }

    @Override
    public void remove(String block, String row) {
      noted.add("remove " + row);
    }
  }

  private interface OnGrid {
    void run(EditGrid grid);
  }

  private void on(OnGrid act) throws Exception {
    on(GRID, act);
  }

  private void on(SheetState.Grid state, OnGrid act) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          act.run(new EditGrid(state, new Noting(), (row, field, text) -> said.add(row + field)));
        });
  }

  @BeforeEach
  void nothingYet() {
    noted.clear();
    said.clear();
  }

  private static void press(EditGrid grid, String key) {
    Object name =
        grid.getInputMap(EditGrid.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
            .get(javax.swing.KeyStroke.getKeyStroke(key));
    grid.getActionMap()
        .get(name)
        .actionPerformed(new java.awt.event.ActionEvent(grid, 0, String.valueOf(name)));
  }

  /** A bar comes beside a page as it grows, and the grid on it gets narrower in mid-word. */
  @Test
  void whatIsBeingWrittenStaysWhenTheColumnsGetOtherWidths() throws Exception {
    on(
        grid -> {
          grid.setSize(600, 200);
          grid.doLayout();
          grid.editCellAt(0, 1);
          JTextField field = (JTextField) grid.getEditorComponent();
          field.setText("scr");
          int before = grid.getColumnModel().getColumn(1).getWidth();
          grid.setSize(500, 200);
          grid.doLayout();
          assertThat(grid.getColumnModel().getColumn(1).getWidth()).isNotEqualTo(before);
          assertThat(grid.isEditing()).isTrue();
          assertThat(grid.getEditorComponent()).isSameAs(field);
          assertThat(field.getText()).isEqualTo("scr");
          assertThat(noted).as("taken so far").isEmpty();
          field.setText("scrape");
          grid.take();
          assertThat(noted).hasSize(1).first().asString().contains("scrape");
        });
  }

  @Test
  void copiesTheCellsChosenAndAllOfItWithItsLabels() throws Exception {
    on(
        grid -> {
          grid.changeSelection(0, 0, false, false);
          GridCopies copies = new GridCopies(grid);
          assertThat(copies.chosen().plain()).isEqualTo("beads\n");
          press(grid, "shift DOWN");
          assertThat(copies.chosen().plain()).isEqualTo("beads\nsheets\n");
          press(grid, "shift RIGHT");
          assertThat(copies.chosen().plain()).isEqualTo("beads\t86 87\nsheets\t<70\n");
          assertThat(copies.chosen().html()).contains("<td>&lt;70</td>");
          assertThat(copies.everything().plain())
              .isEqualTo(
                  "Surface\tWater\tGloss\ntopsides, port\tbeads\t86 87\ntransom\tsheets\t<70\n");
        });
  }

  private static void type(EditGrid grid, String key) {
    javax.swing.JTextField field = (javax.swing.JTextField) grid.getEditorComponent();
    javax.swing.KeyStroke stroke = javax.swing.KeyStroke.getKeyStroke(key);
    javax.swing.Action act = field.getActionMap().get(field.getInputMap().get(stroke));
    if (act.isEnabled()) {
      act.actionPerformed(new java.awt.event.ActionEvent(field, 0, key));
    }
  }

  @Test
  void leavesACellByTheArrowThatPointsOutOfItsText() throws Exception {
    on(
        grid -> {
          grid.changeSelection(0, 0, false, false);
          grid.editCellAt(0, 0);
          javax.swing.JTextField field = (javax.swing.JTextField) grid.getEditorComponent();
          field.setText("flat");
          field.setCaretPosition(2);
          type(grid, "RIGHT");
          assertThat(grid.isEditing()).as("in the middle of the text").isTrue();
          field.setCaretPosition(4);
          type(grid, "RIGHT");
          assertThat(grid.isEditing()).isFalse();
          assertThat(grid.getSelectedColumn()).isEqualTo(1);
          grid.editCellAt(0, 1);
          ((javax.swing.JTextField) grid.getEditorComponent()).setCaretPosition(0);
          type(grid, "LEFT");
          assertThat(grid.getSelectedColumn()).isZero();
        });
    assertThat(noted).containsExactly("enter a water [flat]");
  }

  @Test
  void saysWhatTheCellMeansThatTheCursorIsIn() throws Exception {
    on(
        grid -> {
          grid.changeSelection(0, 0, false, false);
          press(grid, "shift DOWN");
        });
    assertThat(said).last().isEqualTo("bwater");
  }

  @Test
  void clearsOneCellAsATextAndSeveralInOneAct() throws Exception {
    on(
        grid -> {
          grid.changeSelection(1, 1, false, false);
          press(grid, "DELETE");
          press(grid, "shift UP");
          press(grid, "DELETE");
          press(grid, "ctrl DELETE");
        });
    assertThat(noted).containsExactly("enter b gloss []", "paste a gloss [[], []]", "remove a");
  }

  @Test
  void leavesWhatIsOnlyReadAsItIsWhenCellsAreCleared() throws Exception {
    SheetState.Grid mixed =
        new SheetState.Grid(
            "values",
            "",
            "",
            List.of(
                column("name", "Value"),
                new SheetState.Column("standard", "Standard", new Input.Fixed()),
                column("own", "Yours"),
                column("note", "Note")),
            List.of(
                new SheetState.GridRow("a", "", List.of("x", "12", "13", "n")),
                new SheetState.GridRow("b", "", List.of("y", "3", "4", "m"))),
            "");
    on(
        mixed,
        grid -> {
          grid.changeSelection(0, 0, false, false);
          grid.changeSelection(1, 3, false, true);
          press(grid, "DELETE");
          grid.changeSelection(0, 1, false, false);
          press(grid, "DELETE");
          assertThat(words(grid)).endsWith("Clear");
          assertThat(grid.writable()).isEmpty();
        });
    assertThat(noted).containsExactly("paste a name [[], []]", "paste a own [[, ], [, ]]");
  }

  @Test
  void pastesFromTheFirstOfTheCellsChosen() throws Exception {
    on(
        grid -> {
          grid.changeSelection(1, 0, false, false);
          press(grid, "shift UP");
          grid.paste("flat\nbeads\n");
        });
    assertThat(noted).containsExactly("paste a water [[flat], [beads]]");
  }

  @Test
  void saysInItsMenuHowManyCellsAreChosen() throws Exception {
    on(
        grid -> {
          grid.changeSelection(0, 0, false, false);
          assertThat(words(grid)).containsExactly("Copy", "Copy all", "Paste", "Clear");
          press(grid, "shift DOWN");
          press(grid, "shift RIGHT");
          assertThat(words(grid))
              .containsExactly("Copy 4 cells", "Copy all", "Paste", "Clear 4 cells");
        });
  }

  private static List<String> words(EditGrid grid) {
    return Arrays.stream(new GridCopies(grid).menu().getComponents())
        .filter(JMenuItem.class::isInstance)
        .map(c -> ((JMenuItem) c).getText())
        .toList();
  }
}
