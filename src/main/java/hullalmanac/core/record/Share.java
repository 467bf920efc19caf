package hullalmanac.core.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A part of a sum: so many percent of it, an amount of it, or nothing of it.
 *
 * @param percent over 0 and at most 100, up to 4 decimals
 * @param amount more than nothing; never both
 */
public record Share(Optional<BigDecimal> percent, Optional<Money> amount) {
  /** Nothing of it. */
  public static final Share NONE = new Share(Optional.empty(), Optional.empty());

  public Share {
    if (percent.isPresent() && amount.isPresent()) {
      throw new IllegalArgumentException("a part is given in percent or as an amount, not both");
    }
    percent = percent.map(p -> Decimals.positive(p, 100, 4, "a part in %"));
    amount.ifPresent(a -> Money.requirePaid(a, "a part of a sum"));
  }

  /** So many percent. */
  public static Share percent(BigDecimal percent) {
    return new Share(Optional.of(percent), Optional.empty());
  }

  /** So much. */
  public static Share amount(Money amount) {
    return new Share(Optional.empty(), Optional.of(amount));
  }

  /** How much it is of a sum; an amount is what it is, whatever the sum. */
  public Money of(Money sum, RoundingMode rounding) {
    return amount.orElseGet(
        () ->
            percent
                .map(
                    p ->
                        Money.rounded(
                            sum.amount().multiply(p).divide(Decimals.HUNDRED),
                            sum.currency(),
                            rounding))
                .orElseGet(() -> Money.zero(sum.currency())));
  }
}
