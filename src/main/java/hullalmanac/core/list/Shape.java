package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.reckon.HullNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a text looks like, whatever its column. */
final class Shape {
  private static final int LEAST_PHONE_DIGITS = 6;
  private static final int MOST_PHONE_DIGITS = 15;

  private static final Pattern MAIL =
      Pattern.compile("[^\\s@,;<>]+@[^\\s@,;<>]+\\.[^\\s@,;<>.]{2,}");
  private static final Pattern PHONE_LETTERS =
      Pattern.compile("(?i)\\b(tel|phone|mobile|mob|cell|home|work|fax|handy|privat|t|m|h|w)\\b");
  private static final Pattern PHONE_SIGNS = Pattern.compile("[-+()./\\s:;,x]*");
  private static final Pattern PHONE_WITHIN =
      Pattern.compile("(?<![\\w/.,-])[+(]?\\d[\\d ().-]{4,18}\\d(?![\\w/]|[.,-]\\d)");
  private static final Pattern YEARS = Pattern.compile("(19|20)\\d\\d( ?[- ] ?(19|20)?\\d\\d)+");
  private static final Pattern DATE =
      Pattern.compile(
          "(\\d{4} ?[-./] ?\\d{1,2} ?[-./] ?\\d{1,2}|\\d{1,2} ?[-./] ?\\d{1,2} ?[-./] ?(\\d{4}|\\d{2}))"
              + "([ T]\\d.*)?");
  private static final Pattern DATE_IN_WORDS =
      Pattern.compile(
          "(?:\\p{L}+,? +)?\\d{1,2}(?:st|nd|rd|th|\\.)?[ ./-]*(?:de )?\\p{L}{3,10}\\.?[ ,./-]*"
              + "(?:de )?(?:\\d{4}|\\d{2})"
              + "|\\p{L}{3,10}\\.? +\\d{1,2}(?:st|nd|rd|th)?,? +\\d{4}");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
  private static final Pattern LENGTH =
      Pattern.compile(
          "(?i)\\d+([.,]\\d+)?\\s*(m|mtr|metres?|meters?|ft|feet|foot|'|\u2032|\u2019)\\.?"
              + "[\\s-]*(\\d+([.,/]\\d+)?\\s*(\"|in|ins|inches|''|\u2033|\u201D)?\\.?)?");

  /** Words and signs that only say that nothing is known. */
  private static final Set<String> NOTHING =
      Set.of(
          "n a",
          "na",
          "none",
          "unknown",
          "not known",
          "tbc",
          "tba",
          "tbd",
          "nil",
          "null",
          "k a",
          "unbekannt",
          "keine",
          "keiner",
          "inconnu",
          "aucun",
          "desconocido",
          "ninguno",
          "sconosciuto",
          "nessuno",
          "onbekend",
          "geen");

  private Shape() {}

  /** Whether a text only says that nothing is known: a sign, or a word such as "unknown". */
  static boolean saysNothing(String text) {
    return !hasLetterOrDigit(text) || NOTHING.contains(Folding.name(text));
  }

  static boolean hasLetterOrDigit(String text) {
    return text.codePoints().anyMatch(Character::isLetterOrDigit);
  }

  static boolean hasLetter(String text) {
    return text.codePoints().anyMatch(Character::isLetter);
  }

  static boolean isMail(String text) {
    return MAIL.matcher(text).matches();
  }

  /** Whether a text is a phone number, or several, perhaps with words such as "home". */
  static boolean isPhone(String text) {
    String plain = PHONE_LETTERS.matcher(text).replaceAll("");
    int digits = Folding.digits(plain).length();
    return digits >= LEAST_PHONE_DIGITS
        && digits <= 2 * MOST_PHONE_DIGITS
        && PHONE_SIGNS.matcher(plain.replaceAll("\\d", "")).matches()
        && !isDate(text)
        && !YEARS.matcher(text.strip()).matches();
  }

