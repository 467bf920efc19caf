package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Cards;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The evening of a day with two boats: one washed, one begun. */
@Tag("slow")
class CatchUpTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final LocalDateTime EIGHT = TODAY.atTime(8, 0);

  @TempDir Path folder;
  private Bench bench;
  private Visit washed;
  private Visit begun;

  @BeforeEach
  void workADay() {
    bench = Bench.open(folder.resolve("record"));
    washed = visit("Siskin", true);
    begun = visit("Avocet", false);
    bench.presenter().openCatchUp();
  }

  private Visit visit(String name, boolean wash) {
    Boat boat = bench.boat(name);
    bench.presenter().openBoat(boat.id());
    if (wash) {
      bench.presenter().boats().washed();
      bench.presenter().boats().washed(Optional.empty());
    } else {
      bench.presenter().boats().beginVisit();
    }
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.day().equals(TODAY))
        .max(Comparator.comparing((Visit v) -> v.status() == VisitStatus.DONE))
        .orElseThrow();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private String file(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content).toString();
  }

  /** Photos of eight and nine o'clock, then of two. */
  private List<String> day() throws IOException {
    List<String> files = new ArrayList<>();
    int n = 0;
    for (int minute : new int[] {0, 2, 60, 63, 360, 362}) {
      files.add(file("p" + n + ".jpg", DrawnPhotos.jpeg(n, EIGHT.plusMinutes(minute))));
      n++;
    }
    return files;
  }

  private List<SheetState.PhotoCard> cards(Visit visit) {
    return Cards.photos(bench.state(), "visit " + visit.id()).cards();
  }

  private List<SheetState.PhotoCard> unsorted() {
    return Cards.photos(bench.state(), "photos").cards();
  }

  private SheetState.Field field(String block, int n) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(SheetState.Form.class::cast)
        .filter(f -> f.id().equals(block))
        .findFirst()
        .orElseThrow()
        .fields()
        .get(n);
  }

  private void first(String boat) {
    bench.write("day", "place 0", boat);
  }

  @Test
  void theDaysPhotosFallToItsVisitsByTheirPauses() throws Exception {
    first("Siskin");
    Almanac before = bench.almanac();
    bench.sheet().add("photos", day());
    assertThat(unsorted()).isEmpty();
    assertThat(cards(washed))
        .extracting(c -> Cards.text(c, "moment"))
        .containsExactly("before", "before", "after", "after");
    assertThat(cards(begun)).extracting(c -> Cards.text(c, "moment")).containsOnly("other");
    assertThat(cards(washed).get(0).facts()).isEqualTo("08:00");
    assertThat(bench.almanac()).as("nothing is kept before it is accepted").isEqualTo(before);
  }

  @Test
  void theOrderOfTheBoatsIsSaidByThePerson() throws Exception {
    bench.sheet().add("photos", day());
    first("Avocet");
    assertThat(cards(begun)).hasSize(4);
    first("Siskin");
    assertThat(cards(begun)).hasSize(2);
    assertThat(field("day", 2).text()).isEqualTo("Avocet");
  }

  @Test
  void aPhotoMovedByHandStaysWhereItWasPut() throws Exception {
    first("Siskin");
    bench.sheet().add("photos", day());
    String moved = cards(washed).get(3).id();
    bench.sheet().enter(new At("visit " + washed.id(), moved, "visit"), "Avocet");
    bench.sheet().enter(new At("visit " + begun.id(), moved, "moment"), "damage");
    assertThat(cards(washed)).hasSize(3);
    assertThat(cards(begun)).hasSize(3);
    bench.sheet().enter(new At("visit " + begun.id(), cards(begun).get(1).id(), "visit"), "no");
    assertThat(unsorted()).hasSize(1);
    bench.sheet().add("photos", List.of(file("late.jpg", DrawnPhotos.jpeg(9, EIGHT.plusHours(7)))));
    assertThat(Cards.text(cards(begun).get(0), "moment")).isEqualTo("damage");
    bench.sheet().remove("photos", unsorted().get(0).id());
    assertThat(unsorted()).isEmpty();
  }

  @Test
  void whatCannotBeSortedStandsWithItsReasonAndWhatIsNoPhotoIsTold() throws Exception {
    List<String> files = new ArrayList<>(day());
    files.add(file("pasted.png", DrawnPhotos.png(8)));
    files.add(file("yesterday.jpg", DrawnPhotos.jpeg(8, EIGHT.minusDays(1))));
    files.add(file("note.txt", "no photo".getBytes(StandardCharsets.UTF_8)));
    bench.sheet().add("photos", files);
    assertThat(unsorted())
        .extracting(SheetState.PhotoCard::facts)
        .containsExactly(
            "30 April 2026, 08:00\nThe photo was taken on another day.",
            "time not known\nThe photo does not say when it was taken.");
    assertThat(bench.state().trouble()).get().asString().startsWith("The file note.txt is not");
    bench.sheet().enter(new At("photos", unsorted().get(1).id(), "visit"), "Siskin");
    assertThat(unsorted()).hasSize(1);
    assertThat(Cards.words(bench.state())).contains("Put 7 photos in");
  }

  @Test
  void acceptedPhotosGoInByOneActWhichUndoTakesBack() throws Exception {
    first("Siskin");
    Almanac before = bench.almanac();
    bench.sheet().add("photos", day());
    bench.sheet().press("put");
    List<Photo> added =
        bench.almanac().photos().stream().filter(p -> !before.photos().contains(p)).toList();
    assertThat(added).hasSize(6);
    assertThat(added.stream().filter(p -> p.visit().equals(Optional.of(washed.id()))))
        .extracting(Photo::moment)
        .containsExactlyInAnyOrder(Moment.BEFORE, Moment.BEFORE, Moment.AFTER, Moment.AFTER);
    assertThat(added.stream().filter(p -> p.visit().equals(Optional.of(begun.id())))).hasSize(2);
    assertThat(Cards.words(bench.state())).contains("6 photos are in.").doesNotContain("Put ");
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    bench.presenter().redo();
    bench.sheet().add("photos", day());
    bench.sheet().press("put");
    assertThat(Cards.words(bench.state()))
        .contains("No photo was new. 6 photos are in their visit already.");
  }

  @Test
  void whatWasNotTakenStaysOnTheSheet() throws Exception {
    first("Siskin");
    List<String> files = day();
    bench.sheet().add("photos", files);
    Files.delete(Path.of(files.get(0)));
    bench.sheet().press("put");
    assertThat(cards(washed))
        .extracting(SheetState.PhotoCard::file)
        .doesNotContainAnyElementsOf(files.subList(1, files.size()));
    assertThat(bench.state().trouble()).get().asString().contains("p0.jpg cannot be read");
    assertThat(cards(washed)).extracting(SheetState.PhotoCard::name).containsExactly("p0.jpg");
  }

  @Test
  void minutesAndHandoverAreFilledInWhereTheyAreMissing() {
    assertThat(Cards.words(bench.state()))
        .contains("Missing: Siskin")
        .contains("Missing: Avocet")
        .contains("Still planned for today.");
    String block = "gaps " + washed.id();
    SheetState.Field minutes = field(block, 0);
    assertThat(minutes.label()).isEqualTo("Minutes of step 1, wash");
    bench.write(block, minutes.id(), "a while");
    assertThat(field(block, 0).said().refused()).isTrue();
    assertThat(bench.sheet().say(new At(block, "", minutes.id()), "a while").refused()).isTrue();
    bench.write(block, minutes.id(), "55");
    bench.write(block, "handover", "by mess");
    Step step =
        bench.almanac().steps().stream()
            .filter(s -> s.visit().equals(washed.id()))
            .findFirst()
            .orElseThrow();
    assertThat(step.minutes()).contains(55);
    assertThat(now(washed).handover()).isEqualTo(Handover.BY_MESSAGE);
    assertThat(field(block, 0).text()).as("it stays to be corrected").isEqualTo("55");
    assertThat(Cards.words(bench.state())).contains("Missing: Siskin\nNothing any more.");
    assertThat(bench.state().facts()).endsWith("Something is missing of Avocet.");
  }

  private Visit now(Visit visit) {
    return bench.almanac().visits().stream()
        .filter(v -> v.id().equals(visit.id()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aVisitStillPlannedIsOpenedAndFinishedAndComingBackOnesPhotosAreStillThere()
      throws Exception {
    bench.sheet().add("photos", day());
    bench.sheet().press("open " + begun.id());
    assertThat(bench.sheet()).isInstanceOf(VisitSheet.class);
    bench.sheet().press("finish");
    assertThat(now(begun).status()).isEqualTo(VisitStatus.DONE);
    bench.presenter().openCatchUp();
    assertThat(cards(washed).size() + cards(begun).size()).isEqualTo(6);
    assertThat(Cards.words(bench.state())).doesNotContain("Still planned");
    assertThat(field("gaps " + begun.id(), 0).label()).startsWith("Minutes of step 1");
  }

  @Test
  void nothingMissingReadsAsGoodNews() {
    for (Visit visit : List.of(washed, begun)) {
      if (visit.status() == VisitStatus.PLANNED) {
        bench.presenter().edit("off", a -> hullalmanac.core.record.Edit.put(cancelled(visit)));
      }
    }
    fill(washed.id());
    bench.presenter().leave();
    bench.presenter().openCatchUp();
    assertThat(bench.state().facts()).isEqualTo("Friday, 1 May 2026: Siskin. All is written down.");
  }

  private static Visit cancelled(Visit v) {
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        v.day(),
        VisitStatus.CANCELLED,
        v.why(),
        v.plan(),
        Optional.of(hullalmanac.core.record.MoveReason.WEATHER),
        v.handover(),
        v.surfaces(),
        v.moves(),
        v.note());
  }

  private void fill(Id<Visit> visit) {
    String block = "gaps " + visit;
    SheetState.Form form =
        bench.state().blocks().stream()
            .filter(SheetState.Form.class::isInstance)
            .map(SheetState.Form.class::cast)
            .filter(f -> f.id().equals(block))
            .findFirst()
            .orElseThrow();
    form.fields()
        .forEach(f -> bench.write(block, f.id(), f.id().equals("handover") ? "on the spot" : "30"));
  }

  @Test
  void anotherDayIsChosenAndADayWithoutVisitsSaysSo() throws Exception {
    bench.write("day", "day", "32/13");
    assertThat(field("day", 0).said().refused()).isTrue();
    assertThat(field("day", 0).text()).isEqualTo("32/13");
    bench.write("day", "day", "1/1");
    assertThat(bench.state().facts()).contains("1 January").endsWith("no visit that day.");
    bench.sheet().add("photos", day().stream().collect(Collectors.toList()));
    assertThat(unsorted())
        .allSatisfy(c -> assertThat(c.facts()).endsWith("The photo was taken on another day."));
    bench.write("day", "day", "today");
    assertThat(unsorted()).isEmpty();
  }
}
