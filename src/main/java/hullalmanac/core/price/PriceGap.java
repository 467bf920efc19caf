package hullalmanac.core.price;

import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Decimals;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Rate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The two prices of one job side by side.
 *
 * @param byLength halfway between the lowest and the highest price by length
 * @param byTime price by time and materials
 * @param percent how much more it is by time, in percent of the price by length, to one decimal;
 *     below 0 when it is less; absent when it costs nothing by length
 * @param reasons why they disagree, each a sentence, where they do by over 20 %
 */
public record PriceGap(
    Money byLength, Money byTime, Optional<BigDecimal> percent, List<String> reasons) {
  /** From where on it is said why, in percent (common practice, no source). */
  public static final BigDecimal SAID_OVER = BigDecimal.valueOf(20);

  /** What makes up so much of the gap is one of its reasons (common practice, no source). */
  private static final BigDecimal PART_OF_GAP = new BigDecimal("0.25");

  public PriceGap {
    reasons = List.copyOf(reasons);
  }

  /** Compares the two prices. */
  public static PriceGap of(LengthPrice length, TimePrice time) {
    Money byLength = length.middle();
    Money gap = time.total().minus(byLength);
    Optional<BigDecimal> percent =
        byLength.isPositive()
            ? Optional.of(
                gap.amount()
                    .multiply(Decimals.HUNDRED)
                    .divide(byLength.amount(), 1, RoundingMode.HALF_UP))
            : Optional.empty();
    boolean said = over(byLength, gap);
    return new PriceGap(
        byLength,
        time.total(),
        percent,
        said ? new Reasons(length, time, byLength, gap).all() : List.of());
  }

  private static boolean over(Money byLength, Money gap) {
    return gap.amount()
            .abs()
            .multiply(Decimals.HUNDRED)
            .compareTo(byLength.amount().multiply(SAID_OVER))
        > 0;
  }

  /** What makes the two prices differ, the hours first. */
  private record Reasons(LengthPrice length, TimePrice time, Money byLength, Money gap) {
    List<String> all() {
      List<String> all = new ArrayList<>();
      hours().ifPresent(all::add);
      boolean least = time.total().compareTo(time.sum()) > 0;
      if (least) {
        all.add(
            "The least price of a visit, "
                + time.total().words()
                + ", stands in the place of "
                + time.sum().words()
                + " that time and materials come to.");
      }
      if (gap.isPositive()) {
        part(time.travel().plus(time.waiting()))
            .ifPresent(
                m ->
                    all.add("Travel and waiting are " + m + " of it; a length does not see them."));
        part(time.products().plus(time.job().pads()))
            .ifPresent(m -> all.add("Products and pads are " + m + " of it."));
      }
      all.addAll(general());
      return all;
    }

    /** Words for an amount that makes up a good part of the gap. */
    private Optional<String> part(Money amount) {
      boolean counts = amount.amount().compareTo(gap.amount().abs().multiply(PART_OF_GAP)) >= 0;
      return counts ? Optional.of(amount.words()) : Optional.empty();
    }

    private Optional<String> hours() {
      BigDecimal hour = time.charges().hour().amount();
      if (hour.signum() == 0) {
        return Optional.empty();
      }
      BigDecimal room =
          byLength
              .minus(time.outlay())
              .amount()
              .divide(hour, 1, RoundingMode.HALF_UP)
              .max(BigDecimal.ZERO);
      return Optional.of(
          "The price by length pays for "
              + room.toPlainString()
              + " hours at "
              + time.charges().hour().words()
              + "; time and waiting come to "
              + time.hours().setScale(1, RoundingMode.HALF_UP).toPlainString()
              + " hours.");
    }

    /** What the rate does not tell apart. */
    private List<String> general() {
      List<String> all = new ArrayList<>();
      Rate rate = length.rate();
      Optional<Condition> condition = length.asked().condition();
      if (rate.condition().isEmpty()) {
        all.add(
            "The rate holds in any condition"
                + condition.map(c -> "; this boat is in " + c.words() + " condition").orElse("")
                + ".");
      }
      if (rate.type().isEmpty() && length.asked().type().isPresent()) {
        all.add(
            "The rate holds for any type of boat; this one is a "
                + length.asked().type().get().words()
                + ".");
      }
      if (rate.from().isEmpty() && rate.below().isEmpty()) {
        all.add("The rate holds for any length, but longer boats have more hull to the foot.");
      }
      return all;
    }
  }
}
