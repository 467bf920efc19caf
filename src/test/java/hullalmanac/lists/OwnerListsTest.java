package hullalmanac.lists;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.work.Change;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Made-up lists of every ugliness come in as they should, lose nothing, and go out by one undo. */
class OwnerListsTest {
  @TempDir static Path folder;
  private static ListBench bench;

  static Stream<MadeList> lists() {
    return MadeList.all();
  }

  @BeforeAll
  static void open() {
    bench = new ListBench(folder.resolve("record"));
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  @Test
  void thereAreThirtyListsOfWhichEachHasItsExpectation() {
    assertThat(lists()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(lists()).allSatisfy(l -> assertThat(l.expectedFile()).exists());
  }

  @ParameterizedTest
  @MethodSource("lists")
  void comesInAsExpected(MadeList list) {
    assertThat(WriteExpected.told(list)).isEqualTo(list.expected());
  }

  @ParameterizedTest
  @MethodSource("lists")
  void losesNothingAndGoesByOneUndo(MadeList list) {
    Map<String, String> exported = bench.exported();
    Grid grid = list.grid();
    ListPlan plan = bench.plan(grid, ListChoices.NONE);
    Change change = bench.bringIn(grid, ListChoices.NONE);
    assertThat(change).isInstanceOf(Change.Ready.class);
    assertThat(bench.exported()).isNotEqualTo(exported);
    assertThat(NothingLost.missing(plan, grid, bench.almanac())).isEmpty();
    assertThat(bench.undo())
        .hasValueSatisfying(what -> assertThat(what).startsWith("list brought in: "));
    assertThat(bench.exported()).isEqualTo(exported);
  }
}
