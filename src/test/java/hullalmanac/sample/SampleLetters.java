package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Wording;

/** How the invented business words its letters. */
final class SampleLetters {
  private SampleLetters() {}

  static Almanac add(Almanac almanac) {
    return almanac.with(
        Edit.put(
            new Wording(
                new Id<>(7_001_001),
                "due-fr",
                LetterKind.DUE,
                "fr",
                "{{boat}} : {{surfaces}}",
                """
                Bonjour {{name}},

                la protection de {{boat}}{{#harbour}} à {{harbour}}{{/harbour}} arrive bientôt en fin de vie \
                ({{surfaces}}: {{when}}). C’est une prévision, pas une garantie.

                {{business}}"""),
            new Wording(
                new Id<>(7_001_002),
                "other",
                LetterKind.OTHER,
                "",
                "{{boat}}",
                "Dear {{name}},\n\nabout {{boat}}:\n\n\n\nYours, {{business}}")));
  }
}
