package hullalmanac.core.list;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.ListField;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The unit of the bare numbers in a column of lengths or beams.
 *
 * @param field with its unit
 * @param why what it rests on; empty where no number is bare
 */
record UnitGuess(ListField field, String why) {
  private static final Pattern FEET =
      Pattern.compile(
          "(?i).*(\\b(ft|feet|foot|pieds?|fuss|fu\u00DF|voet|piedi|pies)\\b|['\u2032]\\W*$).*");
  private static final Pattern METRES =
      Pattern.compile("(?i).*\\b(m|metres?|meters?|m\u00E8tres?|metros?|metri|mtrs?)\\b.*");
  private static final Pattern CENTIMETRES = Pattern.compile("(?i).*\\b(cm|centimetres?)\\b.*");

  /**
   * Boats that people own one by one are seldom over 20 m, seldom under 7 ft long, nor wider than
   * 5.5 m, nor narrower than that in feet (common practice, no source).
   */
  private static final double METRES_END = 20;

  private static final double FEET_BEGIN = 7;
  private static final double BEAM_PARTS = 5.5;
  private static final double CENTIMETRES_BEGIN = 100;

  static UnitGuess length(String heading, ColumnContent content, Business.Units usual) {
    return said(heading, false)
        .orElseGet(
            () -> {
              List<Double> bare = content.bareNumbers();
              if (bare.isEmpty()) {
                return of(usual, false, "");
              }
              double middle = bare.get(bare.size() / 2);
              if (middle >= CENTIMETRES_BEGIN) {
                return new UnitGuess(
                    ListField.LENGTH_CENTIMETRES,
                    "bare numbers are centimetres, for most are over 100");
              }
              if (middle >= METRES_END) {
                return new UnitGuess(
                    ListField.LENGTH_FEET, "bare numbers are feet, for most are over 20");
              }
              if (middle < FEET_BEGIN) {
                return new UnitGuess(
                    ListField.LENGTH_METRES, "bare numbers are metres, for most are under 7");
              }
              if (bare.stream().filter(x -> x % 1 != 0).count() * 2 >= bare.size()) {
                return new UnitGuess(
                    ListField.LENGTH_METRES,
                    "bare numbers are metres, for most have decimals and are under 20");
              }
              return of(
                  usual, false, "bare numbers are " + usual.words() + ", as the business has it");
            });
  }

  /**
   * The same for beams.
   *
   * @param length the unit of the column of lengths, where there is one
   */
  static UnitGuess beam(
      String heading, ColumnContent content, Optional<ListField> length, Business.Units usual) {
    return said(heading, true)
        .orElseGet(
            () -> {
              List<Double> bare = content.bareNumbers();
              if (bare.isEmpty()) {
                return of(usual, true, "");
              }
              double middle = bare.get(bare.size() / 2);
              if (middle >= CENTIMETRES_BEGIN) {
                return new UnitGuess(
                    ListField.BEAM_CENTIMETRES,
                    "bare numbers are centimetres, for most are over 100");
              }
              boolean feet =
                  middle > BEAM_PARTS && !length.equals(Optional.of(ListField.LENGTH_METRES));
              return feet
                  ? new UnitGuess(
                      ListField.BEAM_FEET, "bare numbers are feet, for most are over 5.5")
                  : new UnitGuess(
                      ListField.BEAM_METRES, "bare numbers are metres, for most are under 5.5");
            });
  }

  private static UnitGuess of(Business.Units usual, boolean beam, String why) {
    boolean feet = usual == Business.Units.FEET;
    return new UnitGuess(
        beam
            ? (feet ? ListField.BEAM_FEET : ListField.BEAM_METRES)
            : (feet ? ListField.LENGTH_FEET : ListField.LENGTH_METRES),
        why);
  }

  /** The unit that the heading names. */
  private static Optional<UnitGuess> said(String heading, boolean beam) {
    if (CENTIMETRES.matcher(heading).matches()) {
      return Optional.of(
          new UnitGuess(beam ? ListField.BEAM_CENTIMETRES : ListField.LENGTH_CENTIMETRES, ""));
    }
    if (FEET.matcher(heading).matches()) {
      return Optional.of(of(Business.Units.FEET, beam, ""));
    }
    return METRES.matcher(heading).matches()
        ? Optional.of(of(Business.Units.METRES, beam, ""))
        : Optional.empty();
  }
}
