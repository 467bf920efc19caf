package hullalmanac.core.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One line of an estimate or an invoice.
 *
 * @param service which of the services it counts as; empty: none
 * @param words as printed
 * @param quantity more than 0, up to 3 decimals
 * @param price of one unit; 0 for what is given
 * @param taxes that lie on it
 * @param visit in which the work was done
 */
public record PriceLine(
    String service,
    String words,
    BigDecimal quantity,
    PriceUnit unit,
    Money price,
    List<Tax> taxes,
    Optional<Id<Visit>> visit) {
  private static final int MOST_LINES = 400;

  public PriceLine {
    Texts.require(words, "what a line is for");
    quantity = Decimals.positive(quantity, 100_000, 3, "the quantity of a line");
    Money.requirePrice(price, "the price of a line");
    taxes = Tax.require(taxes);
  }

  /** Quantity times price, to the minor unit. */
  public Money amount(TaxTerms.Rounding rounding) {
    return Money.rounded(quantity.multiply(price.amount()), price.currency(), rounding.mode());
  }

  /** What lines come to, before any discount; nothing for none, which have no currency. */
  static Optional<Money> sum(List<PriceLine> lines, TaxTerms.Rounding rounding) {
    return lines.stream().map(l -> l.amount(rounding)).reduce(Money::plus);
  }

  /** Refuses lines that cannot stand on one bill, or a discount that takes more than they are. */
  static List<PriceLine> require(List<PriceLine> lines, Share discount, TaxTerms terms) {
    Set<String> currencies =
        lines.stream().map(l -> l.price().currency().getCurrencyCode()).collect(Collectors.toSet());
    if (currencies.size() > 1) {
      throw new IllegalArgumentException("the lines are in " + String.join(" and ", currencies));
    }
    if (lines.size() > MOST_LINES) {
      throw new IllegalArgumentException("there are at most " + MOST_LINES + " lines");
    }
    Optional<Money> sum = sum(lines, terms.rounding());
    discount
        .amount()
        .filter(off -> sum.map(s -> off.compareTo(s) > 0).orElse(true))
        .ifPresent(
            off -> {
              throw new IllegalArgumentException(
                  "the discount of "
                      + off.words()
                      + " is more than the lines come to"
                      + sum.map(s -> ", " + s.words()).orElse(", which is nothing"));
            });
    return List.copyOf(lines);
  }
}
