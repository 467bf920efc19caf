package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingTest {
  private static Finding seen() {
    Made made = new Made(48.4);
    return made.water(
        made.topsides(), LocalDate.of(2025, 5, 1), SurfaceState.WASHED, WaterBehaviour.BEADS);
  }

  @Test
  void isOfBeforeOrAfterTheWorkOrOfNeither() {
    assertThat(seen().moment()).isEmpty();
    assertThat(With.component(seen(), "moment", Optional.of(Moment.AFTER)).moment())
        .contains(Moment.AFTER);
  }

  @Test
  void isNotOfAnyOtherMoment() {
    assertThatThrownBy(() -> With.component(seen(), "moment", Optional.of(Moment.DAMAGE)))
        .hasMessage("a finding is of before or after the work, not of \"damage\"");
  }
}
