package hullalmanac.core.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pages of the guide, in the order in which one reads them. */
public record Guide(List<GuidePage> pages) {
  /** Letters shown before and after what was found. */
  private static final int AROUND = 42;

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  public Guide {
    pages = List.copyOf(pages);
  }

  /**
   * A page that has some words.
   *
   * @param excerpt what stands around the first of them
   */
  public record Found(GuidePage page, String excerpt) {}

  /** The page with an id. */
  public Optional<GuidePage> page(String id) {
    return pages.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * Where a link leads.
   *
   * @param link {@code file} or {@code file#anchor}
   * @return nothing when the guide has no such place
   */
  public Optional<Spot> target(String link) {
    int hash = link.indexOf('#');
    String file = hash < 0 ? link : link.substring(0, hash);
    String anchor = hash < 0 ? "" : link.substring(hash + 1);
    return pages.stream()
        .filter(p -> p.file().equals(file))
        .filter(p -> anchor.isEmpty() || p.has(anchor))
        .findFirst()
        .map(p -> new Spot(p.id(), anchor));
  }

  /** The words that are looked for in a text that was typed, in small letters. */
  public static List<String> words(String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    return plain.isEmpty() ? List.of() : List.of(BLANKS.split(plain));
  }

  /** The pages that have all words of a text, those that have one in their title first. */
  public List<Found> find(String typed) {
    List<String> words = words(typed);
    List<Found> titled = new ArrayList<>();
    List<Found> others = new ArrayList<>();
    for (GuidePage page : pages) {
      String all = (page.title() + "\n" + page.text()).toLowerCase(Locale.ROOT);
      if (!words.isEmpty() && words.stream().allMatch(all::contains)) {
        boolean title = words.stream().anyMatch(page.title().toLowerCase(Locale.ROOT)::contains);
        (title ? titled : others).add(new Found(page, excerpt(page.text(), words.get(0))));
      }
    }
    titled.addAll(others);
    return titled;
  }

  private static String excerpt(String text, String word) {
    Matcher at =
        Pattern.compile(Pattern.quote(word), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
            .matcher(text);
    int start = at.find() ? at.start() : 0;
    int from = Math.max(0, start - AROUND);
    int to = Math.min(text.length(), start + word.length() + AROUND);
    // Whole words only, but where the text begins or ends.
    if (from > 0) {
      int blank = text.indexOf(' ', from);
      from = blank < 0 || blank >= start ? start : blank + 1;
    }
    if (to < text.length()) {
      int blank = text.lastIndexOf(' ', to);
      to = blank <= start ? to : blank;
    }
    String part = BLANKS.matcher(text.substring(from, to)).replaceAll(" ").strip();
    return (from > 0 ? "… " : "") + part + (to < text.length() ? " …" : "");
  }
}
