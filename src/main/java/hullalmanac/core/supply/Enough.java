package hullalmanac.core.supply;

import hullalmanac.core.finish.Estimate;
import hullalmanac.core.record.Product;
import java.util.List;
import java.util.Optional;

/**
 * Whether there is enough of a product for what is planned.
 *
 * @param need of all steps together, ml; the range as if all ran alike, which is a little wide
 * @param steps how many need it
 * @param gaps how many of these where area or dilution is not known, besides
 * @param left in the bottles that can be used on the last day, ml; absent where none says
 * @param past bottles past their use-by on that day
 * @param openTooLong bottles open for longer than the product allows on that day
 * @param origins what the ml for a square metre rest on, in words
 */
public record Enough(
    Product product,
    Need need,
    int steps,
    int gaps,
    Optional<Double> left,
    List<BottleLeft> past,
    List<BottleLeft> openTooLong,
    List<String> origins) {
  public Enough {
    past = List.copyOf(past);
    openTooLong = List.copyOf(openTooLong);
    origins = List.copyOf(origins);
  }

  /** Millilitres, with the range that holds them 8 times in 10. */
  public record Need(double low, double middle, double high) {
    static final Need NONE = new Need(0, 0, 0);

    Need plus(Estimate e) {
      return new Need(low + e.low(), middle + e.middle(), high + e.high());
    }
  }

  /** What is said of it. */
  public enum Answer {
    ENOUGH,
    /** Enough as likely as not. */
    TIGHT,
    SHORT,
    /** No bottle says what is left, or no area what is needed. */
    UNKNOWN
  }

  /** Enough is what lasts 9 times in 10, as in a plan of correction. */
  public Answer answer() {
    if (left.isEmpty() || need.middle() == 0) {
      return Answer.UNKNOWN;
    }
    return left.get() >= need.high()
        ? Answer.ENOUGH
        : left.get() >= need.middle() ? Answer.TIGHT : Answer.SHORT;
  }

  /** What has to be bought so that it lasts 9 times in 10, ml. */
  public double missing() {
    return Math.max(0, need.high() - left.orElse(0.0));
  }
}
