package hullalmanac.core.takings;

import static hullalmanac.core.takings.Till.DAY;
import static hullalmanac.core.takings.Till.usd;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.sample.SampleRecord;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EarningsTest {
  private static final LocalDate FROM = LocalDate.of(2026, 4, 1);
  private static final LocalDate UNTIL = LocalDate.of(2026, 7, 1);
  private final Till till = new Till();

  @BeforeEach
  void tax() {
    till.billing(
        With.component(
            Billing.USUAL, "taxes", List.of(new Tax("sales tax", new BigDecimal("10")))));
  }

  private Earnings earnings() {
    return Earnings.of(till.now, Accounts.of(till.now), FROM, UNTIL);
  }

  @Test
  void moneyIsSummedWithoutTaxesByMonthServiceAndHarbour() {
    till.issued(till.visit(till.tern, DAY, StepKind.WASH), DAY);
    till.issued(till.visit(till.knot, DAY, StepKind.WASH), DAY);
    LocalDate june = DAY.plusMonths(1);
    till.issued(till.visit(till.tern, june, StepKind.WASH), june);
    Earnings earnings = earnings();
    assertThat(earnings.months())
        .extracting(Earnings.Month::invoiced)
        .containsExactly(usd("0.00"), usd("162.00"), usd("90.00"));
    assertThat(earnings.services()).extracting(Earnings.Part::name).containsExactly("wash");
    assertThat(earnings.harbours())
        .extracting(Earnings.Part::name, Earnings.Part::net)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("Quillhaven", usd("180.00")),
            org.assertj.core.groups.Tuple.tuple("Oyster Hard", usd("72.00")));
    assertThat(earnings.all().net()).isEqualTo(usd("252.00"));
  }

  /** 90.00 for an hour and 72.00 for another are 81.00 an hour. */
  @Test
  void anHourEarnsWhatItsVisitsBrought() {
    till.issued(till.visit(till.tern, DAY, StepKind.WASH), DAY);
    till.issued(till.visit(till.knot, DAY, StepKind.WASH), DAY);
    Visit unknown = till.visit(till.tern, DAY);
    till.put(till.step(unknown, 1, StepKind.WASH, Optional.empty(), List.of()));
    till.issued(unknown, DAY);
    Earnings.Part all = earnings().all();
    assertThat(all.net()).isEqualTo(usd("252.00"));
    assertThat(all.timed()).isEqualTo(usd("162.00"));
    assertThat(all.minutes()).isEqualByComparingTo("120");
    assertThat(all.perHour()).contains(usd("81.00"));
  }

  @Test
  void aVisitAskedForAgainAfterACreditWasWorkedOnce() {
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    Invoice wrong = till.issued(visit, DAY);
    Invoice credit =
        till.done(Crediting.draft(till.now, till.ids, wrong.id())).put(Invoice.class).orElseThrow();
    till.done(Issuing.issue(till.now, credit.id(), DAY));
    assertThat(earnings().all().net()).isEqualTo(usd("0.00"));
    assertThat(earnings().all().perHour()).contains(usd("0.00"));
    till.issued(visit, DAY);
    assertThat(earnings().all().minutes()).isEqualByComparingTo("60");
    assertThat(earnings().all().perHour()).contains(usd("90.00"));
  }

  @Test
  void whatCameWentBackAndWasSpentCountsOnItsDay() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment payment = till.paying(invoice, "130.00", DAY);
    till.done(Receiving.giveBack(till.now, payment.id(), usd("20.00"), DAY.plusMonths(1)));
    till.put(
        new Expense(
            till.ids.next(),
            "pads",
            DAY,
            Expense.Sort.CONSUMABLES,
            "pads",
            "",
            usd("15.00"),
            Optional.of(usd("1.36")),
            Optional.empty(),
            ""),
        new Trip(till.ids.next(), "trip", DAY, 23_500, Optional.of(40), Optional.empty(), ""));
    Earnings earnings = earnings();
    assertThat(earnings.months())
        .extracting(Earnings.Month::received)
        .containsExactly(usd("0.00"), usd("130.00"), usd("-20.00"));
    assertThat(earnings.months().get(1).spent()).isEqualTo(usd("15.00"));
    assertThat(earnings.metres()).isEqualTo(23_500);
  }

  @Test
  void allWaysOfSummingAgree() {
    Almanac sample = SampleRecord.make().almanac();
    Earnings earnings =
        Earnings.of(
            sample, Accounts.of(sample), LocalDate.of(2025, 1, 1), LocalDate.of(2026, 5, 2));
    Money nothing = Money.zero(sample.business().currency());
    Money net = earnings.all().net();
    assertThat(net.isPositive()).isTrue();
    assertThat(
            earnings.months().stream().map(Earnings.Month::invoiced).reduce(nothing, Money::plus))
        .isEqualTo(net);
    assertThat(earnings.services().stream().map(Earnings.Part::net).reduce(nothing, Money::plus))
        .isEqualTo(net);
    assertThat(earnings.harbours().stream().map(Earnings.Part::net).reduce(nothing, Money::plus))
        .isEqualTo(net);
    Till.assertBooksHold(sample);
  }

  @Test
  void theAccountantGetsEveryEntryOnceInOrder() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment payment = till.paying(invoice, "130.00", DAY.plusDays(1));
    till.done(Receiving.giveBack(till.now, payment.id(), usd("20.00"), DAY.plusDays(2)));
    Invoice credit =
        till.done(Crediting.draft(till.now, till.ids, invoice.id()))
            .put(Invoice.class)
            .orElseThrow();
    till.done(Issuing.issue(till.now, credit.id(), DAY.plusDays(3)));
    till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    List<Ledger.Entry> entries = Ledger.of(till.now, FROM, UNTIL);
    assertThat(entries)
        .extracting(Ledger.Entry::what)
        .containsExactly(
            Ledger.What.INVOICE, Ledger.What.PAYMENT, Ledger.What.GIVEN_BACK, Ledger.What.CREDIT);
    assertThat(entries.get(0).total()).contains(usd("110.00"));
    assertThat(entries.get(0).tax()).contains(usd("10.00"));
    assertThat(entries.get(3).total()).contains(usd("-110.00"));
    assertThat(entries.get(3).refers()).containsExactly("2026-0001");
    assertThat(Ledger.of(till.now, FROM, DAY)).isEmpty();
  }
}
