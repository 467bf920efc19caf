package hullalmanac.core.takings;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewBusiness;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A business that is paid in another currency. Minor units by ISO 4217: EUR 2, JPY 0, KWD 3. */
class NewCurrencyTest {
  private final Till till = new Till();

  private Change to(String currency) {
    Business other =
        With.component(till.now.business(), "currency", Currency.getInstance(currency));
    return NewBusiness.of(till.now, other);
  }

  private void everyKindOfPrice() {
    till.billing(
        With.component(
            Billing.USUAL,
            "charges",
            new Billing.Charges(
                Optional.of(Till.usd("45")), Optional.of(Till.usd("90")), Optional.empty())));
    till.plan(till.tern, "60");
    till.now = till.now.with(EstimateDraft.of(till.now, till.ids, till.tern.id(), Till.DAY));
    till.draft(till.visit(till.tern, Till.DAY, StepKind.WASH));
  }

  @Test
  void allPricesKeepTheirNumbersInAnotherCurrency() {
    everyKindOfPrice();
    Almanac before = till.now;
    till.done(to("EUR"));
    assertThat(till.now.toString()).doesNotContain("USD").contains("currency=EUR");
    assertThat(till.now.books().rates())
        .extracting(r -> r.low().amount())
        .containsExactlyElementsOf(
            before.books().rates().stream().map(r -> r.low().amount()).toList());
    assertThat(till.now.books().invoices()).isNotEmpty();
    assertThat(till.now.books().estimates().get(0).options()).isNotEmpty();
    till.done(to("KWD"));
    till.done(to("USD"));
    assertThat(till.now).isEqualTo(before);
  }

  @Test
  void aPriceThatHasNoSuchDecimalsRefusesIt() {
    assertThat(Till.refused(to("JPY"))).contains("of the rate hull cannot be written in JPY");
    till.now =
        till.now.with(
            Edit.put(till.now.books().rates().stream().map(r -> whole(r)).toArray(Rate[]::new)));
    till.billing(
        With.component(
            Billing.USUAL,
            "charges",
            new Billing.Charges(
                Optional.of(Till.usd("45.50")), Optional.empty(), Optional.empty())));
    assertThat(Till.refused(to("JPY"))).contains("A price of the business cannot be written");
    till.billing(Billing.USUAL);
    till.done(to("JPY"));
    assertThat(till.now.books().rates()).allMatch(r -> r.low().minor() == 20);
  }

  private static Rate whole(Rate rate) {
    return With.component(With.component(rate, "high", Till.usd("22")), "low", Till.usd("20"));
  }

  @Test
  void moneyThatWasAskedOrSpentStaysInItsCurrency() {
    till.now =
        till.now.with(
            new Edit(
                Optional.empty(),
                List.of(
                    new Expense(
                        till.ids.next(),
                        "pads",
                        Till.DAY,
                        Expense.Sort.CONSUMABLES,
                        "pads",
                        "",
                        Till.usd("12"),
                        Optional.<Money>empty(),
                        Optional.empty(),
                        "")),
                List.of()));
    assertThat(Till.refused(to("EUR")))
        .contains("Money was spent in USD, so the currency stays")
        .contains("Begin another record for EUR");
    Till issued = new Till();
    issued.draft(issued.visit(issued.tern, Till.DAY, StepKind.WASH));
    issued.done(Issuing.issue(issued.now, issued.now.books().invoices().get(0).id(), Till.DAY));
    Business other = With.component(issued.now.business(), "currency", Currency.getInstance("EUR"));
    assertThat(Till.refused(NewBusiness.of(issued.now, other)))
        .contains("Invoices were issued in USD");
  }
}
