package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes a row out with everything that belongs to it. Rows that stay no longer speak of it: a visit
 * loses a surface, a photo too, a finished visit its care plan. When a visit goes, coats that it
 * had ended are in service again.
 */
public final class Removal {
  private static final int WHERE_MOST = 3;

  private final Almanac almanac;
  private final Set<Row> gone;
  private final Set<Ref> refs;
  private final Map<Ref, Row> put = new LinkedHashMap<>();

  /** A row of some kind: ids are unique among rows of one kind only. */
  private record Ref(Class<? extends Row> kind, Id<? extends Row> id) {
    static Ref to(Row row) {
      return new Ref(row.getClass(), row.id());
    }
  }

  private Removal(Almanac almanac, Set<Row> gone) {
    this.almanac = almanac;
    this.gone = gone;
    refs = gone.stream().map(Ref::to).collect(Collectors.toSet());
  }

  /** Takes out a row of the record, found by its kind and id; a row that is not there is gone. */
  public static Change of(Almanac almanac, Row row) {
    Optional<Row> found =
        almanac.rows().stream()
            .filter(r -> r.id().equals(row.id()) && Kind.of(r) == Kind.of(row))
            .findFirst();
    if (found.isEmpty()) {
      return new Change.Ready(Edit.put(List.of()));
    }
    Set<String> where = uses(almanac, found.get());
    if (!where.isEmpty()) {
      return Change.refused(inUse(found.get(), where));
    }
    Set<Row> gone = Belongings.of(almanac, found.get());
    Set<String> fast = new BooksLoosened(almanac, gone).holdingFast();
    if (!fast.isEmpty()) {
      return Change.refused(heldFast(found.get(), fast));
    }
    Removal removal = new Removal(almanac, gone);
    removal.loosen();
    return Change.checked(almanac, removal.edit());
  }

  private static Problem inUse(Row row, Set<String> where) {
    return inUse(row, where, "Take those out first, or keep it");
  }

  /** What was issued and paid stays, and so does what it speaks of. */
  private static Problem heldFast(Row row, Set<String> where) {
    return inUse(
        row,
        where,
        row instanceof Boat
            ? "Invoices and payments stay, so keep her and write down that she is sold or retired"
            : "Invoices and payments stay, so keep it");
  }

  private static Problem inUse(Row row, Set<String> where, String advice) {
    String some = where.stream().limit(WHERE_MOST).collect(Collectors.joining(", "));
    int more = where.size() - WHERE_MOST;
    return new Problem(
        Kind.of(row),
        row.key(),
        "id",
        "the "
            + Kind.of(row).one()
            + " "
            + row.key()
            + " is in use: "
            + some
            + (more > 0 ? " and " + more + " more" : ""),
        advice);
  }

  /** Where a harbour, product or bottle is used, in words. */
  private static Set<String> uses(Almanac almanac, Row row) {
    Set<String> where = new TreeSet<>();
    if (row instanceof Harbour harbour) {
      almanac.berths().stream()
          .filter(b -> b.harbour().equals(harbour.id()))
          .forEach(b -> where.add("boat " + boat(almanac, b.boat())));
    } else if (row instanceof Product product) {
      Set<Id<Bottle>> bottles =
          almanac.bottles().stream()
              .filter(b -> b.product().equals(product.id()))
              .map(Bottle::id)
              .collect(Collectors.toSet());
      addUses(almanac, Optional.of(product.id()), bottles, where);
    } else if (row instanceof Bottle bottle) {
      addUses(almanac, Optional.empty(), Set.of(bottle.id()), where);
    }
    return where;
  }

  private static void addUses(
      Almanac almanac, Optional<Id<Product>> product, Set<Id<Bottle>> bottles, Set<String> where) {
    Map<Id<Visit>, Visit> visits =
        almanac.visits().stream().collect(Collectors.toMap(Visit::id, v -> v));
    Map<Id<Surface>, Surface> surfaces =
        almanac.surfaces().stream().collect(Collectors.toMap(Surface::id, s -> s));
    almanac.steps().stream()
        .filter(
            s ->
                (product.isPresent() && s.product().equals(product))
                    || s.bottle().map(bottles::contains).orElse(false))
        .forEach(s -> where.add("visit " + visits.get(s.visit()).key()));
    almanac.coats().stream()
        .filter(
            c ->
                product.map(c.product()::equals).orElse(false)
                    || c.bottle().map(bottles::contains).orElse(false))
        .forEach(c -> where.add("coat on " + boat(almanac, surfaces.get(c.surface()).boat())));
  }

  private static String boat(Almanac almanac, Id<Boat> id) {
    return InRecord.row(almanac.boats(), id).name();
  }

  private Edit edit() {
    List<Row> away = new ArrayList<>(gone);
    Collections.reverse(away);
    return Edit.put(List.copyOf(put.values())).and(Edit.remove(away));
  }

