package hullalmanac.core.price;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Rate;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The range one can say on the phone in ten seconds, when nobody has seen the boat: from the lowest
 * price in any condition to the highest.
 *
 * @param low lowest price
 * @param high highest price
 * @param rates by which it was reckoned, the cheapest first
 */
public record PhonePrice(String service, Length length, Money low, Money high, List<Rate> rates) {
  /** Prices said on the phone are round to about a fiftieth (common practice, no source). */
  private static final BigDecimal FIFTIETH = new BigDecimal("0.02");

  private static final List<Integer> STEPS = List.of(5, 2, 1);

  public PhonePrice {
    rates = List.copyOf(rates);
  }

  /**
   * The range of a service.
   *
   * @param type absent when not said; then rates of any one type are left out
   * @return nothing when no rate fits
   */
  public static Optional<PhonePrice> of(
      List<Rate> rates, String service, Length length, Optional<BoatType> type) {
    Stream<Optional<Condition>> conditions =
        Stream.concat(
            Stream.of(Optional.empty()), Arrays.stream(Condition.values()).map(Optional::of));
    List<LengthPrice> prices =
        conditions
            .flatMap(
                c ->
                    LengthPrice.of(rates, new LengthPrice.Asked(service, length, c, type)).stream())
            .sorted(Comparator.comparing(LengthPrice::low))
            .toList();
    return prices.stream()
        .map(LengthPrice::high)
        .max(Comparator.naturalOrder())
        .map(
            high ->
                new PhonePrice(
                    service,
                    length,
                    prices.get(0).low(),
                    high,
                    prices.stream().map(LengthPrice::rate).distinct().toList()));
  }

  /** The range in words, in round numbers: {@code 600 to 650 USD}. */
  public String words() {
    BigDecimal step = step(high.amount());
    String from = round(low.amount(), step);
    String to = round(high.amount(), step);
    String currency = low.currency().getCurrencyCode();
    return from.equals(to) ? "about " + from + " " + currency : from + " to " + to + " " + currency;
  }

  private static String round(BigDecimal amount, BigDecimal step) {
    BigDecimal round = amount.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
    return round.stripTrailingZeros().toPlainString();
  }

  /** The largest of 1, 2, 5, 10, 20 … that is not above a fiftieth of an amount. */
  private static BigDecimal step(BigDecimal amount) {
    BigDecimal most = amount.multiply(FIFTIETH).max(BigDecimal.ONE);
    BigDecimal ten = BigDecimal.ONE.movePointRight(most.precision() - most.scale() - 1);
    return STEPS.stream()
        .map(s -> ten.multiply(BigDecimal.valueOf(s)))
        .filter(s -> s.compareTo(most) <= 0)
        .findFirst()
        .orElse(BigDecimal.ONE);
  }
}
