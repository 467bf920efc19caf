package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "1444",
        "-83.25 USD",
        "−2",
        "12,934.80 USD",
        "9.5",
        "123 µm",
        "14.5 °C",
        "57 °F",
        "6 %",
        "420 ml"
      })
  void numbersAndAmountsAreFigures(String text) {
    assertThat(Figures.only(List.of(text, "", "7"))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 May",
        "2026-05-01",
        "09:00",
        "8 to 12",
        "1,25",
        "2025-0065",
        "555-8101",
        "86 87",
        "<70",
        "not known",
        "9 in 10"
      })
  void oneDayRangeOrWordAmongThemMakesAColumnOfTexts(String text) {
    assertThat(Figures.only(List.of("7", text))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " "})
  void aColumnOfNothingIsNoColumnOfFigures(String text) {
    assertThat(Figures.only(List.of(text, ""))).isFalse();
    assertThat(Figures.only(List.of())).isFalse();
  }
}
