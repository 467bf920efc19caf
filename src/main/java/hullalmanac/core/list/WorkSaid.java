package hullalmanac.core.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The days of work that a row names, and the products that were laid on them. */
final class WorkSaid {
  private final List<Day> days = new ArrayList<>();
  private final List<Laid> products = new ArrayList<>();

  /** A day, where it stands and what is said of it with its heading. */
  private record Day(int column, LocalDate day, String said) {}

  private record Laid(int column, String product, String said) {}

  void day(int column, LocalDate day, String said) {
    days.add(new Day(column, day, said));
  }

  void product(int column, String product, String said) {
    products.add(new Laid(column, product, said));
  }

  /** What is a note on the boat: products, where no day is said. */
  List<String> notes() {
    return days.isEmpty() ? products.stream().map(Laid::said).toList() : List.of();
  }

  /** What was laid is said with the day that stands next to it at the left, or else the first. */
  List<Line.Work> visits() {
    List<Line.Work> visits = new ArrayList<>();
    for (Day day : days) {
      List<Laid> laid = products.stream().filter(p -> dayOf(p).equals(day)).toList();
      visits.add(
          new Line.Work(
              day.day(),
              Stream.concat(Stream.of(day.said()), laid.stream().map(Laid::said))
                  .collect(Collectors.joining("\n")),
              laid.stream().map(Laid::product).collect(Collectors.joining(", "))));
    }
    return visits;
  }

  private Day dayOf(Laid laid) {
    return days.stream()
        .filter(d -> d.column() < laid.column())
        .reduce((a, b) -> b)
        .orElseGet(() -> days.get(0));
  }
}
