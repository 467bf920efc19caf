package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Makes readable ids for new rows from names: {@code merganser}, {@code merganser-2}. None is like
 * that of a row of the same kind in the record, or like one made before by the same source; upper
 * and lower case count as the same.
 */
public final class NewKeys {
  private static final int LONGEST = 80;

  /** Letters that do not come apart into a plain letter and a mark. */
  private static final Map<String, String> PLAIN =
      Map.of(
          "ß", "ss", "æ", "ae", "œ", "oe", "ø", "o", "ł", "l", "đ", "d", "ð", "d", "þ", "th", "ı",
          "i");

  private final Map<Kind, Set<String>> taken = new EnumMap<>(Kind.class);

  /** Keys that are new in a record. */
  public NewKeys(Almanac almanac) {
    almanac.rows().forEach(this::take);
  }

  private void take(Row row) {
    taken(Kind.of(row)).add(row.key().toLowerCase(Locale.ROOT));
  }

  private Set<String> taken(Kind kind) {
    return taken.computeIfAbsent(kind, k -> new HashSet<>());
  }

  /**
   * A key of a new row.
   *
   * @param words what it is made of, in order; where no letter or digit of them is left, the kind's
   *     own word is taken
   */
  public String next(Kind kind, Object... words) {
    StringBuilder joined = new StringBuilder();
    for (Object word : words) {
      joined.append(word).append(' ');
    }
    String slug = slug(joined.toString());
    String base = slug.isEmpty() ? slug(kind.one()) : slug;
    String key = cut(base, LONGEST);
    for (int n = 2; !taken(kind).add(key); n++) {
      String number = "-" + n;
      key = cut(base, LONGEST - number.length()) + number;
    }
    return key;
  }

  private static String slug(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> letter : PLAIN.entrySet()) {
      lower = lower.replace(letter.getKey(), letter.getValue());
    }
    return Normalizer.normalize(lower, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+|['’]", "")
        .replaceAll("[^a-z0-9]+", "-")
        .replaceAll("^-|-$", "");
  }

  private static String cut(String slug, int longest) {
    return slug.length() <= longest ? slug : slug.substring(0, longest).replaceAll("-+$", "");
  }
}
