package hullalmanac.core.takings;

import static hullalmanac.core.takings.Till.DAY;
import static hullalmanac.core.takings.Till.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ReceivingTest {
  private final Till till = new Till();

  @AfterEach
  void sumsHold() {
    Till.assertBooksHold(till.now);
  }

  private String open(Invoice invoice) {
    return Accounts.of(till.now).open(invoice).words();
  }

  @Test
  void anInvoiceIsPaidInParts() {
    Invoice invoice = till.asking("100.00", DAY);
    till.paying(invoice, "40.00", DAY.plusDays(2));
    assertThat(open(invoice)).isEqualTo("60.00 USD");
    till.paying(invoice, "60.00", DAY.plusDays(3));
    assertThat(open(invoice)).isEqualTo("0.00 USD");
    assertThat(
            Till.refused(
                Receiving.paying(
                    till.now, till.ids, till.received("1.00", DAY.plusDays(4)), invoice.id())))
        .startsWith("Nothing is open of the invoice 2026-0001.");
  }

  @Test
  void whoOwnsHerReadsWhatIsStillToPayForHer() {
    Invoice first = till.asking("100.00", DAY);
    Invoice second = till.asking("80.00", DAY.plusDays(1));
    till.paying(first, "40.00", DAY.plusDays(2));
    assertThat(OpenItems.ofOwner(till.now, Accounts.of(till.now), till.tern.id(), DAY.plusDays(40)))
        .extracting(i -> i.open().words(), i -> i.total().words(), i -> i.daysLate() > 0)
        .containsExactly(
            tuple("60.00 USD", "100.00 USD", true), tuple("80.00 USD", "80.00 USD", true));
    assertThat(OpenItems.ofOwner(till.now, Accounts.of(till.now), till.knot.id(), DAY)).isEmpty();
    assertThat(
            OpenItems.ofOwner(till.now, Accounts.of(till.now), till.tern.id(), DAY.minusYears(6)))
        .as("nobody owned her then")
        .isEmpty();
    till.paying(second, "80.00", DAY.plusDays(3));
    assertThat(OpenItems.ofOwner(till.now, Accounts.of(till.now), till.tern.id(), DAY))
        .extracting(OpenItems.Item::invoice)
        .containsExactly(till.now(first));
  }

  @Test
  void sumsAreReckonedAgainOnlyWhereMoneyWasTouched() {
    Invoice invoice = till.asking("100.00", DAY);
    Accounts before = Accounts.of(till.now);
    till.put(With.component(till.tern, "name", "Roseate Tern"));
    assertThat(before.next(till.now)).isSameAs(before);
    till.paying(invoice, "40.00", DAY.plusDays(1));
    assertThat(before.next(till.now).open(invoice)).isEqualTo(usd("60.00"));
    assertThat(before.open(invoice)).isEqualTo(usd("100.00"));
  }

  @Test
  void whatIsPaidTooMuchIsHeldAndGivenBack() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment payment = till.paying(invoice, "120.00", DAY);
    assertThat(payment.held()).isEqualTo(usd("20.00"));
    assertThat(
            Till.refused(Receiving.giveBack(till.now, payment.id(), usd("20.01"), DAY.plusDays(1))))
        .isEqualTo("Of the payment only 20.00 USD is held. Look at what is held of it.");
    assertThat(
            Till.refused(Receiving.giveBack(till.now, payment.id(), usd("5.00"), DAY.minusDays(1))))
        .contains("came later");
    till.done(Receiving.giveBack(till.now, payment.id(), usd("15.00"), DAY.plusDays(1)));
    till.done(Receiving.keep(till.now, payment.id(), usd("5.00"), DAY.plusDays(1)));
    assertThat(Till.refused(Receiving.keep(till.now, payment.id(), usd("1.00"), DAY.plusDays(1))))
        .startsWith("Nothing of the payment is held any more.");
    assertThat(open(invoice)).isEqualTo("0.00 USD");
  }

  @Test
  void aDepositPaysSeveralInvoicesUntilItIsUsedUp() {
    Payment deposit =
        till.done(Receiving.held(till.now, till.ids, till.received("150.00", DAY)))
            .put(Payment.class)
            .orElseThrow();
    Invoice first = till.asking("100.00", DAY);
    Invoice second = till.asking("80.00", DAY);
    till.done(Receiving.apply(till.now, deposit.id(), first.id(), DAY));
    till.done(Receiving.apply(till.now, deposit.id(), second.id(), DAY));
    assertThat(open(first)).isEqualTo("0.00 USD");
    assertThat(open(second)).isEqualTo("30.00 USD");
    assertThat(till.now(deposit).held()).isEqualTo(usd("0.00"));
    till.done(Receiving.free(till.now, deposit.id(), first.id()));
    assertThat(till.now(deposit).held()).isEqualTo(usd("100.00"));
    assertThat(open(first)).isEqualTo("100.00 USD");
  }

  @Test
  void aDraftACreditAndSomebodyElsesInvoiceAreNotPaid() {
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    assertThat(
            Till.refused(
                Receiving.paying(till.now, till.ids, till.received("1.00", DAY), draft.id())))
        .startsWith("The draft of an invoice is not issued.");
    till.done(Issuing.issue(till.now, draft.id(), DAY));
    Receiving.Received other = With.component(till.received("1.00", DAY), "party", till.osei.id());
    assertThat(Till.refused(Receiving.paying(till.now, till.ids, other, draft.id())))
        .contains("went to somebody else");
    Invoice credit =
        till.done(Crediting.draft(till.now, till.ids, draft.id())).put(Invoice.class).orElseThrow();
    till.done(Issuing.issue(till.now, credit.id(), DAY));
    assertThat(
            Till.refused(
                Receiving.paying(till.now, till.ids, till.received("1.00", DAY), credit.id())))
        .startsWith("A credit is not paid.");
  }

  @Test
  void moneyThatIsNoneIsRefused() {
    assertThat(Till.refused(Receiving.held(till.now, till.ids, till.received("0.00", DAY))))
        .startsWith("A payment is more than nothing.");
    assertThat(Till.refused(Receiving.held(till.now, till.ids, till.received("-5.00", DAY))))
        .startsWith("A payment is more than nothing.");
    Payment payment =
        till.done(Receiving.held(till.now, till.ids, till.received("10.00", DAY)))
            .put(Payment.class)
            .orElseThrow();
    assertThatThrownBy(
            () ->
                With.component(
                    payment,
                    "uses",
                    List.of(
                        new Payment.Use(Payment.Became.KEPT, Optional.empty(), usd("10.01"), DAY))))
        .hasMessageContaining("cannot be used 10.01 USD");
  }

  @Test
  void listsBroughtInPayNoInvoiceBeyondWhatItIs() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment payment = till.paying(invoice, "100.00", DAY);
    Payment twin = With.component(With.component(payment, "id", till.ids.next()), "key", "twin");
    Almanac additions = Almanac.empty(till.now.business()).with(Edit.put(twin));
    assertThat(SumRules.problems(till.now, additions))
        .singleElement()
        .matches(p -> p.sentence().startsWith("More is paid of the invoice 2026-0001"));
    assertThat(SumRules.problems(Almanac.empty(till.now.business()), till.now)).isEmpty();
  }

  @Test
  void aPaymentPutBackAfterAnotherPaidIsCountedOnceAndShownAsTooMuch() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment first = till.paying(invoice, "100.00", DAY);
    till.now = till.now.with(Edit.remove(List.of(first)));
    till.paying(invoice, "100.00", DAY);
    till.put(first);
    assertThat(open(invoice)).isEqualTo("-100.00 USD");
    OpenItems items = OpenItems.of(till.now, Accounts.of(till.now), DAY);
    assertThat(items.owed()).isEqualTo(usd("-100.00"));
    till.done(Receiving.free(till.now, first.id(), invoice.id()));
    assertThat(open(invoice)).isEqualTo("0.00 USD");
    assertThat(OpenItems.of(till.now, Accounts.of(till.now), DAY).held()).isEqualTo(usd("100.00"));
    assertThat(Receiving.free(till.now, first.id(), invoice.id()))
        .isEqualTo(new Change.Ready(Edit.put(List.of())));
  }

  @Test
  void whoOwesSinceLongestStandsFirst() {
    Invoice late = till.asking("100.00", DAY.minusDays(60));
    till.paying(late, "30.00", DAY.minusDays(50));
    Invoice knot = till.issued(till.visit(till.knot, DAY, StepKind.WASH), DAY);
    till.asking("50.00", DAY);
    OpenItems items = OpenItems.of(till.now, Accounts.of(till.now), DAY);
    assertThat(items.accounts())
        .extracting(a -> a.party().name())
        .containsExactly("Ada Lind", "Dev Osei");
    OpenItems.Account lind = items.accounts().get(0);
    assertThat(lind.owed()).isEqualTo(usd("120.00"));
    assertThat(lind.items()).extracting(OpenItems.Item::daysLate).containsExactly(46L, -14L);
    assertThat(lind.items())
        .extracting(OpenItems.Item::age)
        .containsExactly(OpenItems.Age.UP_TO_60, OpenItems.Age.NOT_DUE);
    assertThat(items.late()).isEqualTo(usd("70.00"));
    assertThat(items.owed())
        .isEqualTo(usd("120.00").plus(Accounts.of(till.now).bill(knot).total()));
    assertThat(
            OpenItems.of(till.now, Accounts.of(till.now), DAY.plusYears(1))
                .accounts()
                .get(0)
                .items()
                .get(0)
                .age())
        .isEqualTo(OpenItems.Age.OVER_90);
  }
}
