package hullalmanac.core.life;

import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Product;
import java.util.List;

/**
 * What a record says of a product's coats.
 *
 * @param seen how many coats tell anything, and the lives that follow
 * @param places how long half of them last at each harbour, open and covered
 * @param survival what was seen of them, and the law that the forecast uses
 */
public record ProductLives(Product product, LivesSeen seen, List<Place> places, Survival survival) {
  public ProductLives {
    places = List.copyOf(places);
  }

  /**
   * How long half the coats last on light topsides afloat in salt water, by the mean of the year.
   *
   * @param months in months of 30.44 days
   */
  public record Place(Harbour harbour, Cover cover, double months) {}
}
