package hullalmanac.core.reckon;

import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Product;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Readings over a day and when a coat may be laid by them. Nothing is known between two readings
 * that are further apart than a reading is good for, nor before the first and after the last.
 *
 * @param hours in order of time
 */
public record CoatingHours(List<Hour> hours) {
  public CoatingHours {
    hours = hours.stream().sorted(Comparator.comparing(Hour::at)).toList();
  }

  /** A reading and what it means. */
  public record Hour(Climate climate, CoatingWindow window) {
    public LocalDateTime at() {
      return climate.takenAt();
    }
  }

  /** From one open reading to the last one after it without a closed one or a gap between. */
  public record Span(LocalDateTime from, LocalDateTime to) {}

  /** Readings held against the limits of a label. */
  public static CoatingHours of(List<Climate> readings, Product.Handling limits, boolean sun) {
    return new CoatingHours(
        readings.stream().map(c -> new Hour(c, CoatingWindow.then(c, limits, sun))).toList());
  }

  /** When a coat may be laid. */
  public List<Span> open() {
    List<Span> spans = new ArrayList<>();
    Optional<Hour> before = Optional.empty();
    for (Hour hour : hours) {
      if (hour.window().open()) {
        boolean joined =
            before
                .filter(b -> b.window().open())
                .filter(
                    b -> Duration.between(b.at(), hour.at()).compareTo(CoatingWindow.STALE) <= 0)
                .isPresent();
        LocalDateTime from = joined ? spans.remove(spans.size() - 1).from() : hour.at();
        spans.add(new Span(from, hour.at()));
      }
      before = Optional.of(hour);
    }
    return spans;
  }

  /**
   * When dew forms on the surface first after a time; absent where no reading says so.
   *
   * @param until the last time that matters
   */
  public Optional<LocalDateTime> dewAfter(LocalDateTime time, LocalDateTime until) {
    return hours.stream()
        .filter(h -> h.at().isAfter(time) && !h.at().isAfter(until))
        .filter(h -> h.window().margin() <= 0)
        .map(Hour::at)
        .findFirst();
  }
}
