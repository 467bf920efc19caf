package hullalmanac.core.supply;

import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.ProductUse;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

/**
 * What is left of everything, and whether it is enough for what is planned until a day.
 *
 * @param until the last day of the plans that are looked at
 * @param bottles in the order of their products' names
 * @param enough a row a product that the plans need, by name
 * @param pads by what they are called
 * @param visits planned until that day
 * @param likeLast those of them without steps that are reckoned like the last of their care plan
 * @param unknown those of them of which nobody knows yet all that they need: no steps, a step
 *     without its product, or one on the whole of a boat whose surfaces nobody wrote down
 * @param noBottle how many steps that were done took a product of which none of its bottles in the
 *     record was open
 */
public record Supplies(
    LocalDate until,
    List<BottleLeft> bottles,
    List<Enough> enough,
    List<PadWear> pads,
    int visits,
    int likeLast,
    int unknown,
    int noBottle) {
  public Supplies {
    bottles = List.copyOf(bottles);
    enough = List.copyOf(enough);
    pads = List.copyOf(pads);
  }

  /**
   * Reckons it from the record as it stands on a day. Pure and possibly long. A visit that was to
   * be done before today and still is planned is needed as well.
   */
  public static Supplies of(Almanac almanac, LocalDate today, LocalDate until) {
    Draws draws = new Draws(almanac, new ProductUse(Experience.of(almanac, today)));
    Stock stock = Stock.of(almanac, draws);
    Planned planned = Planned.of(almanac, draws, until);
    List<Draw> unheld =
        stock.noBottle().stream().filter(d -> hasBottle(almanac, d.product())).toList();
    Comparator<BottleLeft> byName =
        Comparator.comparing(b -> b.product().name(), String.CASE_INSENSITIVE_ORDER);
    return new Supplies(
        until,
        stock.bottles().stream()
            .sorted(
                byName
                    .thenComparing(b -> b.bottle().useBy().orElse(LocalDate.MAX))
                    .thenComparing(b -> b.bottle().key()))
            .toList(),
        enough(planned, draws, stock),
        pads(almanac, draws, planned),
        planned.visits().size(),
        planned.like().size(),
        (int) planned.visits().stream().filter(v -> unknown(v, draws, planned)).count(),
        Stock.steps(unheld, true) + Stock.steps(unheld, false));
  }

  private static boolean unknown(Visit visit, Draws draws, Planned planned) {
    Visit last = planned.like().get(visit);
    if (last != null) {
      return draws.steps(last).stream()
          .anyMatch(s -> draws.untold(last, s, surface -> Draws.done(last, surface)));
    }
    return draws.steps(visit).isEmpty()
        || draws.steps(visit).stream()
            .filter(s -> !s.day().isAfter(planned.until()))
            .anyMatch(s -> draws.untold(visit, s, surface -> Draws.planned(visit, surface)));
  }

  private static boolean hasBottle(Almanac almanac, Product product) {
    return almanac.bottles().stream().anyMatch(b -> b.product().equals(product.id()));
  }

  private static List<Enough> enough(Planned planned, Draws draws, Stock stock) {
    Map<Product, List<Draw>> needed =
        planned.draws(draws).stream()
            .filter(draws::takes)
            .collect(Collectors.groupingBy(Draw::product));
    return needed.entrySet().stream()
        .sorted(
            Comparator.comparing(
                (Map.Entry<Product, List<Draw>> e) -> e.getKey().name(),
                String.CASE_INSENSITIVE_ORDER))
        .map(e -> enough(e.getKey(), e.getValue(), stock, planned.until()))
        .toList();
  }

  private static Enough enough(Product product, List<Draw> needed, Stock stock, LocalDate until) {
    Enough.Need need = Enough.Need.NONE;
    for (Draw draw : needed) {
      need = draw.ml().map(need::plus).orElse(need);
    }
    List<BottleLeft> hers =
        stock.bottles().stream()
            .filter(b -> b.product().id().equals(product.id()))
            .filter(b -> b.left().map(ml -> ml > 0).orElse(true))
            .toList();
    Optional<Double> left =
        hers.stream()
            .filter(b -> b.usable(until))
            .flatMap(b -> b.left().stream())
            .reduce(Double::sum);
    boolean known =
        stock.bottles().stream()
            .anyMatch(b -> b.product().id().equals(product.id()) && b.from().isPresent());
    return new Enough(
        product,
        need,
        Stock.steps(needed, true),
        Stock.steps(needed, false),
        known ? Optional.of(left.orElse(0.0)) : Optional.empty(),
        hers.stream().filter(b -> b.past(until)).toList(),
        hers.stream().filter(b -> b.openTooLong(until)).toList(),
        Stock.origins(needed));
  }

  /** Uses of a kind of pad, done and planned. */
  private static final class Count {
    private int done;
    private int planned;
    private boolean paper;
  }

  private static List<PadWear> pads(Almanac almanac, Draws draws, Planned planned) {
    Map<String, Count> pads = new TreeMap<>();
    for (Visit visit : almanac.visits()) {
      for (Step step : draws.steps(visit)) {
        Optional<Count> count = count(pads, step, draws.product(step));
        if (count.isPresent()) {
          count.get().done += uses(visit, step, draws, Draws::done);
          if (!step.day().isAfter(planned.until())) {
            count.get().planned += uses(visit, step, draws, Draws::planned);
          }
        }
      }
    }
    for (Visit last : planned.like().values()) {
      for (Step step : draws.steps(last)) {
        count(pads, step, draws.product(step))
            .ifPresent(count -> count.planned += uses(last, step, draws, Draws::done));
      }
    }
    List<PadWear> all = new ArrayList<>();
    pads.forEach(
        (pad, n) -> all.add(new PadWear(pad, n.done, n.planned, n.paper ? 1 : PadWear.LIFE)));
    return all;
  }

  private static Optional<Count> count(
      Map<String, Count> pads, Step step, Optional<Product> product) {
    Optional<Count> count =
        (worksWithPads(step) ? ProductUse.pad(step, product) : Optional.<String>empty())
            .map(pad -> pads.computeIfAbsent(pad.toLowerCase(Locale.ROOT), name -> new Count()));
    count.ifPresent(c -> c.paper |= ProductUse.paper(step, product));
    return count;
  }

  /** Brushes and mitts of cleaning are no pads (common practice, no source). */
  private static boolean worksWithPads(Step step) {
    return switch (step.kind()) {
      case CUT, POLISH, PROTECT, TOP -> true;
      default -> false;
    };
  }

  private static int uses(Visit visit, Step step, Draws draws, BiPredicate<Visit, Surface> counts) {
    List<Surface> surfaces =
        draws.surfaces(visit, step).stream().filter(s -> counts.test(visit, s)).toList();
    if (surfaces.isEmpty()) {
      return 0;
    }
    if (step.kind() == StepKind.PROTECT || step.kind() == StepKind.TOP) {
      return step.passes().orElse(1);
    }
    Optional<Product> product = draws.product(step);
    return surfaces.stream()
        .mapToInt(
            s -> ProductUse.pads(step, product, draws.area(s).map(Area::squareMetres).orElse(0.0)))
        .sum();
  }
}
