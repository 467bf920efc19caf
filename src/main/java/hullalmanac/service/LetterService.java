package hullalmanac.service;

import hullalmanac.core.report.Letters;
import hullalmanac.exchange.letter.Template;
import java.util.Map;

/** Words letters. Touches no file. */
public final class LetterService {
  private LetterService() {}

  /** A letter, or why there is none. */
  public sealed interface Outcome {}

  /**
   * A letter.
   *
   * @param subject one line
   */
  public record Letter(String subject, String text) implements Outcome {}

  /**
   * @param sentence what to do about it
   */
  public record Refused(String sentence) implements Outcome {}

  /**
   * Puts the fields into a wording.
   *
   * @param fields by the names of {@link Letters#FIELDS}
   */
  public static Outcome fill(Letters.Words words, Map<String, String> fields) {
    Template.Outcome subject = Template.fill(words.subject(), fields);
    Template.Outcome text = Template.fill(words.text(), fields);
    if (subject instanceof Template.Refused refused) {
      return new Refused(refused.sentence());
    }
    if (text instanceof Template.Refused refused) {
      return new Refused(refused.sentence());
    }
    return new Letter(
        hullalmanac.core.record.Texts.oneLine(((Template.Filled) subject).text()),
        ((Template.Filled) text).text());
  }
}
