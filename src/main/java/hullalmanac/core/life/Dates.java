package hullalmanac.core.life;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns chances of a life into days: F(t) = P(L ≤ D(t₀, t)).
 *
 * @param chances over the cells of {@link LogLife}
 * @param last no day after this one is given
 * @param limit calendar limit that the label states, after which the coat counts as lapsed
 */
record Dates(LifeChances chances, CoatClock clock, LocalDate last, Optional<LocalDate> limit) {
  Dates {
    limit = limit.filter(day -> !day.isAfter(last));
  }

  /** Chance that the coat is bare on a day; 1 from the label's limit on. */
  double lapsedOn(LocalDate day) {
    boolean past = limit.isPresent() && !day.isBefore(limit.get());
    return past ? 1 : chances.lapsed(clock.dose(day));
  }

  /** The day on which the chance of a bare coat reaches p, not past the label's limit. */
  Optional<LocalDate> reaching(double p) {
    Optional<LocalDate> day = clock.dayOf(chances.quantile(p), last);
    if (limit.isPresent() && day.map(d -> d.isAfter(limit.get())).orElse(true)) {
      return limit;
    }
    return day;
  }

  /** The days on which it reaches 1/40, 3/40 … 39/40. */
  List<Optional<LocalDate>> twentieths() {
    List<Optional<LocalDate>> days = new ArrayList<>();
    for (int k = 0; k < 20; k++) {
      days.add(reaching((2 * k + 1) / 40.0));
    }
    return days;
  }
}
