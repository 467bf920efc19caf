package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One container of a product.
 *
 * @param sizeMl what it held new, millilitres
 * @param leftMl what was left when somebody last looked, millilitres
 * @param leftOn the day of that look, whose own work it counts; absent when nobody wrote it down
 */
public record Bottle(
    Id<Bottle> id,
    String key,
    Id<Product> product,
    String batch,
    Optional<LocalDate> openedOn,
    Optional<LocalDate> useBy,
    Optional<Integer> sizeMl,
    Optional<Integer> leftMl,
    Optional<LocalDate> leftOn)
    implements Row {
  public Bottle {
    Texts.key(key);
    sizeMl.ifPresent(Bottle::requireVolume);
    leftMl.ifPresent(Bottle::requireVolume);
    if (leftOn.isPresent() && leftMl.isEmpty()) {
      throw new IllegalArgumentException(
          "what is left has to be written before the day on which it was seen");
    }
  }

  private static void requireVolume(int ml) {
    if (ml < 0 || ml > 1_000_000) {
      throw new IllegalArgumentException("a bottle holds 0 to 1,000,000 ml, not " + ml);
    }
  }
}
