package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Money asked, or for a credit, money that is not asked after all. A draft has no number and can be
 * changed and taken out; once issued it stays as it is.
 *
 * @param party who pays
 * @param boat whose work it is for
 * @param credits for a credit, the issued invoice it takes back in whole or in part
 * @param discount of all lines together
 * @param terms how taxes are reckoned in it
 * @param issue its number and days, only when it was issued
 */
public record Invoice(
    Id<Invoice> id,
    String key,
    Id<Party> party,
    Optional<Id<Boat>> boat,
    Optional<Id<Invoice>> credits,
    List<PriceLine> lines,
    Share discount,
    TaxTerms terms,
    Optional<Issue> issue,
    String note)
    implements Row {
  public Invoice {
    Texts.key(key);
    lines = PriceLine.require(lines, discount, terms);
    if (credits.equals(Optional.of(id))) {
      throw new IllegalArgumentException("a credit takes back another invoice, not itself");
    }
    if (issue.isPresent() && lines.isEmpty()) {
      throw new IllegalArgumentException("an issued invoice has at least one line");
    }
  }

  /**
   * That an invoice was issued.
   *
   * @param series what numbers are counted within, such as {@code 2026-}; may be empty
   * @param sequence place in the series, from 1
   * @param number as printed, unique
   * @param day issued on
   * @param due last day to pay
   * @param to name and address of who pays, as printed then
   */
  public record Issue(
      String series, int sequence, String number, LocalDate day, LocalDate due, String to) {
    public Issue {
      Texts.require(number, "the number of an invoice");
      if (sequence < 1) {
        throw new IllegalArgumentException("numbers count from 1, not from " + sequence);
      }
      if (due.isBefore(day)) {
        throw new IllegalArgumentException("it is due on " + due + ", before its day " + day);
      }
    }

    /**
     * Whether the number is its series and its place in it, such as {@code 2026-} and {@code 0017};
     * another could be the number that the next of some series gets.
     */
    public boolean isCounted() {
      String place = number.startsWith(series) ? number.substring(series.length()) : "";
      return place.matches("0*" + sequence);
    }
  }

  /** Whether it was issued. */
  public boolean issued() {
    return issue.isPresent();
  }

  /** What it is called: its number, or that it is a draft. */
  public String words() {
    String what = credits.isPresent() ? "credit" : "invoice";
    return issue.map(i -> what + " " + i.number()).orElse("draft of " + article(what) + what);
  }

  private static String article(String what) {
    return what.startsWith("i") ? "an " : "a ";
  }
}
