package hullalmanac.ui.owner;

import hullalmanac.core.record.Pixels;
import java.util.Optional;
import java.util.function.Consumer;

/** Where pictures come from, in the background. */
@FunctionalInterface
public interface PictureSource {
  /**
   * Asks for a photo.
   *
   * @param file its name among the photos of the record
   * @param side of the square that it fits in, in pixels
   * @param answer called on the event thread; gets nothing when it cannot be shown
   */
  void ask(String file, int side, Consumer<Optional<Pixels>> answer);
}
