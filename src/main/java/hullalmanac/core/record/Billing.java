package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a business asks for money.
 *
 * @param terms how taxes are reckoned on new estimates and invoices
 * @param taxes that lie on new lines
 * @param numbering of invoices and credits
 * @param daysToPay from the day an invoice is issued, 0 to 365
 * @param charges what work costs beside a price by length
 */
public record Billing(
    TaxTerms terms, List<Tax> taxes, Numbering numbering, int daysToPay, Charges charges) {
  /** No taxes, 14 days, numbers by the year (common practice, no source). */
  public static final Billing USUAL =
      new Billing(TaxTerms.USUAL, List.of(), Numbering.USUAL, 14, Charges.UNKNOWN);

  public Billing {
    taxes = Tax.require(taxes);
    if (daysToPay < 0 || daysToPay > 365) {
      throw new IllegalArgumentException("days to pay run from 0 to 365, not " + daysToPay);
    }
  }

  /** How the year stands in a number. */
  public enum YearForm implements Coded {
    NONE("none"),
    SHORT("short"),
    FULL("full");

    private final String code;

    YearForm(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    private String of(LocalDate day) {
      return switch (this) {
        case NONE -> "";
        case SHORT -> String.format(Locale.ROOT, "%02d-", day.getYear() % 100);
        case FULL -> day.getYear() + "-";
      };
    }
  }

  /**
   * How invoices are numbered. Each series counts from 1 without gaps; where the year stands in a
   * number, each year is a series of its own. Where both beginnings are the same, invoices and
   * credits share one.
   *
   * @param invoices what numbers of invoices begin with; may be empty
   * @param credits what numbers of credits begin with; may be empty
   * @param digits filled up with zeros, 1 to 9
   */
  public record Numbering(String invoices, String credits, YearForm year, int digits) {
    /** One series a year for both: {@code 2026-0001}. */
    public static final Numbering USUAL = new Numbering("", "", YearForm.FULL, 4);

    private static final int LONGEST = 12;

    public Numbering {
      requireBeginning(invoices);
      requireBeginning(credits);
      if (digits < 1 || digits > 9) {
        throw new IllegalArgumentException("numbers have 1 to 9 digits, not " + digits);
      }
    }

    private static void requireBeginning(String text) {
      if (text.length() > LONGEST || !text.matches("[\\p{L}\\p{N}/_.-]*")) {
        throw new IllegalArgumentException(
            "a number begins with up to 12 letters, digits, / _ . or -, not with \"" + text + "\"");
      }
    }

    /** The series to which an invoice or a credit of a day belongs. */
    public String series(boolean credit, LocalDate day) {
      return (credit ? credits : invoices) + year.of(day);
    }

    /** A number as printed. */
    public String number(String series, int sequence) {
      return series + String.format(Locale.ROOT, "%0" + digits + "d", sequence);
    }
  }

  /**
   * What work costs beside a price by length. Absent is not known yet.
   *
   * @param hour what an hour of work is to bring
   * @param least the least that a visit costs
   * @param distance what a mile or a kilometre costs, as lengths are shown in feet or in metres
   */
  public record Charges(Optional<Money> hour, Optional<Money> least, Optional<Money> distance) {
    public static final Charges UNKNOWN =
        new Charges(Optional.empty(), Optional.empty(), Optional.empty());

    public Charges {
      hour.ifPresent(m -> Money.requirePrice(m, "the price of an hour"));
      least.ifPresent(m -> Money.requirePrice(m, "the least price"));
      distance.ifPresent(m -> Money.requirePrice(m, "the price of a way"));
    }
  }
}
