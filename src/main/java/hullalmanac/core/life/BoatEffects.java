package hullalmanac.core.life;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * What the boats of a record do to their coats, with the share ρ of the variance of ln L that lies
 * between boats. The share itself is taken from the record: of a few, the one that with its prior
 * Normal(0.25, 0.15²) (practice) makes what all coats showed likeliest.
 */
final class BoatEffects {
  private static final List<Double> SHARES = List.of(0.10, 0.25, 0.40, 0.55);

  private final double share;
  private final Map<Id<Boat>, BoatEffect> boats = new HashMap<>();
  private final Map<Id<Boat>, Double> sigmas = new HashMap<>();

  /**
   * @param share ρ, over 0 and under 1
   */
  BoatEffects(double share) {
    this.share = share;
  }

  /** The likeliest of what is learned with each share. */
  static BoatEffects likeliest(DoubleFunction<BoatEffects> learned) {
    return SHARES.stream()
        .map(learned::apply)
        .max(Comparator.comparingDouble(BoatEffects::logWeight))
        .orElseThrow();
  }

  /** ρ. */
  double share() {
    return share;
  }

  /** Spread of lives on one boat. */
  ProductLife.Spread spread(double clockSd) {
    return new ProductLife.Spread(Math.sqrt(1 - share), clockSd);
  }

  /**
   * Adds what a coat says of its boat.
   *
   * @param says as {@link BoatEffect#says}
   * @param sigma spread of such lives in ln L over all boats
   */
  void add(Lives.Taught taught, double[] says, double sigma) {
    boats.computeIfAbsent(taught.boat(), id -> new BoatEffect(share)).add(taught.coat(), says);
    sigmas.put(taught.boat(), sigma);
  }

  /** What a boat does, where any other of her coats says something of it. */
  Optional<BoatEffect> besides(Coat coat, Id<Boat> boat) {
    return Optional.ofNullable(boats.get(boat)).filter(e -> e.knowsBesides(coat));
  }

  private double logWeight() {
    double z = (share - LifePractice.BOATS_SHARE) / LifePractice.BOATS_SHARE_SD;
    double sum = -0.5 * z * z;
    for (Map.Entry<Id<Boat>, BoatEffect> boat : boats.entrySet()) {
      sum += boat.getValue().logMarginal(sigmas.get(boat.getKey()));
    }
    return sum;
  }
}
