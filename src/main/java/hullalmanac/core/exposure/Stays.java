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
 * last. Before the first known day the earliest berth is taken to have held; where none holds, the
 * last one goes on.
 */
public final class Stays {
  private Stays() {}

  /**
   * Returns the stays of a boat, without gaps, from one day up to another.
   *
   * @param berths of one boat
   * @return in order of time; empty when there is no berth
   */
  public static List<Stay> of(List<Berth> berths, LocalDate from, LocalDate until) {
    if (berths.isEmpty() || !from.isBefore(until)) {
      return List.of();
    }
    List<Stay> spells = spells(berths, until);
    TreeSet<LocalDate> edges = new TreeSet<>();
    edges.add(from);
    for (Stay spell : spells) {
      edges.add(spell.from());
      edges.add(spell.until());
    }
    List<LocalDate> days =
        edges.stream().filter(d -> !d.isBefore(from) && d.isBefore(until)).toList();
    List<Stay> stays = new ArrayList<>();
    Berth current =
        berths.stream()
            .min(Comparator.comparing(Berth::from).thenComparing(Berth::id))
            .orElseThrow();
    Optional<Berth> before = lastEndedBefore(spells, from);
    if (before.isPresent()) {
      current = before.get();
    }
    for (int i = 0; i < days.size(); i++) {
      LocalDate day = days.get(i);
      current = holding(spells, day).orElse(current);
      LocalDate end = i + 1 < days.size() ? days.get(i + 1) : until;
      int last = stays.size() - 1;
      if (last >= 0 && stays.get(last).berth().equals(current)) {
        stays.set(last, new Stay(stays.get(last).from(), end, current));
      } else {
        stays.add(new Stay(day, end, current));
      }
    }
    return List.copyOf(stays);
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

  private static Optional<Berth> lastEndedBefore(List<Stay> spells, LocalDate day) {
    return spells.stream()
        .filter(s -> !s.until().isAfter(day))
        .max(Comparator.comparing(Stay::until).thenComparing(s -> s.berth().id()))
        .map(Stay::berth);
  }
}
