package hullalmanac.exchange.list;

import hullalmanac.core.list.Cell;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.CellType;

/**
 * Reads one cell of a sheet as a person sees it: a number whose format is a date as its day, a
 * formula as its value.
 *
 * <p>References: ECMA-376 part 1, 18.8.30 (built-in number formats) and 18.17.4 (dates: day 1 is 1
 * January 1900, and a 29 February 1900 is counted; or day 0 is 1 January 1904).
 */
final class SheetCell {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final LocalDate DAY_ZERO_1904 = LocalDate.of(1904, 1, 1);
  private static final int LAST_DAY = 2_958_465;
  private static final int SECONDS = 86_400;

  /** Built-in formats that show a day, of all languages. */
  private static final Set<Integer> DAY_FORMATS =
      Set.of(
          14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 34, 35, 36, 50, 51, 52, 53, 54, 55, 56, 57, 58);

  private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.");

  /** A number followed by words in quotation marks: its unit. */
  private static final Pattern WITH_UNIT =
      Pattern.compile("[#0,.? ]+(?:\"([^\"]*)\"|\\\\?([a-z']+))(?:;.*)?", Pattern.CASE_INSENSITIVE);

  private SheetCell() {}

  static Cell read(org.dhatim.fastexcel.reader.Cell cell, boolean from1904) {
    CellType type = cell.getType();
    String raw = cell.getRawValue();
    return switch (type) {
      case EMPTY -> Cell.BLANK;
      case STRING -> new Cell(plain(cell.getText()), Cell.Kind.TEXT, false);
      case BOOLEAN ->
          new Cell(raw.equals("1") || raw.equals("true") ? "TRUE" : "FALSE", Cell.Kind.TEXT, false);
      case ERROR -> new Cell(raw == null ? "#?" : raw, Cell.Kind.ERROR, false);
      case NUMBER -> number(cell, raw, from1904);
      case FORMULA -> formula(cell, raw, from1904);
    };
  }

  private static Cell formula(org.dhatim.fastexcel.reader.Cell cell, String raw, boolean from1904) {
    if (raw == null || raw.isBlank()) {
      return cell.getValue() instanceof String text && !text.isBlank()
          ? new Cell(plain(text), Cell.Kind.TEXT, false)
          : new Cell("=" + cell.getFormula(), Cell.Kind.ERROR, false);
    }
    if (raw.startsWith("#")) {
      return new Cell(raw, Cell.Kind.ERROR, false);
    }
    return asNumber(raw).isPresent() && !(cell.getValue() instanceof String)
        ? number(cell, raw, from1904)
        : new Cell(plain(raw), Cell.Kind.TEXT, false);
  }

  private static Optional<BigDecimal> asNumber(String raw) {
    try {
      return Optional.of(new BigDecimal(raw));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Cell number(org.dhatim.fastexcel.reader.Cell cell, String raw, boolean from1904) {
    Optional<BigDecimal> number = asNumber(raw);
    if (number.isEmpty()) {
      return new Cell(plain(raw), Cell.Kind.TEXT, false);
    }
    double value = number.get().doubleValue();
    String format = cell.getDataFormatString() == null ? "" : cell.getDataFormatString();
    if (isDay(cell.getDataFormatId(), format) && value >= 1 && value <= LAST_DAY) {
      return day(value, from1904);
    }
    String text = new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    Matcher unit = WITH_UNIT.matcher(format);
    if (unit.matches()) {
      String words = unit.group(1) == null ? unit.group(2) : unit.group(1);
      return new Cell(
          text + (words.startsWith("'") ? "" : " ") + words.strip(), Cell.Kind.NUMBER, false);
    }
    return new Cell(text, Cell.Kind.NUMBER, false);
  }

  private static boolean isDay(Integer id, String format) {
    String letters = LITERAL.matcher(format.toLowerCase(Locale.ROOT)).replaceAll("");
    boolean says =
        letters.indexOf('y') >= 0
            || letters.indexOf('d') >= 0
            || (letters.contains("mmm") && letters.indexOf('h') < 0);
    boolean general = letters.contains("general") || letters.contains("standard");
    return (id != null && DAY_FORMATS.contains(id)) || (says && !general);
  }

  private static Cell day(double value, boolean from1904) {
    long days = (long) Math.floor(value);
    LocalDateTime at =
        LocalDateTime.of(from1904 ? DAY_ZERO_1904 : DAY_ZERO, LocalTime.MIDNIGHT)
            .plusDays(!from1904 && days < 60 ? days + 1 : days)
            .plusSeconds(Math.round((value - days) * SECONDS));
    LocalTime time = at.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    return new Cell(
        at.toLocalDate() + (time.equals(LocalTime.MIDNIGHT) ? "" : " " + time),
        Cell.Kind.DAY,
        false);
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace("_x000D_", "");
  }
}
