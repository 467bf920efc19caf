package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reading at the step that lays a coat, on a record whose clock shows 09:00 on 1 May 2026. */
@Tag("slow")
class ClimateTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  /** The row of the first step that protects, in a visit begun today as the last one was. */
  private int beginVisit() {
    Boat boat =
        bench.almanac().boats().stream()
            .filter(
                b ->
                    bench.almanac().visits().stream()
                        .filter(v -> v.boat().equals(b.id()) && v.status() == VisitStatus.DONE)
                        .max(java.util.Comparator.comparing(Visit::day))
                        .filter(this::protects)
                        .isPresent())
            .findFirst()
            .orElseThrow();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    List<SheetState.GridRow> rows = bench.grid("steps").rows();
    for (int i = 0; i < rows.size(); i++) {
      if (bench.cell("steps", i, "kind").equals(StepKind.PROTECT.words())) {
        return i;
      }
    }
    throw new AssertionError("nothing protects");
  }

  private boolean protects(Visit visit) {
    return bench.almanac().steps().stream()
        .anyMatch(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT);
  }

  private Step step(int row) {
    String id = bench.grid("steps").rows().get(row).id();
    return bench.almanac().steps().stream()
        .filter(s -> s.id().toString().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private String words() {
    return String.join(
        "\n",
        bench.state().blocks().stream()
            .filter(SheetState.Words.class::isInstance)
            .map(b -> ((SheetState.Words) b).text())
            .toList());
  }

  @Test
  void aReadingIsKeptWithTheStepAndSaysWhetherTheWindowIsOpen() {
    int row = beginVisit();
    assertThat(step(row).climate()).as("the last visit's reading is not copied").isEmpty();
    bench.write("steps", row, "climate", "20 50 13,4");
    assertThat(step(row).climate()).contains(new Climate(20, 50, 13.4, TODAY.atTime(9, 0)));
    assertThat(bench.cell("steps", row, "climate")).isEqualTo("20 50 13.4 09:00");
    assertThat(words())
        .contains("Reading of 09:00 for ")
        .contains(". Surface 4.1 °C above the dew point, open. The label comes first.");
    bench.write("steps", row, "climate", "20 50 12 8:30");
    assertThat(words()).contains("Closed: the surface is 2.7 °C above the dew point");
    bench.write("steps", row, "climate", "20 50 13.4 6:30");
    assertThat(words()).contains("Closed: the reading is older than two hours; take another.");
    bench.write("steps", row, "climate", "");
    assertThat(step(row).climate()).isEmpty();
    assertThat(words()).doesNotContain("Reading of");
  }

  @Test
  void aReadingStaysInTheFileAndIsUndone() {
    int row = beginVisit();
    bench.write("steps", row, "climate", "68f 50 60f 8:45");
    Step before = step(row);
    assertThat(before.climate()).contains(new Climate(20, 50, 15.6, TODAY.atTime(8, 45)));
    bench.close();
    bench = Bench.open(folder);
    assertThat(bench.almanac().steps()).contains(before);
    bench.presenter().undo();
    assertThat(bench.almanac().steps())
        .filteredOn(s -> s.id().equals(before.id()))
        .extracting(Step::climate)
        .containsExactly(Optional.empty());
  }

  @Test
  void whatCannotBeReadStaysAsTypedWithItsReason() {
    int row = beginVisit();
    bench.write("steps", row, "climate", "20 50");
    assertThat(bench.cell("steps", row, "climate")).isEqualTo("20 50");
    assertThat(step(row).climate()).isEmpty();
    bench.sheet().press("finish");
    assertThat(bench.state().trouble()).get().asString().startsWith("Something on this page");
  }

  @Test
  void aVisitThatIsDoneIsJudgedByTheTimeOfItsReading() {
    int row = beginVisit();
    bench.write("steps", row, "climate", "20 50 13.4 6:30");
    Id<Visit> visit = step(row).visit();
    bench.sheet().press("finish");
    bench.presenter().boats().openVisit(visit);
    assertThat(words()).contains("Reading of 06:30").contains(", open.");
  }
}
