package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.fixture.Bench;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.sheet.SheetState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers written from a boat's sheet. */
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
  void aPaperIsWrittenIntoTheRecordAndSaidWhere() throws Exception {
    Boat boat = boat(true);
    of(boat);
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().press("estimate");
    assertThat(words()).contains("Writing …");
    bench.tasks().release(Lane.DATABASE);
    assertThat(written()).hasSize(1);
    Path file = written().get(0);
    assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    assertThat(words()).contains("Written to " + file + ".").doesNotContain("Writing …");
  }

  @Test
  void whatCannotBeWrittenIsSaidAndMakesNoFile() throws Exception {
    Boat boat = boat(false);
    of(boat);
    bench.sheet().press("estimate");
    assertThat(words()).contains("No estimate was written for " + boat.name() + ".");
    assertThat(written()).isEmpty();
  }
}
