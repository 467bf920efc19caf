package hullalmanac.core.find;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The part of a long text around a word that was looked for. */
final class Excerpt {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}\\p{M}]+");
  private static final int LONGEST = 90;
  private static final int BEFORE = 24;

  private Excerpt() {}

  /** A text on one line, cut to what fits around the first of the words that is in it. */
  static String of(String text, List<String> words) {
    String line = text.strip().replaceAll("\\s+", " ");
    if (line.length() <= LONGEST) {
      return line;
    }
    int from = beginning(line, place(line, words));
    int to = end(line, from);
    return (from > 0 ? "… " : "")
        + line.substring(from, to).strip()
        + (to < line.length() ? " …" : "");
  }

  /** Where the excerpt begins: at a word, a little before the place that must be in it. */
  private static int beginning(String line, int place) {
    int from = Math.min(place - BEFORE, line.length() - LONGEST);
    if (from <= 0) {
      return 0;
    }
    int blank = line.indexOf(' ', from);
    return blank >= 0 && blank < place ? blank + 1 : place;
  }

  /** Where it ends: at a blank, or in a word that fills it, but never inside of a character. */
  private static int end(String line, int from) {
    int to = from + LONGEST;
    if (to >= line.length()) {
      return line.length();
    }
    int blank = line.lastIndexOf(' ', to);
    if (blank > from) {
      return blank;
    }
    return Character.isHighSurrogate(line.charAt(to - 1)) ? to - 1 : to;
  }

  /** Whether a word of a text begins with one of those looked for. */
  static boolean has(String text, List<String> words) {
    return Folding.tokens(text).stream().anyMatch(t -> words.stream().anyMatch(t::startsWith));
  }

  /** A word of a text as it stands there. */
  static String word(String text, String folded) {
    Matcher matcher = WORD.matcher(text);
    while (matcher.find()) {
      if (Folding.words(matcher.group()).contains(folded)) {
        return matcher.group();
      }
    }
    return folded;
  }

  private static int place(String line, List<String> words) {
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      if (has(matcher.group(), words)) {
        return matcher.start();
      }
    }
    return 0;
  }
}
