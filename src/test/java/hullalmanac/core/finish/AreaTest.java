package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.With;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AreaTest {
  private final Made made = new Made(48.4);

  private Boat measured() {
    Boat b = With.component(made.boat(), "loa", Optional.of(Length.ofMetres(9.5)));
    b = With.component(b, "beam", Optional.of(Length.ofMetres(3.0)));
    return With.component(b, "freeboard", Optional.of(Length.ofMetres(1.1)));
  }

  private Surface surface(SurfaceKind kind, Side side) {
    return made.surface(kind, side, Tone.LIGHT, Finish.GELCOAT);
  }

  private double rule(SurfaceKind kind, Side side) {
    return Area.byRule(measured(), surface(kind, side)).orElseThrow().squareMetres();
  }

  /**
   * LOA 9.5, B 3.0, F 1.1 m: topsides with transom 27.50, deck 21.375 (common practice, worked by
   * hand).
   */
  @Test
  void reckonsTheWorkedExampleOfTheRules() {
    assertThat(Area.topsidesAndTransom(9.5, 3.0, 1.1)).isCloseTo(27.50, within(1e-12));
    assertThat(Area.deck(9.5, 3.0)).isCloseTo(21.375, within(1e-12));
  }

  @Test
  void topsidesAndTransomTogetherAreTheRule() {
    double together = rule(SurfaceKind.TOPSIDES, Side.BOTH) + rule(SurfaceKind.TRANSOM, Side.BOTH);
    assertThat(together).isCloseTo(27.50, within(1e-12));
    assertThat(rule(SurfaceKind.TRANSOM, Side.BOTH)).isCloseTo(3.3, within(1e-12));
  }

  @Test
  void oneSideIsHalfOfBoth() {
    assertThat(rule(SurfaceKind.TOPSIDES, Side.PORT))
        .isCloseTo(rule(SurfaceKind.TOPSIDES, Side.BOTH) / 2, within(1e-12));
  }

  @Test
  void saysWhenAUsualBeamOrFreeboardWasTaken() {
    Surface topsides = surface(SurfaceKind.TOPSIDES, Side.BOTH);
    assertThat(Area.byRule(measured(), topsides).orElseThrow().how()).isEqualTo(Area.How.RULE);
    assertThat(Area.byRule(made.boat(), topsides).orElseThrow().how())
        .isEqualTo(Area.How.RULE_AND_USUAL);
  }

  @Test
  void reckonsNothingWithoutALengthOrARule() {
    Boat unmeasured = With.component(made.boat(), "loa", Optional.empty());
    assertThat(Area.byRule(unmeasured, surface(SurfaceKind.TOPSIDES, Side.BOTH))).isEmpty();
    assertThat(Area.byRule(measured(), surface(SurfaceKind.TEAK, Side.BOTH))).isEmpty();
  }

  @Test
  void addsUpStations() {
    Area side = Area.ofStations(2, List.of(1.0, 1.2, 1.4, 1.2, 1.0));
    assertThat(side.squareMetres()).isCloseTo(2.0 / 3 * (1 + 4.8 + 2.8 + 4.8 + 1), within(1e-12));
    assertThat(side.how()).isEqualTo(Area.How.STATIONS);
  }

  @Test
  void refusesWhatIsNoArea() {
    assertThatThrownBy(() -> new Area(-3, Area.How.ENTERED))
        .hasMessage("an area is over 0 and at most 5000 m², not -3.0");
    assertThatThrownBy(() -> new Area(0, Area.How.ENTERED))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Area(Double.NaN, Area.How.ENTERED))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
