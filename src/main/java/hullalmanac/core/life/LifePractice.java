package hullalmanac.core.life;

import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Practice;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import java.util.Optional;

/**
 * What the forecast starts from. Every number is common practice, no source; those a business may
 * set are asked of its {@link Practice}.
 */
record LifePractice(Practice practice) {
  /** The standards throughout. */
  static final LifePractice STANDARD = new LifePractice(Practice.STANDARD);

  /** Mean length of a month in days, exact for the Gregorian calendar to two decimals. */
  static final double DAYS_A_MONTH = 30.44;

  /** Protection is over when this share of the gloss is left. */
  static final double GLOSS_AT_LAPSE = 0.93;

  /** How sharply water tells a living coat from a lapsed one, in ln L. */
  static final double WATER_SHARPNESS = 0.08;

  /** Share of coats whose answers were not real, by how they were entered. */
  double notLooked(Entered entered) {
    return practice.of(
        entered == Entered.TWO_TOUCH
            ? PracticeValue.NOT_LOOKED_TOUCH
            : PracticeValue.NOT_LOOKED_GRID);
  }

  /** Chance of the answer "bare" when nobody really looked. */
  static final double BARE_UNSEEN = 0.02;

  /** Chance that water misleads, by the state of the surface and whose word it is. */
  double misled(SurfaceState state, Entered entered) {
    double byState =
        practice.of(
            switch (state) {
              case DECONTAMINATED -> PracticeValue.MISLED_DECONTAMINATED;
              case WASHED -> PracticeValue.MISLED_WASHED;
              case DIRTY -> PracticeValue.MISLED_DIRTY;
              case WAXY_SOAP -> PracticeValue.MISLED_SOAP;
            });
    return entered == Entered.OWNER
        ? Math.max(practice.of(PracticeValue.MISLED_OWNER), byState)
        : byState;
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

  /** No date is given further ahead. */
  static final int YEARS_AHEAD = 15;

  /** Surfaces of a boat due within so many days are one thing to tell. */
  long oneReminderDays() {
    return Math.round(practice.of(PracticeValue.TOLD_TOGETHER));
  }

  /** The share of its label's months that a product is expected to last. */
  double labelShare(Product product) {
    if (product.labelForCars()) {
      return practice.of(PracticeValue.LABEL_CARS);
    }
    return practice.of(
        switch (product.kind().coatClass().orElseThrow()) {
          case WAX -> PracticeValue.LABEL_WAX;
          case SEALANT -> PracticeValue.LABEL_SEALANT;
          case SILICA -> PracticeValue.LABEL_SILICA;
        });
  }

  /**
   * Chance of a bare coat at which to renew: cautious on dark surfaces, patient with waxes, dark
   * before wax.
   */
  double risk(Surface surface, Product product) {
    if (surface.tone() == Tone.DARK) {
      return practice.of(PracticeValue.RISK_DARK);
    }
    boolean wax =
        product.kind() == ProductKind.CLEANER_WAX || product.kind() == ProductKind.CARNAUBA;
    return practice.of(wax ? PracticeValue.RISK_WAX : PracticeValue.RISK_LIGHT);
  }

  /** Whether a surface goes by a plain interval and not by weather. */
  static boolean byInterval(Surface surface) {
    return switch (surface.finish()) {
      case TEAK, VARNISH, CLEAR_VINYL, CANVAS, UPHOLSTERY, GLASS -> true;
      default -> surface.kind() == SurfaceKind.BOTTOM;
    };
  }

  /** Months between coats of a surface that goes by a plain interval, where one is set or usual. */
  Optional<Double> intervalMonths(Surface surface) {
    return surface.intervalMonths().or(() -> usualInterval(surface.finish()).map(practice::of));
  }

  private static Optional<PracticeValue> usualInterval(Finish finish) {
    return switch (finish) {
      case TEAK -> Optional.of(PracticeValue.INTERVAL_TEAK);
      case CANVAS -> Optional.of(PracticeValue.INTERVAL_CANVAS);
      case CLEAR_VINYL -> Optional.of(PracticeValue.INTERVAL_CLEAR_VINYL);
      case GLASS -> Optional.of(PracticeValue.INTERVAL_GLASS);
      default -> Optional.empty();
    };
  }

  /** Months such a coat lasts where its label names none. */
  double usualMonths(Product product) {
    return practice.of(product.kind().months().orElseThrow());
  }

  /**
   * Months of life a product's prior is centred on: what its label says less the flattery, or what
   * is usual.
   */
  double expectedMonths(Product product) {
    return product
        .labelMonths()
        .map(label -> label * labelShare(product))
        .orElseGet(() -> usualMonths(product));
  }
}
