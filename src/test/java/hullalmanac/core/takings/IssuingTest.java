package hullalmanac.core.takings;

import static hullalmanac.core.takings.Till.DAY;
import static hullalmanac.core.takings.Till.usd;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IssuingTest {
  private final Till till = new Till();

  private Invoice wash(LocalDate day) {
    return till.issued(till.visit(till.tern, day, StepKind.WASH), day);
  }

  private Invoice credit(Invoice invoice) {
    return till.done(Crediting.draft(till.now, till.ids, invoice.id()))
        .put(Invoice.class)
        .orElseThrow();
  }

  @Test
  void numbersFollowEachOtherAndBeginAnewEachYear() {
    LocalDate lastYear = LocalDate.of(2025, 12, 30);
    assertThat(wash(lastYear).words()).isEqualTo("invoice 2025-0001");
    assertThat(wash(lastYear.plusDays(1)).words()).isEqualTo("invoice 2025-0002");
    Invoice first = wash(DAY);
    assertThat(first.issue())
        .contains(
            new Invoice.Issue(
                "2026-", 1, "2026-0001", DAY, DAY.plusDays(14), "Ada Lind\n1 Pier Lane"));
    assertThat(wash(DAY).words()).isEqualTo("invoice 2026-0002");
  }

  @ParameterizedTest
  @CsvSource({
    "R, G, SHORT, 3, R26-001, G26-001",
    "'', '', NONE, 1, 1, 2",
    "'', C-, FULL, 4, 2026-0001, C-2026-0001",
    "INV/, INV/, FULL, 2, INV/2026-01, INV/2026-02"
  })
  void theSeriesIsAsTheBusinessHasIt(
      String invoices,
      String credits,
      Billing.YearForm year,
      int digits,
      String number,
      String credited) {
    till.billing(
        With.component(
            Billing.USUAL, "numbering", new Billing.Numbering(invoices, credits, year, digits)));
    Invoice invoice = wash(DAY);
    Invoice credit = credit(invoice);
    assertThat(Issuing.nextNumber(till.now, credit, DAY)).isEqualTo(credited);
    till.done(Issuing.issue(till.now, credit.id(), DAY));
    assertThat(invoice.issue().orElseThrow().number()).isEqualTo(number);
    assertThat(till.now(credit).issue().orElseThrow().number()).isEqualTo(credited);
  }

  @Test
  void aDraftIsIssuedOnceAndNotEmpty() {
    Invoice invoice = wash(DAY);
    assertThat(Till.refused(Issuing.issue(till.now, invoice.id(), DAY)))
        .isEqualTo("The invoice 2026-0001 is issued already. Write a credit for it.");
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    till.put(With.component(draft, "lines", List.of()));
    assertThat(Till.refused(Issuing.issue(till.now, draft.id(), DAY)))
        .startsWith("There is no line on the draft.");
  }

  @Test
  void numbersFollowTheDays() {
    wash(DAY);
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    assertThat(Till.refused(Issuing.issue(till.now, draft.id(), DAY.minusDays(1))))
        .isEqualTo(
            "2026-0001 was issued on 6 May 2026, and numbers follow the days. Issue it on that day"
                + " or later.");
    till.done(Issuing.issue(till.now, draft.id(), DAY));
  }

  @Test
  void whatWasIssuedIsNeitherChangedNorTakenOut() {
    Invoice invoice = wash(DAY);
    Invoice changed = With.component(invoice, "note", "other");
    assertThat(Till.refused(Change.checked(till.now, Edit.put(changed))))
        .isEqualTo("The invoice 2026-0001 was issued and is not changed. Write a credit for it.");
    Invoice undone = With.component(invoice, "issue", Optional.empty());
    assertThat(Till.refused(Change.checked(till.now, Edit.put(undone)))).contains("not changed");
    assertThat(Till.refused(Removal.of(till.now, invoice)))
        .isEqualTo("The invoice 2026-0001 was issued and is not taken out. Write a credit for it.");
    assertThat(Change.checked(till.now, Edit.put(invoice))).isInstanceOf(Change.Ready.class);
  }

  @Test
  void whatAnIssuedInvoiceNamesStays() {
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    Invoice draft = till.draft(visit);
    assertThat(Removal.of(till.now, visit)).isInstanceOf(Change.Ready.class);
    assertThat(Removal.of(till.now, till.tern)).isInstanceOf(Change.Ready.class);
    till.done(Issuing.issue(till.now, draft.id(), DAY));
    assertThat(Till.refused(Removal.of(till.now, visit))).contains("in use: invoice 2026-0001");
    assertThat(Till.refused(Removal.of(till.now, till.tern)))
        .contains("in use: invoice 2026-0001")
        .contains("write down that she is sold or retired");
    assertThat(Till.refused(Removal.of(till.now, till.lind))).contains("invoice 2026-0001");
    till.paying(till.now(draft), "10.00", DAY);
    assertThat(Till.refused(Removal.of(till.now, till.lind))).contains("payment of 2026-05-06");
  }

  @Test
  void aVisitOnTwoDraftsIsIssuedOnce() {
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    Invoice first = till.draft(visit);
    Invoice second =
        With.component(With.component(first, "id", till.ids.next()), "key", "put-back");
    till.put(second);
    till.done(Issuing.issue(till.now, first.id(), DAY));
    assertThat(Till.refused(Issuing.issue(till.now, second.id(), DAY)))
        .startsWith("\"wash, Arctic Tern, 6 May 2026\" stands on the invoice 2026-0001");
  }

  @Test
  void aCreditTakesBackNoMoreThanWasAsked() {
    Invoice invoice = till.asking("100.00", DAY);
    Invoice half = credit(invoice);
    assertThat(Till.refused(Crediting.draft(till.now, till.ids, invoice.id())))
        .contains("is being written already");
    till.put(
        With.component(
            half,
            "lines",
            List.of(With.component(half.lines().get(0), "quantity", new BigDecimal("0.6")))));
    till.done(Issuing.issue(till.now, half.id(), DAY));
    Accounts accounts = Accounts.of(till.now);
    assertThat(accounts.open(invoice)).isEqualTo(usd("40.00"));
    assertThat(accounts.takenBack(invoice)).isFalse();
    Invoice rest = credit(invoice);
    assertThat(Till.refused(Issuing.issue(till.now, rest.id(), DAY)))
        .isEqualTo(
            "The credit comes to 100.00 USD, but of the invoice 2026-0001 only 40.00 USD is left to"
                + " take back. Make the credit smaller.");
    Till.assertBooksHold(till.now);
  }

  @Test
  void onlyAnIssuedInvoiceIsCredited() {
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    assertThat(Till.refused(Crediting.draft(till.now, till.ids, draft.id())))
        .startsWith("A draft needs no credit.");
    till.done(Issuing.issue(till.now, draft.id(), DAY));
    Invoice credit = credit(till.now(draft));
    till.done(Issuing.issue(till.now, credit.id(), DAY));
    assertThat(Till.refused(Crediting.draft(till.now, till.ids, credit.id())))
        .startsWith("A credit is not credited in turn.");
    assertThat(Till.refused(Crediting.draft(till.now, till.ids, draft.id())))
        .contains("taken back as a whole");
    Invoice other = With.component(credit, "party", till.osei.id());
    assertThat(
            Till.refused(
                Change.checked(till.now, Edit.put(With.component(other, "id", till.ids.next())))))
        .contains("went to somebody else");
  }

  @Test
  void whatWasPaidOfACreditedInvoiceIsHeldAgain() {
    Invoice invoice = till.asking("100.00", DAY);
    Payment first = till.paying(invoice, "70.00", DAY.plusDays(1));
    Payment second = till.paying(invoice, "30.00", DAY.plusDays(2));
    Invoice credit = credit(invoice);
    till.put(
        With.component(
            credit,
            "lines",
            List.of(With.component(credit.lines().get(0), "quantity", new BigDecimal("0.45")))));
    till.done(Issuing.issue(till.now, credit.id(), DAY.plusDays(3)));
    assertThat(till.now(second).held()).isEqualTo(usd("30.00"));
    assertThat(till.now(first).held()).isEqualTo(usd("15.00"));
    assertThat(Accounts.of(till.now).open(invoice)).isEqualTo(usd("0.00"));
    Till.assertBooksHold(till.now);
  }

  @Test
  void theCurrencyOfARecordWithAmountsStays() {
    wash(DAY);
    Almanac other =
        Almanac.empty(
            With.component(till.now.business(), "currency", java.util.Currency.getInstance("EUR")));
    assertThat(
            Till.refused(
                Change.checked(
                    till.now, new Edit(Optional.of(other.business()), List.of(), List.of()))))
        .startsWith("The record holds amounts in USD, so its currency stays.");
    Payment euros =
        new Payment(
            till.ids.next(),
            "euros",
            till.lind.id(),
            DAY,
            hullalmanac.core.record.Money.of(BigDecimal.TEN, java.util.Currency.getInstance("EUR")),
            Payment.How.CASH,
            Optional.empty(),
            List.of(),
            "");
    assertThat(Till.refused(Change.checked(till.now, Edit.put(euros))))
        .startsWith("It is in EUR, but the business is paid in USD.");
  }

  @Test
  void aNumberIsTakenOnce() {
    Invoice invoice = wash(DAY);
    Invoice twin = With.component(With.component(invoice, "id", till.ids.next()), "key", "twin");
    assertThat(Till.refused(Change.checked(till.now, Edit.put(twin))))
        .startsWith("The number 2026-0001 is taken.");
  }

  @Test
  void numbersThatAreMissingAreNamed() {
    Invoice invoice = wash(DAY);
    Invoice.Issue issue = invoice.issue().orElseThrow();
    till.put(
        With.component(
            With.component(With.component(invoice, "id", till.ids.next()), "key", "from-elsewhere"),
            "issue",
            Optional.of(new Invoice.Issue("2026-", 4, "2026-0004", DAY, issue.due(), issue.to()))));
    assertThat(Till.gaps(till.now)).containsExactly("2026-0002", "2026-0003");
  }
}
