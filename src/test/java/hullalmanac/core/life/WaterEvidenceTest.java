package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fast forms for all lives at once against the formulas for one life. */
class WaterEvidenceTest {
  @ParameterizedTest
  @CsvSource({"5, 0, 0.02", "120, 0, 0.15", "120, 100, 0.05", "900, 300, 0.3", "4000, 0, 0.02"})
  void agreesWithTheFormulaAtEachLife(double dose, double lastGood, double misled) {
    double[] good = WaterEvidence.goodAtPoints(dose, misled);
    double[] bare = WaterEvidence.bareAtPoints(dose, misled);
    double[] complaint = WaterEvidence.complaintAtPoints(dose, lastGood, misled);
    for (int i = 0; i < LogLife.POINTS; i++) {
      double lnLife = LogLife.LOWEST + i * LogLife.STEP;
      assertThat(good[i]).isCloseTo(WaterLook.good(lnLife, dose, misled), within(1e-9));
      assertThat(bare[i]).isCloseTo(WaterLook.bare(lnLife, dose, misled), within(1e-9));
      assertThat(complaint[i])
          .isCloseTo(WaterLook.complaint(lnLife, dose, lastGood, misled), within(1e-9));
    }
  }
}
