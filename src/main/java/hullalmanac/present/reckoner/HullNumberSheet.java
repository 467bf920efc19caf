package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.HullNumber;
import hullalmanac.core.record.Texts;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a hull number says. */
final class HullNumberSheet extends Calculator<HullNumberSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("number"));

  /** What is given; public so that it can be copied with one component changed. */
  public record Given(String number) {}

  HullNumberSheet() {
    super(new Given(""));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Hull number", "What it says of the boat");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(make.line("number", "As read off the boat", Given::number));
  }

  @Override
  List<String> table() {
    return List.of("Its parts", "Part", "Characters", "Means");
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    if (given.number().isBlank()) {
      return Reckoned.nothing(BLANK, "Write the number as it stands on the boat.");
    }
    HullNumber.Reading reading = HullNumber.read(given.number());
    return reading instanceof HullNumber.Valid valid
        ? valid(valid)
        : Reckoned.of(
            answer("number", "", "Not a hull number: " + ((HullNumber.Invalid) reading).reason()));
  }

  private static Reckoned valid(HullNumber.Valid valid) {
    String built = month(valid) + " " + valid.built();
    return Reckoned.of(answer("number", "", "Built " + built + ", model year " + valid.modelYear()))
        .rows(parts(valid, built))
        .note(
            valid.warning().map(w -> Texts.capital(w) + ". ").orElse("")
                + "A good form does not make a number genuine.");
  }

  private static String month(HullNumber.Valid valid) {
    return valid.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static List<List<String>> parts(HullNumber.Valid valid, String built) {
    List<List<String>> rows = new ArrayList<>();
    valid.country().ifPresent(c -> rows.add(List.of("country", c, "written before the number")));
    rows.add(List.of("maker", valid.maker(), "code of the maker or importer"));
    rows.add(List.of("serial", valid.serial(), "the maker’s own"));
    rows.add(List.of("date", valid.body().substring(8), "built " + built));
    rows.add(List.of("model year", String.valueOf(valid.modelYear()), valid.form().words()));
    return rows;
  }

  @Override
  List<Formula> formulas() {
    return List.of(HullNumber.FORMULA);
  }
}
