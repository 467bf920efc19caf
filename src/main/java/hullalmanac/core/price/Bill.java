package hullalmanac.core.price;

import hullalmanac.core.record.Decimals;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.TaxTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What lines come to, with discount and taxes, to the minor unit.
 *
 * <p>A line is quantity times price, rounded. The discount is spread over the lines in proportion.
 * Taxes on top are taken of what is left, each by itself and none of another; taxes that prices
 * hold already are taken out of it: of a price p with taxes of r₁, r₂ … percent, the first is p ·
 * r₁ / (100 + r₁ + r₂ + …). They are rounded a line or once a bill, as the terms say.
 *
 * @param items a line each, in order
 * @param discount what is taken off
 * @param taxes each tax once, in the order in which they first stand on a line
 * @param net without taxes
 * @param total with taxes
 */
public record Bill(List<Item> items, Money discount, List<TaxSum> taxes, Money net, Money total) {
  /** Decimals beyond which a sum of quotients is not told from the number it comes to. */
  private static final int EXACT = 20;

  public Bill {
    items = List.copyOf(items);
    taxes = List.copyOf(taxes);
  }

  /**
   * One line.
   *
   * @param amount quantity times price
   * @param off its part of the discount
   * @param net what is left without taxes
   */
  public record Item(PriceLine line, Money amount, Money off, Money net) {}

  /**
   * One tax.
   *
   * @param base what it is taken of, without taxes
   */
  public record TaxSum(Tax tax, Money base, Money amount) {}

  /**
   * Adds up lines.
   *
   * @param discount an amount not above what the lines come to
   * @param currency of the lines; what no lines come to is nothing in it
   */
  public static Bill of(List<PriceLine> lines, Share discount, TaxTerms terms, Currency currency) {
    return new Sum(lines, terms, currency).bill(discount);
  }

  /** Adds up an invoice or a credit. */
  public static Bill of(Invoice invoice, Currency currency) {
    return of(invoice.lines(), invoice.discount(), invoice.terms(), currency);
  }

  /** Adds up an option of an estimate. */
  public static Bill of(Estimate.Option option, TaxTerms terms, Currency currency) {
    return of(option.lines(), option.discount(), terms, currency);
  }

  /** All taxes together. */
  public Money tax() {
    return total.minus(net);
  }

  /** The reckoning. */
  private static final class Sum {
    private final List<PriceLine> lines;
    private final TaxTerms terms;
    private final Currency currency;
    private final RoundingMode mode;
    private final Set<Tax> taxes = new LinkedHashSet<>();

    Sum(List<PriceLine> lines, TaxTerms terms, Currency currency) {
      this.lines = lines;
      this.terms = terms;
      this.currency = currency;
      mode = terms.rounding().mode();
      lines.forEach(l -> taxes.addAll(l.taxes()));
    }

    Bill bill(Share discount) {
      List<Money> amounts = lines.stream().map(l -> l.amount(terms.rounding())).toList();
      Money off = discount.of(sum(amounts), mode);
      List<Money> offs = Allocation.split(off, amounts.stream().map(Money::amount).toList());
      List<Money> charged = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        charged.add(amounts.get(i).minus(offs.get(i)));
      }
      Map<Tax, Money> tax = new LinkedHashMap<>();
      taxes.forEach(t -> tax.put(t, amount(t, charged)));
      Money all = sum(List.copyOf(tax.values()));
      Money net = terms.inclusive() ? sum(charged).minus(all) : sum(charged);
      List<Money> nets = terms.inclusive() ? nets(charged, net) : charged;
      List<Item> items = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        items.add(new Item(lines.get(i), amounts.get(i), offs.get(i), nets.get(i)));
      }
      List<TaxSum> sums =
          tax.entrySet().stream()
              .map(e -> new TaxSum(e.getKey(), base(e.getKey(), nets), e.getValue()))
              .toList();
      return new Bill(items, off, sums, net, net.plus(all));
    }

    private Money sum(List<Money> amounts) {
      return amounts.stream().reduce(Money.zero(currency), Money::plus);
    }

    private Money base(Tax tax, List<Money> nets) {
      Money base = Money.zero(currency);
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).taxes().contains(tax)) {
          base = base.plus(nets.get(i));
        }
      }
      return base;
    }

    /** One tax over all lines. */
    private Money amount(Tax tax, List<Money> charged) {
      BigDecimal exact = BigDecimal.ZERO;
      Money rounded = Money.zero(currency);
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).taxes().contains(tax)) {
          BigDecimal part = part(tax, lines.get(i), charged.get(i));
          exact = exact.add(part);
          rounded = rounded.plus(round(part));
        }
      }
      return terms.at() == TaxTerms.At.LINE ? rounded : round(exact);
    }

    private Money round(BigDecimal exact) {
      return Money.rounded(exact.setScale(EXACT, RoundingMode.HALF_UP), currency, mode);
    }

    private BigDecimal part(Tax tax, PriceLine line, Money charged) {
      return charged
          .amount()
          .multiply(tax.percent())
          .divide(divisor(line), 2 * EXACT, RoundingMode.HALF_UP);
    }

    private BigDecimal divisor(PriceLine line) {
      return terms.inclusive()
          ? line.taxes().stream().map(Tax::percent).reduce(Decimals.HUNDRED, BigDecimal::add)
          : Decimals.HUNDRED;
    }

    /** What is left of each line without taxes, adding up to what is left of all. */
    private List<Money> nets(List<Money> charged, Money net) {
      List<BigDecimal> weights = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        weights.add(
            charged
                .get(i)
                .amount()
                .multiply(Decimals.HUNDRED)
                .divide(divisor(lines.get(i)), EXACT, RoundingMode.HALF_UP));
      }
      return Allocation.split(net, weights);
    }
  }
}
