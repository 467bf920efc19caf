package hullalmanac.core.record;

import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Something applied to a surface.
 *
 * @param labelMonths months of protection its label claims; absent when it claims none
 * @param labelForCars whether that claim speaks of cars
 * @param limitMonths calendar limit its label states, past which no forecast goes
 * @param wash how hard it is on a coat when used to clean; absent when it does not clean
 * @param leavesWax whether a soap leaves wax, which makes water bead whatever the coat
 * @param nonSlip whether it is marked safe for non-skid
 */
public record Product(
    Id<Product> id,
    String key,
    String name,
    ProductKind kind,
    Optional<Double> labelMonths,
    boolean labelForCars,
    Optional<Double> limitMonths,
    Optional<WashStrength> wash,
    boolean leavesWax,
    boolean nonSlip,
    SortedSet<Hazard> hazards,
    Handling handling,
    String note)
    implements Row {
  public Product {
    Texts.key(key);
    Texts.require(name, "the name of a product");
    hazards = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(Set.copyOf(hazards)));
    labelMonths.ifPresent(m -> requireMonths(m, "label life"));
    limitMonths.ifPresent(m -> requireMonths(m, "calendar limit"));
  }

  private static void requireMonths(double months, String what) {
    if (!(months > 0 && months <= 240)) {
      throw new IllegalArgumentException(what + " is over 0 and at most 240 months, not " + months);
    }
  }

  /**
   * How the label says to use it. Its own label and data sheet come first.
   *
   * @param dwellMin shortest dwell, minutes
   * @param dwellMax longest dwell, minutes
   * @param cureHours hours until the surface may get wet
   * @param minCelsius coldest surface, °C
   * @param maxCelsius hottest surface, °C
   * @param maxHumidity highest relative humidity, %
   * @param partsWater parts of water to one part of product
   * @param openMonths months that an opened bottle keeps
   */
  public record Handling(
      Optional<Integer> dwellMin,
      Optional<Integer> dwellMax,
      Optional<Integer> cureHours,
      Optional<Integer> minCelsius,
      Optional<Integer> maxCelsius,
      Optional<Integer> maxHumidity,
      Optional<Integer> partsWater,
      Optional<Integer> openMonths) {
    public static final Handling UNKNOWN =
        new Handling(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public Handling {
      dwellMin.ifPresent(v -> requireRange(v, 0, 1440, "shortest dwell in minutes"));
      dwellMax.ifPresent(v -> requireRange(v, 0, 1440, "longest dwell in minutes"));
      cureHours.ifPresent(v -> requireRange(v, 0, 2000, "cure time in hours"));
      minCelsius.ifPresent(v -> requireRange(v, -40, 80, "coldest surface in °C"));
      maxCelsius.ifPresent(v -> requireRange(v, -40, 80, "hottest surface in °C"));
      maxHumidity.ifPresent(v -> requireRange(v, 1, 100, "highest humidity in %"));
      partsWater.ifPresent(v -> requireRange(v, 1, 1000, "parts of water"));
      openMonths.ifPresent(v -> requireRange(v, 1, 240, "months an opened bottle keeps"));
    }

    private static void requireRange(int value, int low, int high, String what) {
      if (value < low || value > high) {
        throw new IllegalArgumentException(
            what + " runs from " + low + " to " + high + ", not " + value);
      }
    }
  }
}
