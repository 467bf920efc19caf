package hullalmanac.present.reckoner;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.Simpson;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The area of a hull from girths taken at stations along it. */
final class StationsSheet extends Calculator<StationsSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("area"));
  private static final double METRES_PER_FOOT = 0.3048;

  /**
   * What is given; public so that it can be copied with one component changed.
   *
   * @param girths in feet or metres, as the business has it
   */
  public record Given(Optional<Length> spacing, List<Double> girths, boolean oneSide) {
    public Given {
      girths = List.copyOf(girths);
    }
  }

  StationsSheet() {
    super(new Given(Optional.empty(), List.of(), true));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Area by stations", "From girths, by Simpson’s first rule");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.length("spacing", "From station to station", Given::spacing),
        girths(FromRecord.inFeet(fleet) ? "ft" : "m"),
        make.yesNo("oneSide", "Girths are of one side", Given::oneSide));
  }

  private static FieldOf<Given> girths(String unit) {
    return new FieldOf<>(
        "girths",
        "Girths from end to end, " + unit,
        new Input.Line("0 3.7 5.9 7.6 7.5 4.6 0.1"),
        g -> g.girths().stream().map(Numbers::plain).collect(Collectors.joining(" ")),
        (given, typed) -> {
          List<Double> girths = new ArrayList<>();
          for (String one : typed.strip().split("[\\s;]+")) {
            Entry<BigDecimal> entry = NumberEntry.read(one);
            if (entry instanceof Entry.Refused<BigDecimal> refused) {
              return new Entry.Refused<>(refused.sentence());
            }
            entry.map(n -> girths.add(n.doubleValue()));
          }
          if (girths.stream().anyMatch(g -> g < 0)) {
            return new Entry.Refused<>("A girth is not under 0");
          }
          return new Entry.Read<>(
              With.component(given, "girths", girths),
              girths.isEmpty() ? "" : girths.size() + " stations");
        });
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    if (given.spacing().isEmpty() || given.girths().isEmpty()) {
      return Reckoned.nothing(
          BLANK, "Write how far stations are apart, and the girth at each, the ends included.");
    }
    double scale = FromRecord.inFeet(fleet) ? METRES_PER_FOOT : 1;
    try {
      double side =
          Simpson.area(
              given.spacing().get().metres(), given.girths().stream().map(g -> g * scale).toList());
      return Reckoned.of(
          AreaSheet.area(
              fleet,
              "area",
              given.oneSide() ? "Both sides" : "",
              Optional.of(given.oneSide() ? 2 * side : side)));
    } catch (IllegalArgumentException e) {
      return Reckoned.nothing(BLANK, Texts.capital(e.getMessage()) + ".");
    }
  }

  @Override
  List<Formula> formulas() {
    return List.of(Simpson.FORMULA);
  }
}
