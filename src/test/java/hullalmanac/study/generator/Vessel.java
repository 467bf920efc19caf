package hullalmanac.study.generator;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import java.util.List;
import java.util.NavigableSet;
import java.util.SplittableRandom;

/**
 * A boat and what is true of it.
 *
 * @param start how it comes to the business
 * @param routine days of its regular visits, all of them with a wash
 * @param chance what is drawn for it from day to day
 */
record Vessel(
    Boat boat,
    List<Berth> berths,
    List<Skin> skins,
    Start start,
    NavigableSet<Integer> routine,
    SplittableRandom chance) {
  /**
   * How a boat comes to the business.
   *
   * @param day the day on which it does
   * @param coated whether it then has coats already
   * @param glossRead whether its gloss is ever read
   */
  record Start(int day, boolean coated, boolean glossRead) {}
}