  /** A phone number that stands among other words; a bare run of digits is none. */
  static Optional<String> phoneIn(String text) {
    Matcher found = PHONE_WITHIN.matcher(text);
    while (found.find()) {
      String whole = found.group().strip();
      String one = whole.indexOf(')') < 0 ? whole.replace("(", "") : whole;
      int digits = Folding.digits(one).length();
      boolean parted = one.matches(".*[ ().+-].*") || one.startsWith("0");
      if (parted
          && digits >= LEAST_PHONE_DIGITS
          && digits <= MOST_PHONE_DIGITS
          && !isDate(one)
          && !YEARS.matcher(one).matches()) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** Whether a text is a date with a year, in numbers or with its month in words. */
  static boolean isDate(String text) {
    String plain = text.strip();
    return DATE.matcher(plain).matches() || DATE_IN_WORDS.matcher(plain).matches();
  }

  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** Whether a text is a length with its unit. */
  static boolean isLength(String text) {
    return LENGTH.matcher(text.strip()).matches();
  }

  static boolean isHullNumber(String text) {
    return HullNumber.read(text) instanceof HullNumber.Valid;
  }

  /** Whether a text can stand in a row of a list but is no heading. */
  static boolean isData(Cell cell) {
    String text = cell.text();
    return cell.kind() == Cell.Kind.NUMBER
        || cell.kind() == Cell.Kind.DAY
        || text.indexOf('@') >= 0
        || isNumber(text)
        || isDate(text)
        || isPhone(text)
        || isLength(text)
        || isHullNumber(text);
  }

  /**
   * How much a text looks like the name of a person: 2 with a title, an initial, a comma or two
   * people, 1 with two or three words, 0 otherwise.
   */
  static int likeAPerson(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.matches(
        "(?s).*\\b(mr|mrs|ms|miss|dr|capt|sir|herr|frau|mme|mlle|sra?|sig|sigra|dhr|mevr)\\b.*")) {
      return 2;
    }
    if (text.matches("(?s)\\p{Lu}\\.? ?(\\p{Lu}\\.? ?)?\\p{Lu}\\p{L}+.*")
        && text.matches("(?s)\\p{Lu}\\.? .*|\\p{Lu}\\..*")) {
      return 2;
    }
    if (text.matches("[\\p{L}'’ -]+, ?[\\p{L}'’. -]+")
        || text.matches("\\p{L}+ (&|and|und|et) .*")) {
      return 2;
    }
    int words = Folding.words(text).size();
    return words == 2 || words == 3 ? 1 : 0;
  }

  /** Names in a form in which the same person gives the same text. */
  static String person(String name) {
    List<String> words = new ArrayList<>(Folding.words(name.replace("&", " and ")));
    words.removeIf(TITLES::contains);
    words.sort(null);
    return String.join(" ", words);
  }

  /** Whether two names have the same words, in whatever order, case and accents. */
  static boolean sameWords(String a, String b) {
    List<String> x = new ArrayList<>(Folding.words(a));
    List<String> y = new ArrayList<>(Folding.words(b));
    x.sort(null);
    y.sort(null);
    return x.equals(y);
  }

  private static final Set<String> TITLES =
      Set.of(
          "mr", "mrs", "ms", "miss", "dr", "capt", "captain", "sir", "herr", "frau", "m", "mme",
          "mlle", "sr", "sra", "sig", "sigra", "dhr", "mevr");

  /** Names of boats in a form in which the same boat gives the same text. */
  static String boat(String name) {
    List<String> words = new ArrayList<>(Folding.words(name));
    while (words.size() > 1 && PREFIXES.contains(words.get(0))) {
      words.remove(0);
    }
    if (words.size() > 2 && PREFIXES.contains(words.get(0) + words.get(1))) {
      words.subList(0, 2).clear();
    }
    if (words.size() > 1 && words.get(0).equals("the")) {
      words.remove(0);
    }
    return String.join(" ", words);
  }

  private static final Set<String> PREFIXES =
      Set.of("sy", "my", "mv", "sv", "mts", "ss", "yacht", "boat");
}
