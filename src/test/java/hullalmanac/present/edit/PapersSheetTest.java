package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Beside;
import hullalmanac.fixture.Wall;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Papers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers of a boat: looked at, saved, opened, printed. */
@Tag("slow")
class PapersSheetTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private void of(Boat boat) {
    bench.presenter().open(new PapersSheet(bench.presenter(), boat.id()));
  }

  private Boat boat(boolean offered) {
    return bench.almanac().boats().stream()
        .filter(
            b ->
                offered
                    == bench.almanac().books().estimates().stream()
                        .anyMatch(e -> e.boat().equals(b.id())))
        .findFirst()
        .orElseThrow();
  }

  private String words() {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(b -> ((SheetState.Words) b).text())
        .collect(Collectors.joining("\n"));
  }

  private List<SheetState.Page> pages() {
    return bench.state().blocks().stream()
        .filter(SheetState.Pages.class::isInstance)
        .flatMap(b -> ((SheetState.Pages) b).pages().stream())
        .toList();
  }

  private List<Path> written() throws IOException {
    Path papers = folder.resolve("record").resolve("papers");
    if (!Files.isDirectory(papers)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(papers)) {
      return files.toList();
    }
  }

  @Test
  void aPaperIsSeenBeforeItIsWrittenAnywhere() throws Exception {
    Boat boat = boat(true);
    of(boat);
    bench.tasks().hold(Lane.COMPUTING);
    bench.sheet().press("estimate");
    assertThat(words()).contains("Laying it out …");
    bench.tasks().release(Lane.COMPUTING);
    assertThat(words()).doesNotContain("Laying it out …");
    assertThat(bench.state().title()).contains("Estimate").contains(boat.name());
    assertThat(pages()).isNotEmpty();
    assertThat(pages().get(0).words()).startsWith("Page 1 of ").contains(boat.name());
    AtomicReference<Picture> seen = new AtomicReference<>();
    bench.sheet().picture(pages().get(0).file(), 300, seen::set);
    Pixels page = seen.get().pixels().orElseThrow();
    assertThat(page.width()).isEqualTo(300);
    // ISO 216: the sides of A4 are as 1 to the root of 2.
    assertThat(page.height()).isCloseTo((int) Math.round(300 * Math.sqrt(2)), within(1));
    assertThat(Arrays.stream(page.argb()).distinct().count()).as("shades on it").isGreaterThan(20);
    assertThat(written()).isEmpty();
  }

  @Test
  void aPaperIsWrittenIntoTheRecordAndSaidWhere() throws Exception {
    of(boat(true));
    bench.sheet().press("estimate");
    bench.sheet().press("save");
    assertThat(written()).hasSize(1);
    Path file = written().get(0);
    assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    assertThat(words()).contains("Written to " + file + ".");
  }

  @Test
  void aPaperGoesWhereOneWantsItAndOverNothingElse() throws Exception {
    Path chosen = folder.resolve("chosen.pdf");
    Beside beside = new Beside();
    beside.choose(chosen);
    bench.presenter().reaches(beside);
    of(boat(true));
    bench.sheet().press("estimate");
    bench.sheet().press("elsewhere");
    assertThat(chosen).exists();
    assertThat(words()).contains("Written to " + chosen + ".");
    Files.writeString(chosen, "something else");
    bench.sheet().press("elsewhere");
    assertThat(chosen).hasContent("something else");
    assertThat(bench.shell().trouble().orElseThrow()).contains("Choose another name.");
  }

  @Test
  void aDiskThatDoesNotAnswerHoldsNoChangeUp() {
    Path chosen = folder.resolve("chosen.pdf");
    Beside beside = new Beside();
    beside.choose(chosen);
    bench.presenter().reaches(beside);
    Boat boat = boat(true);
    of(boat);
    bench.sheet().press("estimate");
    bench.tasks().hold(Lane.FILES);
    bench.sheet().press("elsewhere");
    bench.presenter().edit("name", a -> Edit.put(With.component(boat, "name", "Redshank")));
    assertThat(bench.boat("Redshank").id()).isEqualTo(boat.id());
    assertThat(chosen).doesNotExist();
    bench.tasks().release(Lane.FILES);
    assertThat(chosen).exists();
  }

  @Test
  void aPaperIsOpenedFromItsFileAndPrintedAsItIsSeen() throws Exception {
    Beside beside = new Beside();
    bench.presenter().reaches(beside);
    of(boat(true));
    bench.sheet().press("estimate");
    bench.sheet().press("open");
    assertThat(beside.opened()).containsExactly(written().get(0).toString());
    bench.sheet().press("print");
    assertThat(beside.printed()).hasSize(1);
    assertThat(beside.printed().get(0).texts().get(0)).contains(boat(true).name());
    assertThat(words()).contains("Handed to the printer.");
  }

  @Test
  void whatCannotBeWrittenIsSaidAndMakesNoFile() throws Exception {
    Boat boat = boat(false);
    of(boat);
    bench.sheet().press("estimate");
    assertThat(words()).contains("No estimate was written for " + boat.name() + ".");
    bench.sheet().press("save");
    assertThat(written()).isEmpty();
  }

  @Test
  void anOpenPaperFollowsTheRecordAndIsLaidOutAgainOnlyWhereItChanged() {
    Boat boat = boat(true);
    of(boat);
    bench.sheet().press("estimate");
    String first = pages().get(0).file();
    bench.presenter().edit("note", a -> Edit.put(With.component(boat, "note", "Seen by nobody.")));
    assertThat(pages().get(0).file()).isEqualTo(first);
    bench.presenter().edit("name", a -> Edit.put(With.component(boat, "name", "Redshank")));
    assertThat(pages().get(0).file()).isNotEqualTo(first);
    assertThat(pages().get(0).words()).contains("Redshank");
  }

  @Test
  void aVisitThatWasDoneIsChosenByItsDay() {
    Boat boat = bench.boat("Siskin");
    of(boat);
    SheetState.Form form =
        bench.state().blocks().stream()
            .filter(SheetState.Form.class::isInstance)
            .map(SheetState.Form.class::cast)
            .findFirst()
            .orElseThrow();
    List<String> days = ((Input.Choice) form.fields().get(0).input()).words();
    String oldest = days.get(days.size() - 1);
    bench.write("visit", "day", oldest);
    bench.sheet().press("condition");
    String day = oldest.split(" ", 2)[0];
    String year = oldest.substring(oldest.length() - 4);
    assertThat(pages().get(0).words()).containsPattern("Visit " + day + " .*" + year);
  }

  @Test
  void anOpenPaperIsOfTheDayThatHasBegun() {
    Wall wall = new Wall("2026-05-01T09:00:00Z");
    bench.close();
    bench = Bench.open(folder.resolve("another"), wall);
    // A sample stays on its own day.
    bench
        .presenter()
        .edit(
            "real",
            a ->
                new Edit(
                    Optional.of(With.component(a.business(), "asOf", Optional.empty())),
                    List.of(),
                    List.of()));
    bench.presenter().open(PaperSheet.of(bench.presenter(), Papers.Asked.ofAll(Papers.Sort.DUE)));
    assertThat(pages().get(0).words()).contains("As of 1 May 2026");
    wall.set("2026-05-02T09:00:00Z");
    bench.presenter().load();
    assertThat(pages().get(0).words()).contains("As of 2 May 2026");
  }
}
