package hullalmanac.core.reckon;

import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Product;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Whether a coat may be laid in some climate: the surface at least {@link DewPoint#LEAST_MARGIN}
 * above the dew point, the limits of the product's label, no sun on the surface, and a reading that
 * is not stale.
 *
 * <p>References: ISO 8502-4 (guidance on the probability of condensation before painting; the 3 °C
 * are usual in coating guides). Shade and the two hours: common practice, no source.
 */
public sealed interface CoatingWindow {
  /** After this a reading says nothing any more. */
  Duration STALE = Duration.ofHours(2);

  /** How it is reckoned. */
  Formula FORMULA =
      new Formula(
          "Open while the surface is at least 3 °C above the dew point Td, within the label's limits of"
              + " temperature and humidity, in the shade, and the reading is not older than two hours."
              + " Td = b·g / (a − g), g = ln(RH/100) + a·T / (b + T), a = 17.625, b = 243.04 °C.",
          "ISO 8502-4 is guidance; the 3 °C are usual in coating guides. Dew point: Alduchov and Eskridge,"
              + " J. Appl. Meteor. 35 (1996). Shade and two hours: common practice, no source.");

  /** How far the surface is above the dew point, °C. */
  double margin();

  /** A coat may be laid. */
  record Open(double margin) implements CoatingWindow {}

  /**
   * No coat may be laid now.
   *
   * @param reasons why, each for the middle of a sentence; at least one
   */
  record Closed(double margin, List<String> reasons) implements CoatingWindow {
    public Closed {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * How it stood when a reading was taken.
   *
   * @param limits of the product's label
   * @param sun whether it shines on the surface
   */
  static CoatingWindow then(Climate climate, Product.Handling limits, boolean sun) {
    return of(climate, limits, sun, climate.takenAt());
  }

  /** How it stands now by a reading taken before. */
  static CoatingWindow of(
      Climate climate, Product.Handling limits, boolean sun, LocalDateTime now) {
    double margin = DewPoint.margin(climate.air(), climate.humidity(), climate.surface());
    List<String> reasons = new ArrayList<>();
    if (now.isAfter(climate.takenAt().plus(STALE))) {
      reasons.add("the reading is older than two hours; take another");
    }
    if (!DewPoint.dryEnough(margin)) {
      reasons.add(
          "the surface is "
              + distance(margin)
              + (margin < 0 ? ", so dew forms on it" : ", and at least 3 °C are needed"));
    }
    limits
        .minCelsius()
        .filter(least -> climate.surface() < least)
        .ifPresent(
            least -> reasons.add(surface(climate) + "; the label wants at least " + least + " °C"));
    limits
        .maxCelsius()
        .filter(most -> climate.surface() > most)
        .ifPresent(
            most -> reasons.add(surface(climate) + "; the label allows at most " + most + " °C"));
    limits
        .maxHumidity()
        .filter(most -> climate.humidity() > most)
        .ifPresent(
            most -> reasons.add(humidity(climate) + "; the label allows at most " + most + " %"));
    if (sun) {
      reasons.add("the sun is on the surface; wait for shade");
    }
    return reasons.isEmpty() ? new Open(margin) : new Closed(margin, reasons);
  }

  private static String surface(Climate climate) {
    return "the surface has " + Numbers.plain(climate.surface()) + " °C";
  }

  private static String humidity(Climate climate) {
    return "the air has " + Numbers.plain(climate.humidity()) + " % humidity";
  }

  /** Whether a coat may be laid. */
  default boolean open() {
    return this instanceof Open;
  }

  /** In one sentence: "Surface 4.1 °C above the dew point, open", "Closed: …". */
  default String words() {
    return this instanceof Closed closed
        ? "Closed: " + String.join("; ", closed.reasons())
        : "Surface " + distance(margin()) + ", open";
  }

  /** Rounded towards the dew point, so that no number looks like enough that is not. */
  private static String distance(double margin) {
    return String.format(
        Locale.ROOT,
        "%.1f °C %s the dew point",
        Math.abs(Math.floor(margin * 10) / 10),
        margin < 0 ? "below" : "above");
  }
}
