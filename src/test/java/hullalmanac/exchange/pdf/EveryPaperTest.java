package hullalmanac.exchange.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.fixture.EveryPaper;
import hullalmanac.fixture.LongHistory;
import hullalmanac.fixture.PdfRules;
import hullalmanac.fixture.PdfText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every paper against the rules of PDF/A-3A and PDF/UA-1. */
@Tag("slow")
class EveryPaperTest {
  private static List<EveryPaper.Named> papers;

  static List<EveryPaper.Named> papers() {
    if (papers == null) {
      papers = EveryPaper.all();
    }
    return papers;
  }

  @Test
  void thereAreSixtyAtLeast() {
    assertThat(papers()).hasSizeGreaterThanOrEqualTo(60);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("papers")
  void paperKeepsTheRules(EveryPaper.Named one) {
    PaperPdf.Made made = PaperPdf.of(one.paper(), EveryPaper.PHOTOS);
    assertThat(PdfRules.broken(made.bytes())).isEmpty();
  }

  /** What was promised: 12 pages or more with 24 photos in under 6 MB. */
  @Test
  void aLongHistoryWithPhotosOfAPhoneIsSmall(@TempDir Path photos) throws Exception {
    byte[] pdf = PaperPdf.of(LongHistory.in(photos), photos).bytes();
    PdfText read = PdfText.of(pdf);
    assertThat(read.pages()).isGreaterThanOrEqualTo(12);
    assertThat(read.images()).isEqualTo(24);
    assertThat(pdf.length).isLessThan(6_000_000);
    assertThat(PdfRules.broken(pdf)).isEmpty();
  }
}
