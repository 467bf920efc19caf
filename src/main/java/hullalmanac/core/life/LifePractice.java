package hullalmanac.core.life;

import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import java.util.Optional;
import java.util.OptionalDouble;

/** Starter values of the forecast. Every number here is common practice, no source. */
final class LifePractice {
  /** Mean length of a month in days, exact for the Gregorian calendar to two decimals. */
  static final double DAYS_A_MONTH = 30.44;

  /** Protection is over when this share of the gloss is left. */
  static final double GLOSS_AT_LAPSE = 0.93;

  /** How sharply water tells a living coat from a lapsed one, in ln L. */
  static final double WATER_SHARPNESS = 0.08;

  /** Share of coats whose answers were not real, by how they were entered. */
  static double notLooked(Entered entered) {
    return entered == Entered.TWO_TOUCH ? 0.5 : 0.1;
  }

  /** Chance of the answer "bare" when nobody really looked. */
  static final double BARE_UNSEEN = 0.02;

  /** Chance that water misleads, by the state of the surface and whose word it is. */
  static double misled(SurfaceState state, Entered entered) {
    double byState =
        switch (state) {
          case DECONTAMINATED -> 0.05;
          case WASHED -> 0.15;
          case DIRTY -> 0.35;
          case WAXY_SOAP -> 0.25;
        };
    return entered == Entered.OWNER ? Math.max(0.30, byState) : byState;
  }

  /** How far back, in dose, a complaint may date the end of a coat. */
  static final double COMPLAINT_REACH = 30;

  /** Findings of one kind within so many days of the first are one finding. */
  static final int ONE_LOOK_DAYS = 10;

  static final double PRIOR_MU_SD = 0.40;
  static final double PRIOR_LN_SIGMA_MEAN = Math.log(0.35);
  static final double PRIOR_LN_SIGMA_SD = 0.40;

  /**
   * Spread in ln L for what cannot be told apart from one kind of berth, and for a cover unlike the
   * record's.
   */
  static final double CLOCK_SD = 0.10;

  static final double CLOCK_SD_UNUSUAL_COVER = 0.15;

  /** Share of the variance of ln L that lies between boats, before any coat was seen. */
  static final double BOATS_SHARE = 0.25;

  /** How sure that is: a standard deviation. */
  static final double BOATS_SHARE_SD = 0.15;

  /** A cover is unusual when fewer than this share of the boats lie under it. */
  static final double UNUSUAL_COVER_SHARE = 0.10;

  /** Base coats wear at this share of the rate while a topper lies over them. */
  static final double UNDER_TOPPER = 0.5;

  /** Surfaces of a boat due within so many days are one thing to tell. */
  static final int ONE_REMINDER_DAYS = 45;

  /** No date is given further ahead. */
  static final int YEARS_AHEAD = 15;

  private LifePractice() {}

  /** How much a label flatters, in ln L. */
  static double labelOffset(Product product) {
    if (product.labelForCars()) {
      return -0.60;
    }
    return switch (product.kind().coatClass().orElseThrow()) {
      case WAX, SEALANT -> -0.20;
      case SILICA -> -0.40;
    };
  }

  /**
   * Chance of a bare coat at which to renew: cautious on dark surfaces, patient with waxes, dark
   * before wax.
   */
  static double risk(Surface surface, Product product) {
    if (surface.tone() == Tone.DARK) {
      return 0.20;
    }
    boolean wax =
        product.kind() == ProductKind.CLEANER_WAX || product.kind() == ProductKind.CARNAUBA;
    return wax ? 0.40 : 0.30;
  }

  /** Whether a surface goes by a plain interval and not by weather. */
  static boolean byInterval(Surface surface) {
    return switch (surface.finish()) {
      case TEAK, VARNISH, CLEAR_VINYL, CANVAS, UPHOLSTERY, GLASS -> true;
      default -> surface.kind() == SurfaceKind.BOTTOM;
    };
  }

  /** Months between coats of a surface that goes by a plain interval, where one is set or usual. */
  static Optional<Double> intervalMonths(Surface surface) {
    return surface.intervalMonths().or(() -> usualInterval(surface.finish()));
  }

  private static Optional<Double> usualInterval(Finish finish) {
    return switch (finish) {
      case TEAK, CANVAS -> Optional.of(9.0);
      case CLEAR_VINYL -> Optional.of(1.5);
      case GLASS -> Optional.of(2.0);
      default -> Optional.empty();
    };
  }

  /**
   * Months of life a product's prior is centred on: what its label says less the flattery, or what
   * is usual.
   */
  static double expectedMonths(Product product) {
    OptionalDouble label =
        product.labelMonths().map(OptionalDouble::of).orElse(OptionalDouble.empty());
    return label.isPresent()
        ? label.getAsDouble() * Math.exp(labelOffset(product))
        : product.kind().practiceMonths();
  }
}
