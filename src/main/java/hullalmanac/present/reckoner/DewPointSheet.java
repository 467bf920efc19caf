package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.DewPoint;
import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.Psychrometer;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The dew point of air from its humidity, or from a wet thermometer. */
final class DewPointSheet extends Calculator<DewPointSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("dew"), blank("humidity"));

  /** What is given; public so that it can be copied with one component changed. */
  public record Given(
      Optional<Quantity> air,
      Optional<Double> humidity,
      Optional<Quantity> wet,
      Optional<Quantity> pressure) {}

  DewPointSheet() {
    super(new Given(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Dew point", "From humidity or a wet thermometer");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.quantity("air", "Air (dry thermometer), °C", Unit.CELSIUS, Given::air),
        make.maybeNumber("humidity", "Humidity, %", Given::humidity),
        make.quantity("wet", "or wet thermometer, °C", Unit.CELSIUS, Given::wet),
        make.quantity(
            "pressure", "Pressure, where not 1013.25 hPa", Unit.HECTOPASCAL, Given::pressure));
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    if (given.air().isEmpty() || (given.humidity().isEmpty() && given.wet().isEmpty())) {
      return Reckoned.nothing(BLANK, "Write the air, and its humidity or a wet thermometer.");
    }
    if (given.humidity().isPresent() && given.wet().isPresent()) {
      return Reckoned.nothing(
          BLANK, "Write the humidity or a wet thermometer, and empty the other.");
    }
    double air = celsius(given.air().get());
    try {
      if (given.humidity().isPresent()) {
        return Reckoned.of(dew(DewPoint.of(air, given.humidity().get())), blank("humidity"));
      }
      Psychrometer read =
          new Psychrometer(
              air,
              celsius(given.wet().get()),
              given
                  .pressure()
                  .map(p -> p.in(Unit.HECTOPASCAL).doubleValue())
                  .orElse(Psychrometer.SEA_LEVEL));
      return Reckoned.of(
          dew(read.dewPoint()),
          answer("humidity", "Humidity", String.format(Locale.ROOT, "%.1f %%", read.humidity())));
    } catch (IllegalArgumentException e) {
      return Reckoned.nothing(BLANK, Texts.capital(e.getMessage()) + ".");
    }
  }

  static double celsius(Quantity temperature) {
    return temperature.in(Unit.CELSIUS).doubleValue();
  }

  private static Answer dew(double celsius) {
    Quantity dew = Quantity.of(celsius, Unit.CELSIUS);
    return new Answer("dew", "Dew point", tenths(dew), tenths(dew));
  }

  /** In both units, to the tenth of a degree. */
  static String tenths(Quantity temperature) {
    return String.format(
        Locale.ROOT,
        "%.1f °C · %.1f °F",
        temperature.in(Unit.CELSIUS),
        temperature.in(Unit.FAHRENHEIT));
  }

  @Override
  List<Formula> formulas() {
    return List.of(DewPoint.FORMULA, Psychrometer.FORMULA);
  }
}
