package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Wall;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work over several days, and damage that was found on arrival. */
@Tag("slow")
class VisitDaysTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  @TempDir Path phone;
  private final Wall wall = new Wall("2026-05-01T09:00:00Z");
  private Bench bench;
  private Boat boat;
  private List<Id<Visit>> before;

  @BeforeEach
  void begin() {
    bench = Bench.open(folder, wall);
    boat =
        bench.almanac().boats().stream()
            .filter(b -> last(b).filter(this::protects).isPresent())
            .min(Comparator.comparing(Boat::name))
            .orElseThrow();
    before = bench.almanac().visits().stream().map(Visit::id).toList();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Optional<Visit> last(Boat of) {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(of.id()) && v.status() == VisitStatus.DONE)
        .max(Comparator.comparing(Visit::day));
  }

  private boolean protects(Visit visit) {
    return bench.almanac().steps().stream()
        .anyMatch(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT);
  }

  /** The visit that was begun. */
  private Visit visit() {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && !before.contains(v.id()))
        .findFirst()
        .orElseThrow();
  }

  private Surface surface(int row) {
    String id = bench.grid("surfaces").rows().get(row).id();
    return bench.almanac().surfaces().stream()
        .filter(s -> s.id().toString().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The first surface that the visit lays a base coat on. */
  private int coated() {
    for (int row = 0; row < bench.grid("surfaces").rows().size(); row++) {
      Surface here = surface(row);
      boolean laid =
          bench.almanac().steps().stream()
              .filter(s -> s.visit().equals(visit().id()) && s.kind() == StepKind.PROTECT)
              .anyMatch(s -> s.surfaces().contains(here.id()));
      if (laid) {
        return row;
      }
    }
    throw new AssertionError("nothing is protected");
  }

  private List<Coat> laid(Surface on) {
    return bench.almanac().coats().stream()
        .filter(c -> c.visit().equals(Optional.of(visit().id())))
        .filter(c -> c.surface().equals(on.id()))
        .toList();
  }

  private void reopen() {
    bench.presenter().boats().openVisit(visit().id());
  }

  @Test
  void eachSurfaceHasItsDayAndItsCoatFollows() {
    int row = coated();
    Surface here = surface(row);
    wall.set("2026-05-03T09:00:00Z");
    bench.presenter().lookAtTheClock();
    bench.sheet().press("finish");
    reopen();
    assertThat(bench.cell("surfaces", row, "work")).isEqualTo("done");
    assertThat(bench.cell("surfaces", row, "doneOn")).isEqualTo("2026-05-01");
    Almanac then = bench.almanac();
    Coat first = laid(here).get(0);
    bench.write("surfaces", row, "doneOn", "3/5");
    assertThat(bench.cell("surfaces", row, "doneOn")).isEqualTo("2026-05-03");
    assertThat(laid(here))
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.id()).isEqualTo(first.id());
              assertThat(c.laidOn()).contains(LocalDate.of(2026, 5, 3));
            });
    bench.write("surfaces", row, "work", "left, rain");
    assertThat(laid(here)).isEmpty();
    assertThat(bench.cell("surfaces", row, "note")).isEqualTo("rain");
    assertThat(bench.cell("surfaces", row, "doneOn")).isEmpty();
    bench.presenter().undo();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(then);
  }

  @Test
  void whatWasDoneCannotBePlannedOrGoInSilence() {
    int row = coated();
    bench.sheet().press("finish");
    reopen();
    Almanac then = bench.almanac();
    bench.write("surfaces", row, "work", "planned");
    assertThat(bench.shell().trouble()).get().asString().contains("nothing is planned in it");
    bench.write("surfaces", row, "work", "");
    assertThat(bench.shell().trouble()).get().asString().contains("a step of the visit was done");
    assertThat(bench.almanac()).isEqualTo(then);
    assertThat(bench.cell("surfaces", row, "work")).isEqualTo("done");
  }

  @Test
  void ofAPlannedVisitSomeIsDoneTodayAndTheRestAnotherDay() {
    int row = coated();
    bench.write("surfaces", row, "work", "d");
    assertThat(bench.cell("surfaces", row, "doneOn")).isEqualTo(TODAY.toString());
    Visit.Part part =
        visit().surfaces().stream()
            .filter(p -> p.surface().equals(surface(row).id()))
            .findFirst()
            .orElseThrow();
    assertThat(part.state()).isEqualTo(WorkState.DONE);
    assertThat(laid(surface(row))).isEmpty();
    bench.write("surfaces", row, "work", "p");
    assertThat(bench.cell("surfaces", row, "doneOn")).isEmpty();
  }

  private String sentences() {
    StringBuilder all = new StringBuilder();
    for (SheetState.Block block : bench.state().blocks()) {
      if (block instanceof SheetState.Words words) {
        all.append(words.text());
      }
    }
    return all.toString();
  }

  private Observation.Damage damage() {
    return bench.almanac().findings().stream()
        .filter(f -> f.visit().equals(Optional.of(visit().id())))
        .filter(f -> f.seen() instanceof Observation.Damage)
        .map(f -> (Observation.Damage) f.seen())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void damageAsksWhoWasToldUntilSomebodyWas() throws Exception {
    Almanac then = bench.almanac();
    assertThat(bench.grid("damage").rows()).isEmpty();
    assertThat(bench.grid("damage").empty()).isEmpty();
    bench.write("surfaces", 1, "damage", "chip at the rail");
    assertThat(bench.grid("damage").rows())
        .extracting(SheetState.GridRow::label)
        .containsExactly(surface(1).words());
    assertThat(bench.grid("damage").rows().get(0).cells())
        .containsExactly("chip at the rail", "nobody yet", "", "none");
    assertThat(sentences()).contains("damage that nobody was told of yet");
    bench.write("damage", 0, "toldWhom", "the yard");
    assertThat(damage().told()).contains(new Observation.Told("the yard", TODAY));
    assertThat(sentences()).doesNotContain("nobody was told");
    bench.write("damage", 0, "toldOn", "yesterday");
    bench.write("damage", 0, "damage", "two chips at the rail");
    assertThat(damage())
        .isEqualTo(
            new Observation.Damage(
                "two chips at the rail",
                Optional.of(new Observation.Told("the yard", TODAY.minusDays(1)))));
    assertThat(bench.cell("surfaces", 1, "damage")).isEqualTo("two chips at the rail");
    bench.write("surfaces", 1, "water", "b");
    assertThat(damage().told()).isPresent();
    for (int i = 0; i < 5; i++) {
      bench.presenter().undo();
    }
    assertThat(bench.almanac()).isEqualTo(then);
  }

  @Test
  void theOwnerIsNamedByHerFirstLetters() {
    String owner =
        bench.almanac().parties().stream()
            .filter(
                p ->
                    bench.almanac().roles().stream()
                        .anyMatch(r -> r.party().equals(p.id()) && r.boat().equals(boat.id())))
            .findFirst()
            .orElseThrow()
            .name();
    bench.write("surfaces", 0, "damage", "scrape");
    bench.write("damage", 0, "toldWhom", owner.substring(0, 3).toLowerCase(java.util.Locale.ROOT));
    assertThat(damage().told()).contains(new Observation.Told(owner, TODAY));
  }

  @Test
  void photosOfDamageOnASurfaceAreCountedBesideIt() throws Exception {
    bench.write("surfaces", 1, "damage", "chip");
    bench
        .sheet()
        .add("photos", List.of(Files.write(phone.resolve("a.png"), DrawnPhotos.png(1)).toString()));
    assertThat(bench.cell("damage", 0, "photos")).isEqualTo("none");
    SheetState.PhotoCard card =
        bench.state().blocks().stream()
            .filter(SheetState.Photos.class::isInstance)
            .map(b -> ((SheetState.Photos) b).cards().get(0))
            .findFirst()
            .orElseThrow();
    bench
        .sheet()
        .enter(
            new hullalmanac.present.sheet.At("photos", card.id(), "surface"), surface(1).words());
    assertThat(bench.cell("damage", 0, "photos")).isEqualTo("none");
    bench
        .sheet()
        .enter(
            new hullalmanac.present.sheet.At("photos", card.id(), "moment"), Moment.DAMAGE.words());
    assertThat(bench.cell("damage", 0, "photos")).isEqualTo("1");
  }

  @Test
  void theEveningAsksForWhoWasTold() {
    bench.write("surfaces", 1, "damage", "chip");
    bench.presenter().openCatchUp();
    assertThat(sentences()).contains("damage that nobody was told of yet. Say in the visit");
  }
}
