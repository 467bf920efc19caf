package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * Where and under what cover a boat lies, from a day. A yearly one (a winter lay-up) comes again
 * each year on the same days of the year.
 *
 * <p>On a day several may hold: a yearly one goes before the others, then the one that began last.
 *
 * @param until first day on which it no longer holds; needed when yearly, and then within a year of
 *     {@code from}
 * @param yearly whether it recurs
 * @param lastYear for a yearly one, the last year in which it begins; absent: it goes on
 * @param bow compass direction in degrees to which the bow lies, 0 north, 90 east; absent when
 *     unknown or swinging
 */
public record Berth(
    Id<Berth> id,
    String key,
    Id<Boat> boat,
    Id<Harbour> harbour,
    Cover cover,
    Water water,
    LocalDate from,
    Optional<LocalDate> until,
    boolean yearly,
    Optional<Integer> lastYear,
    Optional<Integer> bow,
    Access access,
    Private secrets)
    implements Row {
  public Berth {
    Texts.key(key);
    Days.inOrder(from, until);
    if (yearly && (until.isEmpty() || until.get().isAfter(from.plusYears(1)))) {
      throw new IllegalArgumentException(
          "a yearly berth needs an end within a year of its beginning");
    }
    if (!yearly && lastYear.isPresent()) {
      throw new IllegalArgumentException("only a yearly berth has a last year");
    }
    bow.ifPresent(
        b -> {
          if (b < 0 || b > 359) {
            throw new IllegalArgumentException("the bow lies 0 to 359 degrees, not " + b);
          }
        });
  }

  /**
   * The berth at which a boat has its home on a day: the newest that does not recur.
   *
   * @param berths those of one boat
   */
  public static Optional<Berth> home(Collection<Berth> berths, LocalDate day) {
    return berths.stream()
        .filter(b -> !b.from().isAfter(day))
        .max(Comparator.comparing((Berth b) -> !b.yearly()).thenComparing(Berth::from));
  }

  /**
   * How to get to work there. Empty texts are unknown.
   *
   * @param place berth number
   * @param pontoonSide which side lies to the pontoon
   * @param power plug and current
   * @param runoff what the harbour says of wash-water
   */
  public record Access(
      String place,
      String pontoonSide,
      String water,
      String power,
      String hours,
      String tide,
      String runoff) {
    public static final Access UNKNOWN = new Access("", "", "", "", "", "", "");
  }

  /**
   * What stays out of exports, calendars and paper unless it is asked for. Empty texts are unknown.
   */
  public record Private(String keys, String gateCode, String absence) {
    public static final Private NOTHING = new Private("", "", "");
  }
}
