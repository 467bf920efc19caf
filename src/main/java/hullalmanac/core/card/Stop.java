package hullalmanac.core.card;

import hullalmanac.core.record.Coded;

/**
 * Why a step on this boat does not go on before somebody has read it.
 *
 * @param sentence what is to be known, and of which part of the boat
 */
public record Stop(Rule rule, String sentence) {
  /** Said wherever a stop is shown. */
  public static final String STANDING =
      "The product’s own label and data sheet, the harbour’s rules, local codes and licensed"
          + " practice come first. Structural, electrical and gelcoat repair beyond polishing is for"
          + " qualified yards.";

  private static final String PRACTICE = "common practice, no source";

  public Stop {
    if (sentence.isBlank()) {
      throw new IllegalArgumentException("a stop says why");
    }
  }

  /** What is stopped, and where it is known from. */
  public enum Rule implements Coded {
    ACID_ON_GLASS("acid-on-glass", "UN GHS hazard statements H290, H314"),
    ACID_ON_METAL_OR_TEAK("acid-on-metal-or-teak", "UN GHS hazard statements H290, H314"),
    ACID_RUNOFF("acid-runoff", PRACTICE),
    ACID_WITH_HYPOCHLORITE(
        "acid-with-hypochlorite",
        "CDC, MMWR: Chlorine Gas Toxicity from Mixture of Bleach with Other Cleaning Products"),
    SLIPPERY_UNDER_FOOT("slippery-under-foot", PRACTICE),
    ABRASIVE_ON_PAINT("abrasive-on-paint", PRACTICE),
    SILICONE_BEFORE_PAINT("silicone-before-paint", PRACTICE),
    SOLVENT_ON_CLEAR_PLASTIC("solvent-on-clear-plastic", PRACTICE),
    COAT_ON_BOTTOM("coat-on-bottom", PRACTICE);

    private final String code;
    private final String source;

    Rule(String code, String source) {
      this.code = code;
      this.source = source;
    }

    @Override
    public String code() {
      return code;
    }

    /** Where it is known from. */
    public String source() {
      return source;
    }
  }
}
