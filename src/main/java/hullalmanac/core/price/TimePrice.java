package hullalmanac.core.price;

import hullalmanac.core.record.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * A price by time and materials.
 *
 * @param job what it is for
 * @param charges what it was reckoned by
 * @param workMinutes on the boat
 * @param work what these cost
 * @param products what is used up of products
 * @param travel the way there and back, and its time
 * @param waiting what waiting costs
 * @param sum all of it
 * @param total the sum, or the least price of a visit where that is more
 */
public record TimePrice(
    Job job,
    Charges charges,
    BigDecimal workMinutes,
    Money work,
    Money products,
    Money travel,
    Money waiting,
    Money sum,
    Money total) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  /**
   * What is to be done, as far as it costs time or money. Nothing in it is below 0.
   *
   * @param patches what is worked on
   * @param pads what pads, cloths and other things used up cost
   * @param travelMinutes there and back
   * @param way what the way there and back costs
   * @param waitingMinutes for tides, drying, keys
   */
  public record Job(
      List<Patch> patches,
      Money pads,
      BigDecimal travelMinutes,
      Money way,
      BigDecimal waitingMinutes) {
    public Job {
      patches = List.copyOf(patches);
      require(pads.amount(), "what pads cost");
      require(travelMinutes, "the minutes on the way");
      require(way.amount(), "what the way costs");
      require(waitingMinutes, "the minutes of waiting");
    }
  }

  /**
   * One step on one area.
   *
   * @param squareMetres its area
   * @param minutesPerSquareMetre of one person
   * @param material what it uses up
   */
  public record Patch(
      String words,
      BigDecimal squareMetres,
      BigDecimal minutesPerSquareMetre,
      Optional<Material> material) {
    public Patch {
      require(squareMetres, "the area of " + words);
      require(minutesPerSquareMetre, "the minutes for a square metre of " + words);
    }

    BigDecimal minutes() {
      return squareMetres.multiply(minutesPerSquareMetre);
    }
  }

  /**
   * A product that is used up.
   *
   * @param mlPerSquareMetre millilitres for a square metre
   * @param litre what a litre costs
   */
  public record Material(BigDecimal mlPerSquareMetre, Money litre) {
    public Material {
      require(mlPerSquareMetre, "the product for a square metre");
      require(litre.amount(), "what a litre costs");
    }

    BigDecimal cost(BigDecimal squareMetres) {
      return mlPerSquareMetre.multiply(squareMetres).multiply(litre.amount()).divide(THOUSAND);
    }
  }

  /**
   * What time costs.
   *
   * @param hour what an hour is to bring
   * @param least the least that a visit costs
   */
  public record Charges(Money hour, Optional<Money> least) {
    public Charges {
      require(hour.amount(), "the price of an hour");
      least.ifPresent(l -> require(l.amount(), "the least price"));
    }
  }

  private static void require(BigDecimal number, String what) {
    if (number.signum() < 0) {
      throw new IllegalArgumentException(what + " is not below 0, so not " + number);
    }
  }

  /** Reckons a job. */
  public static TimePrice of(Job job, Charges charges) {
    BigDecimal minutes =
        job.patches().stream().map(Patch::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal used =
        job.patches().stream()
            .flatMap(p -> p.material().map(m -> m.cost(p.squareMetres())).stream())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    Money work = time(minutes, charges.hour());
    Money products = Money.rounded(used, charges.hour().currency(), RoundingMode.HALF_UP);
    Money travel = job.way().plus(time(job.travelMinutes(), charges.hour()));
    Money waiting = time(job.waitingMinutes(), charges.hour());
    Money sum = work.plus(products).plus(job.pads()).plus(travel).plus(waiting);
    Money total = charges.least().filter(l -> l.compareTo(sum) > 0).orElse(sum);
    return new TimePrice(job, charges, minutes, work, products, travel, waiting, sum, total);
  }

  private static Money time(BigDecimal minutes, Money hour) {
    return Money.rounded(
        minutes.multiply(hour.amount()).divide(SIXTY, 20, RoundingMode.HALF_UP),
        hour.currency(),
        RoundingMode.HALF_UP);
  }

  /** All hours: on the boat, on the way and waiting; to two decimals. */
  public BigDecimal hours() {
    return workMinutes
        .add(job.travelMinutes())
        .add(job.waitingMinutes())
        .divide(SIXTY, 2, RoundingMode.HALF_UP);
  }

  /** What is paid for besides time: products, pads and the way. */
  public Money outlay() {
    return products.plus(job.pads()).plus(job.way());
  }

  /**
   * What each of all hours earns at a price, when products, pads and the way are paid.
   *
   * @return nothing when it takes less than a minute; below nothing when the price does not pay for
   *     them
   */
  public Optional<Money> hourEarned(Money price) {
    BigDecimal minutes = workMinutes.add(job.travelMinutes()).add(job.waitingMinutes());
    return minutes.compareTo(BigDecimal.ONE) < 0
        ? Optional.empty()
        : Optional.of(
            Money.rounded(
                price
                    .minus(outlay())
                    .amount()
                    .multiply(SIXTY)
                    .divide(minutes, 20, RoundingMode.HALF_UP),
                price.currency(),
                RoundingMode.HALF_UP));
  }
}
