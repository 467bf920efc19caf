package hullalmanac.core.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.reference.Reference;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BillTest {
  private static final Currency USD = Currency.getInstance("USD");

  private static Money money(String amount, Currency currency) {
    return Money.of(new BigDecimal(amount), currency);
  }

  private static PriceLine line(String quantity, Money price, Tax... taxes) {
    return new PriceLine(
        "wash",
        "wash",
        new BigDecimal(quantity),
        PriceUnit.EACH,
        price,
        List.of(taxes),
        Optional.empty());
  }

  private static TaxTerms terms(boolean inclusive, TaxTerms.At at) {
    return new TaxTerms(inclusive, at, TaxTerms.Rounding.HALF_UP);
  }

  static Stream<List<String>> bills() {
    return Reference.read(BillTest.class, "bills.txt").stream();
  }

  /** 160 bills of mixed lines, taxes, discounts and currencies. */
  @ParameterizedTest
  @MethodSource("bills")
  void agreesWithAnIndependentComputation(List<String> row) {
    Currency currency = Currency.getInstance(row.get(0));
    TaxTerms terms =
        new TaxTerms(
            row.get(1).equals("yes"),
            TaxTerms.At.valueOf(row.get(2).toUpperCase(java.util.Locale.ROOT)),
            row.get(3).equals("half-up") ? TaxTerms.Rounding.HALF_UP : TaxTerms.Rounding.HALF_EVEN);
    BigDecimal percent = new BigDecimal(row.get(4));
    Share discount = percent.signum() == 0 ? Share.NONE : Share.percent(percent);
    List<PriceLine> lines =
        Arrays.stream(row.get(5).split(";")).map(l -> parsed(l, currency)).toList();
    Bill bill = Bill.of(lines, discount, terms, currency);
    assertThat(bill.discount()).isEqualTo(money(row.get(6), currency));
    assertThat(bill.net()).isEqualTo(money(row.get(7), currency));
    assertThat(bill.total()).isEqualTo(money(row.get(8), currency));
  }

  private static PriceLine parsed(String text, Currency currency) {
    String[] sides = text.split("@", -1);
    String[] product = sides[0].split("\\*");
    Tax[] taxes =
        sides[1].isEmpty()
            ? new Tax[0]
            : Arrays.stream(sides[1].split("\\+"))
                .map(t -> new Tax(t.substring(0, 1), new BigDecimal(t.substring(2))))
                .toArray(Tax[]::new);
    return line(product[0], money(product[1], currency), taxes);
  }

  /**
   * Three lines of 0.70 at 5 % are taxed 0.12 a line and 0.11 once; 19.99, 5.35 and 7.45 at 7.25 %
   * are taxed 2.38 both ways (decimal arithmetic, values of rounding a line or a total).
   */
  @ParameterizedTest
  @CsvSource({
    "5, 0.70 0.70 0.70, LINE, 0.12",
    "5, 0.70 0.70 0.70, TOTAL, 0.11",
    "7.25, 19.99 5.35 7.45, LINE, 2.38",
    "7.25, 19.99 5.35 7.45, TOTAL, 2.38"
  })
  void roundsALineOrOnceAsTheTermsSay(String percent, String prices, TaxTerms.At at, String tax) {
    List<PriceLine> lines =
        Arrays.stream(prices.split(" "))
            .map(p -> line("1", money(p, USD), new Tax("tax", new BigDecimal(percent))))
            .toList();
    assertThat(Bill.of(lines, Share.NONE, terms(false, at), USD).tax()).isEqualTo(money(tax, USD));
  }

  @Test
  void splitsAHundredByThreeWithoutLosingACent() {
    assertThat(
            Allocation.split(
                money("100.00", USD), List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE)))
        .containsExactly(money("33.34", USD), money("33.33", USD), money("33.33", USD));
    assertThatThrownBy(() -> Allocation.split(money("1.00", USD), List.of(BigDecimal.ZERO)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void eachOfSeveralTaxesIsTakenOfThePriceAndSaidByItself() {
    Tax state = new Tax("state tax", new BigDecimal("6"));
    Tax county = new Tax("county tax", new BigDecimal("1.5"));
    Bill bill =
        Bill.of(
            List.of(line("1", money("200.00", USD), state, county), line("1", money("50.00", USD))),
            Share.NONE,
            terms(false, TaxTerms.At.TOTAL),
            USD);
    assertThat(bill.taxes())
        .containsExactly(
            new Bill.TaxSum(state, money("200.00", USD), money("12.00", USD)),
            new Bill.TaxSum(county, money("200.00", USD), money("3.00", USD)));
    assertThat(bill.total()).isEqualTo(money("265.00", USD));
  }

  @Test
  void whatHoldsItsTaxAlreadyCostsNoMore() {
    Bill bill =
        Bill.of(
            List.of(line("1", money("119.00", USD), new Tax("VAT", new BigDecimal("19")))),
            Share.NONE,
            terms(true, TaxTerms.At.TOTAL),
            USD);
    assertThat(bill.total()).isEqualTo(money("119.00", USD));
    assertThat(bill.net()).isEqualTo(money("100.00", USD));
    assertThat(bill.taxes().get(0).base()).isEqualTo(money("100.00", USD));
  }

  @Test
  void nothingStandsOnAnEmptyBill() {
    Bill bill = Bill.of(List.of(), Share.NONE, TaxTerms.USUAL, USD);
    assertThat(bill.total()).isEqualTo(Money.zero(USD));
    assertThat(bill.items()).isEmpty();
  }

  private record Made(List<PriceLine> lines, Share discount, TaxTerms terms, Currency currency) {}

  @Provide
  Arbitrary<Made> made() {
    Arbitrary<Currency> currencies =
        Arbitraries.of("USD", "JPY", "KWD", "CLF").map(Currency::getInstance);
    Arbitrary<TaxTerms> terms =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.of(TaxTerms.At.class),
                Arbitraries.of(TaxTerms.Rounding.class))
            .as(TaxTerms::new);
    return Combinators.combine(currencies, terms, Arbitraries.integers().between(0, 3))
        .flatAs(
            (currency, t, off) ->
                lines(currency)
                    .map(
                        lines -> {
                          Money sum =
                              lines.stream()
                                  .map(l -> l.amount(t.rounding()))
                                  .reduce(Money.zero(currency), Money::plus);
                          Share discount =
                              off == 1
                                  ? Share.percent(new BigDecimal("12.5"))
                                  : off == 2 && sum.minor() > 2
                                      ? Share.amount(new Money(sum.minor() / 3, currency))
                                      : Share.NONE;
                          return new Made(lines, discount, t, currency);
                        }));
  }

  private static Arbitrary<List<PriceLine>> lines(Currency currency) {
    Arbitrary<BigDecimal> quantities =
        Arbitraries.bigDecimals()
            .between(new BigDecimal("0.001"), new BigDecimal("9999"))
            .ofScale(3);
    Arbitrary<Long> prices = Arbitraries.longs().between(0, 5_000_000);
    Arbitrary<List<Tax>> taxes =
        Arbitraries.subsetOf(
                new Tax("a", new BigDecimal("7.25")),
                new Tax("b", new BigDecimal("1")),
                new Tax("c", new BigDecimal("0")))
            .map(List::copyOf);
    return Combinators.combine(quantities, prices, taxes)
        .as((q, p, t) -> line(q.toPlainString(), new Money(p, currency), t.toArray(Tax[]::new)))
        .list()
        .ofMaxSize(7);
  }

  @Property(tries = 300)
  void linesDiscountAndTaxesAddUpToTheTotalToTheMinorUnit(@ForAll("made") Made made) {
    Bill bill = Bill.of(made.lines(), made.discount(), made.terms(), made.currency());
    Money nothing = Money.zero(made.currency());
    Money amounts = bill.items().stream().map(Bill.Item::amount).reduce(nothing, Money::plus);
    Money offs = bill.items().stream().map(Bill.Item::off).reduce(nothing, Money::plus);
    Money nets = bill.items().stream().map(Bill.Item::net).reduce(nothing, Money::plus);
    Money taxes = bill.taxes().stream().map(Bill.TaxSum::amount).reduce(nothing, Money::plus);
    assertThat(offs).isEqualTo(bill.discount());
    assertThat(nets).isEqualTo(bill.net());
    assertThat(bill.net().plus(taxes)).isEqualTo(bill.total());
    Money charged = amounts.minus(offs);
    assertThat(charged).isEqualTo(made.terms().inclusive() ? bill.total() : bill.net());
    assertThat(bill.items()).allMatch(i -> i.net().minor() >= 0 && i.off().minor() >= 0);
  }

  /** Where a tax is rounded moves it by at most half a minor unit a line and once. */
  @Property(tries = 300)
  void roundingALineOrOnceDiffersByNoMoreThanItCan(@ForAll("made") Made made) {
    List<Long> taxes = new ArrayList<>();
    for (TaxTerms.At at : TaxTerms.At.values()) {
      TaxTerms terms = new TaxTerms(made.terms().inclusive(), at, made.terms().rounding());
      taxes.add(Bill.of(made.lines(), made.discount(), terms, made.currency()).tax().minor());
    }
    long most = (made.lines().size() + 1L) * 3 / 2 + 1;
    assertThat(Math.abs(taxes.get(0) - taxes.get(1))).isLessThanOrEqualTo(most);
  }

  @Test
  void refusesWhatNoBillCanHold() {
    Money price = money("10.00", USD);
    assertThatThrownBy(() -> new Tax("tax", new BigDecimal("100.1")))
        .hasMessageContaining("0 to 100, not 100.1");
    assertThatThrownBy(() -> new Tax("tax", new BigDecimal("-1"))).hasMessageContaining("not -1");
    assertThatThrownBy(
            () ->
                line(
                    "1",
                    price,
                    new Tax("a", new BigDecimal("60")),
                    new Tax("b", new BigDecimal("41"))))
        .hasMessageContaining("come to 101 %");
    assertThatThrownBy(
            () -> line("1", price, new Tax("a", BigDecimal.ONE), new Tax("a", BigDecimal.TEN)))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> line("0", price)).hasMessageContaining("more than 0");
    assertThatThrownBy(() -> line("-1", price)).hasMessageContaining("not -1");
    assertThatThrownBy(() -> line("1", price.negated())).hasMessageContaining("below nothing");
    assertThatThrownBy(() -> Share.percent(new BigDecimal("101"))).hasMessageContaining("not 101");
    assertThatThrownBy(() -> Share.amount(Money.zero(USD))).hasMessageContaining("more than");
    assertThatThrownBy(() -> price.plus(money("1", Currency.getInstance("JPY"))))
        .hasMessageContaining("USD")
        .hasMessageContaining("JPY");
  }
}
