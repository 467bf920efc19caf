package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.fixture.Bench;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fewest passes are asked for on a sheet, on a record of one's own. */
@Tag("slow")
class PassesSheetTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  @TempDir Path folder;
  private Bench bench;
  private Boat boat;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
    boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().fewestPasses();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private String words(boolean strong) {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(SheetState.Words.class::cast)
        .filter(w -> w.strong() == strong)
        .map(SheetState.Words::text)
        .collect(Collectors.joining("\n"));
  }

  private SheetState.Field field(String id) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .flatMap(b -> ((SheetState.Form) b).fields().stream())
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private SheetState.Way way() {
    return bench.state().blocks().stream()
        .filter(SheetState.Way.class::isInstance)
        .map(SheetState.Way.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private List<Visit> plannedToday() {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.PLANNED)
        .filter(v -> v.note().contains("agreed"))
        .toList();
  }

  @Test
  void saysHowTheSurfaceStandsAndShowsThePlans() {
    assertThat(bench.state().title()).isEqualTo("Siskin");
    assertThat(words(false))
        .contains("at 60°, read on")
        .contains("It can reach")
        .contains("light gelcoat".substring(1))
        .contains("by rule of thumb")
        .contains("To spare");
    bench.write("agreed", "gloss", "84");
    SheetState.Grid plans = bench.grid("plans");
    assertThat(plans.rows()).isNotEmpty();
    assertThat(bench.cell("plans", 0, "chance")).isIn("8 in 10", "9 in 10", "over 9 in 10");
    assertThat(bench.cell("plans", 0, "rests")).containsPattern("from your last|starter value");
    assertThat(bench.cell("plans", 0, "needs")).contains("foam");
    assertThat(way().path().orElseThrow().agreed()).isEqualTo(84);
    assertThat(way().path().orElseThrow().points()).hasSizeGreaterThan(1);
    assertThat(way().description()).contains("; agreed 84");
    assertThat(words(true)).contains("Test spot before any cut").contains("label and data sheet");
  }

  /** An area by rule of thumb, and microns by age, are not known to a hundredth. */
  @Test
  void whatRestsOnARuleOfThumbIsSaidInWholeNumbers() {
    assertThat(words(false))
        .containsPattern(" year[s]? old, \\d+ m² · \\d+ ft² by rule of thumb")
        .containsPattern("To spare, [a-z ]+: \\d+ µm on flats, \\d+ at edges and corners \\(");
    assertThat(field("area").input()).isInstanceOf(Input.Line.class);
    assertThat(((Input.Line) field("area").input()).hint()).matches("\\d+ ft² by rule of thumb");
    assertThat(((Input.Line) field("offFlats").input()).hint())
        .matches("\\d+, all that can be spared");
    assertThat(bench.cell("plans", 0, "flats")).matches("\\d+ µm");
    assertThat(bench.cell("plans", 0, "edges")).matches("\\d+ µm");
    bench.write("agreed", "area", "21.37 m2");
    assertThat(words(false)).contains("21.37 m²");
    bench.write("more", "thickFlats", "455.5");
    assertThat(words(false)).containsPattern("To spare, [a-z ]+: [0-9]+\\.5 µm on flats");
  }

  @Test
  void anotherPlanIsShownWhenItIsPressed() {
    bench.write("agreed", "gloss", "84");
    bench.write("more", "own", "heavy; med; fin");
    int own = bench.grid("plans").rows().size() - 1;
    assertThat(bench.cell("plans", own, "plan")).endsWith("(your own)");
    assertThat(bench.cell("plans", own, "show")).isEqualTo("Show");
    bench.sheet().press(new At("plans", String.valueOf(own), "show"));
    assertThat(bench.cell("plans", own, "show")).isEqualTo("Shown");
    assertThat(way().path().orElseThrow().points()).hasSize(4);
    assertThat(bench.sheet().say(new At("plans", "0", "plan"), "").words())
        .contains("correction: ");
  }

  @Test
  void aTestSpotUpdatesThePlansAtOnceAndCanBeTakenOut() {
    bench.write("agreed", "gloss", "84");
    List<SheetState.GridRow> before = bench.grid("plans").rows();
    bench.sheet().press("add spot");
    bench.write("spots", 0, "before", "82 83 81");
    assertThat(bench.grid("plans").rows()).isEqualTo(before);
    bench.write("spots", 0, "stage", "one");
    bench.write("spots", 0, "after", "82.5 83 82");
    assertThat(bench.grid("plans").rows()).isNotEqualTo(before);
    bench.sheet().remove("spots", bench.grid("spots").rows().get(0).id());
    assertThat(bench.grid("plans").rows()).isEqualTo(before);
  }

  @Test
  void badInputStaysAsTypedWithASentenceAndNothingIsPlanned() {
    Almanac before = bench.almanac();
    bench.write("agreed", "area", "-5 m2");
    assertThat(field("area").text()).isEqualTo("-5 m2");
    assertThat(field("area").said().refused()).isTrue();
    bench.sheet().press("plan");
    assertThat(bench.state().trouble()).get().asString().startsWith("Area: ");
    assertThat(bench.almanac()).isEqualTo(before);
    bench.write("agreed", "area", "");
    assertThat(bench.state().trouble()).isEmpty();
    bench.sheet().press("add spot");
    bench.write("spots", 0, "passes", "5");
    assertThat(
            bench
                .sheet()
                .say(new At("spots", bench.grid("spots").rows().get(0).id(), "passes"), "5")
                .words())
        .isEqualTo("A test spot takes 1 to 4 passes, not 5.");
    bench.sheet().press("plan");
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void moreThanCanBeSparedIsRefused() {
    bench.write("agreed", "gloss", "84");
    bench.write("agreed", "offFlats", "900");
    assertThat(words(true)).contains("can be spared on flats");
    assertThat(bench.grid("plans").rows()).isEmpty();
    bench.sheet().press("plan");
    assertThat(bench.state().trouble()).contains("There is no plan to make a visit of.");
    assertThat(way().path()).isEmpty();
    bench.write("agreed", "offFlats", "4");
    bench.write("more", "own", "heavy; medium; finishing");
    assertThat(words(true))
        .contains("Stages of your own: These stages take 8.0 µm, and no more than 4.0");
    assertThat(plannedToday()).isEmpty();
  }

  @Test
  void aGlossByEyeIsTheLowestThatLooksSo() {
    bench.write("agreed", "gloss", "eye 2");
    assertThat(field("gloss").text()).isEqualTo("75");
    bench.write("agreed", "gloss", "eye 5");
    assertThat(field("gloss").said().words()).contains("as dull as 5");
  }

  @Test
  void oneActPlansAVisitWithTheStepsAndOneUndoTakesItBack() {
    bench.write("agreed", "gloss", "84");
    bench.write("when", "day", "12 May");
    assertThat(field("day").text()).isEqualTo("2026-05-12");
    Almanac before = bench.almanac();
    bench.sheet().press("plan");
    assertThat(plannedToday()).hasSize(1);
    Visit visit = plannedToday().get(0);
    assertThat(visit.day()).isAfter(TODAY);
    assertThat(
            bench.almanac().steps().stream()
                .filter(s -> s.visit().equals(visit.id()))
                .sorted(Comparator.comparingInt(Step::order))
                .map(Step::kind))
        .startsWith(StepKind.WASH, StepKind.DECONTAMINATE)
        .endsWith(StepKind.PROTECT);
    assertThat(bench.sheet()).isInstanceOf(VisitSheet.class);
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void anotherSurfaceBeginsAnew() {
    bench.write("agreed", "gloss", "84");
    bench.write("agreed", "surface", "transom");
    assertThat(field("surface").text()).isEqualTo("transom");
    assertThat(field("gloss").text()).isEmpty();
  }

  private List<Estimate> estimates() {
    return bench.almanac().books().estimates().stream()
        .filter(e -> e.boat().equals(boat.id()))
        .toList();
  }

  private static String promised(Estimate estimate) {
    return estimate.expectations().stream()
        .map(Estimate.Expectation::words)
        .filter(t -> t.startsWith("gloss of the "))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anOfferPressedRightAfterAChangeIsOfWhatIsWrittenNow() {
    int before = estimates().size();
    bench.write("agreed", "gloss", "82");
    bench.tasks().hold(Lane.COMPUTING);
    bench.write("agreed", "gloss", "86");
    assertThat(bench.state().facts()).isEqualTo("Fewest passes: reckoning …");
    bench.sheet().press("offer");
    assertThat(estimates()).hasSize(before);
    assertThat(bench.state().facts()).endsWith("reckoning … then the estimate is made.");
    bench.tasks().release(Lane.COMPUTING);
    assertThat(estimates()).hasSize(before + 1);
    assertThat(promised(estimates().get(before))).contains(": 86 at 60°");
    assertThat(bench.sheet()).isInstanceOf(EstimateSheet.class);
  }

  /** Nobody looked at the gloss of her transom: of it there is no plan. */
  @Test
  void aPlanPressedForRightAfterAnotherSurfaceIsNotOfTheSurfaceBefore() {
    bench.write("agreed", "gloss", "84");
    assertThat(field("surface").text()).isNotEqualTo("transom");
    String first = field("surface").text();
    int before = estimates().size();
    for (String button : List.of("plan", "offer")) {
      bench.write("agreed", "surface", first);
      bench.write("agreed", "gloss", "84");
      bench.tasks().hold(Lane.COMPUTING);
      bench.write("agreed", "surface", "transom");
      bench.sheet().press(button);
      bench.tasks().release(Lane.COMPUTING);
      assertThat(bench.state().trouble()).contains("There is no plan to make a visit of.");
    }
    assertThat(plannedToday()).isEmpty();
    assertThat(estimates()).hasSize(before);
  }

  @Test
  void whatIsWrittenAfterAPressThatStillWaitsUndoesThePress() {
    int before = estimates().size();
    bench.tasks().hold(Lane.COMPUTING);
    bench.write("agreed", "gloss", "82");
    bench.sheet().press("offer");
    bench.write("agreed", "gloss", "84");
    assertThat(bench.state().trouble())
        .contains("Something was written after you pressed: look, then press again.");
    bench.tasks().release(Lane.COMPUTING);
    assertThat(estimates()).hasSize(before);
    bench.sheet().press("offer");
    assertThat(promised(estimates().get(before))).contains(": 84 at 60°");
  }

  @Test
  void pressedTwiceItMakesOneEstimateAndOneVisit() {
    bench.write("agreed", "gloss", "84");
    int before = estimates().size();
    for (Lane slow : List.of(Lane.DATABASE, Lane.COMPUTING)) {
      Sheet sheet = bench.sheet();
      bench.tasks().hold(slow);
      sheet.press("offer");
      sheet.press("offer");
      sheet.press("plan");
      bench.tasks().release(slow);
      assertThat(estimates()).as(slow + " is slow").hasSize(++before);
      assertThat(plannedToday()).isEmpty();
      assertThat(bench.sheet()).isInstanceOf(EstimateSheet.class);
      bench.presenter().back();
      assertThat(bench.sheet()).isSameAs(sheet);
    }
  }

  @Test
  void aRefusedVisitCanBePlannedOnceItIsMended() {
    bench.write("agreed", "gloss", "84");
    bench.write("when", "day", "2026-04-01");
    bench.sheet().press("plan");
    assertThat(bench.shell().trouble()).get().asString().contains("for today or later");
    assertThat(plannedToday()).isEmpty();
    bench.write("when", "day", "2026-05-12");
    bench.sheet().press("plan");
    assertThat(plannedToday()).hasSize(1);
  }

  private String shown() {
    return bench.grid("plans").rows().stream()
        .filter(r -> r.cells().get(0).equals("Shown"))
        .map(r -> r.cells().get(1))
        .collect(Collectors.joining(" and "));
  }

  /** A spot that says much more of a stage puts other plans before the one that is shown. */
  @Test
  void thePlanThatWasChosenStaysTheOneShownWhereverItComesToStand() {
    bench.write("agreed", "gloss", "84");
    bench.write("more", "own", "heavy; med; fin");
    int own = bench.grid("plans").rows().size() - 1;
    bench.sheet().press(new At("plans", String.valueOf(own), "show"));
    assertThat(shown()).isEqualTo("heavy, medium, finishing (your own)");
    bench.sheet().press("add spot");
    bench.write("spots", 0, "stage", "finishing");
    bench.write("spots", 0, "before", "70 70 70");
    bench.write("spots", 0, "after", "88 88 88");
    assertThat(bench.grid("plans").rows().size() - 1).as("it stands elsewhere").isNotEqualTo(own);
    assertThat(shown()).isEqualTo("heavy, medium, finishing (your own)");
  }

  @Test
  void aPlanThatIsNoMoreAmongThemIsNotPlannedByAPressThatWaited() {
    bench.write("agreed", "gloss", "84");
    bench.write("more", "own", "heavy; med; fin");
    int own = bench.grid("plans").rows().size() - 1;
    bench.sheet().press(new At("plans", String.valueOf(own), "show"));
    bench.tasks().hold(Lane.COMPUTING);
    bench.write("more", "own", "");
    bench.sheet().press("plan");
    bench.tasks().release(Lane.COMPUTING);
    assertThat(plannedToday()).isEmpty();
    assertThat(bench.state().trouble())
        .contains("The plan you chose is not among them any more: look, then press again.");
    bench.sheet().press("plan");
    assertThat(plannedToday()).hasSize(1);
  }
}
