package hullalmanac.present.reckoner;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.QuantityEntry;
import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.UnitConversion;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.List;

/** A length, area, volume, spread rate, temperature or pressure in other units. */
final class UnitsSheet extends Calculator<UnitsSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("units"));

  /**
   * What is given; public so that it can be copied with one component changed.
   *
   * @param what as typed, for it is to stay in the words in which it was
   */
  public record Given(String what) {}

  UnitsSheet() {
    super(new Given(""));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Units", "Feet, gallons, °F, psi and back");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        new FieldOf<>(
            "what",
            "So much of a unit",
            new Input.Line("32 ft 6 in, 5 us gal, 20 c, 35 psi"),
            Given::what,
            (given, typed) ->
                QuantityEntry.readAny(typed) instanceof Entry.Refused<Quantity> refused
                    ? new Entry.Refused<>(refused.sentence())
                    : new Entry.Read<>(new Given(typed.strip()), "")));
  }

  @Override
  List<String> table() {
    return List.of("In other units", "So much");
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    if (!(QuantityEntry.readAny(given.what()) instanceof Entry.Read<Quantity> read)) {
      return Reckoned.nothing(BLANK, "Write a number and its unit.");
    }
    Quantity quantity = read.value();
    String said = read.echo().substring(0, read.echo().indexOf(" · "));
    boolean feetAndInches = quantity.unit() == Unit.INCH && said.contains("ft");
    Unit into = feetAndInches ? Unit.METRE : quantity.unit().counterpart();
    String other = quantity.to(into).preciseText();
    return Reckoned.of(new Answer("units", "", said + " = " + other, other))
        .rows(UnitConversion.others(quantity).stream().map(q -> List.of(q.preciseText())).toList());
  }

  @Override
  List<Formula> formulas() {
    return List.of(UnitConversion.FORMULA);
  }
}
