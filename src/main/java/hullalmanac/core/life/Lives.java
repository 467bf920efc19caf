package hullalmanac.core.life;

import hullalmanac.core.life.fit.Lifetime;
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

  /**
   * @param bare whether it was seen to have lapsed
   */
  record Taught(Coat coat, Lesson lesson, boolean bare, Optional<Lifetime> life) {}

  /** What is known of one product. */
  private static final class OfProduct {
    private final ProductLife life;
    private final Map<Id<Coat>, Lesson> lessons = new HashMap<>();
    private final Map<Double, LifeChances> predictives = new HashMap<>();
    private final LivesSeen seen;
    private final List<Lifetime> bracketed;

    OfProduct(Product product, List<Taught> coats) {
      coats.forEach(t -> lessons.put(t.coat().id(), t.lesson()));
      life = ProductLife.taught(product, List.copyOf(lessons.values()));
      bracketed = coats.stream().flatMap(t -> t.life().stream()).toList();
      LifeChances chances = predictive(0);
      seen =
          new LivesSeen(
              coats.size(),
              (int) coats.stream().filter(Taught::bare).count(),
              chances.quantile(0.10),
              chances.quantile(0.50),
              chances.quantile(0.90));
    }

    LifeChances predictive(double clockSd) {
      return predictives.computeIfAbsent(clockSd, life::predictive);
    }
  }

  /** What labels and practice say, before any coat is looked at. */
  static Lives untaught() {
    return new Lives();
  }

  /** Learns from coats. */
  static Lives of(Map<Product, List<Taught>> coats) {
    Lives lives = new Lives();
    coats.forEach(
        (product, list) -> lives.products.put(product.id(), new OfProduct(product, list)));
    return lives;
  }

  /** What is known of the lives of a product's coats. */
  LivesSeen seen(Product product) {
    return of(product).seen;
  }

  /** What a product's coats have shown, for pictures. */
  Survival survival(Product product) {
    OfProduct known = of(product);
    return Survival.of(known.bracketed, known.predictive(0));
  }

  /** Chances of the life of a coat before it was looked at: by what the others taught. */
  LifeChances predictive(Product product, Coat coat, double clockSd) {
    OfProduct known = of(product);
    return Optional.ofNullable(known.lessons.get(coat.id()))
        .map(own -> known.life.predictiveWithout(own, clockSd))
        .orElseGet(() -> known.predictive(clockSd));
  }

  private OfProduct of(Product product) {
    return products.computeIfAbsent(product.id(), id -> new OfProduct(product, List.of()));
  }
}
