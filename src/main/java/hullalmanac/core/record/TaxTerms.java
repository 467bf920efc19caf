package hullalmanac.core.record;

import java.math.RoundingMode;

/**
 * How taxes are reckoned. Which of them the law wants differs from place to place; the business
 * chooses.
 *
 * @param inclusive whether prices hold the taxes already
 * @param at where parts of a minor unit are rounded
 * @param rounding which way
 */
public record TaxTerms(boolean inclusive, At at, Rounding rounding) {
  /** Taxes on top, rounded once a bill, halves up (common practice, no source). */
  public static final TaxTerms USUAL = new TaxTerms(false, At.TOTAL, Rounding.HALF_UP);

  /** Where taxes are rounded. */
  public enum At implements Coded {
    /** Each line by itself. */
    LINE("line", "each line"),
    /** Each tax once, over all lines. */
    TOTAL("total", "the whole bill");

    private final String code;
    private final String words;

    At(String code, String words) {
      this.code = code;
      this.words = words;
    }

    @Override
    public String words() {
      return words;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** What becomes of half a minor unit. */
  public enum Rounding implements Coded {
    /** Away from nothing. */
    HALF_UP("half-up", RoundingMode.HALF_UP),
    /** To the even neighbour. */
    HALF_EVEN("half-even", RoundingMode.HALF_EVEN);

    private final String code;
    private final RoundingMode mode;

    Rounding(String code, RoundingMode mode) {
      this.code = code;
      this.mode = mode;
    }

    @Override
    public String code() {
      return code;
    }

    /** The same for decimal arithmetic. */
    public RoundingMode mode() {
      return mode;
    }
  }
}
