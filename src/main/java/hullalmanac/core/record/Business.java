package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;

/**
 * The business whose record this is.
 *
 * @param name as printed
 * @param currency of all its money
 * @param units how lengths are shown first
 * @param dayOrder how {@code 12/5} is read
 * @param risk chance of a bare coat at which to renew, 0.05 to 0.95; absent: the practice values by
 *     product and colour
 * @param asOf the day a sample is opened as of; absent in a real record
 */
public record Business(
    String name,
    Currency currency,
    Units units,
    DayOrder dayOrder,
    Optional<Double> risk,
    Optional<LocalDate> asOf) {
  public Business {
    Texts.require(name, "the name of the business");
    risk.ifPresent(Business::requireRisk);
  }

  static void requireRisk(double risk) {
    if (!(risk >= 0.05 && risk <= 0.95)) {
      throw new IllegalArgumentException("risk runs from 0.05 to 0.95, not " + risk);
    }
  }

  /** Lengths in feet and inches or in metres first. */
  public enum Units implements Coded {
    FEET("feet"),
    METRES("metres");

    private final String code;

    Units(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** Order of day and month in short dates. */
  public enum DayOrder implements Coded {
    DAY_FIRST("day-first"),
    MONTH_FIRST("month-first");

    private final String code;

    DayOrder(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** A business about which nothing has been said yet. */
  public static Business unnamed() {
    return new Business(
        "My boat care",
        Currency.getInstance("USD"),
        Units.FEET,
        DayOrder.DAY_FIRST,
        Optional.empty(),
        Optional.empty());
  }
}
