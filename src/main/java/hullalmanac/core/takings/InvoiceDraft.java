package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Drafts of invoices: without a number, changed and taken out as one likes. */
public final class InvoiceDraft {
  private final Almanac almanac;
  private final Accounts accounts;
  private final IdSource ids;
  private final NewKeys keys;

  private InvoiceDraft(Almanac almanac, IdSource ids) {
    this.almanac = almanac;
    this.ids = ids;
    accounts = Accounts.of(almanac);
    keys = new NewKeys(almanac);
  }

  /**
   * A draft for a visit that was done: as its estimate was accepted, as its care plan has it, by
   * the rates, or else by its minutes.
   */
  public static Change ofVisit(Almanac almanac, IdSource ids, Id<Visit> id) {
    InvoiceDraft draft = new InvoiceDraft(almanac, ids);
    Visit visit = Accounts.row(almanac.visits(), id);
    if (visit.status() != VisitStatus.DONE) {
      return Change.refused(
          problem(
              visit, "status", "the visit is not done yet", "Finish it, then write its invoice"));
    }
    Optional<Invoice> billed = draft.accounts.billed(id);
    if (billed.isPresent()) {
      return Change.refused(
          problem(
              visit,
              "id",
              "the visit stands on the " + billed.get().words() + " already",
              "Change that one, or write a credit for it"));
    }
    return draft.estimate(visit).map(e -> draft.as(e, visit)).orElseGet(() -> draft.plain(visit));
  }

  /**
   * A draft for the visits of a care plan that were done in a month and stand on no invoice yet, a
   * line each.
   */
  public static Change ofMonth(Almanac almanac, IdSource ids, Id<CarePlan> id, YearMonth month) {
    InvoiceDraft draft = new InvoiceDraft(almanac, ids);
    CarePlan plan = Accounts.row(almanac.carePlans(), id);
    List<Visit> visits = draft.open(plan, month);
    if (visits.isEmpty()) {
      return Change.refused(
          new Problem(
              Kind.CARE_PLAN,
              plan.key(),
              "id",
              "no visit of the care plan in " + ChargedLines.month(month) + " waits for an invoice",
              "Finish its visits first, or choose another month"));
    }
    return draft.of(plan, visits);
  }

  /**
   * A draft for each care plan of which visits were done in a month that stand on no invoice yet;
   * of boats for which nobody pays none is made, and where all are of such boats, these are named.
   */
  public static Change ofMonth(Almanac almanac, IdSource ids, YearMonth month) {
    InvoiceDraft draft = new InvoiceDraft(almanac, ids);
    Map<Id<CarePlan>, List<Visit>> waiting =
        waiting(almanac, draft.accounts, month.plusMonths(1).atDay(1)).stream()
            .filter(v -> YearMonth.from(v.day()).equals(month))
            .collect(Collectors.groupingBy(v -> v.plan().orElseThrow()));
    Edit all = Edit.put(List.of());
    List<Problem> refused = new ArrayList<>();
    for (CarePlan plan : almanac.carePlans()) {
      List<Visit> visits = waiting.getOrDefault(plan.id(), List.of());
      if (!visits.isEmpty()) {
        Change one = draft.of(plan, visits);
        if (one instanceof Change.Ready ready) {
          all = all.and(ready.edit());
        } else {
          refused.addAll(((Change.Refused) one).problems());
        }
      }
    }
    return all.isEmpty() && !refused.isEmpty()
        ? new Change.Refused(refused)
        : new Change.Ready(all);
  }

  private Change of(CarePlan plan, List<Visit> visits) {
    return made(
        plan.boat(),
        visits.get(visits.size() - 1).day(),
        new Content(lines(visits), Share.NONE, terms()));
  }

  /**
   * A draft with other lines.
   *
   * @param change what becomes of its lines as they stand
   */
  public static Change lines(
      Almanac almanac, Id<Invoice> id, UnaryOperator<List<PriceLine>> change) {
    Invoice draft = Accounts.row(almanac.books().invoices(), id);
    List<PriceLine> lines = change.apply(new ArrayList<>(draft.lines()));
    try {
      return Change.checked(almanac, Edit.put(With.component(draft, "lines", lines)));
    } catch (IllegalArgumentException e) {
      return Change.refused(
          goesWithoutDiscount(draft, lines)
              ? problem(draft, "discount", e.getMessage(), "Make the discount smaller first")
              : problem(draft, "lines", e.getMessage(), "Write something else"));
    }
  }

