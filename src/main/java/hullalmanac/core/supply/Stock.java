package hullalmanac.core.supply;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is left in each bottle, and what was drawn out of none.
 *
 * <pre>
 *   left = seen − Σ drawn on later days      or      size − Σ drawn, where nobody looked yet
 * </pre>
 *
 * <p>A look counts the work of its own day. A step that names no bottle draws on the one of its
 * product that was opened last by then (common practice, no source); each draw is out of one bottle
 * or of none.
 *
 * @param noBottle draws of products of which no bottle was open by then
 */
record Stock(List<BottleLeft> bottles, List<Draw> noBottle) {
  Stock {
    bottles = List.copyOf(bottles);
    noBottle = List.copyOf(noBottle);
  }

  static Stock of(Almanac almanac, Draws draws) {
    Map<Id<Bottle>, List<Draw>> out = new HashMap<>();
    List<Draw> none = new ArrayList<>();
    Map<Id<Product>, List<Bottle>> opened =
        almanac.bottles().stream()
            .filter(b -> b.openedOn().isPresent())
            .collect(Collectors.groupingBy(Bottle::product));
    almanac.visits().stream()
        .filter(v -> v.status() != VisitStatus.CANCELLED)
        .flatMap(v -> draws.done(v).stream())
        .filter(draws::takes)
        .forEach(
            draw ->
                bottle(draw, opened.getOrDefault(draw.product().id(), List.of()))
                    .ifPresentOrElse(
                        b -> out.computeIfAbsent(b, id -> new ArrayList<>()).add(draw),
                        () -> none.add(draw)));
    Map<Id<Product>, Product> products =
        almanac.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    return new Stock(
        almanac.bottles().stream()
            .map(b -> left(b, products.get(b.product()), out.getOrDefault(b.id(), List.of())))
            .toList(),
        none);
  }

  private static Optional<Id<Bottle>> bottle(Draw draw, List<Bottle> opened) {
    return draw.step()
        .bottle()
        .or(
            () ->
                opened.stream()
                    .filter(b -> !b.openedOn().orElseThrow().isAfter(draw.day()))
                    .max(
                        Comparator.comparing((Bottle b) -> b.openedOn().orElseThrow())
                            .thenComparing(Bottle::id))
                    .map(Bottle::id));
  }

  private static BottleLeft left(Bottle bottle, Product product, List<Draw> all) {
    BottleLeft.Start start = start(bottle);
    List<Draw> since =
        switch (start) {
          case SEEN -> {
            LocalDate seen = bottle.leftOn().orElseThrow();
            yield all.stream().filter(d -> d.day().isAfter(seen)).toList();
          }
          case FULL -> all;
          case SEEN_SOME_DAY, UNKNOWN -> List.of();
        };
    return new BottleLeft(
        bottle,
        product,
        bottle.leftMl().or(bottle::sizeMl),
        start,
        since.stream().mapToDouble(Draw::middle).sum(),
        steps(since, true),
        steps(since, false),
        origins(since));
  }

  private static BottleLeft.Start start(Bottle bottle) {
    if (bottle.leftMl().isPresent()) {
      return bottle.leftOn().isPresent() ? BottleLeft.Start.SEEN : BottleLeft.Start.SEEN_SOME_DAY;
    }
    return bottle.sizeMl().isPresent() ? BottleLeft.Start.FULL : BottleLeft.Start.UNKNOWN;
  }

  /** How many steps some draws are of, those that are known or those with a gap. */
  static int steps(List<Draw> draws, boolean known) {
    return (int)
        draws.stream()
            .filter(d -> d.ml().isPresent() == known)
            .map(d -> List.of(d.step().visit(), d.step().id()))
            .distinct()
            .count();
  }

  /** What the ml for a square metre rest on, each once. */
  static List<String> origins(List<Draw> draws) {
    Set<String> words = new LinkedHashSet<>();
    draws.forEach(d -> d.ml().ifPresent(ml -> words.add(ml.origin().words())));
    return List.copyOf(words);
  }
}
