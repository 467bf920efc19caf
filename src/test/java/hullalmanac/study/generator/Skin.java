package hullalmanac.study.generator;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tone;
import java.util.Optional;
import java.util.SplittableRandom;

/** A surface, what is true of it, and the coat on it now. */
final class Skin {
  private static final double NEGLECTED = 0.25;
  private static final double NOTICED = 0.25;
  private static final int LATEST_NOTICE = 25;
  private static final double GLOSS_LIGHT = 88;
  private static final double GLOSS_DARK = 90;
  private static final double GLOSS_SPREAD = 2;

  private final Surface surface;
  private final Make make;
  private final Wear wear;
  private final double boatEffect;
  private final SplittableRandom draws;
  private Optional<TrueCoat> coat = Optional.empty();

  Skin(Surface surface, Make make, Wear wear, double boatEffect, SplittableRandom draws) {
    this.surface = surface;
    this.make = make;
    this.wear = wear;
    this.boatEffect = boatEffect;
    this.draws = draws;
  }

  Surface surface() {
    return surface;
  }

  Make make() {
    return make;
  }

  Wear wear() {
    return wear;
  }

  double boatEffect() {
    return boatEffect;
  }

  /** The coat in service. */
  Optional<TrueCoat> coat() {
    return coat;
  }

  boolean bears(TrueCoat other) {
    return coat.map(c -> c.id().equals(other.id())).orElse(false);
  }

  void wears(TrueCoat next) {
    coat = Optional.of(next);
  }

  /** Draws the next coat; the n-th on a surface has the same nature whatever was done before. */
  TrueCoat draw(Id<Coat> id, int laid, int check) {
    SplittableRandom own = draws.split();
    double life = make.life(1 - own.nextDouble(), boatEffect);
    double mean = surface.tone() == Tone.DARK ? GLOSS_DARK : GLOSS_LIGHT;
    double gloss = own.nextGaussian(mean, GLOSS_SPREAD);
    boolean neglected = own.nextDouble() < NEGLECTED;
    boolean noticed = own.nextDouble() < NOTICED;
    int delay = own.nextInt(LATEST_NOTICE + 1);
    TrueCoat.Nature nature =
        new TrueCoat.Nature(life, gloss, neglected, noticed ? delay : Wear.NEVER);
    return new TrueCoat(id, this, laid, check, nature, wear.reaches(life, laid, check));
  }
}
