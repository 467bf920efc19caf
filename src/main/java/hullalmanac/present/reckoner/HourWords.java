package hullalmanac.present.reckoner;

import hullalmanac.core.entry.TimeEntry;
import hullalmanac.core.reckon.CoatingHours;
import hullalmanac.core.record.Product;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Readings of a day in words. */
final class HourWords {
  private HourWords() {}

  /** When a coat may be laid: "Open from 10:30 to 15:00"; blank without readings. */
  static String of(CoatingHours hours, LocalDate today) {
    if (hours.hours().isEmpty()) {
      return "";
    }
    List<CoatingHours.Span> open = hours.open();
    return open.isEmpty()
        ? "Closed at every reading"
        : "Open " + open.stream().map(s -> span(s, today)).collect(Collectors.joining(" and "));
  }

  private static String span(CoatingHours.Span span, LocalDate today) {
    return span.from().equals(span.to())
        ? "at " + TimeEntry.write(span.from(), today)
        : "from "
            + TimeEntry.write(span.from(), today)
            + " to "
            + TimeEntry.write(span.to(), span.from().toLocalDate());
  }

  /** What dew within the time that a coat is to stay dry means for it; blank where none is read. */
  static String dew(CoatingHours hours, Product.Handling limits, LocalDate today) {
    List<CoatingHours.Span> open = hours.open();
    int cure = limits.cureHours().orElse(0);
    if (open.isEmpty() || cure == 0) {
      return "";
    }
    LocalDateTime last = open.get(open.size() - 1).to();
    Optional<LocalDateTime> dew = hours.dewAfter(open.get(0).from(), last.plusHours(cure));
    return dew.map(
            at ->
                "Dew forms at "
                    + TimeEntry.write(at, today)
                    + "; what is to stay dry for "
                    + cure
                    + " hours before it is laid by "
                    + TimeEntry.write(at.minusHours(cure), today)
                    + ".")
        .orElse("");
  }
}
