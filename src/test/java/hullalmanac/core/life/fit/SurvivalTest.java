package hullalmanac.core.life.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Survival estimates of published data; digits computed apart with R 4.2.2, survival 3.5-3. */
class SurvivalTest {
  /** Freireich et al. 1963, 6-MP arm: S, Greenwood's error, and the log-log band. */
  @Test
  void estimatesTheRemissionsOfFreireich() {
    double[][] expected = {
      {6, 0.85714286, 0.07636035, 0.61971796, 0.95155175},
      {7, 0.80672269, 0.08693529, 0.56314656, 0.92280902},
      {10, 0.75294118, 0.09634965, 0.50319951, 0.88936184},
      {13, 0.69019608, 0.10681471, 0.43161022, 0.84906596},
      {16, 0.62745098, 0.11405387, 0.36751086, 0.80491219},
      {22, 0.53781513, 0.12823375, 0.26777894, 0.74679072},
      {23, 0.44817927, 0.13459146, 0.18805201, 0.68014263}
    };
    KaplanMeier km = KaplanMeier.of(LifetimeFitTest.lives("freireich.txt"));
    assertThat(km.steps()).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      SurvivalStep step = km.steps().get(i);
      assertThat(step.until()).isEqualTo(expected[i][0]);
      assertThat(step.surviving()).isCloseTo(expected[i][1], within(1e-6));
      assertThat(step.error().orElseThrow()).isCloseTo(expected[i][2], within(1e-6));
      assertThat(step.band().orElseThrow().lower()).isCloseTo(expected[i][3], within(1e-6));
      assertThat(step.band().orElseThrow().upper()).isCloseTo(expected[i][4], within(1e-6));
    }
    assertThat(km.median()).contains(23.0);
  }

  /** NIST/SEMATECH e-Handbook 8.4.1.2: 0.95, 0.90 … 0.50, errors at 54 h and 386 h. */
  @Test
  void estimatesTheHandbooksLives() {
    KaplanMeier km = KaplanMeier.of(LifetimeFitTest.lives("nist-apr413.txt"));
    for (int i = 0; i < 10; i++) {
      assertThat(km.steps().get(i).surviving()).isCloseTo(0.95 - 0.05 * i, within(1e-12));
    }
    assertThat(km.steps().get(0).error().orElseThrow()).isCloseTo(0.048733972, within(1e-6));
    assertThat(km.steps().get(9).error().orElseThrow()).isCloseTo(0.111803399, within(1e-6));
  }

  /** Finkelstein and Wolfe 1985: masses of the self-consistent estimate, run to 1e-13. */
  @Test
  void estimatesTheIntervalsOfFinkelsteinAndWolfe() {
    double[][] expected = {
      {4, 5, 0.95365323},
      {6, 7, 0.92028986},
      {7, 8, 0.83162249},
      {11, 12, 0.76086957},
      {24, 25, 0.66822373},
      {33, 34, 0.58643796},
      {38, 40, 0.46555814},
      {46, 48, 0}
    };
    Turnbull t = Turnbull.of(LifetimeFitTest.lives("finkelstein-wolfe.txt"));
    assertThat(t.steps()).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(t.steps().get(i).from()).isEqualTo(expected[i][0]);
      assertThat(t.steps().get(i).until()).isEqualTo(expected[i][1]);
      assertThat(t.steps().get(i).surviving()).isCloseTo(expected[i][2], within(1e-5));
    }
    assertThat(t.logLikelihood()).isCloseTo(-58.06002195, within(1e-5));
    assertThat(t.median()).contains(40.0);
    assertThat(t.steps().get(3).band().orElseThrow().lower()).isBetween(0.5, 0.76);
    assertThat(t.steps().get(3).band().orElseThrow().upper()).isBetween(0.76, 0.95);
  }

  /**
   * Of exact and right-censored lives Turnbull's estimate is Kaplan and Meier's, errors included:
   * the observed information of the masses is then Greenwood's formula.
   */
  @Property(tries = 100)
  void turnbullIsKaplanMeierWhereEndsAreSeen(
      @ForAll @Size(min = 2, max = 15) List<@IntRange(min = 1, max = 9) Integer> ends,
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 9) Integer> left) {
    List<Lifetime> lives = new ArrayList<>(ends.stream().map(Lifetime::exactly).toList());
    left.forEach(l -> lives.add(Lifetime.over(l)));
    lives.add(Lifetime.over(10));
    KaplanMeier km = KaplanMeier.of(lives);
    Turnbull t = Turnbull.of(lives);
    for (int i = 0; i < km.steps().size(); i++) {
      assertThat(t.steps().get(i).until()).isEqualTo(km.steps().get(i).until());
      assertThat(t.steps().get(i).surviving())
          .isCloseTo(km.steps().get(i).surviving(), within(1e-6));
      assertThat(t.steps().get(i).error().orElseThrow())
          .isCloseTo(km.steps().get(i).error().orElseThrow(), within(1e-4));
    }
  }

  @Test
  void refusesWhatIsNoLife() {
    assertThatThrownBy(() -> new Lifetime(5, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Lifetime(-1, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Lifetime(0, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Lifetime(0, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> KaplanMeier.of(List.of(new Lifetime(2, 3))))
        .hasMessageContaining("Turnbull");
  }
}
