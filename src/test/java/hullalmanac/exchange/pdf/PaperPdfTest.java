package hullalmanac.exchange.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.paper.Block;
import hullalmanac.core.paper.EstimatePaper;
import hullalmanac.core.paper.HistoryPaper;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.With;
import hullalmanac.fixture.EveryPaper;
import hullalmanac.fixture.OpenSample;
import hullalmanac.fixture.PdfRules;
import hullalmanac.fixture.PdfText;
import hullalmanac.fixture.Secrets;
import hullalmanac.service.Fleet;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class PaperPdfTest {
  private static Boat boat(Fleet fleet, String name) {
    return fleet.almanac().boats().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Paper history(String name) {
    Fleet fleet = OpenSample.fleet();
    return HistoryPaper.of(fleet.almanac(), fleet.coats(), fleet.asOf(), boat(fleet, name).id());
  }

  private static PdfText text(Paper paper) {
    return PdfText.of(PaperPdf.of(paper, EveryPaper.PHOTOS).bytes());
  }

  private static Paper saying(String text) {
    return new Paper(
        "A paper",
        "",
        new Paper.Sender("Tern & Tide", List.of(), "", ""),
        Business.Paper.A4,
        List.of(new Block.Words(text)));
  }

  @Test
  void aHistoryKeepsTheRulesOfPdfAAndPdfUa() {
    PaperPdf.Made made = PaperPdf.of(history("Black Guillemot"), EveryPaper.PHOTOS);
    assertThat(PdfRules.broken(made.bytes())).isEmpty();
    assertThat(made.lacking()).isEmpty();
  }

  /** Words of the chart are among them: it is drawn, and its text stays text. */
  @Test
  void textIsReadInTheOrderOfThePage() {
    PdfText read = text(history("Black Guillemot"));
    assertThat(read.text())
        .containsSubsequence(
            "Tern & Tide Boat Care",
            "Black Guillemot",
            "What comes next",
            "A forecast, not a guarantee.",
            "This boat over time",
            "cleaner wax F",
            "What was done",
            "20 April 2026 Washed: the whole boat",
            "Before and after",
            "Topsides (port) before, 21 and 22 April 2025");
    assertThat(read.text()).contains("page 1 of " + read.pages(), "page 2 of " + read.pages());
  }

  @Test
  void chartsAreLinesAndPhotosAndTheMarkAreTheOnlyPictures() {
    Paper paper = history("Black Guillemot");
    long photos =
        paper.blocks().stream()
            .filter(Block.Photos.class::isInstance)
            .mapToLong(b -> ((Block.Photos) b).photos().size())
            .sum();
    assertThat(photos).isPositive();
    assertThat(text(paper).images()).isEqualTo((int) photos + 1);
  }

  @Test
  void aSignatureIsDrawnAsThePenWentAndSaidInWords() {
    Almanac almanac = OpenSample.fleet().almanac();
    Estimate signed =
        almanac.books().estimates().stream()
            .filter(e -> e.answer().flatMap(Estimate.Answer::signature).isPresent())
            .findFirst()
            .orElseThrow();
    Estimate.Answer answer = signed.answer().orElseThrow();
    Paper with = EstimatePaper.of(almanac, signed, OpenSample.fleet().asOf());
    Paper without =
        EstimatePaper.of(
            almanac,
            With.component(
                signed,
                "answer",
                Optional.of(With.component(answer, "signature", Optional.empty()))),
            OpenSample.fleet().asOf());
    assertThat(ink(with)).isGreaterThan(ink(without) + 200);
    assertThat(text(with).text()).contains(answer.signedBy());
    assertThat(text(with).images()).as("the mark alone").isEqualTo(text(without).images());
  }

  private static long ink(Paper paper) {
    PaperPdf.Made made = PaperPdf.of(paper, EveryPaper.PHOTOS);
    return IntStream.range(0, PaperPages.texts(made).size())
        .mapToLong(
            i ->
                Arrays.stream(PaperPages.picture(made, i, 600).argb())
                    .filter(p -> (p & 0xff) < 100)
                    .count())
        .sum();
  }

  @Test
  void everyFontIsInTheFileAndIsTheOneOfPaper() {
    for (EveryPaper.Named one : EveryPaper.kinds(OpenSample.fleet())) {
      assertThat(text(one.paper()).fonts())
          .as(one.name())
          .isNotEmpty()
          .allMatch(f -> f.matches("[A-Z]{6}\\+Roboto-(Regular|Bold)"));
    }
  }

  /** A4 is 210 mm wide (ISO 216), Letter 8.5 inches (ANSI Y14.1); a point is 1/72 inch. */
  @Test
  void aPaperHasTheSizeOfTheBusiness() {
    Paper paper = history("Curlew");
    assertThat(text(paper).width()).isBetween(595f, 596f);
    assertThat(text(With.component(paper, "size", Business.Paper.LETTER)).width())
        .isBetween(611.5f, 612.5f);
  }

  @Test
  void lettersThatTheFontLacksAreSaidAndNeverPrintedAsBoxes() {
    PaperPdf.Made made = PaperPdf.of(saying("To 港丸 and שלום, Ελένη, Юрий"), Path.of("."));
    assertThat(made.lacking())
        .hasSize(2)
        .first()
        .asString()
        .contains("Han letters: 港丸", "“To 港丸 and");
    assertThat(made.lacking().get(1)).contains("Hebrew letters: שלום");
    assertThat(PdfText.of(made.bytes()).text())
        .contains(
            "To [Han letters] and [Hebrew letters], Ελένη, Юрий",
            "Where it says [Han letters], the font of this paper has no such letters.");
    assertThat(PdfRules.broken(made.bytes())).isEmpty();
  }

  @Test
  void marksAreComposedAndWhatMeansSomethingToAPageIsText() {
    PdfText read = text(saying("e\u0301tat <b>&amp; \"Ω\" \u0007\u200Bend"));
    assertThat(read.text()).contains("état <b>&amp; \"Ω\" end");
  }

  @Test
  void aPhotoThatIsNotThereIsSaidInWords() {
    PaperPdf.Made made = PaperPdf.of(history("Black Guillemot"), Path.of("nowhere"));
    assertThat(PdfText.of(made.bytes()).text()).contains("this photo cannot be shown here");
    assertThat(PdfRules.broken(made.bytes())).isEmpty();
  }

  @Test
  void aHistoryTellsNothingThatAnOwnerMustNotRead() {
    Fleet sample = OpenSample.fleet();
    Almanac poisoned = Secrets.poisoned(sample.almanac());
    Paper paper =
        HistoryPaper.of(
            poisoned,
            Fleet.dueOf(poisoned, sample.asOf()).coats(),
            sample.asOf(),
            boat(sample, "Black Guillemot").id());
    assertThat(text(paper).text())
        .contains("Black Guillemot")
        .doesNotContain(Secrets.WORD, "47,474");
  }

  @Test
  void noPaperTellsKeysGateCodesOrAbsences() {
    Fleet sample = OpenSample.fleet();
    Berth.Private secrets =
        new Berth.Private(Secrets.WORD + " keys", Secrets.WORD + " gate", Secrets.WORD + " away");
    List<Berth> berths =
        sample.almanac().berths().stream().map(b -> With.component(b, "secrets", secrets)).toList();
    Fleet told = Fleet.of(sample.almanac().with(Edit.put(berths)), sample.asOf());
    for (EveryPaper.Named one : EveryPaper.kinds(told)) {
      assertThat(one.paper().toString()).as(one.name()).doesNotContain(Secrets.WORD);
    }
  }
}
