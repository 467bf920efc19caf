package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Collects rows that go together with a row, because they say nothing without it. */
final class Belongings {
  private final Almanac almanac;
  private final Set<Row> gone = new LinkedHashSet<>();

  private Belongings(Almanac almanac) {
    this.almanac = almanac;
  }

  /** A row of a record with all that goes with it, each row after those it refers to. */
  static Set<Row> of(Almanac almanac, Row row) {
    Belongings belongings = new Belongings(almanac);
    belongings.take(row);
    return belongings.gone;
  }

  private void take(Row row) {
    if (!gone.add(row)) {
      return;
    }
    if (row instanceof Party party) {
      takeAll(almanac.roles(), r -> r.party().equals(party.id()));
      takeAll(almanac.books().invoices(), i -> !i.issued() && i.party().equals(party.id()));
    } else if (row instanceof Boat boat) {
      boat(boat);
    } else if (row instanceof Surface surface) {
      takeAll(almanac.coats(), c -> c.surface().equals(surface.id()));
      takeAll(almanac.findings(), f -> f.surface().equals(surface.id()));
      takeAll(almanac.steps(), s -> onlyOn(s, surface));
    } else if (row instanceof CarePlan plan) {
      takeAll(
          almanac.visits(),
          v -> v.plan().equals(Optional.of(plan.id())) && v.status() == VisitStatus.PLANNED);
    } else if (row instanceof Product product) {
      takeAll(almanac.bottles(), b -> b.product().equals(product.id()));
    } else if (row instanceof Visit visit) {
      visit(visit);
    } else if (row instanceof Coat coat) {
      takeAll(almanac.coats(), c -> c.over().equals(Optional.of(coat.id())));
      takeAll(almanac.duties(), d -> d.coat().equals(coat.id()));
    }
  }

  private void boat(Boat boat) {
    takeAll(almanac.roles(), r -> r.boat().equals(boat.id()));
    takeAll(almanac.surfaces(), s -> s.boat().equals(boat.id()));
    takeAll(almanac.berths(), b -> b.boat().equals(boat.id()));
    takeAll(almanac.carePlans(), p -> p.boat().equals(boat.id()));
    takeAll(almanac.visits(), v -> v.boat().equals(boat.id()));
    takeAll(almanac.photos(), p -> p.boat().equals(boat.id()));
    takeAll(almanac.reminders(), r -> r.boat().equals(boat.id()));
    takeAll(almanac.books().estimates(), e -> e.boat().equals(boat.id()));
    takeAll(
        almanac.books().invoices(), i -> !i.issued() && i.boat().equals(Optional.of(boat.id())));
  }

  private void visit(Visit visit) {
    takeAll(almanac.steps(), s -> s.visit().equals(visit.id()));
    takeAll(new Traces(almanac, visit).laid(), c -> true);
    takeAll(almanac.findings(), f -> f.visit().equals(Optional.of(visit.id())));
    takeAll(almanac.photos(), p -> p.visit().equals(Optional.of(visit.id())));
  }

  /** A step that names no surface is of the whole boat, so none may lose its last one. */
  private static boolean onlyOn(Step step, Surface surface) {
    return !step.surfaces().isEmpty() && Set.copyOf(step.surfaces()).equals(Set.of(surface.id()));
  }

  private <R extends Row> void takeAll(List<R> rows, Predicate<R> which) {
    Collection<R> found = rows.stream().filter(which).toList();
    found.forEach(this::take);
  }
}
