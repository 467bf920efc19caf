package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Edit;
import hullalmanac.core.record.RecordException;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Wall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole of a record, out. */
@Tag("slow")
class ExportServiceTest {
  @TempDir Path folder;
  private RecordService record;

  @BeforeEach
  void open() {
    Bench.open(folder.resolve("record")).close();
    record =
        RecordService.open(
            folder.resolve("record"),
            new RecordService.Surroundings(
                new Wall("2026-05-01T09:00:00Z"), new Random(7)::nextLong, "desk", 1));
  }

  @AfterEach
  void close() {
    record.close();
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void papersStandBesideTheListsAndThePageLeadsToEach() throws Exception {
    Path out = folder.resolve("out");
    ExportService.export(record, out, false, true);
    String page = Files.readString(out.resolve(ExportService.PAGE));
    List<String> linked =
        Pattern.compile("href=\"papers/([^\"]+)\"")
            .matcher(page)
            .results()
            .map((MatchResult m) -> m.group(1))
            .toList();
    assertThat(linked).doesNotHaveDuplicates();
    assertThat(names(out.resolve("papers"))).containsExactlyInAnyOrderElementsOf(linked);
    int boats = record.almanac().boats().size();
    assertThat(linked.stream().filter(n -> n.startsWith("history-"))).hasSize(boats);
    long issued = record.almanac().books().invoices().stream().filter(i -> i.issued()).count();
    assertThat(linked.stream().filter(n -> n.startsWith("invoice-"))).hasSize((int) issued);
    assertThat(linked).contains("due.pdf", "lives.pdf", "takings-2026.pdf");
    String siskin =
        record.almanac().boats().stream()
            .filter(b -> b.name().equals("Siskin"))
            .findFirst()
            .orElseThrow()
            .key();
    assertThat(text(out.resolve("papers").resolve("history-" + siskin + ".pdf")))
        .contains("Siskin");
  }

  @Test
  void withoutPapersNoneAreWrittenAndAnEarlierExportIsWrittenOver() throws Exception {
    Path out = folder.resolve("out");
    ExportService.export(record, out, false, false);
    assertThat(names(out)).doesNotContain("papers");
    assertThat(Files.readString(out.resolve(ExportService.PAGE))).doesNotContain("papers/");
    ExportService.export(record, out, false, false);
  }

  @Test
  void aPictureThatIsGoneIsSaidAndTheRestGoesOut() throws Exception {
    Path out = folder.resolve("out");
    ExportService.Done done = ExportService.export(record, out, false, false);
    assertThat(done.missing()).isNotEmpty().allMatch(f -> f.matches("[0-9a-f]{64}\\..+"));
    assertThat(record.almanac().pictures()).containsAll(done.missing());
    assertThat(names(out)).contains("photos.csv");
    record.change("photos out", Edit.remove(List.copyOf(record.almanac().photos())));
    assertThat(ExportService.export(record, out, false, false).missing())
        .containsExactly(record.almanac().business().letterhead().mark());
  }

  @Test
  void anExportWrittenOverKeepsNoPaperOfWhatIsGoneAndTakesNothingOfOthers() throws Exception {
    Path papers = folder.resolve("out").resolve("papers");
    ExportService.export(record, folder.resolve("out"), false, true);
    Files.copy(papers.resolve("due.pdf"), papers.resolve("history-gone.pdf"));
    Files.writeString(papers.resolve("mine.txt"), "mine");
    ExportService.export(record, folder.resolve("out"), false, true);
    assertThat(names(papers)).contains("mine.txt", "due.pdf").doesNotContain("history-gone.pdf");
    Files.writeString(papers.resolve("due.pdf"), "somebody else's");
    assertThatThrownBy(() -> ExportService.export(record, folder.resolve("out"), false, true))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("due.pdf holds something else");
    assertThat(papers.resolve("due.pdf")).hasContent("somebody else's");
  }
}
