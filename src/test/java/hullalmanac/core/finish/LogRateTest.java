package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.reference.Reference;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LogRateTest {
  static Stream<List<String>> rows() {
    return Reference.read(LogRateTest.class, "log-rate.txt").stream();
  }

  private static List<Double> values(String text) {
    return text.equals("-")
        ? List.of()
        : Arrays.stream(text.split("\\|")).map(Double::valueOf).toList();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void knowsAfterValuesWhatSumsOverMeanAndVarianceSay(List<String> row) {
    List<Double> values = values(row.get(1));
    LogRate rate = LogRate.starter(Double.parseDouble(row.get(0))).taught(values, 2);
    assertThat(rate.mean()).isCloseTo(Double.parseDouble(row.get(2)), within(2e-6));
    assertThat(rate.scale() / (rate.shape() - 1))
        .isCloseTo(Double.parseDouble(row.get(3)), within(2e-5));
    Estimate next = rate.next();
    assertThat(next.low()).isCloseTo(Double.parseDouble(row.get(4)), within(2e-4));
    assertThat(next.middle()).isCloseTo(Double.parseDouble(row.get(5)), within(2e-5));
    assertThat(next.high()).isCloseTo(Double.parseDouble(row.get(6)), within(2e-3));
  }

  @Test
  void saysWhatItRestsOn() {
    LogRate starter = LogRate.starter(6);
    assertThat(starter.next().origin().words()).isEqualTo("starter value");
    assertThat(starter.taught(List.of(), 0).origin()).isEqualTo(Origin.STARTER);
    assertThat(starter.taught(List.of(5.0, 5.5), 1).next().origin().words())
        .isEqualTo("from your last boat");
    assertThat(starter.taught(List.of(5.0, 5.5), 14).next().origin().words())
        .isEqualTo("from your last 14 boats");
  }

  @Property(tries = 200)
  void doesNotMindInWhichOrderOrHowManyAtATimeItIsTaught(
      @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = 0.5, max = 40) Double> values) {
    LogRate together = LogRate.starter(6).taught(values, 3);
    LogRate oneByOne = LogRate.starter(6);
    for (int i = values.size() - 1; i >= 0; i--) {
      oneByOne = oneByOne.taught(List.of(values.get(i)), 3);
    }
    assertThat(oneByOne.mean()).isCloseTo(together.mean(), within(1e-12));
    assertThat(oneByOne.scale()).isCloseTo(together.scale(), within(1e-9));
    assertThat(oneByOne.worth()).isEqualTo(together.worth());
    assertThat(oneByOne.shape()).isEqualTo(together.shape());
  }
}
