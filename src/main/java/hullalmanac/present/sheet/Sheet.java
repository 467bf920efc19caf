package hullalmanac.present.sheet;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Visit;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A page on which one writes. Each text is taken as it is left, in an act of its own; there is
 * nothing to save.
 */
public interface Sheet {
  /** Tells who shows the state; called at once and after each change. */
  void onChange(Consumer<SheetState> view);

  /** Shows the record as it stands now. */
  void show(Fleet fleet);

  /** What a text would mean in a field; for showing beside it while one types. */
  Said say(At at, String text);

  /** Takes the text of a field. */
  void enter(At at, String text);

  /**
   * Takes texts that were pasted into a grid, in one act.
   *
   * @param corner the cell for the first text
   * @param texts rows of texts
   */
  default void paste(At corner, List<List<String>> texts) {
    if (!texts.isEmpty() && !texts.get(0).isEmpty()) {
      enter(corner, texts.get(0).get(0));
    }
  }

  /**
   * Takes photos into a block of photos.
   *
   * @param files their paths
   */
  default void add(String block, List<String> files) {}

  /** Takes a text that was pasted or dropped into a block of files. */
  default void add(String block, String text) {}

  /** Takes a picture that came without a file into a block of photos. */
  default void add(String block, Pixels picture) {}

  /**
   * Asks for the small picture of a photo; the answer comes later.
   *
   * @param file as its card names it
   * @param side of the square into which it shall fit, in pixels
   */
  default void picture(String file, int side, Consumer<Picture> answer) {}

  /** Takes a row out of a grid, or a photo out of a block of photos. */
  default void remove(String block, String row) {}

  /** What the guide says of it; each sheet names its own. */
  default Topic topic() {
    return Topic.WRITING_DOWN;
  }

  /** The visit that it is of; absent for all other sheets. */
  default Optional<Id<Visit>> visit() {
    return Optional.empty();
  }

  /** Does what the text of a cell says that is to be pressed. */
  default void press(At at) {}

  /** Whether one only looks at it in passing, so that leaving it leads to the sheet before it. */
  default boolean inPassing() {
    return false;
  }

  /** Shows again what goes with the clock. */
  default void tick() {}

  /** Opens what it is of as it would be printed; nothing where there is no paper of it. */
  default void onPaper() {}

  /** Does what a button says. */
  default void press(String button) {}
}
