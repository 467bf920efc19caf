package hullalmanac.core.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How a renew-by day moved from step to step, ready to be drawn.
 *
 * @param laid when the coat was laid
 * @param days the day after each step, in order; absent where over 15 years ahead
 */
public record DateSteps(LocalDate laid, LocalDate today, List<Optional<LocalDate>> days) {
  public DateSteps {
    days = List.copyOf(days);
  }

  /** The last day that a picture needs: two months after the latest of all. */
  public LocalDate until() {
    LocalDate last = today;
    for (Optional<LocalDate> day : days) {
      last = day.filter(last::isBefore).isPresent() ? day.get() : last;
    }
    return last.plusMonths(2);
  }

  /** Whether there is a day to draw. */
  public boolean isEmpty() {
    return days.stream().allMatch(Optional::isEmpty);
  }
}
