package hullalmanac.present.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TableChoiceTest {
  private static final List<String> IDS = List.of("a", "b", "c", "d");
  private static final TableChoice USUAL = TableChoice.usual(IDS);

  private static List<String> order(TableChoice choice) {
    return choice.columns().stream().map(TableChoice.Column::id).toList();
  }

  @Test
  void aHiddenColumnComesBackWhereItWas() {
    TableChoice without = USUAL.show("b", false);
    assertThat(without.shown()).containsExactly("a", "c", "d");
    assertThat(without.show("b", true)).isEqualTo(USUAL);
  }

  @Test
  void aColumnMovesPastHiddenOnesAndStopsAtTheEdge() {
    TableChoice moved = USUAL.show("b", false).move("c", false);
    assertThat(moved.shown()).containsExactly("c", "a", "d");
    assertThat(order(moved)).containsExactly("c", "b", "a", "d");
    assertThat(moved.move("c", false)).isEqualTo(moved);
    assertThat(moved.move("d", true)).isEqualTo(moved);
    assertThat(moved.move("b", true)).as("hidden").isEqualTo(moved);
  }

  @Test
  void theLastColumnShownStays() {
    TableChoice one = USUAL.show("a", false).show("b", false).show("c", false);
    assertThat(one.show("d", false)).isEqualTo(one);
  }

  @Test
  void refusesWhatIsNoTable() {
    assertThatThrownBy(() -> new TableChoice(List.of(), Optional.empty()))
        .hasMessageContaining("no column is shown");
    assertThatThrownBy(() -> TableChoice.usual(List.of("a", "a"))).hasMessageContaining("twice");
    assertThatThrownBy(() -> USUAL.sortedBy(Optional.of(new TableChoice.Sort("z", false))))
        .hasMessageContaining("no column to sort by: z");
    assertThatThrownBy(() -> USUAL.widths(Map.of("a", 0))).hasMessageContaining("a width of 0");
    assertThatThrownBy(() -> USUAL.inOrder(List.of("a", "b"))).hasMessageContaining("[a, b]");
  }

  /** Whatever one does, it stays a table of the same columns with at least one shown. */
  @Property(tries = 300)
  void staysATableOfTheSameColumns(
      @ForAll @Size(max = 12) List<@IntRange(min = 0, max = 15) Integer> acts) {
    TableChoice choice = USUAL;
    for (int act : acts) {
      String id = IDS.get(act % 4);
      choice =
          switch (act / 4) {
            case 0 -> choice.show(id, false);
            case 1 -> choice.show(id, true);
            case 2 -> choice.move(id, true);
            default -> choice.move(id, false);
          };
      assertThat(choice.fits(IDS)).isTrue();
      assertThat(choice.shown()).isNotEmpty();
    }
  }

  @Test
  void remembersOnlyWhatFitsAndIsNotAsItComes() {
    TableMemory memory = new TableMemory();
    TableChoice narrow = USUAL.show("b", false);
    memory.keep("Visits", narrow, IDS);
    memory.keep("Coats", USUAL, IDS);
    assertThat(memory.choices().byTable()).containsOnlyKeys("Visits");
    assertThat(memory.of("Visits", IDS)).isEqualTo(narrow);
    assertThat(memory.of("Visits", List.of("d", "c", "b", "a")))
        .as("the same columns in another order")
        .isEqualTo(narrow);
    assertThat(memory.of("Visits", List.of("a", "b", "c")))
        .isEqualTo(TableChoice.usual(List.of("a", "b", "c")));
    assertThat(memory.of("Berths", IDS)).isEqualTo(USUAL);
    memory.keep("Visits", USUAL, IDS);
    assertThat(memory.choices()).isEqualTo(TableChoices.none());
  }

  @Test
  void aTableRefusesRowsThatDoNotFitItsColumns() {
    assertThatThrownBy(() -> TableState.of("Visits", IDS, List.of(List.of("1", "2"))))
        .hasMessageContaining("a row of Visits has not 4 texts");
    assertThatThrownBy(() -> TableState.of("Visits", List.of("a", "a"), List.of()))
        .hasMessageContaining("two columns of Visits");
  }
}
