package hullalmanac.exchange.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Looks that the font has every letter of the texts it is given. What it lacks is printed as words
 * in square brackets, such as {@code [Han letters]}, and remembered with where it stood.
 */
final class FontCover {
  private static final int LONGEST = 40;

  /** By script, excerpts of the texts in which its letters stood. */
  private final Map<String, Set<String>> missing = new LinkedHashMap<>();

  private final Map<String, StringBuilder> signs = new LinkedHashMap<>();

  /** The text as it can be printed: composed, without control characters. */
  String text(String given) {
    String text = Normalizer.normalize(given, Normalizer.Form.NFC);
    StringBuilder out = new StringBuilder(text.length());
    String gap = "";
    for (int c : text.codePoints().toArray()) {
      boolean blank = c == '\n' || c == '\t';
      if (!blank && (Character.isISOControl(c) || !Character.isDefined(c) || format(c))) {
        continue;
      }
      if (blank || PaperFont.has(c)) {
        out.appendCodePoint(c);
        gap = Character.isWhitespace(c) ? gap : "";
      } else if (!"Inherited".equals(script(c)) || gap.isEmpty()) {
        String now = "[" + script(c) + " letters]";
        note(c, text);
        if (!now.equals(gap)) {
          out.append(now);
        }
        gap = now;
      }
    }
    return out.toString();
  }

  /** Characters that only say how others are set. */
  private static boolean format(int c) {
    return Character.getType(c) == Character.FORMAT || Character.getType(c) == Character.SURROGATE;
  }

  private static String script(int c) {
    Character.UnicodeScript script = Character.UnicodeScript.of(c);
    if (script == Character.UnicodeScript.COMMON) {
      return "other";
    }
    String name = script.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private void note(int c, String text) {
    missing.computeIfAbsent(script(c), s -> new LinkedHashSet<>()).add(excerpt(text));
    StringBuilder known = signs.computeIfAbsent(script(c), s -> new StringBuilder());
    if (known.indexOf(Character.toString(c)) < 0) {
      known.appendCodePoint(c);
    }
  }

  private static String excerpt(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.codePointCount(0, line.length()) <= LONGEST
        ? line
        : line.substring(0, line.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }

  /** What was lacking, a sentence a script; none where every letter was there. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    missing.forEach(
        (script, where) ->
            sentences.add(
                "The font of paper lacks "
                    + ("other".equals(script) ? "" : script + " letters: ")
                    + signs.get(script)
                    + ". They stand in “"
                    + String.join("”, “", where)
                    + "” and are printed as ["
                    + script
                    + " letters]."));
    return Collections.unmodifiableList(sentences);
  }

  /** The same to stand on the paper itself, in letters that it has. */
  List<String> onPaper() {
    return missing.keySet().stream()
        .map(
            script ->
                "Where it says ["
                    + script
                    + " letters], the font of this paper has no such letters.")
        .toList();
  }
}
