package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.Look;
import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.shell.Painted;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.table.TableColumn;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A table that is only read, its columns and its menu, without a display. */
class TidyTableTest {
  private static final TableState VISITS =
      TableState.of(
          "Visits",
          List.of("Day", "State", "Hours"),
          List.of(
              List.of("2026-04-20", "done", "10.5"),
              List.of("2025-10-30", "done", "9.0"),
              List.of("2025-05-09", "moved", "1.4")));

  private final TableMemory memory = new TableMemory();

  @BeforeEach
  void theme() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  @AfterAll
  static void back() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private interface OnTable {
    void run(TidyTable table);
  }

  /** Does something with a table that is made anew from the memory. */
  private void on(OnTable act) throws Exception {
    SwingUtilities.invokeAndWait(() -> act.run(new TidyTable(VISITS, memory)));
  }

  private static List<String> columns(TidyTable table) {
    return IntStream.range(0, table.getColumnCount()).mapToObj(table::getColumnName).toList();
  }

  private static List<String> first(TidyTable table) {
    return IntStream.range(0, table.getRowCount())
        .mapToObj(r -> table.getValueAt(r, 0).toString())
        .toList();
  }

  private static JPopupMenu menu(TidyTable table) {
    return table.menu(Optional.empty());
  }

  /** All that a menu offers, in it and in the menus under it; what cannot be done in brackets. */
  private static List<String> words(JPopupMenu menu) {
    return items(menu).map(i -> i.isEnabled() ? i.getText() : "(" + i.getText() + ")").toList();
  }

  private static Stream<JMenuItem> items(JPopupMenu menu) {
    return Arrays.stream(menu.getComponents())
        .filter(JMenuItem.class::isInstance)
        .map(JMenuItem.class::cast)
        .flatMap(
            i ->
                i instanceof JMenu under
                    ? Stream.concat(Stream.of(i), items(under.getPopupMenu()))
                    : Stream.of(i));
  }

  private static void choose(JPopupMenu menu, String words) {
    items(menu).filter(i -> i.getText().equals(words)).findFirst().orElseThrow().doClick(0);
  }

  @Test
  void saysInItsMenuWhatOneCanDo() throws Exception {
    on(
        table ->
            assertThat(words(menu(table)))
                .containsExactly(
                    "Copy",
                    "Copy all",
                    "Sort by Day",
                    "(Move Day left)",
                    "Move Day right",
                    "Hide Day",
                    "Columns to show",
                    "Day",
                    "State",
                    "Hours",
                    "(Show all columns again)"));
  }

  @Test
  void opensTheRowUnderThePointerOrTheFirstWhenNoneIsChosen() throws Exception {
    List<Integer> opened = new ArrayList<>();
    on(
        table -> {
          table.onOpen(opened::add);
          choose(menu(table), "Open");
          table.setSize(table.getPreferredSize());
          table.doLayout();
          Point second = table.getCellRect(1, 2, true).getLocation();
          second.translate(3, 3);
          JPopupMenu there = table.menu(Optional.of(second));
          assertThat(words(there)).contains("Open", "Sort by Hours", "(Move Hours right)");
          assertThat(items(there).map(JMenuItem::getAccelerator))
              .as("Enter does what is chosen in the menu, and nothing else")
              .doesNotContain(KeyStroke.getKeyStroke("ENTER"));
          choose(there, "Open");
        });
    assertThat(opened).containsExactly(0, 1);
    on(
        table -> {
          table.onOpen(opened::add);
          table.setSize(table.getPreferredSize());
          table.selectAll();
          Point third = table.getCellRect(2, 0, true).getLocation();
          JPopupMenu there = table.menu(Optional.of(third));
          assertThat(words(there)).as("what was chosen stays chosen").contains("Copy 3 rows");
          choose(there, "Open");
        });
    assertThat(opened).containsExactly(0, 1, 2);
  }

  @Test
  void aColumnHiddenStaysHiddenInTheNextTable() throws Exception {
    on(table -> choose(menu(table), "Hide Day"));
    on(
        table -> {
          assertThat(columns(table)).containsExactly("State", "Hours");
          choose(menu(table), "Day");
        });
    on(table -> assertThat(columns(table)).containsExactly("Day", "State", "Hours"));
    assertThat(memory.choices().byTable()).as("as it comes needs no remembering").isEmpty();
  }

  @Test
  void theLastColumnCannotBeHidden() throws Exception {
    on(table -> choose(menu(table), "Hide Day"));
    on(table -> choose(menu(table), "Hide State"));
    on(
        table -> {
          assertThat(columns(table)).containsExactly("Hours");
          assertThat(words(menu(table))).contains("(Hide Hours)", "(Hours)", "Day", "State");
          choose(menu(table), "Show all columns again");
          assertThat(columns(table)).containsExactly("Day", "State", "Hours");
        });
  }

  @Test
  void aColumnMovedByTheMenuOrDraggedStaysWhereItIs() throws Exception {
    on(
        table -> {
          choose(menu(table), "Move Day right");
          assertThat(columns(table)).containsExactly("State", "Day", "Hours");
          choose(menu(table), "Move Day right");
          assertThat(words(menu(table))).as("the cursor went with it").contains("Move Day left");
        });
    on(
        table -> {
          assertThat(columns(table)).containsExactly("State", "Hours", "Day");
          table.getColumnModel().moveColumn(2, 0);
        });
    on(table -> assertThat(columns(table)).containsExactly("Day", "State", "Hours"));
  }

