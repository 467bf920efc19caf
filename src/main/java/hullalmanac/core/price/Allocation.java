package hullalmanac.core.price;

import hullalmanac.core.record.Money;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Splits amounts so that the parts add up to the whole. */
public final class Allocation {
  private Allocation() {}

  /**
   * Splits an amount in proportion to weights. Each part is its share cut to the minor unit; minor
   * units left over go to the largest remainders, of equal ones to the earlier.
   *
   * @param amount nothing or more
   * @param weights each 0 or more; not all 0 unless the amount is nothing
   * @return a part for each weight, in their order
   */
  public static List<Money> split(Money amount, List<BigDecimal> weights) {
    int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
    List<BigInteger> whole =
        weights.stream().map(w -> w.setScale(Math.max(0, scale)).unscaledValue()).toList();
    BigInteger all = whole.stream().reduce(BigInteger.ZERO, BigInteger::add);
    if (amount.minor() < 0 || whole.stream().anyMatch(w -> w.signum() < 0)) {
      throw new IllegalArgumentException("nothing below 0 is split: " + amount + ", " + weights);
    }
    if (all.signum() == 0) {
      if (amount.isPositive()) {
        throw new IllegalArgumentException(amount + " cannot be split by no weights");
      }
      return weights.stream().map(w -> amount).toList();
    }
    List<Long> parts = new ArrayList<>();
    List<BigInteger> left = new ArrayList<>();
    for (BigInteger weight : whole) {
      BigInteger[] part =
          BigInteger.valueOf(amount.minor()).multiply(weight).divideAndRemainder(all);
      parts.add(part[0].longValueExact());
      left.add(part[1]);
    }
    long over = amount.minor() - parts.stream().mapToLong(Long::longValue).sum();
    IntStream.range(0, parts.size())
        .boxed()
        .sorted(Comparator.comparing((Integer i) -> left.get(i)).reversed())
        .limit(over)
        .forEach(i -> parts.set(i, parts.get(i) + 1));
    return parts.stream().map(p -> new Money(p, amount.currency())).toList();
  }
}
