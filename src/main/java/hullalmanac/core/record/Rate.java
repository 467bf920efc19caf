package hullalmanac.core.record;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A price by length. What is absent is for any: a rate without a condition holds in each of them.
 *
 * @param service what the customer gets, in the person's own words
 * @param steps the steps it pays for; at least one
 * @param unit foot or metre
 * @param from shortest boat
 * @param below first length for which it does not hold any more
 * @param low lowest price of a foot or metre
 * @param high highest price of a foot or metre
 * @param note where it comes from
 */
public record Rate(
    Id<Rate> id,
    String key,
    String service,
    SortedSet<StepKind> steps,
    Extent extent,
    PriceUnit unit,
    Optional<Condition> condition,
    Optional<BoatType> type,
    Optional<Length> from,
    Optional<Length> below,
    Money low,
    Money high,
    String note)
    implements Row {
  public Rate {
    Texts.key(key);
    Texts.require(service, "the service of a rate");
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a rate pays for at least one step");
    }
    steps =
        java.util.Collections.unmodifiableSortedSet(
            new TreeSet<>(EnumSet.copyOf(Set.copyOf(steps))));
    if (!unit.ofLength()) {
      throw new IllegalArgumentException("a rate is by foot or by metre, not by " + unit.words());
    }
    if (from.isPresent()
        && below.isPresent()
        && from.get().millimetres() >= below.get().millimetres()) {
      throw new IllegalArgumentException(
          "the band ends at " + below.get().metresText() + ", not above its beginning");
    }
    Money.requirePrice(low, "the lowest price of a rate");
    Money.requirePrice(high, "the highest price of a rate");
    if (high.compareTo(low) < 0) {
      throw new IllegalArgumentException(
          "the highest price, " + high.words() + ", is under the lowest, " + low.words());
    }
  }

  /** Whether a length lies in its band. */
  public boolean covers(Length length) {
    return from.map(f -> f.millimetres() <= length.millimetres()).orElse(true)
        && below.map(b -> length.millimetres() < b.millimetres()).orElse(true);
  }
}
