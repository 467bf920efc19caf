package hullalmanac.core.paper;

import hullalmanac.core.report.BoatHistory;
import java.util.List;

/** Photos before and after, beside each other. */
final class PhotoPairs {
  private PhotoPairs() {}

  static Block.Photos of(BoatHistory.Pair pair) {
    return new Block.Photos(
        "",
        List.of(
            new Block.Photo(pair.before(), pair.surface() + " before, " + pair.day()),
            new Block.Photo(pair.after(), pair.surface() + " after, " + pair.day())));
  }
}
