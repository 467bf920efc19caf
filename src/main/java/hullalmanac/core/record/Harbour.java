package hullalmanac.core.record;

import java.util.List;

/**
 * A harbour, yard or river where boats lie.
 *
 * @param latitude degrees, north positive
 * @param sunshine relative sunshine n/N, 0 to 1, January to December; empty when unknown
 */
public record Harbour(
    Id<Harbour> id, String key, String name, double latitude, List<Double> sunshine, String note)
    implements Row {
  public Harbour {
    Texts.key(key);
    Texts.require(name, "the name of a harbour");
    sunshine = List.copyOf(sunshine);
    if (!(Math.abs(latitude) <= 90)) {
      throw new IllegalArgumentException("latitude runs from -90 to 90, not " + latitude);
    }
    if (!sunshine.isEmpty() && sunshine.size() != 12) {
      throw new IllegalArgumentException("sunshine is given for twelve months or for none");
    }
    for (double f : sunshine) {
      if (!(f >= 0 && f <= 1)) {
        throw new IllegalArgumentException("sunshine runs from 0 to 1, not " + f);
      }
    }
  }
}
