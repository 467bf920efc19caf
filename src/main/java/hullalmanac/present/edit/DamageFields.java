package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Observation;
import hullalmanac.present.sheet.Input;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Fields of damage that was found on a surface: what it is, who was told of it, and when. */
final class DamageFields {
  private static final String NOBODY = "nobody yet";
  private static final String KIND = "damage";

  private DamageFields() {}

  /**
   * The fields of damage.
   *
   * @param people who have to do with the boat, by name
   */
  static List<FieldOf<Looked>> of(FieldMaker make, List<String> people) {
    return List.of(what("What"), whom(make, people), on(make));
  }

  private static Optional<Observation.Damage> damage(Looked row) {
    return Optional.ofNullable((Observation.Damage) row.seen().get(KIND));
  }

  private static Optional<Observation.Told> told(Looked row) {
    return damage(row).flatMap(Observation.Damage::told);
  }

  private static Looked with(Looked row, String text, Optional<Observation.Told> told) {
    return row.with(KIND, Optional.of(new Observation.Damage(text, told)));
  }

  private static Looked with(Looked row, Optional<Observation.Told> told) {
    return with(row, damage(row).orElseThrow().text(), told);
  }

  /** What it is; empty where none was found. Who was told stays when the words change. */
  static FieldOf<Looked> what(String label) {
    return new FieldOf<>(
        KIND,
        label,
        new Input.Line(""),
        row -> damage(row).map(Observation.Damage::text).orElse(""),
        (row, typed) ->
            new Entry.Read<>(
                typed.isBlank()
                    ? row.with(KIND, Optional.empty())
                    : with(row, typed.strip(), told(row)),
                ""));
  }

  /** Who was told, today unless another day is written; a name as it begins, or free words. */
  private static FieldOf<Looked> whom(FieldMaker make, List<String> people) {
    return new FieldOf<>(
        "toldWhom",
        "Told whom",
        new Input.Suggest(people),
        row -> told(row).map(Observation.Told::whom).orElse(NOBODY),
        (row, typed) -> {
          String words = typed.strip();
          if (damage(row).isEmpty() || words.isEmpty() || isNobody(words)) {
            return new Entry.Read<>(
                damage(row).isEmpty() ? row : with(row, Optional.empty()), NOBODY);
          }
          LocalDate day = told(row).map(Observation.Told::on).orElse(make.today());
          String whom = named(people, words);
          return new Entry.Read<>(
              with(row, Optional.of(new Observation.Told(whom, day))), "told " + whom);
        });
  }

  private static boolean isNobody(String words) {
    return NOBODY.startsWith(words.toLowerCase(Locale.ROOT)) && words.length() >= "no".length();
  }

  private static String named(List<String> people, String words) {
    String start = words.toLowerCase(Locale.ROOT);
    List<String> begun =
        people.stream().filter(p -> p.toLowerCase(Locale.ROOT).startsWith(start)).toList();
    return begun.size() == 1 ? begun.get(0) : words;
  }

  private static FieldOf<Looked> on(FieldMaker make) {
    FieldOf<Looked> day =
        make.maybeDay("toldOn", "Told on", row -> told(row).map(Observation.Told::on));
    return new FieldOf<>(
        day.id(),
        day.label(),
        day.input(),
        day.text(),
        (row, typed) -> {
          Optional<Observation.Told> told = told(row);
          if (typed.isBlank()) {
            return told.isEmpty()
                ? new Entry.Read<>(row, "")
                : new Entry.Refused<>("Write nobody yet under Told whom instead.");
          }
          if (told.isEmpty()) {
            return new Entry.Refused<>("Write first who was told.");
          }
          Entry<LocalDate> entry = make.readDay(typed);
          boolean ahead =
              entry instanceof Entry.Read<LocalDate> read
                  && read.value().isAfter(make.today())
                  && !read.value().equals(told.get().on());
          return ahead
              ? new Entry.Refused<>("That day is still to come.")
              : entry.map(
                  on -> with(row, Optional.of(new Observation.Told(told.get().whom(), on))));
        });
  }
}
