package hullalmanac.core.takings;

import static hullalmanac.core.takings.Till.DAY;
import static hullalmanac.core.takings.Till.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AnsweringTest {
  private final Till till = new Till();
  private final Surface topsides = surface();
  private final Estimate estimate = estimate();

  private Surface surface() {
    Surface surface =
        new Surface(
            till.ids.next(),
            "topsides",
            till.tern.id(),
            SurfaceKind.TOPSIDES,
            Side.BOTH,
            "",
            Finish.GELCOAT,
            Tone.LIGHT,
            Attitude.UPRIGHT,
            Optional.empty(),
            Past.UNKNOWN,
            false,
            Optional.empty(),
            "");
    till.put(surface);
    return surface;
  }

  private Estimate.Option option(String name, String price) {
    return new Estimate.Option(
        name,
        List.of(StepKind.WASH, StepKind.PROTECT),
        List.of(topsides.id()),
        List.of(
            new PriceLine(
                "hull",
                "hull",
                BigDecimal.ONE,
                PriceUnit.EACH,
                usd(price),
                List.of(),
                Optional.empty())),
        Share.percent(new BigDecimal("10")),
        "two days");
  }

  private Estimate estimate() {
    Estimate made =
        new Estimate(
            till.ids.next(),
            "e",
            till.tern.id(),
            Optional.of(till.lind.id()),
            DAY,
            DAY.plusDays(28),
            List.of(new Estimate.Expectation(Estimate.Result.STAYS, "cloudiness from the mould")),
            List.of(option("good", "400.00"), option("best", "900.00")),
            Share.percent(new BigDecimal("30")),
            TaxTerms.USUAL,
            Estimate.State.DRAFT,
            Optional.empty(),
            Optional.empty(),
            "");
    till.put(made);
    return made;
  }

  private static Answering.Accepted accepted(String option, LocalDate day) {
    return new Answering.Accepted(
        option,
        day,
        "go ahead",
        "M. Lind",
        Optional.of(Signature.parse("10,20 12,25/300,40")),
        DAY.plusDays(40));
  }

  private Estimate now() {
    return Accounts.row(till.now.books().estimates(), estimate.id());
  }

  private Change accept(String option, LocalDate day) {
    return Answering.accept(till.now, till.ids, estimate.id(), accepted(option, day));
  }

  @Test
  void anAcceptedEstimateIsAPlannedVisitInOneAct() {
    till.done(Answering.offer(till.now, estimate.id()));
    assertThat(now().openOn(DAY.plusDays(28))).isTrue();
    assertThat(now().openOn(DAY.plusDays(29))).isFalse();
    Change.Ready act = till.done(accept("best", DAY.plusDays(3)));
    Visit visit = act.put(Visit.class).orElseThrow();
    assertThat(visit.status()).isEqualTo(VisitStatus.PLANNED);
    assertThat(visit.day()).isEqualTo(DAY.plusDays(40));
    assertThat(visit.surfaces()).extracting(Visit.Part::surface).containsExactly(topsides.id());
    assertThat(till.now.steps().stream().filter(s -> s.visit().equals(visit.id())))
        .extracting(Step::kind)
        .containsExactlyInAnyOrder(StepKind.WASH, StepKind.PROTECT);
    assertThat(now().state()).isEqualTo(Estimate.State.ACCEPTED);
    assertThat(now().chosen().map(Estimate.Option::name)).contains("best");
    assertThat(now().visit()).contains(visit.id());
    Estimate.Answer answer = now().answer().orElseThrow();
    assertThat(answer.signedBy()).isEqualTo("M. Lind");
    assertThat(answer.signature().map(Signature::text)).contains("10,20 12,25/300,40");
  }

  @Test
  void anEstimateIsAnsweredOnce() {
    till.done(accept("good", DAY));
    Almanac before = till.now;
    assertThat(Till.refused(accept("best", DAY)))
        .isEqualTo("The estimate was accepted on 6 May 2026 already. Write a new estimate.");
    assertThat(Till.refused(Answering.decline(till.now, estimate.id(), DAY, "no")))
        .contains("accepted on 6 May 2026 already");
    assertThat(Till.refused(Answering.offer(till.now, estimate.id()))).contains("already");
    assertThat(till.now).isSameAs(before);
    assertThat(till.now.visits()).hasSize(1);
  }

  @Test
  void aDeclinedEstimatePlansNothing() {
    till.done(Answering.decline(till.now, estimate.id(), DAY, "sells her"));
    assertThat(now().answer().map(Estimate.Answer::note)).contains("sells her");
    assertThat(till.now.visits()).isEmpty();
    assertThat(Till.refused(accept("good", DAY))).contains("declined on 6 May 2026");
  }

  @Test
  void anEstimateIsAcceptedInItsTimeAndInOneOfItsOptions() {
    assertThat(Till.refused(accept("good", DAY.plusDays(29))))
        .isEqualTo(
            "The estimate was valid until 3 June 2026. Write a later day there if it still holds.");
    assertThat(Till.refused(accept("good", DAY.minusDays(1)))).contains("made later");
    assertThat(Till.refused(accept("Good", DAY))).contains("no option \"Good\"");
    till.done(accept("good", DAY.plusDays(28)));
  }

  @Test
  void anEmptyEstimateIsNotOffered() {
    till.put(With.component(estimate, "options", List.of()));
    assertThat(Till.refused(Answering.offer(till.now, estimate.id())))
        .startsWith("Nothing is priced in the estimate.");
  }

  /** 900.00 less 10 % is 810.00; 30 % of it is 243.00. */
  @Test
  void theDepositIsAPartOfTheOption() {
    Estimate.Option best = estimate.options().get(1);
    assertThat(Answering.deposit(estimate, best, Till.USD)).isEqualTo(usd("243.00"));
    Estimate much = With.component(estimate, "deposit", Share.amount(usd("5000.00")));
    assertThat(Answering.deposit(much, best, Till.USD)).isEqualTo(usd("810.00"));
  }

  @Test
  void itsVisitIsAskedForAsAcceptedAndItsDepositPaysFirst() {
    Id<Visit> visit = till.done(accept("best", DAY)).put(Visit.class).orElseThrow().id();
    Payment deposit =
        till.done(
                Receiving.held(
                    till.now,
                    till.ids,
                    With.component(
                        till.received("243.00", DAY), "estimate", Optional.of(estimate.id()))))
            .put(Payment.class)
            .orElseThrow();
    Visit planned = Accounts.row(till.now.visits(), visit);
    till.put(With.component(planned, "status", VisitStatus.DONE));
    Invoice draft = till.draft(planned);
    assertThat(draft.discount()).isEqualTo(Share.percent(new BigDecimal("10")));
    assertThat(draft.lines()).singleElement().matches(l -> l.visit().equals(Optional.of(visit)));
    till.done(Issuing.issue(till.now, draft.id(), DAY.plusDays(41)));
    assertThat(Accounts.of(till.now).open(till.now(draft))).isEqualTo(usd("567.00"));
    assertThat(till.now(deposit).held()).isEqualTo(usd("0.00"));
    Till.assertBooksHold(till.now);
  }

  @Test
  void whatAnEstimateSpeaksOfGoesWithoutIt() {
    till.done(accept("good", DAY));
    Visit visit = till.now.visits().get(0);
    till.done(Removal.of(till.now, visit));
    assertThat(now().visit()).isEmpty();
    till.done(Removal.of(till.now, topsides));
    assertThat(now().options()).allMatch(o -> o.surfaces().isEmpty() && o.steps().isEmpty());
    till.done(Removal.of(till.now, till.lind));
    assertThat(now().party()).isEmpty();
    till.done(Removal.of(till.now, till.tern));
    assertThat(till.now.books().estimates()).isEmpty();
  }

  @Test
  void anEstimateRefusesWhatCannotBe() {
    assertThatThrownBy(() -> With.component(estimate, "validUntil", DAY.minusDays(1)))
        .hasMessageContaining("before it was made");
    assertThatThrownBy(() -> With.component(estimate, "state", Estimate.State.ACCEPTED))
        .hasMessageContaining("has an answer");
    assertThatThrownBy(
            () ->
                With.component(
                    estimate, "options", List.of(option("good", "1"), option("good", "2"))))
        .hasMessageContaining("same name");
    Estimate other = With.component(estimate, "boat", till.knot.id());
    assertThat(Till.refused(Change.checked(till.now, Edit.put(other))))
        .startsWith("The surface topsides belongs to another boat.");
    assertThatThrownBy(() -> Signature.parse("10,20 30")).hasMessageContaining("not a drawn");
    assertThatThrownBy(() -> Signature.parse("3001,20")).hasMessageContaining("in its field");
  }
}
