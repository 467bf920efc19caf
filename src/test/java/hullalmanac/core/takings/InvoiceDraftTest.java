package hullalmanac.core.takings;

import static hullalmanac.core.takings.Till.DAY;
import static hullalmanac.core.takings.Till.usd;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Billing;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class InvoiceDraftTest {
  private final Till till = new Till();

  private void hourCosts(String amount) {
    till.billing(With.component(Billing.USUAL, "charges.hour", Optional.of(usd(amount))));
  }

  @Test
  void theRateThatPaysForMostOfTheStepsIsTakenFirst() {
    hourCosts("60.00");
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH, StepKind.POLISH, StepKind.PROTECT);
    Invoice draft = till.draft(visit);
    assertThat(draft.issued()).isFalse();
    assertThat(draft.party()).isEqualTo(till.lind.id());
    assertThat(draft.lines())
        .extracting(PriceLine::words)
        .containsExactly(
            "hull, Arctic Tern, 6 May 2026",
            "wash of the deck, Arctic Tern, 6 May 2026",
            "polish of the deck, Arctic Tern, 6 May 2026",
            "protect of the deck, Arctic Tern, 6 May 2026");
    assertThat(draft.lines().get(1).quantity()).isEqualByComparingTo("0.5");
    PriceLine hull = draft.lines().get(0);
    assertThat(hull.quantity()).isEqualByComparingTo("30");
    assertThat(hull.unit()).isEqualTo(PriceUnit.FOOT);
    assertThat(hull.price()).isEqualTo(usd("20.84"));
    assertThat(draft.lines()).allMatch(l -> l.visit().equals(Optional.of(visit.id())));
  }

  @Test
  void whatNoRatePaysForIsChargedByItsMinutesAndInspectingNotAtAll() {
    hourCosts("60.00");
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH, StepKind.INSPECT, StepKind.CUT);
    Invoice draft = till.draft(visit);
    assertThat(draft.lines()).extracting(PriceLine::service).containsExactly("wash", "cut");
    PriceLine cut = draft.lines().get(1);
    assertThat(cut.unit()).isEqualTo(PriceUnit.HOUR);
    assertThat(cut.quantity()).isEqualByComparingTo("1");
    assertThat(cut.price()).isEqualTo(usd("60.00"));
  }

  @Test
  void withoutAPriceOfAnHourALineWaitsForItsPrice() {
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.CUT));
    assertThat(draft.lines()).singleElement().matches(l -> l.price().equals(usd("0.00")));
  }

  @Test
  void newLinesHaveTheTaxesOfTheBusiness() {
    Tax tax = new Tax("sales tax", new BigDecimal("6"));
    TaxTerms terms = new TaxTerms(true, TaxTerms.At.LINE, TaxTerms.Rounding.HALF_EVEN);
    till.billing(
        With.component(With.component(Billing.USUAL, "taxes", List.of(tax)), "terms", terms));
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    assertThat(draft.lines().get(0).taxes()).containsExactly(tax);
    assertThat(draft.terms()).isEqualTo(terms);
  }

  @Test
  void aVisitIsAskedForOnce() {
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    Invoice draft = till.draft(visit);
    assertThat(Till.refused(InvoiceDraft.ofVisit(till.now, till.ids, visit.id())))
        .isEqualTo(
            "The visit stands on the draft of an invoice already. Change that one, or write a"
                + " credit for it.");
    till.done(Issuing.issue(till.now, draft.id(), DAY));
    assertThat(Till.refused(InvoiceDraft.ofVisit(till.now, till.ids, visit.id())))
        .contains("invoice 2026-0001 already");
    Invoice credit =
        till.done(Crediting.draft(till.now, till.ids, draft.id())).put(Invoice.class).orElseThrow();
    till.done(Issuing.issue(till.now, credit.id(), DAY));
    till.done(InvoiceDraft.ofVisit(till.now, till.ids, visit.id()));
  }

  @Test
  void aVisitThatIsNotDoneOrThatNobodyPaysForIsRefused() {
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    till.put(With.component(visit, "status", VisitStatus.PLANNED));
    assertThat(Till.refused(InvoiceDraft.ofVisit(till.now, till.ids, visit.id())))
        .startsWith("The visit is not done yet.");
    till.put(visit);
    till.now = till.now.with(Edit.remove(till.now.roles()));
    assertThat(Till.refused(InvoiceDraft.ofVisit(till.now, till.ids, visit.id())))
        .startsWith("Nobody is written down who pays for Arctic Tern.");
  }

  @Test
  void aMonthOfACarePlanIsALineForEachVisitDoneAndNotAskedForYet() {
    CarePlan plan = till.plan(till.tern, "45.00");
    Visit asked = till.visit(till.tern, DAY, Optional.of(plan.id()), StepKind.WASH);
    till.visit(till.tern, DAY.plusDays(14), Optional.of(plan.id()), StepKind.WASH);
    till.visit(till.tern, DAY.plusMonths(1), Optional.of(plan.id()), StepKind.WASH);
    till.visit(till.tern, DAY.plusDays(1), StepKind.WASH);
    Visit planned = till.visit(till.tern, DAY.plusDays(20), Optional.of(plan.id()));
    till.put(With.component(planned, "status", VisitStatus.PLANNED));
    till.draft(asked);
    YearMonth may = YearMonth.of(2026, 5);
    Invoice draft =
        till.done(InvoiceDraft.ofMonth(till.now, till.ids, plan.id(), may))
            .put(Invoice.class)
            .orElseThrow();
    assertThat(draft.lines())
        .singleElement()
        .matches(l -> l.words().equals("wash down, Arctic Tern, 20 May 2026"))
        .matches(l -> l.price().equals(usd("45.00")));
    assertThat(Till.refused(InvoiceDraft.ofMonth(till.now, till.ids, plan.id(), may)))
        .startsWith("No visit of the care plan in May 2026 waits for an invoice.");
  }

  @Test
  void aMonthOfAllCarePlansIsADraftEach() {
    CarePlan tern = till.plan(till.tern, "45.00");
    CarePlan knot = till.plan(till.knot, null);
    till.visit(till.tern, DAY, Optional.of(tern.id()), StepKind.WASH);
    till.visit(till.knot, DAY, Optional.of(knot.id()), StepKind.WASH);
    till.plan(till.tern, "1.00");
    assertThat(InvoiceDraft.waiting(till.now, Accounts.of(till.now), DAY.plusDays(1))).hasSize(2);
    till.done(InvoiceDraft.ofMonth(till.now, till.ids, YearMonth.of(2026, 5)));
    assertThat(till.now.books().invoices()).hasSize(2);
    assertThat(
            till.now.books().invoices().stream()
                .map(i -> i.lines().get(0).amount(TaxTerms.Rounding.HALF_UP)))
        .containsExactlyInAnyOrder(usd("45.00"), usd("72.00"));
    assertThat(InvoiceDraft.waiting(till.now, Accounts.of(till.now), DAY.plusDays(1))).isEmpty();
  }

  @Test
  void whereNobodyPaysForAnyBoatOfAMonthTheBoatsAreNamed() {
    CarePlan tern = till.plan(till.tern, "45.00");
    till.visit(till.tern, DAY, Optional.of(tern.id()), StepKind.WASH);
    till.now =
        till.now.with(new Edit(Optional.empty(), List.of(), List.<Row>copyOf(till.now.roles())));
    assertThat(Till.refused(InvoiceDraft.ofMonth(till.now, till.ids, YearMonth.of(2026, 5))))
        .startsWith("Nobody is written down who pays for " + till.tern.name());
  }

  @Test
  void onlyADiscountIsToBeMadeSmaller() {
    Invoice draft = till.draft(till.visit(till.tern, DAY, StepKind.WASH));
    assertThat(
            Till.refused(
                InvoiceDraft.lines(
                    till.now,
                    draft.id(),
                    all -> Collections.nCopies(401, InvoiceDraft.blank(till.now)))))
        .isEqualTo("There are at most 400 lines. Write something else.");
    till.put(With.component(draft, "discount.amount", Optional.of(usd("1.00"))));
    assertThat(Till.refused(InvoiceDraft.lines(till.now, draft.id(), all -> List.of())))
        .endsWith("Make the discount smaller first.");
  }

  @Test
  void ofRatesForSeveralConditionsThatForFairIsCharged() {
    Rate wash =
        till.now.books().rates().stream()
            .filter(r -> r.key().equals("wash"))
            .findFirst()
            .orElseThrow();
    Rate fair = With.component(wash, "condition", Optional.of(Condition.FAIR));
    till.put(
        With.component(
            With.component(
                With.component(wash, "condition", Optional.of(Condition.POOR)),
                "high",
                usd("99.00")),
            "key",
            "a-wash"));
    till.put(With.component(With.component(fair, "id", till.ids.next()), "key", "fair-wash"));
    Visit visit = till.visit(till.tern, DAY, StepKind.WASH);
    assertThat(till.draft(visit).lines())
        .extracting(PriceLine::price)
        .containsExactly(
            Money.rounded(
                wash.low().plus(wash.high()).amount().divide(BigDecimal.valueOf(2)),
                wash.low().currency(),
                RoundingMode.HALF_UP));
  }
}