  /** Makes the rows that stay agree with what goes. */
  private void loosen() {
    each(Visit.class).forEach(this::restore);
    each(Finding.class).forEach(this::forget);
    almanac.coats().stream()
        .filter(c -> stays(c) && goes(Visit.class, c.visit()))
        .forEach(c -> put(Altered.withoutVisit(current(c))));
    almanac.visits().stream().filter(this::stays).forEach(this::loosen);
    almanac.steps().stream().filter(this::stays).forEach(this::loosen);
    almanac.photos().stream()
        .filter(p -> stays(p) && goes(Surface.class, p.surface()))
        .forEach(p -> put(Altered.withoutSurface(p)));
    almanac.reminders().stream().filter(this::stays).forEach(this::loosen);
    new BooksLoosened(almanac, gone).changed().forEach(this::put);
    each(Visit.class).forEach(this::skip);
  }

  private <R extends Row> Stream<R> each(Class<R> kind) {
    return gone.stream().filter(kind::isInstance).map(kind::cast);
  }

  private boolean stays(Row row) {
    return !gone.contains(row);
  }

  private <R extends Row> boolean goes(Class<R> kind, Optional<Id<R>> id) {
    return id.map(i -> goes(kind, i)).orElse(false);
  }

  private <R extends Row> boolean goes(Class<R> kind, Id<R> id) {
    return refs.contains(new Ref(kind, id));
  }

  private void put(Row row) {
    put.put(Ref.to(row), row);
  }

  private Coat current(Coat coat) {
    return (Coat) put.getOrDefault(Ref.to(coat), coat);
  }

  private void restore(Visit visit) {
    for (Coat coat : new Traces(almanac, visit).without()) {
      if (!goes(Coat.class, coat.id()) && !almanac.coats().contains(coat)) {
        put(coat);
      }
    }
  }

  /** What a coat showed in its last hour is not known any more when that look is taken out. */
  private void forget(Finding finding) {
    boolean water = finding.seen() instanceof Observation.WaterSeen;
    if (!water || finding.visit().isEmpty() || goes(Visit.class, finding.visit())) {
      return;
    }
    Traces traces = new Traces(almanac, InRecord.row(almanac.visits(), finding.visit().get()));
    almanac.coats().stream()
        .filter(c -> c.surface().equals(finding.surface()) && stays(c) && traces.ended(c))
        .filter(c -> c.ending().orElseThrow().seen() == CoatsOfVisit.state(finding))
        .forEach(c -> put(notLooked(c)));
  }

  private static Coat notLooked(Coat coat) {
    Coat.Ending e = coat.ending().orElseThrow();
    return Altered.ending(
        coat, Optional.of(new Coat.Ending(e.on(), e.how(), EndState.NOT_LOOKED, e.reason())));
  }

  private void loosen(Visit visit) {
    List<Visit.Part> parts =
        visit.surfaces().stream().filter(p -> !goes(Surface.class, p.surface())).toList();
    Optional<Id<CarePlan>> plan = visit.plan().filter(p -> !goes(CarePlan.class, p));
    if (!parts.equals(visit.surfaces()) || !plan.equals(visit.plan())) {
      put(Altered.parts(visit, plan, parts));
    }
  }

  private void loosen(Step step) {
    List<Id<Surface>> left = step.surfaces().stream().filter(s -> !goes(Surface.class, s)).toList();
    if (!left.equals(step.surfaces())) {
      put(Altered.step(step, step.day(), left));
    }
  }

  /** What was said stays, of what is still there. */
  private void loosen(Reminder reminder) {
    List<Reminder.About> left =
        reminder.about().stream()
            .filter(a -> !goes(Coat.class, a.coat()) && !goes(Duty.class, a.duty()))
            .filter(a -> !goes(CarePlan.class, a.plan()))
            .toList();
    Optional<Id<Party>> party = reminder.party().filter(p -> !goes(Party.class, p));
    if (!left.equals(reminder.about()) || !party.equals(reminder.party())) {
      put(
          new Reminder(
              reminder.id(), reminder.key(), reminder.boat(), party, left, reminder.log()));
    }
  }

  /** The day of its care plan that a planned visit stood for falls out when it is taken out. */
  private void skip(Visit visit) {
    if (visit.status() != VisitStatus.PLANNED
        || visit.plan().isEmpty()
        || goes(CarePlan.class, visit.plan())) {
      return;
    }
    CarePlan plan = InRecord.row(almanac.carePlans(), visit.plan().get());
    List<LocalDate> skips = new ArrayList<>(plan.skips());
    skips.add(visit.moves().stream().findFirst().map(Visit.Move::from).orElse(visit.day()));
    put(Altered.skipping(plan, skips));
  }
}
