package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How letters are worded. */
final class WordingFiles {
  static final CsvKind<Wording> WORDINGS =
      new CsvKind<>(
          "wordings.csv",
          Kind.WORDING,
          List.of(
              needText("id"),
              text("kind"),
              text("language"),
              needText("subject"),
              needText("text"))) {
        @Override
        List<Wording> rows(Almanac almanac, Keys keys) {
          return almanac.wordings().stream().sorted(Comparator.comparing(Wording::key)).toList();
        }

        @Override
        void write(Wording w, Out out) {
          out.put("id", w.key())
              .put("kind", w.kind().code())
              .put("language", w.language())
              .put("subject", w.subject())
              .put("text", w.text());
        }

        @Override
        Optional<Wording> read(In in) {
          Id<Wording> id = in.ref(Kind.WORDING, "id");
          LetterKind kind = in.coded(LetterKind.class, "kind", LetterKind.OTHER);
          return in.made(
              () ->
                  new Wording(
                      id,
                      in.key("id"),
                      kind,
                      in.text("language"),
                      in.text("subject"),
                      in.text("text")));
        }
      };

  private WordingFiles() {}
}
