package hullalmanac.core.paper;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.Caution;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.report.SurfaceNames;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A care card for the owner after a visit: what was laid and how long it stays dry, how to wash
 * without stripping it, what its maker asks for and when, what comes next.
 */
public final class CarePaper {
  /** Common practice, no source. */
  private static final List<String> WASHING =
      List.of(
          "Rinse salt and dust off with fresh water first, from the top down.",
          "Wash with a mild soap without wax, thinned as its label says, and a soft mitt or brush.",
          "Keep two buckets, so that grit does not come back onto the surface.",
          "Rinse before the soap dries, out of the sun where you can, and dry with a soft cloth.",
          "Bird droppings, fuel and leaves come off the same day, with water and soap alone.");

  private static final List<String> NOT =
      List.of(
          "No degreaser, traffic-film or teak cleaner, bleach, acid or solvent on these surfaces:"
              + " each takes the coat off or thins it.",
          "No scouring pad, hard brush or polish: they cut through the coat.",
          "No pressure nozzle near seals, vents, lettering and edges; elsewhere keep it a good arm"
              + " away.",
          "No wax, sealant or spray over it without asking: it can hide how the coat is doing.");

  private final Almanac almanac;
  private final Visit visit;
  private final LocalDate today;
  private final Lookups lookups;
  private final List<Coat> laid;
  private final List<Block> blocks = new ArrayList<>();

  private CarePaper(Almanac almanac, Visit visit, LocalDate today) {
    this.almanac = almanac;
    this.visit = visit;
    this.today = today;
    lookups = new Lookups(almanac, today);
    laid =
        almanac.coats().stream()
            .filter(c -> c.visit().equals(Optional.of(visit.id())))
            .sorted(Comparator.comparing(Coat::since).thenComparing(Coat::key))
            .toList();
  }

  /**
   * The card of a visit.
   *
   * @param coats forecasts of the record, in order of their early ends
   */
  public static Paper of(Almanac almanac, List<CoatForecast> coats, LocalDate today, Visit visit) {
    return new CarePaper(almanac, visit, today).paper(coats);
  }

  private Paper paper(List<CoatForecast> coats) {
    Boat boat = lookups.boat(visit.boat());
    blocks.add(new Block.Words("After the visit of " + DateWords.dated(visit.day())));
    laid();
    blocks.add(new Block.Heading(2, "Washing that does not strip the coat"));
    blocks.add(new Block.Points(WASHING));
    blocks.add(new Block.Heading(2, "What not to do"));
    blocks.add(new Block.Points(NOT));
    cautions();
    duties(coats);
    next(CoatForecast.leading(coats, boat.id()));
    blocks.add(
        new Block.Note(
            "Common practice. "
                + Caution.LABEL_FIRST
                + " Wash-water goes only where the harbour lets it go."));
    return Paper.of(almanac.business(), "Care card", boat.name(), blocks);
  }

  private void laid() {
    if (laid.isEmpty()) {
      blocks.add(new Block.Words("No coat was laid in this visit; it may get wet at once."));
      return;
    }
    Map<List<Object>, List<Surface>> alike = new LinkedHashMap<>();
    for (Coat c : laid) {
      alike
          .computeIfAbsent(List.of(c.product(), c.since()), k -> new ArrayList<>())
          .add(lookups.surface(c.surface()));
    }
    blocks.add(new Block.Heading(2, "What was laid, and how long it stays dry"));
    blocks.add(
        new Block.Table(
            "coats that were laid",
            List.of(
                Block.Column.words("Where"),
                Block.Column.words("What", 24),
                Block.Column.words("When", 18),
                Block.Column.words("Keep dry until", 24)),
            alike.entrySet().stream()
                .map(e -> row((Coat) first(e.getValue(), e.getKey()), e.getValue()))
                .toList(),
            List.of()));
  }

  private Object first(List<Surface> on, List<Object> productAndDay) {
    return laid.stream()
        .filter(c -> c.surface().equals(on.get(0).id()))
        .filter(c -> productAndDay.equals(List.of(c.product(), c.since())))
        .findFirst()
        .orElseThrow();
  }

  private List<String> row(Coat coat, List<Surface> on) {
    Product product = lookups.product(coat.product());
    return List.of(
        Texts.capital(SurfaceNames.of(on)),
        product.name(),
        DateWords.dated(coat.since()),
        product
            .handling()
            .cureHours()
            .filter(h -> h > 0)
            .map(h -> "the end of " + DateWords.dated(dryUntil(coat, h)))
            .orElse("as its label says"));
  }

  /** Hours count from the end of the day of work, whose hour nobody wrote down. */
  private static LocalDate dryUntil(Coat coat, int hours) {
    return coat.since().plusDays((hours + 23) / 24);
  }

  private void cautions() {
    List<String> texts = new ArrayList<>();
    boolean slippery =
        laid.stream()
            .map(c -> lookups.product(c.product()))
            .flatMap(p -> Caution.of(p).stream())
            .anyMatch(c -> c.text().startsWith("Slippery"));
    if (slippery) {
      texts.add("Coated surfaces are slippery when wet: do not walk on them.");
    }
    texts.add(
        "Never mix cleaners: acid with bleach, or bleach with ammonia, gives off poisonous gas.");
    blocks.add(new Block.Cautions(texts));
  }

  private void duties(List<CoatForecast> coats) {
    List<Id<Coat>> hers =
        coats.stream()
            .filter(f -> f.surface().boat().equals(visit.boat()))
            .map(f -> f.coat().id())
            .toList();
    List<Duty> open =
        almanac.duties().stream()
            .filter(d -> d.doneOn().isEmpty() && hers.contains(d.coat()))
            .sorted(Comparator.comparing(Duty::dueOn).thenComparing(Duty::key))
            .toList();
    if (open.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, "What the makers ask for"));
    Map<String, List<Surface>> lines = new LinkedHashMap<>();
    for (Duty d : open) {
      Coat coat = lookups.coat(d.coat());
      lines
          .computeIfAbsent(
              Texts.capital(d.kind().words())
                  + " by "
                  + DateWords.dated(d.dueOn())
                  + ", or the promise of "
                  + lookups.product(coat.product()).name()
                  + " lapses: ",
              k -> new ArrayList<>())
          .add(lookups.surface(coat.surface()));
    }
    blocks.add(
        new Block.Points(
            lines.entrySet().stream()
                .map(e -> e.getKey() + SurfaceNames.of(e.getValue()))
                .collect(Collectors.toList())));
  }

  private void next(Optional<CoatForecast> leading) {
    leading.ifPresent(
        f -> {
          blocks.add(new Block.Heading(2, "What comes next"));
          blocks.add(
              new Block.Words(
                  Texts.capital(f.surface().words())
                      + ": "
                      + new ForecastWords(today).due(f)
                      + ". "
                      + Paper.FORECAST));
        });
  }
}
