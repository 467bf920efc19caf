package hullalmanac.core.takings;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** What becomes of an estimate: it is offered, and accepted or declined once. */
public final class Answering {
  private Answering() {}

  /** Offers an estimate that was being written. */
  public static Change offer(Almanac almanac, Id<Estimate> id) {
    Estimate estimate = Accounts.row(almanac.books().estimates(), id);
    if (estimate.state() != Estimate.State.DRAFT) {
      return no(estimate, "state", answered(estimate), "Write a new estimate");
    }
    if (estimate.options().stream().allMatch(o -> o.lines().isEmpty())) {
      return no(estimate, "id", "nothing is priced in the estimate", "Write a line first");
    }
    return Change.checked(
        almanac,
        Edit.put(with(estimate, Estimate.State.OFFERED, Optional.empty(), Optional.empty())));
  }

  /**
   * An answer that accepts.
   *
   * @param option name of the option that was chosen
   * @param day of the answer
   * @param note what was said
   * @param signedBy the name that was typed as a signature; may be empty
   * @param signature the one that was drawn
   * @param visitDay the day for which the visit is planned
   */
  public record Accepted(
      String option,
      LocalDate day,
      String note,
      String signedBy,
      Optional<Signature> signature,
      LocalDate visitDay) {}

  /**
   * Accepts an estimate and plans its visit, in one act. The visit is the last row that is put in
   * before its steps.
   */
  public static Change accept(Almanac almanac, IdSource ids, Id<Estimate> id, Accepted accepted) {
    Estimate estimate = Accounts.row(almanac.books().estimates(), id);
    Optional<Estimate.Option> option =
        estimate.options().stream().filter(o -> o.name().equals(accepted.option())).findFirst();
    if (isAnswered(estimate)) {
      return no(estimate, "state", answered(estimate), "Write a new estimate");
    }
    if (option.isEmpty()) {
      return no(
          estimate,
          "accepted_option",
          "the estimate has no option \"" + accepted.option() + "\"",
          "Choose one of its options");
    }
    if (accepted.day().isBefore(estimate.day())) {
      return no(
          estimate,
          "answered_on",
          "the estimate was made later, on " + ChargedLines.day(estimate.day()),
          "Correct the day");
    }
    if (accepted.day().isAfter(estimate.validUntil())) {
      return no(
          estimate,
          "valid_until",
          "the estimate was valid until " + ChargedLines.day(estimate.validUntil()),
          "Write a later day there if it still holds");
    }
    Visit visit = visit(almanac, ids, estimate, option.get(), accepted);
    List<Row> put = new ArrayList<>();
    put.add(visit);
    put.addAll(steps(almanac, ids, option.get(), visit));
    put.add(
        with(
            estimate,
            Estimate.State.ACCEPTED,
            Optional.of(
                new Estimate.Answer(
                    accepted.day(),
                    accepted.option(),
                    accepted.note(),
                    accepted.signedBy(),
                    accepted.signature())),
            Optional.of(visit.id())));
    return Change.checked(almanac, Edit.put(put));
  }

  /** Writes down that an estimate was declined. */
  public static Change decline(Almanac almanac, Id<Estimate> id, LocalDate day, String note) {
    Estimate estimate = Accounts.row(almanac.books().estimates(), id);
    return isAnswered(estimate)
        ? no(estimate, "state", answered(estimate), "Write a new estimate")
        : Change.checked(
            almanac,
            Edit.put(
                with(
                    estimate,
                    Estimate.State.DECLINED,
                    Optional.of(new Estimate.Answer(day, "", note, "", Optional.empty())),
                    Optional.empty())));
  }

  /** What is asked beforehand when an option is accepted. */
  public static Money deposit(Estimate estimate, Estimate.Option option, Currency currency) {
    Money total = Bill.of(option, estimate.terms(), currency).total();
    return estimate.deposit().of(total, estimate.terms().rounding().mode()).atMost(total);
  }

  private static boolean isAnswered(Estimate estimate) {
    return estimate.answer().isPresent();
  }

  private static String answered(Estimate estimate) {
    return "the estimate was "
        + estimate.state().words()
        + estimate.answer().map(a -> " on " + ChargedLines.day(a.day())).orElse("")
        + " already";
  }

  private static Change no(Estimate estimate, String field, String message, String advice) {
    return Change.refused(new Problem(Kind.ESTIMATE, estimate.key(), field, message, advice));
  }

  private static Estimate with(
      Estimate e,
      Estimate.State state,
      Optional<Estimate.Answer> answer,
      Optional<Id<Visit>> visit) {
    return new Estimate(
        e.id(),
        e.key(),
        e.boat(),
        e.party(),
        e.day(),
        e.validUntil(),
        e.expectations(),
        e.options(),
        e.deposit(),
        e.terms(),
        state,
        answer,
        visit,
        e.note());
  }

  private static Visit visit(
      Almanac almanac, IdSource ids, Estimate estimate, Estimate.Option option, Accepted accepted) {
    Boat boat = Accounts.row(almanac.boats(), estimate.boat());
    return new Visit(
        ids.next(),
        new NewKeys(almanac).next(Kind.VISIT, boat.key(), accepted.visitDay()),
        boat.id(),
        accepted.visitDay(),
        VisitStatus.PLANNED,
        VisitWhy.OTHER,
        Optional.empty(),
        Optional.empty(),
        Handover.NOT_YET,
        option.surfaces().stream()
            .map(s -> new Visit.Part(s, WorkState.PLANNED, Optional.empty(), ""))
            .toList(),
        List.of(),
        option.note());
  }

  private static List<Step> steps(
      Almanac almanac, IdSource ids, Estimate.Option option, Visit visit) {
    NewKeys keys = new NewKeys(almanac);
    List<Id<Surface>> surfaces = option.surfaces();
    List<Step> steps = new ArrayList<>();
    for (StepKind kind : option.steps()) {
      int order = steps.size() + 1;
      steps.add(
          new Step(
              ids.next(),
              keys.next(Kind.STEP, visit.key(), order),
              visit.id(),
              order,
              kind,
              visit.day(),
              surfaces,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              "",
              "",
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              ""));
    }
    return steps;
  }
}
