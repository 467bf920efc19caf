package hullalmanac.exchange.letter;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import java.util.Map;
import java.util.TreeSet;

/**
 * Fills fields in two braces into a plain text: {@code {{boat}}}, and {@code {{#harbour}} …
 * {{/harbour}}} for what stands only where the field is not empty (the mustache language of
 * templates). Nothing is escaped, nothing is read from elsewhere.
 */
public final class Template {
  private static final Mustache.Compiler PLAIN =
      Mustache.compiler().escapeHTML(false).emptyStringIsFalse(true).strictSections(true);

  private static final Refused BRACES =
      new Refused(
          "The braces do not match: each field stands between two of them, such as {{boat}}, and"
              + " each {{#harbour}} has its {{/harbour}}.");

  private Template() {}

  /** A text that was filled, or why it was not. */
  public sealed interface Outcome {}

  /** The text. */
  public record Filled(String text) implements Outcome {}

  /**
   * @param sentence what to do about it
   */
  public record Refused(String sentence) implements Outcome {}

  /**
   * Fills a text.
   *
   * @param fields by their names
   */
  public static Outcome fill(String template, Map<String, String> fields) {
    if (template.lastIndexOf("{{") > template.lastIndexOf("}}")) {
      return BRACES;
    }
    try {
      return new Filled(PLAIN.compile(template).execute(fields));
    } catch (MustacheException.Context e) {
      return new Refused("There is no field {{" + e.key + "}}. There are " + named(fields) + ".");
    } catch (MustacheException e) {
      return BRACES;
    } catch (UnsupportedOperationException e) {
      return new Refused("A text holds no other texts: take {{> … }} out.");
    }
  }

  private static String named(Map<String, String> fields) {
    return String.join(
        ", ", new TreeSet<>(fields.keySet()).stream().map(f -> "{{" + f + "}}").toList());
  }
}
