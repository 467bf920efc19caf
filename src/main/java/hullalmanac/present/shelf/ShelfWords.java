package hullalmanac.present.shelf;

import hullalmanac.core.life.LivesSeen;
import hullalmanac.core.life.ProductLives;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.report.Caution;
import hullalmanac.core.report.MonthWords;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A product's page in words. */
record ShelfWords(Fleet fleet) {
  ShelfState.Page page(Id<Product> id) {
    Product product =
        fleet.almanac().products().stream()
            .filter(p -> p.id().equals(id))
            .findFirst()
            .orElseThrow();
    Optional<ProductLives> lives =
        fleet.lives().stream().filter(l -> l.product().id().equals(id)).findFirst();
    List<String> cautions = new ArrayList<>();
    Caution.of(product).forEach(c -> cautions.add(c.text() + " (" + c.source() + ")"));
    cautions.add(Caution.LABEL_FIRST);
    return new ShelfState.Page(
        product.name(),
        product.kind().words(),
        lives.map(this::sentence).orElse("Its coats are not forecast from weather."),
        lives.map(l -> more(l.seen())).orElse(""),
        lives.map(ProductLives::survival),
        lives.map(l -> new LivesTables(l.survival()).all()).orElse(List.of()),
        product.labelMonths(),
        lives.map(ShelfWords::places).orElse(List.of()),
        facts(product),
        cautions);
  }

  private String sentence(ProductLives lives) {
    LivesSeen seen = lives.seen();
    String label =
        lives.product().labelMonths().map(m -> "the label says " + MonthWords.of(m)).orElse("");
    if (seen.tooFew()) {
      String coats =
          seen.coats() == 0
              ? "none of your coats tells anything yet"
              : seen.coats() == 1
                  ? "only one of your coats tells anything"
                  : seen.coats() + " of your coats tell anything, " + seen.lapsed() + " seen bare";
      return "Too few to say: " + coats + (label.isEmpty() ? "." : "; " + label + ".");
    }
    String half = MonthWords.of(homeMonths(lives));
    String where = home(lives).map(p -> " in an open slip at " + p.harbour().name()).orElse("");
    return "Of "
        + seen.coats()
        + " coats "
        + seen.lapsed()
        + " have been seen bare; half last "
        + half
        + where
        + (label.isEmpty() ? "." : "; " + label + ".");
  }

  /** The harbour one speaks of first: the first in the record. */
  private static Optional<ProductLives.Place> home(ProductLives lives) {
    return lives.places().stream().filter(p -> p.cover() == Cover.OPEN).findFirst();
  }

  /** Months that half of the coats last in an open slip at home. */
  static double homeMonths(ProductLives lives) {
    return home(lives).map(ProductLives.Place::months).orElse(lives.seen().middleMonths());
  }

  private static String more(LivesSeen seen) {
    return "At the reference berth, 1 in 10 are bare by "
        + MonthWords.of(seen.early() * seen.middleMonths() / seen.middle())
        + ", half by "
        + MonthWords.of(seen.middleMonths())
        + ", 9 in 10 by "
        + MonthWords.of(seen.late() * seen.middleMonths() / seen.middle())
        + ".";
  }

  /** A row a harbour: its name, months open, months covered. */
  private static List<List<String>> places(ProductLives lives) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (ProductLives.Place place : lives.places()) {
      rows.computeIfAbsent(
              place.harbour().name(), n -> new ArrayList<>(List.of(place.harbour().name())))
          .add(MonthWords.of(place.months()));
    }
    return List.copyOf(rows.values());
  }

  private static List<List<String>> facts(Product product) {
    List<List<String>> facts = new ArrayList<>();
    Product.Handling h = product.handling();
    product
        .labelMonths()
        .ifPresent(
            m ->
                facts.add(
                    List.of(
                        "Label",
                        MonthWords.of(m) + (product.labelForCars() ? ", speaking of cars" : ""))));
    product.limitMonths().ifPresent(m -> facts.add(List.of("Never past", MonthWords.of(m))));
    if (h.dwellMin().isPresent() || h.dwellMax().isPresent()) {
      facts.add(List.of("Dwell", range(h.dwellMin(), h.dwellMax(), " minutes")));
    }
    h.cureHours().ifPresent(c -> facts.add(List.of("Keep dry", c + " hours")));
    if (h.minCelsius().isPresent() || h.maxCelsius().isPresent()) {
      facts.add(List.of("Surface", range(h.minCelsius(), h.maxCelsius(), " °C")));
    }
    h.maxHumidity().ifPresent(m -> facts.add(List.of("Humidity", "up to " + m + " %")));
    h.partsWater()
        .ifPresent(
            w ->
                facts.add(
                    List.of(
                        "Dilution", "1 part and " + w + " parts water, " + (w + 1) + " in all")));
    if (product.nonSlip()) {
      facts.add(List.of("Non-skid", "marked non-slip"));
    }
    return facts;
  }

  private static String range(Optional<Integer> low, Optional<Integer> high, String unit) {
    if (low.isPresent() && high.isPresent()) {
      return low.get() + " to " + high.get() + unit;
    }
    return low.map(l -> "from " + l).orElseGet(() -> "up to " + high.orElseThrow()) + unit;
  }
}
