package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.photo.PixelImages;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.fixture.Wall;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.ExportService;
import hullalmanac.service.ImportService;
import hullalmanac.service.MadePaper;
import hullalmanac.service.Papers;
import hullalmanac.service.RecordService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The mark of the business, from a file to paper. */
@Tag("slow")
class LetterheadTest {
  private static final int GREEN = 0xff00aa00;

  @TempDir Path folder;
  private final Beside beside = new Beside();
  private Bench bench;
  private boolean open = true;

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
    bench.presenter().reaches(beside);
    bench.presenter().open(new BusinessSheet(bench.presenter(), BusinessSheet.Page.PAPER));
  }

  @AfterEach
  void close() {
    if (open) {
      bench.close();
    }
  }

  private Path green() throws IOException {
    int[] pixels = new int[60 * 20];
    Arrays.fill(pixels, GREEN);
    return Files.write(folder.resolve("mark.png"), PixelImages.png(new Pixels(60, 20, pixels)));
  }

  private String mark() {
    return bench.almanac().business().letterhead().mark();
  }

  /** How many pixels of the first page of what is due are as green as the mark. */
  private long greenOnPaper() {
    bench.presenter().open(PaperSheet.of(bench.presenter(), Papers.Asked.ofAll(Papers.Sort.DUE)));
    bench.sheet().press("print");
    MadePaper paper = beside.printed().get(beside.printed().size() - 1);
    bench.presenter().leave();
    return Arrays.stream(paper.picture(0, 600).argb())
        .filter(p -> (p >> 8 & 0xff) > 140 && (p >> 16 & 0xff) < 60 && (p & 0xff) < 60)
        .count();
  }

  @Test
  void aPictureThatIsChosenStandsOnPaperUntilItIsTakenOff() throws Exception {
    assertThat(greenOnPaper()).isZero();
    bench.sheet().add(MarkBlocks.CHOOSE, List.of(green().toString()));
    assertThat(mark()).matches("[0-9a-f]{64}\\.png");
    // 48 by 16 mm of a page 210 mm wide that is 600 pixels wide: 137 by 46 pixels.
    assertThat(greenOnPaper()).isBetween(5_500L, 6_900L);
    bench.sheet().remove(MarkBlocks.SHOWN, mark());
    assertThat(mark()).isEmpty();
    assertThat(greenOnPaper()).isZero();
    bench.presenter().undo();
    assertThat(greenOnPaper()).isPositive();
  }

  @Test
  void theMarkIsSeenOnItsPage() throws Exception {
    bench.sheet().add(MarkBlocks.CHOOSE, List.of(green().toString()));
    SheetState.Photos shown =
        bench.state().blocks().stream()
            .filter(SheetState.Photos.class::isInstance)
            .map(SheetState.Photos.class::cast)
            .findFirst()
            .orElseThrow();
    AtomicReference<Picture> seen = new AtomicReference<>();
    bench.sheet().picture(shown.cards().get(0).file(), 60, seen::set);
    assertThat(seen.get().pixels().orElseThrow().argb()).contains(GREEN);
  }

  @Test
  void whatIsNoPictureIsRefusedAndTheMarkStays() throws Exception {
    bench.sheet().add(MarkBlocks.CHOOSE, List.of(green().toString()));
    String before = mark();
    Path text = Files.writeString(folder.resolve("mark.txt"), "no picture");
    bench.sheet().add(MarkBlocks.CHOOSE, List.of(text.toString()));
    assertThat(mark()).isEqualTo(before);
    assertThat(bench.state().trouble().orElseThrow()).contains("mark.txt");
  }

  @Test
  void theMarkGoesOutWithTheListsAndComesBack() throws Exception {
    bench.sheet().add(MarkBlocks.CHOOSE, List.of(green().toString()));
    String before = mark();
    bench.close();
    open = false;
    Path lists = folder.resolve("lists");
    RecordService.Surroundings around =
        new RecordService.Surroundings(
            new Wall("2026-05-01T09:00:00Z"), new Random(7)::nextLong, "desk", 1);
    try (RecordService record = RecordService.open(folder.resolve("record"), around)) {
      record.change("photos out", Edit.remove(List.copyOf(record.almanac().photos())));
      ExportService.export(record, lists, false, false);
    }
    assertThat(lists.resolve("photos").resolve(before)).exists();
    Path again = folder.resolve("again");
    assertThat(new ImportService(around).into(again, lists)).isInstanceOf(ImportService.Done.class);
    try (RecordService record = RecordService.open(again, around)) {
      Almanac came = record.almanac();
      assertThat(came.business().letterhead().mark()).isEqualTo(before);
      assertThat(record.photos().resolve(before)).hasBinaryContent(Files.readAllBytes(green()));
    }
    Files.delete(lists.resolve("photos").resolve(before));
    assertThat(new ImportService(around).into(folder.resolve("third"), lists))
        .isInstanceOfSatisfying(
            ImportService.Refused.class,
            no -> assertThat(no.problems().toString()).contains("mark").contains(before));
  }
}
