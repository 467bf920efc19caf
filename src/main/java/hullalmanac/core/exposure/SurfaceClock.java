package hullalmanac.core.exposure;

import hullalmanac.core.record.CoatClass;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The exposure clock of one surface: dose between any two days, from weather, berth, use and
 * washing.
 *
 * <pre>
 *   e(day) = max(0.03, surface × colour × use × [0.85 × S × side × cover + 0.15 × wetness])
 *   S      = (0.25 + 0.50 f) · Ra(latitude, day) / 17.31248
 * </pre>
 *
 * <p>Doses are in reference days, see the package. Days before the clock's first or after its last
 * are refused.
 *
 * <p>References: FAO-56 as in {@link hullalmanac.core.sun.SolarDay}; the factors are common
 * practice, no source.
 */
public final class SurfaceClock {
  private static final int ASSUMED_BACK_DAYS = 31;

  private final List<Stay> stays;
  private final List<YearDose> rates;
  private final double[] before;
  private final List<Wash> washes;
  private final WearPractice practice;
  private final LocalDate known;

  /**
   * @param rates of each stay
   * @param known first day on which it is known where the boat lay
   */
  SurfaceClock(
      List<Stay> stays,
      List<YearDose> rates,
      List<Wash> washes,
      WearPractice practice,
      LocalDate known) {
    this.stays = stays;
    this.rates = rates;
    this.washes = washes;
    this.practice = practice;
    this.known = known;
    this.before = new double[stays.size()];
    for (int i = 1; i < stays.size(); i++) {
      Stay s = stays.get(i - 1);
      before[i] = before[i - 1] + rates.get(i - 1).between(s.from(), s.until());
    }
  }

  /** Where the boat lay and will lie, in order, without gaps. */
  public List<Stay> stays() {
    return stays;
  }

  /** Washings of the surface, in order of the day. */
  public List<Wash> washes() {
    return washes;
  }

  /**
   * Whether it is known where the boat lay from a day on. The first known berth is taken to have
   * held for 31 days before it was noted, and no longer (practice).
   */
  public boolean knows(LocalDate day) {
    return !day.isBefore(known.minusDays(ASSUMED_BACK_DAYS));
  }

  /** First day the clock reckons with. */
  public LocalDate first() {
    return stays.get(0).from();
  }

  /** First day the clock no longer reckons with. */
  public LocalDate end() {
    return stays.get(stays.size() - 1).until();
  }

  /**
   * Dose by weather, berth and use of the days from {@code a} up to but not including {@code b}; 0
   * when {@code b} is not after {@code a}.
   */
  public double weather(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? upTo(b) - upTo(a) : 0;
  }

  /**
   * Wear by washing a coat of a class on days after {@code a} and before {@code b}. Washing on the
   * day a coat is laid comes before it, and a look comes before that day's wash.
   */
  public double washing(CoatClass coat, LocalDate a, LocalDate b) {
    double wear = 0;
    for (Wash wash : washes) {
      if (wash.day().isAfter(a) && wash.day().isBefore(b)) {
        wear += practice.wash(coat, wash.strength());
      }
    }
    return wear;
  }

  private double upTo(LocalDate day) {
    if (day.isBefore(first()) || day.isAfter(end())) {
      throw new IllegalArgumentException(
          "the clock knows " + first() + " to " + end() + ", not " + day);
    }
    int low = 0;
    int high = stays.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (stays.get(middle).from().isAfter(day)) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    return before[low] + rates.get(low).between(stays.get(low).from(), day);
  }

  /**
   * First day from {@code low} up to {@code high} on which a never falling function reaches a
   * value.
   *
   * @return absent when it does not by {@code high}
   */
  public static Optional<LocalDate> firstReaching(
      ToDoubleFunction<LocalDate> dose, double value, LocalDate low, LocalDate high) {
    if (dose.applyAsDouble(high) < value) {
      return Optional.empty();
    }
    long a = 0;
    long b = ChronoUnit.DAYS.between(low, high);
    while (a < b) {
      long middle = (a + b) / 2;
      if (dose.applyAsDouble(low.plusDays(middle)) < value) {
        a = middle + 1;
      } else {
        b = middle;
      }
    }
    return Optional.of(low.plusDays(a));
  }
}