  private static boolean goesWithoutDiscount(Invoice draft, List<PriceLine> lines) {
    try {
      With.component(With.component(draft, "discount", Share.NONE), "lines", lines);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** A line to be written. */
  public static PriceLine blank(Almanac almanac) {
    return new PriceLine(
        "",
        "work",
        BigDecimal.ONE,
        PriceUnit.EACH,
        Money.zero(almanac.business().currency()),
        almanac.business().billing().taxes(),
        Optional.empty());
  }

  /**
   * Visits of care plans that were done before a day and stand on no invoice yet, oldest first.
   *
   * @param accounts of the record
   */
  public static List<Visit> waiting(Almanac almanac, Accounts accounts, LocalDate before) {
    return almanac.visits().stream()
        .filter(v -> v.plan().isPresent() && v.status() == VisitStatus.DONE)
        .filter(v -> v.day().isBefore(before) && accounts.billed(v.id()).isEmpty())
        .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::id))
        .toList();
  }

  private List<Visit> open(CarePlan plan, YearMonth month) {
    return almanac.visits().stream()
        .filter(v -> v.plan().equals(Optional.of(plan.id())) && v.status() == VisitStatus.DONE)
        .filter(v -> YearMonth.from(v.day()).equals(month))
        .filter(v -> accounts.billed(v.id()).isEmpty())
        .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::id))
        .toList();
  }

  private Optional<Estimate> estimate(Visit visit) {
    return almanac.books().estimates().stream()
        .filter(e -> e.visit().equals(Optional.of(visit.id())))
        .filter(e -> e.chosen().filter(o -> !o.lines().isEmpty()).isPresent())
        .findFirst();
  }

  /** What stands on a draft. */
  private record Content(List<PriceLine> lines, Share discount, TaxTerms terms) {}

  private Change as(Estimate estimate, Visit visit) {
    Estimate.Option option = estimate.chosen().orElseThrow();
    List<PriceLine> lines =
        option.lines().stream()
            .map(
                l ->
                    new PriceLine(
                        l.service(),
                        l.words(),
                        l.quantity(),
                        l.unit(),
                        l.price(),
                        l.taxes(),
                        Optional.of(visit.id())))
            .toList();
    Content content = new Content(lines, option.discount(), estimate.terms());
    return estimate
        .party()
        .map(p -> to(p, visit.boat(), visit.day(), content))
        .orElseGet(() -> made(visit.boat(), visit.day(), content));
  }

  private Change plain(Visit visit) {
    return made(visit.boat(), visit.day(), new Content(lines(List.of(visit)), Share.NONE, terms()));
  }

  private List<PriceLine> lines(List<Visit> visits) {
    List<PriceLine> lines = new ArrayList<>();
    visits.forEach(v -> lines.addAll(ChargedLines.of(almanac, v)));
    return lines;
  }

  private TaxTerms terms() {
    return almanac.business().billing().terms();
  }

  private Change made(Id<Boat> id, LocalDate day, Content content) {
    Boat boat = Accounts.row(almanac.boats(), id);
    return Payer.of(almanac, id, day)
        .map(p -> to(p.id(), id, day, content))
        .orElseGet(
            () ->
                Change.refused(
                    problem(
                        boat,
                        "id",
                        "nobody is written down who pays for " + boat.name(),
                        "Write down her owner, or who pays")));
  }

  private Change to(Id<Party> party, Id<Boat> id, LocalDate day, Content content) {
    Boat boat = Accounts.row(almanac.boats(), id);
    Invoice invoice =
        new Invoice(
            ids.next(),
            keys.next(Kind.INVOICE, boat.key(), day),
            party,
            Optional.of(id),
            Optional.empty(),
            content.lines(),
            content.discount(),
            content.terms(),
            Optional.empty(),
            "");
    return Change.checked(almanac, Edit.put(invoice));
  }

  private static Problem problem(Row row, String field, String message, String advice) {
    return new Problem(Kind.of(row), row.key(), field, message, advice);
  }
}
