package hullalmanac.core.exposure;

import hullalmanac.core.record.Berth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Where a boat lay and will lie. A yearly berth goes before the others, then the one that began
 * last. Where none holds, the last berth that is not yearly goes on: after a lay-up the boat is
 * back where it lay before. Before the first known day the earliest berth stands in.
 *
 * <p>A yearly berth that begins or ends on 29 February does so on 28 February of common years.
 */
public final class Stays {
  private static final Comparator<Berth> BY_BEGINNING =
      Comparator.comparing(Berth::from).thenComparing(Berth::id);

  private Stays() {}

  /**
   * Returns the stays of a boat, without gaps, from one day up to another.
   *
   * @param berths of one boat
   * @return in order of time; empty when there is no berth, or when yearly berths alone leave part
   *     of the year unknown
   */
  public static List<Stay> of(List<Berth> berths, LocalDate from, LocalDate until) {
    if (berths.isEmpty() || !from.isBefore(until)) {
      return List.of();
    }
    List<Stay> spells = spells(berths, until);
    LocalDate known = firstKnown(berths).orElseThrow();
    TreeSet<LocalDate> edges = new TreeSet<>();
    edges.add(from);
    for (Stay spell : spells) {
      edges.add(spell.from());
      edges.add(spell.until());
    }
    List<LocalDate> days = new ArrayList<>(edges.subSet(from, until));
    List<Stay> stays = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      LocalDate day = days.get(i);
      LocalDate end = i + 1 < days.size() ? days.get(i + 1) : until;
      Optional<Berth> berth =
          day.isBefore(known)
              ? berths.stream().min(BY_BEGINNING)
              : holding(spells, day).or(() -> goingOn(berths, day));
      if (berth.isEmpty()) {
        return List.of();
      }
      int last = stays.size() - 1;
      if (last >= 0 && stays.get(last).berth().equals(berth.get())) {
        stays.set(last, new Stay(stays.get(last).from(), end, berth.get()));
      } else {
        stays.add(new Stay(day, end, berth.get()));
      }
    }
    return List.copyOf(stays);
  }

  /** The first day on which it is known where a boat lay. */
  public static Optional<LocalDate> firstKnown(List<Berth> berths) {
    return berths.stream().map(Berth::from).min(Comparator.naturalOrder());
  }

  private static List<Stay> spells(List<Berth> berths, LocalDate until) {
    List<Stay> spells = new ArrayList<>();
    for (Berth berth : berths) {
      LocalDate end = berth.until().orElse(LocalDate.MAX);
      if (!berth.yearly()) {
        spells.add(new Stay(berth.from(), end, berth));
        continue;
      }
      int lastYear = berth.lastYear().orElse(Integer.MAX_VALUE);
      LocalDate first = berth.from();
      for (int n = 0; first.getYear() + n <= lastYear && first.plusYears(n).isBefore(until); n++) {
        spells.add(new Stay(first.plusYears(n), end.plusYears(n), berth));
      }
    }
    return spells;
  }

  private static Optional<Berth> holding(List<Stay> spells, LocalDate day) {
    return spells.stream()
        .filter(s -> !day.isBefore(s.from()) && day.isBefore(s.until()))
        .max(
            Comparator.comparing((Stay s) -> s.berth().yearly())
                .thenComparing(Stay::from)
                .thenComparing(s -> s.berth().id()))
        .map(Stay::berth);
  }

  /** The berth that is not yearly and began last, or else the first that will begin. */
  private static Optional<Berth> goingOn(List<Berth> berths, LocalDate day) {
    List<Berth> plain = berths.stream().filter(b -> !b.yearly()).sorted(BY_BEGINNING).toList();
    return plain.stream()
        .filter(b -> !b.from().isAfter(day))
        .reduce((earlier, later) -> later)
        .or(() -> plain.stream().findFirst());
  }
}
