package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Trip;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What rows about money become when others are taken out, and which rows these hold fast. */
final class BooksLoosened {
  private final Almanac almanac;
  private final Set<Row> gone;

  BooksLoosened(Almanac almanac, Set<Row> gone) {
    this.almanac = almanac;
    this.gone = gone;
  }

  private boolean goes(Class<? extends Row> kind, Id<?> id) {
    return gone.stream().anyMatch(r -> kind.isInstance(r) && r.id().equals(id));
  }

  private boolean stays(Row row) {
    return !gone.contains(row);
  }

  /**
   * Rows that hold fast what is to go, in words: issued invoices what they name, payments who paid.
   */
  Set<String> holdingFast() {
    Set<String> where = new TreeSet<>();
    almanac.books().invoices().stream()
        .filter(Invoice::issued)
        .filter(i -> stays(i) && names(i))
        .forEach(i -> where.add(i.words()));
    almanac.books().payments().stream()
        .filter(p -> stays(p) && goes(Party.class, p.party()))
        .forEach(p -> where.add("payment of " + p.day()));
    return where;
  }

  private boolean names(Invoice invoice) {
    return goes(Party.class, invoice.party())
        || invoice.boat().filter(b -> goes(hullalmanac.core.record.Boat.class, b)).isPresent()
        || invoice.lines().stream()
            .flatMap(l -> l.visit().stream())
            .anyMatch(v -> goes(Visit.class, v));
  }

  /** The rows that stay and have to change. */
  List<Row> changed() {
    List<Row> changed = new ArrayList<>();
    almanac.books().estimates().forEach(e -> add(changed, e, loose(e)));
    almanac.books().invoices().stream()
        .filter(i -> !i.issued())
        .forEach(i -> add(changed, i, With.component(i, "lines", loose(i.lines()))));
    for (Payment payment : almanac.books().payments()) {
      Optional<Id<Estimate>> estimate = payment.estimate().filter(e -> !goes(Estimate.class, e));
      add(changed, payment, With.component(payment, "estimate", estimate));
    }
    for (Trip trip : almanac.books().trips()) {
      add(changed, trip, With.component(trip, "visit", visit(trip.visit())));
    }
    for (Expense expense : almanac.books().expenses()) {
      add(changed, expense, With.component(expense, "visit", visit(expense.visit())));
    }
    return changed;
  }

  private void add(List<Row> changed, Row before, Row after) {
    if (stays(before) && !before.equals(after)) {
      changed.add(after);
    }
  }

  private Optional<Id<Visit>> visit(Optional<Id<Visit>> visit) {
    return visit.filter(v -> !goes(Visit.class, v));
  }

  private List<PriceLine> loose(List<PriceLine> lines) {
    return lines.stream()
        .map(l -> With.component(l, "visit", visit(l.visit())))
        .collect(Collectors.toList());
  }

  private Estimate loose(Estimate estimate) {
    List<Estimate.Option> options = estimate.options().stream().map(this::loose).toList();
    Estimate changed = With.component(estimate, "options", options);
    changed = With.component(changed, "party", estimate.party().filter(p -> !goes(Party.class, p)));
    return With.component(changed, "visit", visit(estimate.visit()));
  }

  /**
   * An option that names no surface is of the whole boat; one that loses its last has no step left
   * either.
   */
  private Estimate.Option loose(Estimate.Option option) {
    List<Id<Surface>> surfaces =
        option.surfaces().stream().filter(s -> !goes(Surface.class, s)).toList();
    boolean lost = surfaces.isEmpty() && !option.surfaces().isEmpty();
    List<StepKind> steps = lost ? List.of() : option.steps();
    return new Estimate.Option(
        option.name(), steps, surfaces, loose(option.lines()), option.discount(), option.note());
  }
}
