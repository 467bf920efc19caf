package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Product;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A product that a stage can be done with.
 *
 * @param leftMl what its bottles still hold together, millilitres; absent where none says so
 */
public record Supply(Product product, Optional<Integer> leftMl) {
  /** The products of a record for a stage, by name; bottles past their use-by do not count. */
  public static List<Supply> of(Almanac almanac, Stage stage, LocalDate today) {
    return almanac.products().stream()
        .filter(p -> Stage.of(p.kind()).equals(Optional.of(stage)))
        .sorted(Comparator.comparing(Product::name).thenComparing(Product::id))
        .map(p -> new Supply(p, left(almanac, p, today)))
        .toList();
  }

  private static Optional<Integer> left(Almanac almanac, Product product, LocalDate today) {
    return almanac.bottles().stream()
        .filter(b -> b.product().equals(product.id()))
        .filter(b -> b.useBy().map(day -> !day.isBefore(today)).orElse(true))
        .flatMap(b -> b.leftMl().or(b::sizeMl).stream())
        .reduce(Integer::sum);
  }

  /** Whether what is left is enough 9 times in 10, as far as the bottles say. */
  public Optional<Boolean> enoughFor(Plan.Need need) {
    return leftMl.map(left -> left >= need.millilitres().high());
  }
}
