package hullalmanac.core.list;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.LengthEntry;
import hullalmanac.core.record.Business.Units;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.ListField;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the lengths or beams of one column.
 *
 * @param field says the unit of bare numbers
 * @param decimalMark the mark before decimals in this column, where one of its numbers says so
 * @param shown the unit in which lengths are shown
 */
record ListLengths(ListField field, Optional<String> decimalMark, Units shown) {
  private static final Pattern BARE = Pattern.compile("\\d+([.,]\\d+)?");
  private static final Pattern TWO_WAYS = Pattern.compile("(\\d{1,3}([.,])\\d{3})(\\D.*)?");
  private static final Pattern CLEAR = Pattern.compile("\\d+([.,])(\\d{1,2}|\\d{4,})(\\D.*)?");
  private static final Pattern ABOUT =
      Pattern.compile(
          "(?i)(ca\\.?|circa|approx\\.?|approximately|about|~|±|c\\.|env\\.?|ongeveer)\\s*");

  /** What is usual of a boat (common practice, no source): outside of it one looks twice. */
  private static final double SHORTEST = 2;

  private static final double LONGEST = 40;
  private static final double NARROWEST = 0.8;
  private static final double WIDEST = 12;

  /** What the numbers of a column have in common. */
  static ListLengths of(ListField field, List<Cell> cells, Units shown) {
    List<String> marks =
        cells.stream()
            .map(c -> CLEAR.matcher(c.text()))
            .filter(Matcher::matches)
            .map(m -> m.group(1))
            .distinct()
            .toList();
    return new ListLengths(
        field, marks.size() == 1 ? Optional.of(marks.get(0)) : Optional.empty(), shown);
  }

  Understood<Length> read(Cell cell) {
    Matcher about = ABOUT.matcher(cell.text());
    boolean rough = about.lookingAt();
    String text = inEnglish(rough ? cell.text().substring(about.end()) : cell.text());
    Entry<Length> entry = LengthEntry.read(prepared(cell, text), usual());
    if (entry instanceof Entry.Read<Length> read) {
      Optional<String> odd = rough ? Optional.of("“About” is left off.") : odd(read.value());
      return new Understood<>(Optional.of(read.value()), words(read.value()), odd);
    }
    return Understood.refused(
        cell,
        entry instanceof Entry.Refused<Length> refused ? refused.sentence() + "." : "It is empty.");
  }

  private Units usual() {
    return field == ListField.LENGTH_FEET || field == ListField.BEAM_FEET
        ? Units.FEET
        : Units.METRES;
  }

  /** The text with what the column says of its numbers. */
  private String prepared(Cell cell, String text) {
    Matcher twoWays = TWO_WAYS.matcher(text);
    boolean decided =
        twoWays.matches()
            && (cell.kind() == Cell.Kind.NUMBER
                || decimalMark.equals(Optional.of(twoWays.group(2))));
    String clear =
        decided
            ? twoWays.group(1) + "0" + (twoWays.group(3) == null ? "" : twoWays.group(3))
            : text;
    boolean centimetres =
        field == ListField.LENGTH_CENTIMETRES || field == ListField.BEAM_CENTIMETRES;
    return centimetres && BARE.matcher(clear).matches() ? clear + " cm" : clear;
  }

  private static String inEnglish(String text) {
    return text.replaceAll("(?i)\\b(pieds?|fu(ss|\u00DF)|voet|piedi|pies)\\b", "ft")
        .replaceAll("(?i)\\b(m(è|e)tres?|metros?|metri|mtrs?|mts?)\\b\\.?", "m")
        .strip();
  }

  private Optional<String> odd(Length length) {
    boolean beam = field.isBeam();
    double least = beam ? NARROWEST : SHORTEST;
    double most = beam ? WIDEST : LONGEST;
    return length.metres() < least || length.metres() > most
        ? Optional.of(
            "Few boats are "
                + words(length)
                + (beam ? " wide" : " long")
                + "; look at the unit of the column.")
        : Optional.empty();
  }

  private String words(Length length) {
    return shown == Units.FEET ? length.feetAndInches() : length.metresText();
  }
}
