package hullalmanac.core.life;

import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a record teaches of the lives of its products, and how one more coat is predicted from it.
 */
final class Lives {
  private final Map<Id<Product>, OfProduct> products = new HashMap<>();
  private final LifePractice practice;
  private BoatEffects boats = new BoatEffects(LifePractice.BOATS_SHARE);

  /**
   * A coat and what it teaches.
   *
   * @param share weight of the lesson
   * @param bare whether it was seen to have lapsed
   */
  record Taught(
      Id<Boat> boat, Coat coat, double share, Lesson lesson, Evidence evidence, boolean bare) {
    /** Whether it was drawn from this very evidence. */
    @SuppressWarnings("ReferenceEquality") // evidence that was kept is the same object
    boolean drawnFrom(Evidence other) {
      return evidence == other;
    }
  }

  private Lives(LifePractice practice) {
    this.practice = practice;
  }

  /** What is known of one product. */
  private static final class OfProduct {
    private final Product product;
    private final List<Taught> coats;
    private final ProductLife life;
    private final Map<Id<Coat>, Lesson> lessons = new HashMap<>();
    private final Map<ProductLife.Spread, LifeChances> predictives = new HashMap<>();
    private final Map<Double, List<double[]>> ofBoats = new HashMap<>();
    private final double sigma;
    private final LivesSeen seen;
    private final List<Lifetime> bracketed;

    OfProduct(Product product, double expectedMonths, List<Taught> coats) {
      this.product = product;
      this.coats = List.copyOf(coats);
      coats.forEach(t -> lessons.put(t.coat().id(), t.lesson()));
      life = ProductLife.taught(expectedMonths, List.copyOf(lessons.values()));
      bracketed = coats.stream().flatMap(t -> t.evidence().life().stream()).toList();
      sigma = life.meanSigma();
      LifeChances chances = predictive(ProductLife.Spread.overall(0));
      seen =
          new LivesSeen(
              coats.size(),
              (int) coats.stream().filter(Taught::bare).count(),
              chances.quantile(0.10),
              chances.quantile(0.50),
              chances.quantile(0.90));
    }

    /** What each of its coats says of its boat, in their order. */
    List<double[]> saysOfBoats(BoatEffects effects) {
      return ofBoats.computeIfAbsent(
          effects.share(),
          share -> {
            LifeChances such = predictive(effects.spread(LifePractice.CLOCK_SD));
            return coats.stream().map(t -> BoatEffect.says(such, t.evidence())).toList();
          });
    }

    LifeChances predictive(ProductLife.Spread spread) {
      return predictives.computeIfAbsent(spread, life::predictive);
    }

    LifeChances predictive(Coat coat, ProductLife.Spread spread) {
      return Optional.ofNullable(lessons.get(coat.id()))
          .map(own -> life.predictiveWithout(own, spread))
          .orElseGet(() -> predictive(spread));
    }
  }

  /** What labels and practice say, before any coat is looked at. */
  static Lives untaught(LifePractice practice) {
    return new Lives(practice);
  }

  /**
   * Learns from coats.
   *
   * @param before what was learned before, from the same practice: kept of products whose lessons
   *     are the same
   */
  static Lives of(Map<Product, List<Taught>> coats, Lives before) {
    Lives lives = new Lives(before.practice);
    coats.forEach(
        (product, list) -> {
          OfProduct kept = before.products.get(product.id());
          boolean same = kept != null && kept.product.equals(product) && kept.coats.equals(list);
          lives.products.put(product.id(), same ? kept : lives.make(product, list));
        });
    lives.boats = BoatEffects.likeliest(share -> lives.effects(coats, share));
    return lives;
  }

  private BoatEffects effects(Map<Product, List<Taught>> coats, double share) {
    BoatEffects effects = new BoatEffects(share);
    coats.forEach(
        (product, list) -> {
          OfProduct known = of(product);
          List<double[]> says = known.saysOfBoats(effects);
          for (int i = 0; i < list.size(); i++) {
            effects.add(list.get(i), says.get(i), known.sigma);
          }
        });
    return effects;
  }

  /** What is known of the lives of a product's coats. */
  LivesSeen seen(Product product) {
    return of(product).seen;
  }

  /** What a product's coats have shown, for pictures. */
  Survival survival(Product product) {
    OfProduct known = of(product);
    return Survival.of(known.bracketed, known.predictive(ProductLife.Spread.overall(0)));
  }

  /** Chances of the life of such a coat on any boat: by what the others taught. */
  LifeChances such(Product product, Coat coat, double clockSd) {
    return of(product).predictive(coat, ProductLife.Spread.overall(clockSd));
  }

  /** Chances of the life of a coat of a boat before it was looked at. */
  LifeChances predictive(Product product, Coat coat, Id<Boat> boat, double clockSd) {
    Optional<BoatEffect> effect = boats.besides(coat, boat);
    if (effect.isEmpty()) {
      return such(product, coat, clockSd);
    }
    OfProduct known = of(product);
    LifeChances such = known.predictive(coat, boats.spread(clockSd));
    return effect.get().on(coat, such, known.sigma);
  }

  /** How much longer coats live on a boat than elsewhere, by her other coats: a factor. */
  double factor(Product product, Coat coat, Id<Boat> boat) {
    return boats
        .besides(coat, boat)
        .map(e -> Math.exp(e.meanBesides(coat, of(product).sigma)))
        .orElse(1.0);
  }

  private OfProduct of(Product product) {
    return products.computeIfAbsent(product.id(), id -> make(product, List.of()));
  }

  private OfProduct make(Product product, List<Taught> coats) {
    return new OfProduct(product, practice.expectedMonths(product), coats);
  }
}