  @Test
  void sortsUpwardsDownwardsAndNoMoreAndRemembersWhich() throws Exception {
    on(
        table -> {
          choose(menu(table), "Sort by Day");
          assertThat(first(table)).isSorted();
        });
    on(
        table -> {
          assertThat(first(table)).isSorted();
          choose(menu(table), "Sort by Day downwards");
          assertThat(first(table)).startsWith("2026-04-20");
        });
    on(table -> choose(menu(table), "Sort by Day no more"));
    assertThat(memory.choices().byTable()).isEmpty();
    on(table -> table.getRowSorter().toggleSortOrder(2));
    on(
        table ->
            assertThat(first(table))
                .as("hours by their value")
                .containsExactly("2025-05-09", "2025-10-30", "2026-04-20"));
  }

  @Test
  void aThirdClickOnAHeaderPutsTheRowsBackAsTheyCome() throws Exception {
    on(
        table -> {
          table.getRowSorter().toggleSortOrder(1);
          table.getRowSorter().toggleSortOrder(1);
          assertThat(first(table)).startsWith("2025-05-09");
          table.getRowSorter().toggleSortOrder(1);
          assertThat(first(table)).startsWith("2026-04-20");
        });
    assertThat(memory.choices().byTable()).isEmpty();
  }

  @Test
  void aColumnDraggedWiderIsAsWideInTheNextTableAtAnyZoom() throws Exception {
    on(
        table -> {
          table.setSize(600, 100);
          table.doLayout();
          TableColumn day = table.getColumnModel().getColumn(0);
          table.getTableHeader().setResizingColumn(day);
          day.setWidth(300);
          table.doLayout();
          table.getTableHeader().setResizingColumn(null);
        });
    on(
        table -> {
          assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(300);
          assertThat(table.getPreferredSize().width).isEqualTo(600);
        });
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 2f));
    on(table -> assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(600));
  }

  @Test
  void whatWasChosenForOtherColumnsIsPassedOver() throws Exception {
    TableChoice other = TableChoice.usual(List.of("Day", "State", "Price")).show("Day", false);
    memory.keep("Visits", other, List.of("Day", "State", "Price"));
    on(table -> assertThat(columns(table)).containsExactly("Day", "State", "Hours"));
  }

  @Test
  void copiesTheChosenRowsAsTheyAreSeenUnderTheirLabels() throws Exception {
    on(
        table -> {
          choose(menu(table), "Hide Day");
          choose(menu(table), "Move State right");
          choose(menu(table), "Sort by State");
          table.setRowSelectionInterval(0, 1);
          assertThat(words(menu(table))).contains("Copy 2 rows");
          assertThat(table.selected().plain()).isEqualTo("Hours\tState\n10.5\tdone\n9.0\tdone\n");
          assertThat(table.everything().plain()).endsWith("1.4\tmoved\n");
          table.clearSelection();
          assertThat(table.selected()).as("none chosen").isEqualTo(table.everything());
        });
  }

  static Stream<Arguments> looks() {
    return Stream.of(Look.Tint.LIGHT, Look.Tint.DARK, Look.Tint.HIGH_CONTRAST)
        .flatMap(tint -> Stream.of(1f, 2f).map(zoom -> Arguments.of(tint, zoom)));
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsItsMenusWhole(Look.Tint tint, float zoom) throws Exception {
    List<String> faults = new ArrayList<>();
    SwingUtilities.invokeAndWait(() -> Theme.start(new Look(tint, zoom, false, false)));
    on(
        table -> {
          table.onOpen(row -> {});
          JPopupMenu menu = menu(table);
          faults.addAll(painted(menu));
          items(menu)
              .filter(JMenu.class::isInstance)
              .forEach(under -> faults.addAll(painted(((JMenu) under).getPopupMenu())));
        });
    assertThat(faults).isEmpty();
  }

  @Test
  void makesItsMenuLargeForWetHands() throws Exception {
    on(
        table -> {
          Theme.wetHands(true);
          JPopupMenu menu = menu(table);
          painted(menu);
          Theme.wetHands(false);
          assertThat(items(menu).filter(i -> i.getParent() == menu).map(Component::getHeight))
              .isNotEmpty()
              .allMatch(h -> h >= 48);
        });
  }

  private static List<String> painted(JPopupMenu menu) {
    Dimension size = menu.getPreferredSize();
    return new Painted(menu, size.width, size.height).faults();
  }

  @Test
  void offersManyColumnsAFewAtATime() throws Exception {
    List<String> many = IntStream.range(0, 20).mapToObj(n -> "Column " + n).toList();
    TableState wide = TableState.of("Wide", many, List.of(many));
    SwingUtilities.invokeAndWait(
        () -> {
          JPopupMenu menu = menu(new TidyTable(wide, memory));
          assertThat(words(menu)).containsAll(many).contains("More columns");
          assertThat(items(menu).filter(JMenu.class::isInstance).map(JMenu.class::cast))
              .allMatch(under -> under.getItemCount() <= 10);
        });
  }
}
