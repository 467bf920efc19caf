package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.exchange.photo.PhotoFiles;
import hullalmanac.fixture.Boatyard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos brought into a real record. */
class PhotoServiceTest {
  private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 1, 8, 40, 5);

  @TempDir Path folder;
  private RecordService record;
  private PhotoService photos;
  private Visit visit;
  private Visit other;

  @BeforeEach
  void open() {
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(
            Clock.fixed(Instant.parse("2026-05-01T18:00:00Z"), ZoneOffset.UTC),
            new Random(9)::nextLong,
            "desk",
            1);
    Path home = folder.resolve("record");
    RecordService.create(home, surroundings);
    record = RecordService.open(home, surroundings);
    Boatyard yard = new Boatyard();
    visit = visit(yard);
    other = visit(yard);
    record.change("two boats", Edit.all(yard.almanac()));
    photos = new EditService(record).photos();
  }

  private static Visit visit(Boatyard yard) {
    return yard.visit(
        yard.boat(Use.WEEKENDS), MORNING.toLocalDate(), VisitStatus.DONE, VisitWhy.OTHER);
  }

  @AfterEach
  void close() {
    record.close();
  }

  private String file(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content).toString();
  }

  private static PhotoService.Given given(String file, Visit visit) {
    return new PhotoService.Given(
        file,
        new PhotoService.Belongs(
            visit.boat(), Optional.of(visit.id()), Optional.empty(), Moment.BEFORE));
  }

  private List<String> kept() throws IOException {
    try (Stream<Path> files = Files.list(record.photos())) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  @Test
  void photosGoInByOneActWithTheirTimeAndTheirFilesFirst() throws Exception {
    byte[] jpeg = DrawnPhotos.jpeg(1, MORNING);
    byte[] heic = DrawnPhotos.heic(MORNING.plusMinutes(2));
    PhotoService.Added added =
        photos.add(
            List.of(
                given(file("one.jpg", jpeg), visit),
                given(file("two.heic", heic), visit),
                given(file("three.png", DrawnPhotos.png(3)), visit)));
    assertThat(added.added()).isEqualTo(3);
    assertThat(added.refused()).isEmpty();
    List<Photo> rows = record.almanac().photos();
    assertThat(rows).hasSize(3);
    assertThat(rows)
        .anySatisfy(
            p -> {
              assertThat(p.file()).isEqualTo(PhotoFiles.sha256(jpeg) + ".jpg");
              assertThat(p.takenAt()).contains(MORNING);
              assertThat(p.visit()).contains(visit.id());
              assertThat(p.moment()).isEqualTo(Moment.BEFORE);
            })
        .anySatisfy(p -> assertThat(p.file()).isEqualTo(PhotoFiles.sha256(heic) + ".heic"))
        .anySatisfy(p -> assertThat(p.takenAt()).isEmpty());
    assertThat(PhotoFiles.missing(record.photos(), rows.stream().map(Photo::file).toList()))
        .isEmpty();
    assertThat(record.standing().undo().map(Act::what))
        .get()
        .asString()
        .endsWith(": 3 photos added");
  }

  @Test
  void undoTakesTheRowsBackAndTheFileStays() throws Exception {
    String name = PhotoFiles.sha256(DrawnPhotos.png(4)) + ".png";
    photos.add(List.of(given(file("deck.png", DrawnPhotos.png(4)), visit)));
    Almanac with = record.almanac();
    record.undo();
    assertThat(record.almanac().photos()).isEmpty();
    assertThat(kept()).containsExactly(name);
    record.redo();
    assertThat(record.almanac()).isEqualTo(with);
  }

  @Test
  void aPhotoIsInAVisitOnceWhateverItIsCalledButMayBeInAnother() throws Exception {
    String first = file("bow.png", DrawnPhotos.png(5));
    String copy = file("copy of bow.png", DrawnPhotos.png(5));
    PhotoService.Added added = photos.add(List.of(given(first, visit), given(copy, visit)));
    assertThat(added.added()).isEqualTo(1);
    assertThat(added.already()).isEqualTo(1);
    Optional<String> act = record.standing().undo().map(Act::what);
    added = photos.add(List.of(given(copy, visit)));
    assertThat(added.added()).isZero();
    assertThat(added.already()).isEqualTo(1);
    assertThat(record.standing().undo().map(Act::what)).isEqualTo(act);
    assertThat(photos.add(List.of(given(first, other))).added()).isEqualTo(1);
    assertThat(record.almanac().photos()).hasSize(2);
    assertThat(kept()).hasSize(1);
  }

  @Test
  void whatIsNoPhotoIsToldWithItsSentenceAndTheOthersGoIn() throws Exception {
    String note =
        file("note.txt", "wash the bow".getBytes(java.nio.charset.StandardCharsets.UTF_8));
    String gone = folder.resolve("gone.jpg").toString();
    String bow = file("bow.png", DrawnPhotos.png(6));
    PhotoService.Added added =
        photos.add(List.of(given(note, visit), given(gone, visit), given(bow, visit)));
    assertThat(added.added()).isEqualTo(1);
    assertThat(added.refused()).containsOnlyKeys(note, gone);
    assertThat(added.refused().get(note)).startsWith("The file note.txt is not a JPEG, PNG");
    assertThat(added.refused().get(gone)).startsWith("The file gone.jpg cannot be read.");
    assertThat(photos.look(List.of(note, bow)))
        .extracting(l -> l.refused().isPresent())
        .containsExactly(true, false);
  }

  @Test
  void aNameThatIsNoFileNameIsRefusedToo() {
    String impossible = "no\0name.jpg";
    assertThat(photos.add(List.of(given(impossible, visit))).refused().get(impossible))
        .startsWith("No file can be called");
    assertThat(photos.smallOf(impossible, 50).pixels()).isEmpty();
  }

  @Test
  void aFileOfThatNameThatIsSomethingElseIsLeftAloneAndTold() throws Exception {
    String bow = file("bow.png", DrawnPhotos.png(7));
    String deck = file("deck.png", DrawnPhotos.png(8));
    Files.writeString(
        record.photos().resolve(PhotoFiles.sha256(DrawnPhotos.png(7)) + ".png"), "something else");
    PhotoService.Added added = photos.add(List.of(given(bow, visit), given(deck, visit)));
    assertThat(added.added()).isEqualTo(1);
    assertThat(added.refused().get(bow)).contains("is not what its name says");
  }

  @Test
  void aPhotoOfAVisitThatIsGoneIsRefusedWhole() throws Exception {
    Change removal = Removal.of(record.almanac(), visit);
    record.change("removed", ((Change.Ready) removal).edit());
    String bow = file("bow.png", DrawnPhotos.png(9));
    PhotoService.Added added = photos.add(List.of(given(bow, visit)));
    assertThat(added.added()).isZero();
    assertThat(added.refused()).containsOnlyKeys(bow);
    assertThat(record.almanac().photos()).isEmpty();
  }

  @Test
  void aPastedPictureGoesTheSameWayPixelByPixel() throws Exception {
    Pixels pasted = new Pixels(2, 1, new int[] {0xff0f5c5c, 0xfffbfaf7});
    String file = photos.lay(pasted);
    assertThat(photos.add(List.of(given(file, visit))).added()).isEqualTo(1);
    Photo row = record.almanac().photos().get(0);
    assertThat(row.file()).endsWith(".png");
    Pixels shown = photos.small(row.file(), 100).pixels().orElseThrow();
    assertThat(shown.argb()).containsExactly(0xff0f5c5c, 0xfffbfaf7);
  }

  @Test
  void smallPicturesAreSmallAndTheirAbsenceIsExplained() throws Exception {
    photos.add(
        List.of(
            given(file("bow.jpg", DrawnPhotos.jpeg(2, MORNING)), visit),
            given(file("far.heic", DrawnPhotos.heic(MORNING)), visit)));
    for (Photo photo : record.almanac().photos()) {
      PhotoService.Small small = photos.small(photo.file(), 80);
      if (photo.file().endsWith(".heic")) {
        assertThat(small.pixels()).isEmpty();
        assertThat(small.words()).isEqualTo("kept; cannot be shown here");
      } else {
        assertThat(small.pixels().orElseThrow().width()).isEqualTo(80);
        assertThat(small.pixels().orElseThrow().height()).isEqualTo(60);
        Files.delete(record.photos().resolve(photo.file()));
        assertThat(photos.small(photo.file(), 80).words()).isEqualTo("its picture is not there");
      }
    }
    assertThat(record.almanac().photos()).hasSize(2);
  }

  @Test
  void idsOfPhotosAreTheirKeys() throws Exception {
    photos.add(List.of(given(file("bow.png", DrawnPhotos.png(1)), visit)));
    Photo row = record.almanac().photos().get(0);
    assertThat(row.id()).isEqualTo(new Id<Photo>(Long.parseLong(row.key(), Character.MAX_RADIX)));
  }
}
