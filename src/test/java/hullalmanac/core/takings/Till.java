package hullalmanac.core.takings;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A small record for tests about money: two boats with an owner each, in two harbours, and rates.
 * Ids are the same at every run.
 */
public final class Till {
  public static final LocalDate DAY = LocalDate.of(2026, 5, 6);
  static final Currency USD = Currency.getInstance("USD");

  public final IdSource ids = new IdSource(new Random(23)::nextLong);
  final Party lind = party("lind", "Ada Lind");
  final Party osei = party("osei", "Dev Osei");
  final Boat tern = boat("tern", "Arctic Tern", 30);
  final Boat knot = boat("knot", "Knot", 24);
  private int made;
  public Almanac now;

  public Till() {
    now = Almanac.empty(Business.unnamed());
    Harbour quillhaven = harbour("quillhaven", "Quillhaven");
    Harbour oysterHard = harbour("oyster-hard", "Oyster Hard");
    put(quillhaven, oysterHard, lind, osei, tern, knot);
    put(role(tern, lind), role(knot, osei), berth(tern, quillhaven), berth(knot, oysterHard));
    put(
        rate(
            "hull",
            Extent.HULL,
            "20.00",
            "21.67",
            StepKind.WASH,
            StepKind.POLISH,
            StepKind.PROTECT),
        rate("wash", Extent.WHOLE_BOAT, "3.00", "3.00", StepKind.WASH));
  }

  static Money usd(String amount) {
    return Money.of(new BigDecimal(amount), USD);
  }

  private String key(String what) {
    return what + "-" + ++made;
  }

  void put(Row... rows) {
    now = now.with(Edit.put(rows));
  }

  /** Sets how the business asks for money. */
  void billing(Billing billing) {
    now =
        now.with(
            new Edit(
                Optional.of(With.component(now.business(), "billing", billing)),
                List.of(),
                List.of()));
  }

  /** Does a change that must be ready; returns it. */
  Change.Ready done(Change change) {
    assertThat(change).isInstanceOf(Change.Ready.class);
    now = now.with(((Change.Ready) change).edit());
    return (Change.Ready) change;
  }

  /** The sentence with which a change is refused; nothing of the record may have changed. */
  static String refused(Change change) {
    assertThat(change).isInstanceOf(Change.Refused.class);
    return ((Change.Refused) change).problems().get(0).sentence();
  }

  Invoice now(Invoice invoice) {
    return Accounts.row(now.books().invoices(), invoice.id());
  }

  Payment now(Payment payment) {
    return Accounts.row(now.books().payments(), payment.id());
  }

  private Party party(String key, String name) {
    return new Party(
        ids.next(), key, PartyKind.PERSON, name, "", "", "1 Pier Lane", "", Optional.empty(), "");
  }

  private Boat boat(String key, String name, int feet) {
    return new Boat(
        ids.next(),
        key,
        name,
        BoatType.SLOOP,
        Optional.of(Length.ofFeet(feet, 0)),
        Optional.empty(),
        Optional.empty(),
        "",
        Optional.empty(),
        Use.WEEKENDS,
        BoatStatus.ACTIVE,
        Optional.empty(),
        "");
  }

  private Harbour harbour(String key, String name) {
    return new Harbour(ids.next(), key, name, 48.4, List.of(), "");
  }

  private Role role(Boat boat, Party party) {
    return new Role(
        ids.next(),
        key("role"),
        boat.id(),
        party.id(),
        RoleKind.OWNS,
        DAY.minusYears(5),
        Optional.empty());
  }

  private Berth berth(Boat boat, Harbour harbour) {
    return new Berth(
        ids.next(),
        key("berth"),
        boat.id(),
        harbour.id(),
        Cover.OPEN,
        Water.SALT,
        DAY.minusYears(5),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Berth.Access.UNKNOWN,
        Berth.Private.NOTHING);
  }

  private Rate rate(String key, Extent extent, String low, String high, StepKind... steps) {
    return new Rate(
        ids.next(),
        key,
        key,
        new TreeSet<>(EnumSet.copyOf(List.of(steps))),
        extent,
        PriceUnit.FOOT,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        usd(low),
        usd(high),
        "");
  }

  CarePlan plan(Boat boat, String price) {
    CarePlan plan =
        new CarePlan(
            ids.next(),
            key("plan"),
            boat.id(),
            "wash down",
            2,
            List.of(Month.values()),
            Optional.ofNullable(price).map(Till::usd),
            DAY.minusYears(1),
            Optional.empty(),
            List.of());
    put(plan);
    return plan;
  }

