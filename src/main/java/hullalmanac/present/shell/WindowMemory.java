package hullalmanac.present.shell;

import java.util.Optional;

/** Remembers how the window was left. */
public interface WindowMemory {
  /** How the window was left, where that is known. */
  Optional<Look> recall();

  /** Notes how the window is left. */
  void keep(Look look);

  /**
   * Where the window stood and how it looked.
   *
   * @param x left edge, in the screen's units, when not maximised
   * @param dark whether it was dark
   * @param zoom 0.8 to 2.0
   */
  record Look(int x, int y, int width, int height, boolean maximised, boolean dark, float zoom) {}

  /** Remembers nothing. */
  static WindowMemory none() {
    return new WindowMemory() {
      @Override
      public Optional<Look> recall() {
        return Optional.empty();
      }

      @Override
      public void keep(Look look) {
        // Nothing outlives a window that is only shown for once.
      }
    };
  }
}
