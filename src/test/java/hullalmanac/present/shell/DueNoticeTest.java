package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.With;
import hullalmanac.fixture.OpenSample;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DueNoticeTest {
  private final List<String> said = new ArrayList<>();
  private final DueNotice notice = new DueNotice();

  /** The sample as if it were a business's own record. */
  private static Fleet own() {
    Almanac sample = OpenSample.fleet().almanac();
    Business own = With.component(sample.business(), "asOf", Optional.empty());
    return OpenSample.fleet().beside(sample.with(new Edit(Optional.of(own), List.of(), List.of())));
  }

  @Test
  void saysOnceADayWhatIsDueAndNothingInTheSample() {
    notice.to(said::add);
    notice.show(OpenSample.fleet());
    assertThat(said).isEmpty();
    notice.show(own());
    notice.show(own());
    assertThat(said)
        .singleElement()
        .satisfies(line -> assertThat(line).contains("boats are due to be told: "));
    notice.show(own().next(own().almanac(), own().asOf().plusDays(1)));
    assertThat(said).hasSize(2);
  }
}