  Visit visit(Boat boat, LocalDate day, StepKind... steps) {
    return visit(boat, day, Optional.empty(), steps);
  }

  /** A wash of one of the boats, one after the other. */
  public void visitToWash(int n) {
    visit(n % 2 == 0 ? tern : knot, DAY.minusDays(n), StepKind.WASH);
  }

  /** A visit that was done, each step in an hour on the whole boat. */
  Visit visit(Boat boat, LocalDate day, Optional<Id<CarePlan>> plan, StepKind... steps) {
    Visit visit =
        new Visit(
            ids.next(),
            key("visit"),
            boat.id(),
            day,
            VisitStatus.DONE,
            VisitWhy.OTHER,
            plan,
            Optional.empty(),
            Handover.NOT_YET,
            List.of(),
            List.of(),
            "");
    put(visit);
    for (int i = 0; i < steps.length; i++) {
      put(step(visit, i + 1, steps[i], Optional.of(60), List.of()));
    }
    return visit;
  }

  Step step(
      Visit visit,
      int order,
      StepKind kind,
      Optional<Integer> minutes,
      List<Id<Surface>> surfaces) {
    return new Step(
        ids.next(),
        key("step"),
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
        minutes,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  Invoice draft(Visit visit) {
    return done(InvoiceDraft.ofVisit(now, ids, visit.id())).put(Invoice.class).orElseThrow();
  }

  Invoice issued(Visit visit, LocalDate day) {
    Invoice draft = draft(visit);
    done(Issuing.issue(now, draft.id(), day));
    return now(draft);
  }

  /** An issued invoice of so much, for a wash of the first boat. */
  Invoice asking(String amount, LocalDate day) {
    Invoice draft = draft(visit(tern, day, StepKind.WASH));
    put(
        With.component(
            draft,
            "lines",
            List.of(
                With.component(
                    With.component(draft.lines().get(0), "quantity", BigDecimal.ONE),
                    "price",
                    usd(amount)))));
    done(Issuing.issue(now, draft.id(), day));
    return now(draft);
  }

  Receiving.Received received(String amount, LocalDate day) {
    return new Receiving.Received(
        lind.id(), day, usd(amount), Payment.How.CASH, Optional.empty(), "");
  }

  Payment paying(Invoice invoice, String amount, LocalDate day) {
    return done(Receiving.paying(now, ids, received(amount, day), invoice.id()))
        .put(Payment.class)
        .orElseThrow();
  }

  /**
   * What must hold of every record: each payment is what it became and what is held; each issued
   * invoice is what was credited, paid and is open.
   */
  public static void assertSumsHold(Almanac almanac) {
    Accounts accounts = Accounts.of(almanac);
    for (Payment payment : almanac.books().payments()) {
      Money used =
          payment.uses().stream()
              .map(Payment.Use::amount)
              .reduce(Money.zero(payment.amount().currency()), Money::plus);
      assertThat(used.plus(payment.held())).isEqualTo(payment.amount());
      assertThat(payment.held().minor()).isNotNegative();
    }
    for (Invoice invoice : almanac.books().invoices()) {
      if (invoice.issued() && invoice.credits().isEmpty()) {
        Money total = accounts.bill(invoice).total();
        assertThat(
                accounts
                    .credited(invoice)
                    .plus(accounts.paid(invoice))
                    .plus(accounts.open(invoice)))
            .isEqualTo(total);
        assertThat(accounts.credited(invoice)).isLessThanOrEqualTo(total);
      }
    }
  }

  /**
   * Numbers that are missing in a record between the first and the last of each series; none unless
   * invoices were brought in from elsewhere.
   */
  static List<String> gaps(Almanac almanac) {
    List<String> gaps = new ArrayList<>();
    Billing.Numbering numbering = almanac.business().billing().numbering();
    issues(almanac)
        .map(Invoice.Issue::series)
        .distinct()
        .sorted()
        .forEach(
            series -> {
              List<Integer> there =
                  issues(almanac)
                      .filter(i -> i.series().equals(series))
                      .map(Invoice.Issue::sequence)
                      .sorted()
                      .toList();
              for (int n = there.get(0); n < there.get(there.size() - 1); n++) {
                if (!there.contains(n)) {
                  gaps.add(numbering.number(series, n));
                }
              }
            });
    return gaps;
  }

  private static Stream<Invoice.Issue> issues(Almanac almanac) {
    return almanac.books().invoices().stream().flatMap(i -> i.issue().stream());
  }

  /** The sums, and that no number is missing. */
  public static void assertBooksHold(Almanac almanac) {
    assertSumsHold(almanac);
    assertThat(gaps(almanac)).isEmpty();
  }
}
