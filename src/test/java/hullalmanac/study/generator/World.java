package hullalmanac.study.generator;

import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.WashStrength;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.random.RandomGenerator;

/**
 * What all boats of a fleet share.
 *
 * @param span the days of this world, to fifteen years after the last one that is lived through
 * @param soap with which everything is washed
 */
record World(
    Span span, Law law, List<Haven> havens, List<Make> makes, Product soap, Counter counter) {
  private static final List<Double> SOUTH =
      List.of(0.52, 0.56, 0.62, 0.68, 0.74, 0.82, 0.87, 0.86, 0.77, 0.67, 0.57, 0.50);
  private static final List<Double> MIDDLE =
      List.of(0.38, 0.43, 0.48, 0.53, 0.57, 0.62, 0.68, 0.66, 0.60, 0.51, 0.40, 0.35);
  private static final List<Double> NORTH =
      List.of(0.22, 0.29, 0.36, 0.42, 0.45, 0.46, 0.47, 0.46, 0.42, 0.35, 0.26, 0.19);
  private static final double LOWEST_SPREAD = 0.85;
  private static final double HIGHEST_SPREAD = 1.15;
  private static final double LEAST_FLATTERY = 0.10;
  private static final double MOST_FLATTERY = 0.45;
  private static final double LOWEST_SHAPE = 2.2;
  private static final double HIGHEST_SHAPE = 4.0;

  static World drawn(SplittableRandom random, LocalDate first, LocalDate last, boolean honest) {
    Counter counter = new Counter();
    Span span = new Span(first, last);
    Law law = Law.drawn(random.split());
    List<Haven> havens =
        List.of(
            haven(counter, span, "Quillhaven", 36, SOUTH),
            haven(counter, span, "Skerrymouth", 43, MIDDLE),
            haven(counter, span, "Port Larkin", 50, NORTH));
    SplittableRandom shelf = random.split();
    List<Make> makes = new ArrayList<>();
    makes.add(make(counter, ProductKind.CARNAUBA, 3, honest, shelf));
    makes.add(make(counter, ProductKind.POLYMER_SEALANT, 6, honest, shelf));
    makes.add(make(counter, ProductKind.SILICA_SPRAY, 4, honest, shelf));
    makes.add(make(counter, ProductKind.SILICA_COATING, 16, honest, shelf));
    Product soap =
        product(counter, ProductKind.SOAP, Optional.empty(), Optional.of(WashStrength.MILD));
    return new World(span, law, havens, List.copyOf(makes), soap, counter);
  }

  private static Haven haven(
      Counter counter, Span span, String name, double latitude, List<Double> sunshine) {
    Harbour harbour = new Harbour(counter.next(), counter.key(), name, latitude, sunshine, "");
    return new Haven(harbour, span);
  }

  private static Make make(
      Counter counter, ProductKind kind, double months, boolean honest, RandomGenerator random) {
    double median = months * random.nextDouble(LOWEST_SPREAD, HIGHEST_SPREAD);
    double flattery = random.nextDouble(LEAST_FLATTERY, MOST_FLATTERY);
    double shape = random.nextDouble(LOWEST_SHAPE, HIGHEST_SHAPE);
    double label = honest ? median : median / (1 - flattery);
    Product product = product(counter, kind, Optional.of(label), Optional.empty());
    return new Make(product, median * Make.DAYS_A_MONTH, shape);
  }

  private static Product product(
      Counter counter, ProductKind kind, Optional<Double> label, Optional<WashStrength> wash) {
    return new Product(
        counter.next(),
        counter.key(),
        kind.words(),
        kind,
        label,
        false,
        Optional.empty(),
        wash,
        false,
        false,
        new TreeSet<>(),
        Product.Handling.UNKNOWN,
        "");
  }
}
