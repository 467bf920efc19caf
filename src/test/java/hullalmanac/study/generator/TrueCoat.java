package hullalmanac.study.generator;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;

/**
 * A coat and what is true of it.
 *
 * @param check day on which its surface is washed again soon after laying, or {@link Wear#NEVER}
 * @param lapse first day by whose end its dose has reached its life, or {@link Wear#NEVER}
 */
record TrueCoat(Id<Coat> id, Skin skin, int laid, int check, Nature nature, int lapse) {
  /**
   * What is drawn with each coat.
   *
   * @param life in reference days
   * @param gloss when new
   * @param neglected whether nobody ever really looks at it
   * @param noticed days from its lapse until the owner complains, or {@link Wear#NEVER}
   */
  record Nature(double life, double gloss, boolean neglected, int noticed) {}

  /** What has worn it by the end of a day, as a share of its life. */
  double spent(int day) {
    return skin.wear().between(laid, day, check) / nature.life();
  }

  /** The day on which the owner complains of it, or {@link Wear#NEVER}. */
  int complaint() {
    return lapse == Wear.NEVER || nature.noticed() == Wear.NEVER
        ? Wear.NEVER
        : lapse + nature.noticed();
  }
}
