package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Crediting;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.Issuing;
import hullalmanac.core.takings.Payer;
import hullalmanac.core.takings.Receiving;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * The money of the sample: rates, a few estimates, two seasons of invoices, payments, trips and
 * expenses, all by the program's own acts. Its ids and chances are its own, so that all else stays
 * as it was.
 */
final class SampleMoney {
  private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);
  private static final String HULL = "clean, polish and seal the hull";
  private static final int DRAFTS = 3;

  private final Random random = new Random(20_260_502L);
  private final IdSource ids = new IdSource(random::nextLong);
  private Almanac now;

  private SampleMoney(Almanac almanac) {
    now = almanac;
  }

  static Almanac add(Almanac almanac) {
    SampleMoney money = new SampleMoney(almanac);
    money.rates();
    money.estimates();
    money.invoices();
    money.trips();
    money.expenses();
    return money.now;
  }

  private void put(Row... rows) {
    now = now.with(Edit.put(rows));
  }

  /** Does what can be done; says whether it was. */
  private boolean done(Change change) {
    if (change instanceof Change.Ready ready) {
      now = now.with(ready.edit());
      return true;
    }
    return false;
  }

  private Money dollars(String amount) {
    return Money.of(new BigDecimal(amount), now.business().currency());
  }

  private int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  /** A price by length. */
  private record Priced(
      String key, String service, Set<StepKind> steps, Extent extent, Condition condition) {}

  private void rates() {
    EnumSet<StepKind> seal =
        EnumSet.of(StepKind.WASH, StepKind.DECONTAMINATE, StepKind.POLISH, StepKind.PROTECT);
    EnumSet<StepKind> deck = EnumSet.of(StepKind.WASH, StepKind.PROTECT);
    EnumSet<StepKind> wash = EnumSet.of(StepKind.WASH);
    rate(new Priced("hull-good", HULL, seal, Extent.HULL, Condition.GOOD), "18.00", "20.00");
    rate(new Priced("hull-fair", HULL, seal, Extent.HULL, Condition.FAIR), "20.00", "21.67");
    rate(new Priced("hull-poor", HULL, seal, Extent.HULL, Condition.POOR), "24.00", "29.00");
    rate(new Priced("hull", HULL, seal, Extent.HULL, null), "20.00", "22.00");
    rate(
        new Priced("all", "clean, polish and seal", seal, Extent.WHOLE_BOAT, null),
        "30.00",
        "34.00");
    rate(new Priced("deck", "wash and seal the deck", deck, Extent.DECK, null), "9.00", "11.00");
    rate(new Priced("wash", "wash", wash, Extent.WHOLE_BOAT, null), "2.50", "3.50");
    Rate wide = now.books().rates().stream().filter(r -> r.key().equals("hull")).findFirst().get();
    put(
        new Rate(
            ids.next(),
            "hull-from-40-ft",
            HULL,
            wide.steps(),
            Extent.HULL,
            PriceUnit.FOOT,
            Optional.empty(),
            Optional.empty(),
            Optional.of(Length.ofFeet(40, 0)),
            Optional.empty(),
            dollars("24.00"),
            dollars("27.00"),
            "invented"));
  }

  private void rate(Priced priced, String low, String high) {
    put(
        new Rate(
            ids.next(),
            priced.key(),
            priced.service(),
            new TreeSet<>(priced.steps()),
            priced.extent(),
            PriceUnit.FOOT,
            Optional.ofNullable(priced.condition()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            dollars(low),
            dollars(high),
            priced.key().equals("hull-fair") ? "common practice, no source" : "invented"));
  }

  private void estimates() {
    Visit accepted = last(6, LocalDate.of(2026, 4, 20));
    estimate(0, LocalDate.of(2026, 4, 29), Estimate.State.DRAFT, Optional.empty());
    estimate(10, LocalDate.of(2026, 4, 21), Estimate.State.OFFERED, Optional.empty());
    estimate(14, LocalDate.of(2026, 4, 2), Estimate.State.OFFERED, Optional.empty());
    estimate(22, LocalDate.of(2026, 2, 9), Estimate.State.DECLINED, Optional.empty());
    estimate(6, accepted.day().minusDays(30), Estimate.State.ACCEPTED, Optional.of(accepted.id()));
  }

  private Boat boat(int i) {
    return now.boats().get(i);
  }

  private Visit last(int boat, LocalDate before) {
    return now.visits().stream()
        .filter(v -> v.boat().equals(boat(boat).id()) && v.status() == VisitStatus.DONE)
        .filter(v -> v.day().isBefore(before) && !v.surfaces().isEmpty())
        .max(Comparator.comparing(Visit::day).thenComparing(Visit::id))
        .orElseThrow();
  }

  private void estimate(int i, LocalDate day, Estimate.State state, Optional<Id<Visit>> visit) {
    Boat boat = boat(i);
    boolean answered = state == Estimate.State.ACCEPTED || state == Estimate.State.DECLINED;
    Optional<Estimate.Answer> answer =
        answered
            ? Optional.of(
                state == Estimate.State.ACCEPTED
                    ? new Estimate.Answer(
                        day.plusDays(4),
                        "better",
                        "before the regatta",
                        "",
                        Optional.of(signature()))
                    : new Estimate.Answer(day.plusDays(9), "", "selling her", "", Optional.empty()))
            : Optional.empty();
    Estimate estimate =
        new Estimate(
            ids.next(),
            new NewKeys(now).next(Kind.ESTIMATE, boat.key(), day),
            boat.id(),
            Payer.of(now, boat.id(), day).map(Party::id),
            day,
            day.plusDays(28),
            List.of(
                new Estimate.Expectation(
                    Estimate.Result.COMES_OUT, "salt, yellow stain at the waterline, light swirls"),
                new Estimate.Expectation(Estimate.Result.IMPROVES, "scuffs where the fenders hang"),
                new Estimate.Expectation(
                    Estimate.Result.STAYS, "cloudiness from the mould near the stem")),
            options(boat),
            Share.percent(BigDecimal.valueOf(30)),
            now.business().billing().terms(),
            state,
            answer,
            visit,
            "");
    put(estimate);
    if (state == Estimate.State.ACCEPTED) {
      done(
          Receiving.held(
              now,
              ids,
              new Receiving.Received(
                  estimate.party().orElseThrow(),
                  day.plusDays(6),
                  dollars("250.00"),
                  Payment.How.BANK_TRANSFER,
                  Optional.of(estimate.id()),
                  "deposit")));
    }
  }

  private List<Estimate.Option> options(Boat boat) {
    List<Id<Surface>> hull =
        now.surfaces().stream()
            .filter(s -> s.boat().equals(boat.id()) && Extent.of(s.kind()) == Extent.HULL)
            .map(Surface::id)
            .toList();
    List<StepKind> light = List.of(StepKind.WASH, StepKind.DECONTAMINATE, StepKind.PROTECT);
    List<StepKind> full =
        List.of(StepKind.WASH, StepKind.DECONTAMINATE, StepKind.POLISH, StepKind.PROTECT);
    BigDecimal feet = PriceUnit.FOOT.in(boat.loa().orElseThrow());
    return List.of(
        new Estimate.Option(
            "good",
            light,
            hull,
            List.of(line("clean and seal the hull", feet, PriceUnit.FOOT, "15.00")),
            Share.NONE,
            ""),
        new Estimate.Option(
            "better",
            full,
            hull,
            List.of(line(HULL, feet, PriceUnit.FOOT, "20.84")),
            Share.NONE,
            ""),
        new Estimate.Option(
            "best",
            full,
            hull,
            List.of(
                line(HULL, feet, PriceUnit.FOOT, "20.84"),
                line("silica coating C in two layers", BigDecimal.ONE, PriceUnit.EACH, "340.00")),
            Share.percent(BigDecimal.valueOf(5)),
            "two days, under cover"));
  }

  private PriceLine line(String service, BigDecimal quantity, PriceUnit unit, String price) {
    return new PriceLine(
        service,
        service,
        quantity,
        unit,
        dollars(price),
        now.business().billing().taxes(),
        Optional.empty());
  }

  private static Signature signature() {
    List<Signature.Dot> dots = new ArrayList<>();
    for (int x = 0; x <= 60; x++) {
      int y = (int) Math.round(520 + 260 * Math.sin(x / 4.0) - 2.0 * x);
      dots.add(new Signature.Dot(300 + x * 38, y));
    }
    return new Signature(
        List.of(
            new Signature.Stroke(dots),
            new Signature.Stroke(
                List.of(new Signature.Dot(250, 820), new Signature.Dot(2600, 760)))));
  }

  /** Visits to every second boat, each asked for two days after it was done. */
  private void invoices() {
    Set<Id<Boat>> boats = new java.util.HashSet<>();
    for (int i = 0; i < now.boats().size(); i++) {
      if (i % 2 == 1 || i == 6) {
        boats.add(boat(i).id());
      }
    }
    List<Visit> visits =
        now.visits().stream()
            .filter(v -> v.status() == VisitStatus.DONE && v.why() != VisitWhy.COMPLAINT)
            .filter(v -> !v.day().isBefore(FIRST) && boats.contains(v.boat()))
            .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::id))
            .toList();
    for (int n = 0; n < visits.size(); n++) {
      Visit visit = visits.get(n);
      if (visit.day().getYear() == 2026 && visits.get(n - 1).day().getYear() == 2025) {
        credit();
      }
      Change draft = InvoiceDraft.ofVisit(now, ids, visit.id());
      if (done(draft) && n < visits.size() - DRAFTS) {
        Id<Invoice> id = ((Change.Ready) draft).put(Invoice.class).orElseThrow().id();
        LocalDate day = visit.day().plusDays(2);
        if (done(Issuing.issue(now, id, day))) {
          pay(id, day, n);
        }
      }
    }
  }

  /** One of last year's invoices is taken back, for half of the hull was left. */
  private void credit() {
    Invoice wrong =
        now.books().invoices().stream()
            .filter(Invoice::issued)
            .max(Comparator.comparing(i -> i.issue().orElseThrow().sequence()))
            .orElseThrow();
    Change draft = Crediting.draft(now, ids, wrong.id());
    if (done(draft)) {
      Invoice credit = ((Change.Ready) draft).put(Invoice.class).orElseThrow();
      done(Issuing.issue(now, credit.id(), LocalDate.of(2025, 12, 1)));
    }
  }

  private void pay(Id<Invoice> id, LocalDate issued, int n) {
    Invoice invoice =
        now.books().invoices().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    Money open = Accounts.of(now).open(invoice);
    LocalDate day = issued.plusDays(between(4, 24));
    if (!day.isBefore(Draft.AS_OF) || n % 9 == 5) {
      return;
    }
    Money amount =
        n % 7 == 3
            ? new Money(open.minor() / 2, open.currency())
            : n % 11 == 4 ? open.plus(dollars("20.00")) : open;
    Payment.How[] hows = Payment.How.values();
    done(
        Receiving.paying(
            now,
            ids,
            new Receiving.Received(
                invoice.party(),
                day,
                amount,
                hows[random.nextInt(hows.length)],
                Optional.empty(),
                ""),
            id));
  }

  private void trips() {
    List<Visit> visits =
        now.visits().stream()
            .filter(v -> v.status() == VisitStatus.DONE && v.day().getYear() == 2026)
            .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::id))
            .limit(12)
            .toList();
    for (Visit visit : visits) {
      put(
          new Trip(
              ids.next(),
              new NewKeys(now).next(Kind.TRIP, "trip", visit.day()),
              visit.day(),
              between(4, 38) * 1000,
              Optional.of(between(10, 55)),
              Optional.of(visit.id()),
              "there and back"));
    }
  }

  private void expenses() {
    expense("2026-03-18", Expense.Sort.PRODUCTS, "polymer sealant B, 5 l", "186.00");
    expense("2026-03-18", Expense.Sort.CONSUMABLES, "microfibre cloths, 40", "62.40");
    expense("2026-03-30", Expense.Sort.CONSUMABLES, "wool pads 6.5 in, 6", "88.50");
    expense("2026-04-11", Expense.Sort.TOOLS, "extension lead with ground-fault breaker", "74.90");
    expense("2026-04-22", Expense.Sort.FEES, "berth day ticket for the work boat", "15.00");
  }

  private void expense(String day, Expense.Sort sort, String what, String amount) {
    Money paid = dollars(amount);
    put(
        new Expense(
            ids.next(),
            new NewKeys(now).next(Kind.EXPENSE, "expense", day),
            LocalDate.parse(day),
            sort,
            what,
            sort == Expense.Sort.FEES ? "Oyster Hard" : "a chandler",
            paid,
            sort == Expense.Sort.FEES
                ? Optional.empty()
                : Optional.of(new Money(paid.minor() * 6 / 106, paid.currency())),
            Optional.empty(),
            ""));
  }
}
