package hullalmanac.study.generator;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Use;
import java.util.List;

/** What the weather does to one boat. */
final class Exposure {
  private final World world;
  private final Haven haven;
  private final Use use;
  private final Berth home;
  private final Berth winter;
  private final int ashoreFrom;
  private final int ashoreUntil;

  /**
   * The exposure of a boat.
   *
   * @param berths the one where it lies, and perhaps a yearly one over the turn of the year
   */
  Exposure(World world, Haven haven, List<Berth> berths, Use use) {
    this.world = world;
    this.haven = haven;
    this.use = use;
    home = berths.get(0);
    winter = berths.get(berths.size() - 1);
    boolean laidUp = winter.yearly();
    ashoreFrom = laidUp ? Span.monthAndDay(winter.from()) : Integer.MAX_VALUE;
    ashoreUntil = laidUp ? Span.monthAndDay(winter.until().orElseThrow()) : 0;
  }

  /** Wear of a surface from the first day of the world to the end of each, without washes. */
  double[] running(Surface surface) {
    Law law = world.law();
    Attitude attitude = surface.attitude();
    double hardship = law.hardship(surface, use);
    double homeSun = law.sunWeight(home.cover(), attitude);
    double homeWet = law.wetness(home.water());
    double winterSun = law.sunWeight(winter.cover(), attitude);
    double winterWet = law.wetness(winter.water());
    double[] sums = new double[world.span().length()];
    double sum = 0;
    for (int i = 0; i < sums.length; i++) {
      double strength = haven.strengthAt(i);
      sum +=
          ashore(world.span().monthAndDayAt(i))
              ? Law.daily(hardship, winterSun * strength, winterWet)
              : Law.daily(hardship, homeSun * strength, homeWet);
      sums[i] = sum;
    }
    return sums;
  }

  private boolean ashore(int monthAndDay) {
    return monthAndDay >= ashoreFrom || monthAndDay < ashoreUntil;
  }
}
