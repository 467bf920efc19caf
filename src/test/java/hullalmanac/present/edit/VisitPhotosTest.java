package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Cards;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos of a visit, given, written on and taken out on its sheet. */
@Tag("slow")
class VisitPhotosTest {
  private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 1, 8, 40, 5);

  @TempDir Path folder;
  private Bench bench;
  private Visit visit;

  @BeforeEach
  void openAVisitOfToday() {
    bench = Bench.open(folder.resolve("record"));
    Boat boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().washed();
    bench.presenter().boats().washed(Optional.empty());
    visit =
        bench.almanac().visits().stream()
            .filter(v -> v.boat().equals(boat.id()) && v.day().equals(MORNING.toLocalDate()))
            .max(Comparator.comparing(Visit::day))
            .orElseThrow();
    bench.presenter().boats().openVisit(visit.id());
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private String file(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content).toString();
  }

  private SheetState.Photos block() {
    return Cards.photos(bench.state(), "photos");
  }

  private List<Photo> photos() {
    return bench.almanac().photos().stream()
        .filter(p -> p.visit().equals(Optional.of(visit.id())))
        .toList();
  }

  @Test
  void droppedPhotosStandInTheirOrderInTimeAndOneUndoTakesThemBack() throws Exception {
    Almanac before = bench.almanac();
    assertThat(block().words()).isEqualTo("No photos of this visit yet.");
    bench
        .sheet()
        .add(
            "photos",
            List.of(
                file("later.jpg", DrawnPhotos.jpeg(2, MORNING.plusHours(2))),
                file("no time.png", DrawnPhotos.png(3)),
                file("first.heic", DrawnPhotos.heic(MORNING)),
                file("old.jpg", DrawnPhotos.jpeg(4, MORNING.minusDays(3)))));
    assertThat(block().cards())
        .extracting(SheetState.PhotoCard::facts)
        .containsExactly("28 April 2026, 08:40", "08:40", "10:40", "time not known");
    assertThat(block().words()).isEmpty();
    assertThat(bench.state().trouble()).isEmpty();
    assertThat(bench.shell().undo()).contains("Siskin: 4 photos added");
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void whatIsNoPhotoOrThereAlreadyIsSaidOnTheSheet() throws Exception {
    String bow = file("bow.png", DrawnPhotos.png(1));
    String note = file("note.txt", "no photo".getBytes(StandardCharsets.UTF_8));
    bench.sheet().add("photos", List.of(bow, note));
    assertThat(bench.state().trouble())
        .contains(
            "The file note.txt is not a JPEG, PNG or HEIC photo. Save it as JPEG, then add it"
                + " again.");
    bench.sheet().add("photos", List.of(bow));
    assertThat(bench.state().trouble()).contains("One photo is in this visit already.");
    assertThat(photos()).hasSize(1);
    bench.sheet().add("photos", List.of(file("deck.png", DrawnPhotos.png(2))));
    assertThat(bench.state().trouble()).isEmpty();
    assertThat(photos()).hasSize(2);
  }

  @Test
  void captionSurfaceAndMomentAreWrittenOnThePhoto() throws Exception {
    bench.sheet().add("photos", List.of(file("bow.png", DrawnPhotos.png(1))));
    String card = block().cards().get(0).id();
    Surface surface =
        bench.almanac().surfaces().stream()
            .filter(s -> s.boat().equals(visit.boat()))
            .findFirst()
            .orElseThrow();
    bench.sheet().enter(new At("photos", card, "caption"), " scuffs at the bow ");
    bench.sheet().enter(new At("photos", card, "moment"), "dam");
    bench.sheet().enter(new At("photos", card, "surface"), surface.words());
    assertThat(photos())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.caption()).isEqualTo("scuffs at the bow");
              assertThat(p.moment()).isEqualTo(Moment.DAMAGE);
              assertThat(p.surface()).contains(surface.id());
            });
    assertThat(Cards.text(block().cards().get(0), "surface")).isEqualTo(surface.words());
    bench.sheet().enter(new At("photos", card, "surface"), "whole boat");
    assertThat(photos().get(0).surface()).isEmpty();
    bench.sheet().enter(new At("photos", card, "moment"), "sometime");
    assertThat(photos().get(0).moment()).isEqualTo(Moment.DAMAGE);
  }

  @Test
  void aPhotoTakenOutComesBackByUndo() throws Exception {
    bench
        .sheet()
        .add(
            "photos",
            List.of(file("bow.png", DrawnPhotos.png(1)), file("deck.png", DrawnPhotos.png(2))));
    Almanac before = bench.almanac();
    bench.sheet().remove("photos", block().cards().get(0).id());
    assertThat(block().cards()).hasSize(1);
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void aPastedPictureIsAPhotoAndIsShownAsItWas() {
    bench.sheet().add("photos", new Pixels(1, 2, new int[] {0xff112233, 0xff445566}));
    SheetState.PhotoCard card = block().cards().get(0);
    AtomicReference<Picture> picture = new AtomicReference<>();
    bench.sheet().picture(card.file(), 100, picture::set);
    assertThat(picture.get().pixels().orElseThrow().argb()).containsExactly(0xff112233, 0xff445566);
  }

  @Test
  void aPhotoThatCannotBeShownSaysSo() throws Exception {
    bench.sheet().add("photos", List.of(file("far.heic", DrawnPhotos.heic(MORNING))));
    AtomicReference<Picture> picture = new AtomicReference<>();
    bench.sheet().picture(block().cards().get(0).file(), 100, picture::set);
    assertThat(picture.get().pixels()).isEmpty();
    assertThat(picture.get().words()).isEqualTo("kept; cannot be shown here");
  }
}
