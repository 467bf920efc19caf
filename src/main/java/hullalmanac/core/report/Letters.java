package hullalmanac.core.report;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How a letter is worded: as the business has it, or as it comes with the program. */
public final class Letters {
  /** What can stand in two braces, and what is put there. */
  public static final List<Field> FIELDS =
      List.of(
          new Field("name", "who is written to"),
          new Field("boat", "the boat’s name"),
          new Field("harbour", "where she lies"),
          new Field("surfaces", "what falls due first"),
          new Field("when", "when it is best renewed"),
          new Field("business", "your business"));

  /** A field of a letter. */
  public record Field(String name, String meaning) {}

  /** A subject and a text, with fields in them. */
  public record Words(String subject, String text) {}

  private Letters() {}

  /** As it comes with the program. */
  public static Words starter(LetterKind kind) {
    return switch (kind) {
      case DUE ->
          new Words(
              "{{boat}}: {{surfaces}}",
              """
              Dear {{name}},

              I keep an eye on what protects {{boat}}{{#harbour}} at {{harbour}}{{/harbour}}. \
              This comes up first:

              {{surfaces}}: {{when}}.

              Cleaning comes first, then a new coat; the sooner it is done, the less has to come off.
              A day that lies ahead is a forecast, not a guarantee.

              Shall I come by?

              {{business}}
              """
                  .strip());
      case OTHER -> new Words("{{boat}}", "Dear {{name}},\n\n\n\n{{business}}");
    };
  }

  /**
   * The wording of the business in a language, else in its own language, else as it comes.
   *
   * @param language tag; empty for the business's own
   */
  public static Words of(Almanac almanac, LetterKind kind, String language) {
    return own(almanac, kind, language)
        .or(() -> own(almanac, kind, ""))
        .map(w -> new Words(w.subject(), w.text()))
        .orElseGet(() -> starter(kind));
  }

  /** What the business wrote itself for a kind and language. */
  public static Optional<Wording> own(Almanac almanac, LetterKind kind, String language) {
    return almanac.wordings().stream()
        .filter(w -> w.kind() == kind && w.language().equalsIgnoreCase(language))
        .min(Comparator.comparing(Wording::id));
  }
}
