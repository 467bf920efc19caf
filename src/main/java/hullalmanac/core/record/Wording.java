package hullalmanac.core.record;

import java.util.regex.Pattern;

/**
 * How letters are worded, with fields such as {@code {{boat}}} (mustache).
 *
 * @param language tag of the language it is in, such as {@code en} (BCP 47); empty for the
 *     business's own
 * @param subject one line
 * @param text any number of lines
 */
public record Wording(
    Id<Wording> id, String key, LetterKind kind, String language, String subject, String text)
    implements Row {
  private static final Pattern TAG = Pattern.compile("|[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*");

  public Wording {
    Texts.key(key);
    Texts.require(subject, "the subject of a letter");
    Texts.require(text, "the text of a letter");
    if (!subject.equals(Texts.oneLine(subject))) {
      throw new IllegalArgumentException("a subject is one line");
    }
    if (!TAG.matcher(language).matches()) {
      throw new IllegalArgumentException(
          "a language is a tag such as en or pt-BR, not " + language);
    }
  }
}
