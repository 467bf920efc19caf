package hullalmanac.core.find;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Brings texts and what is typed to one form: small letters without accents, and digits. */
public final class Folding {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern APOSTROPHES = Pattern.compile("['’ʼ‘`´]");

  /** Letters that do not come apart into a plain one and a mark. */
  private static final Map<Integer, String> LETTERS =
      Map.ofEntries(
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'ð', "d"),
          Map.entry((int) 'þ', "th"),
          Map.entry((int) 'ħ', "h"),
          Map.entry((int) 'ŧ', "t"),
          Map.entry((int) 'ı', "i"));

  private static final int ASCII_END = 128;

  private Folding() {}

  /** The words of a text, folded; everything but letters and digits parts them. */
  public static List<String> words(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    if (!plain.chars().allMatch(c -> c < ASCII_END)) {
      plain = MARKS.matcher(Normalizer.normalize(plain, Normalizer.Form.NFD)).replaceAll("");
    }
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < plain.length(); i += Character.charCount(plain.codePointAt(i))) {
      int c = plain.codePointAt(i);
      if (Character.isDigit(c)) {
        word.append(Character.digit(c, 10));
      } else if (c >= ASCII_END && LETTERS.containsKey(c)) {
        word.append(LETTERS.get(c));
      } else if (Character.isLetter(c)) {
        word.appendCodePoint(c);
      } else {
        end(word, words);
      }
    }
    end(word, words);
    return words;
  }

  private static void end(StringBuilder word, List<String> words) {
    if (!word.isEmpty()) {
      words.add(word.toString());
      word.setLength(0);
    }
  }

  /** The words under which a text is found: its own, and those written without an apostrophe. */
  static List<String> tokens(String text) {
    List<String> tokens = words(text);
    if (tokens.size() > 1 && APOSTROPHES.matcher(text).find()) {
      tokens.addAll(words(APOSTROPHES.matcher(text).replaceAll("")));
    }
    return tokens;
  }

  /** A name as one text: its words parted by single blanks. */
  public static String name(String text) {
    return String.join(" ", words(text));
  }

  /** A number or code as one word, whatever blanks and dashes are in it. */
  public static String solid(String text) {
    return String.join("", words(text));
  }

  /** The digits of a phone number, without the zero in brackets that only some callers dial. */
  public static String digits(String phone) {
    return solid(phone.replace("(0)", "")).replaceAll("[^0-9]", "");
  }
}
