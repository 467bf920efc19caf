package hullalmanac.study.generator;

import java.time.LocalDate;
import java.util.Collections;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.random.RandomGenerator;

/** The days of a boat's regular visits, for as long as its world lasts. */
final class Routine {
  private static final int SHORTEST_GAP = 28;
  private static final int LONGEST_GAP = 42;
  private static final int FEWEST = 2;
  private static final int MOST = 4;

  private Routine() {}

  /** Days after the arrival: for half of the boats every four to six weeks, for others few. */
  static NavigableSet<Integer> drawn(RandomGenerator random, int arrival, Span span) {
    boolean often = random.nextBoolean();
    TreeSet<Integer> days = new TreeSet<>();
    int lastYear = Span.date(span.last()).getYear();
    for (int year = Span.date(span.first()).getYear(); year <= lastYear; year++) {
      int spring = Span.number(LocalDate.of(year, 4, 1));
      int winter = Span.number(LocalDate.of(year, 11, 1));
      if (often) {
        int day = spring + random.nextInt(LONGEST_GAP);
        while (day < winter) {
          days.add(day);
          day += random.nextInt(SHORTEST_GAP, LONGEST_GAP + 1);
        }
      } else {
        int count = random.nextInt(FEWEST, MOST + 1);
        for (int i = 0; i < count; i++) {
          days.add(random.nextInt(spring, winter));
        }
      }
    }
    return Collections.unmodifiableNavigableSet(days.subSet(arrival, false, span.last(), true));
  }

  /** How many there were by the end of each day of a span. */
  static int[] runningCount(NavigableSet<Integer> days, Span span) {
    int[] count = new int[span.length()];
    for (int day : days) {
      count[day - span.first()]++;
    }
    for (int i = 1; i < count.length; i++) {
      count[i] += count[i - 1];
    }
    return count;
  }
}
