package hullalmanac.core.record;

import java.time.DayOfWeek;
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
 * @param letterhead what stands on paper beside the name
 * @param habits paper, week and how far ahead one looks
 * @param practice the numbers the forecast starts from
 * @param billing how it asks for money
 */
public record Business(
    String name,
    Currency currency,
    Units units,
    DayOrder dayOrder,
    Optional<Double> risk,
    Optional<LocalDate> asOf,
    Letterhead letterhead,
    Habits habits,
    Practice practice,
    Billing billing) {
  public Business {
    Texts.require(name, "the name of the business");
    risk.ifPresent(Business::requireRisk);
  }

  static void requireRisk(double risk) {
    if (!(risk >= 0.05 && risk <= 0.95)) {
      throw new IllegalArgumentException("risk runs from 0.05 to 0.95, not " + risk);
    }
  }

  /**
   * What stands on paper beside the name of the business.
   *
   * @param address lines of the address, with phone and mail where wanted
   * @param taxNumber as invoices need it; blank where there is none
   * @param mark the file of a picture beside the name, named as a {@link Photo#file()}; blank where
   *     there is none
   */
  public record Letterhead(String address, String taxNumber, String mark) {
    /** Nothing but the name. */
    public static final Letterhead BLANK = new Letterhead("", "", "");

    public Letterhead {
      if (!mark.isEmpty()) {
        Photo.requireName(mark);
      }
    }
  }

  /**
   * How the business works.
   *
   * @param paper what it prints on
   * @param firstDay of its week
   * @param leadWeeks how many weeks ahead a boat counts as due, 1 to 52
   */
  public record Habits(Paper paper, DayOfWeek firstDay, int leadWeeks) {
    /** Starter values (common practice, no source). */
    public static final Habits USUAL = new Habits(Paper.A4, DayOfWeek.MONDAY, 10);

    public Habits {
      if (leadWeeks < 1 || leadWeeks > 52) {
        throw new IllegalArgumentException("weeks ahead run from 1 to 52, not " + leadWeeks);
      }
    }
  }

  /** Sizes of paper (ISO 216, ANSI Y14.1). */
  public enum Paper implements Coded {
    A4("a4", "A4"),
    LETTER("letter", "Letter");

    private final String code;
    private final String words;

    Paper(String code, String words) {
      this.code = code;
      this.words = words;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public String words() {
      return words;
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
        Optional.empty(),
        Letterhead.BLANK,
        Habits.USUAL,
        Practice.STANDARD,
        Billing.USUAL);
  }
}
