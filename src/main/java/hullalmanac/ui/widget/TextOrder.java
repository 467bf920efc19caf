package hullalmanac.ui.widget;

import java.text.Collator;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The order of texts in a column: blank ones, then those that begin with a number by that number,
 * then all others as words. Days (2026-05-01) are such words, and come out in their order.
 */
final class TextOrder implements Comparator<String> {
  private static final Pattern NUMBER =
      Pattern.compile("-?(\\d{1,3}(,\\d{3})+(?!\\d)|\\d+)(\\.\\d+)?(?!\\d*-\\d)");

  private final Collator words = Collator.getInstance(Locale.ENGLISH);

  /** A text that begins with a number, or one that does not: 0, and of a higher rank. */
  private record Begin(int rank, double number) {
    static Begin of(String text) {
      Matcher begin = NUMBER.matcher(text);
      return text.isBlank()
          ? new Begin(0, 0)
          : begin.lookingAt()
              ? new Begin(1, Double.parseDouble(begin.group().replace(",", "")))
              : new Begin(2, 0);
    }
  }

  @Override
  public int compare(String one, String other) {
    Begin a = Begin.of(one);
    Begin b = Begin.of(other);
    int byBegin = Integer.compare(a.rank(), b.rank());
    int byNumber = byBegin != 0 ? byBegin : Double.compare(a.number(), b.number());
    int byWords = byNumber != 0 ? byNumber : words.compare(one, other);
    return byWords != 0 ? byWords : one.compareTo(other);
  }
}
