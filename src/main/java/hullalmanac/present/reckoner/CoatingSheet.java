package hullalmanac.present.reckoner;

import hullalmanac.core.entry.ClimateEntry;
import hullalmanac.core.entry.TimeEntry;
import hullalmanac.core.reckon.CoatingHours;
import hullalmanac.core.reckon.CoatingWindow;
import hullalmanac.core.reckon.DewPoint;
import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.Psychrometer;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.core.report.Caution;
import hullalmanac.present.Desk;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a coat may be laid now, and when by the readings of a day. */
final class CoatingSheet extends Calculator<CoatingSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("now"), blank("step"));

  private final Desk desk;
  private final HourTable hours = new HourTable();
  private String pasted = "";

  /**
   * What is given; public so that it can be copied with one component changed.
   *
   * @param at when the reading was taken; absent: now
   */
  public record Given(
      Optional<Id<Product>> product,
      Optional<Quantity> air,
      Optional<Double> humidity,
      Optional<Quantity> wet,
      Optional<Quantity> surface,
      Optional<LocalDateTime> at,
      boolean sun) {}

  CoatingSheet(Desk desk) {
    super(
        new Given(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false));
    this.desk = desk;
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Coating window", "Now, and by the hour");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.quantity("air", "Air, °C", Unit.CELSIUS, Given::air),
        make.maybeNumber("humidity", "Humidity, %", Given::humidity),
        make.quantity("surface", "Surface, °C", Unit.CELSIUS, Given::surface),
        make.quantity("wet", "or wet thermometer, °C", Unit.CELSIUS, Given::wet),
        time(make.today()),
        make.yesNo("sun", "Sun on the surface", Given::sun),
        make.maybeOf(
            "product",
            "Product, for its label’s limits",
            FromRecord.products(fleet),
            Given::product));
  }

  private static FieldOf<Given> time(LocalDate day) {
    return new FieldOf<>(
        "at",
        "Read at; empty is now",
        new Input.Line("10:30"),
        g -> g.at().map(t -> TimeEntry.write(t, day)).orElse(""),
        (given, typed) -> FieldMaker.maybe(given, "at", TimeEntry.read(typed, day)));
  }

  private Optional<Product> product(Fleet fleet, Given given) {
    return FromRecord.product(fleet, given.product());
  }

  private Product.Handling limits(Fleet fleet, Given given) {
    return product(fleet, given).map(Product::handling).orElse(Product.Handling.UNKNOWN);
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    List<String> cautions = new ArrayList<>();
    product(fleet, given)
        .ifPresent(
            p -> Caution.of(p).forEach(c -> cautions.add(c.text() + " (" + c.source() + ")")));
    cautions.add(Caution.LABEL_FIRST);
    try {
      return climate(fleet, given)
          .map(c -> reckoned(fleet, given, c))
          .orElse(
              Reckoned.nothing(
                  BLANK, "Write air, humidity (or a wet thermometer) and surface, or the table."))
          .cautions(cautions);
    } catch (IllegalArgumentException e) {
      return Reckoned.nothing(BLANK, Texts.capital(e.getMessage()) + ".").cautions(cautions);
    }
  }

  private LocalDateTime now(Fleet fleet) {
    return fleet.asOf().atTime(desk.now().toLocalTime()).withSecond(0).withNano(0);
  }

  private Optional<Climate> climate(Fleet fleet, Given given) {
    if (given.humidity().isPresent() && given.wet().isPresent()) {
      throw new IllegalArgumentException("write the humidity or a wet thermometer, not both");
    }
    if (given.air().isEmpty()
        || given.surface().isEmpty()
        || (given.humidity().isEmpty() && given.wet().isEmpty())) {
      return Optional.empty();
    }
    double air = ClimateEntry.celsius(given.air().get());
    double humidity = given.humidity().orElseGet(() -> humidity(air, given.wet().orElseThrow()));
    return Optional.of(
        new Climate(
            air,
            humidity,
            ClimateEntry.celsius(given.surface().get()),
            given.at().orElse(now(fleet))));
  }

  private static double humidity(double air, Quantity wet) {
    Psychrometer read = new Psychrometer(air, DewPointSheet.celsius(wet), Psychrometer.SEA_LEVEL);
    return Math.round(read.humidity() * 10) / 10.0;
  }

  private Reckoned reckoned(Fleet fleet, Given given, Climate climate) {
    CoatingWindow window = CoatingWindow.of(climate, limits(fleet, given), given.sun(), now(fleet));
    Quantity dew = Quantity.of(DewPoint.of(climate.air(), climate.humidity()), Unit.CELSIUS);
    String good =
        TimeEntry.write(
            climate.takenAt().plus(CoatingWindow.STALE), climate.takenAt().toLocalDate());
    StringBuilder note =
        new StringBuilder("Dew point ")
            .append(DewPointSheet.tenths(dew))
            .append(". The reading is good until ")
            .append(good)
            .append(".");
    if (window.open()) {
      keepDry(fleet, given, climate.takenAt()).ifPresent(note::append);
    }
    return Reckoned.of(
            answer("now", "", window.words()),
            answer(
                "step",
                "To be kept with the coat: for the step of the visit",
                ClimateEntry.write(climate, fleet.asOf())))
        .note(note.toString());
  }

  /** Until when a coat is to stay dry that is laid at a time. */
  private Optional<String> keepDry(Fleet fleet, Given given, LocalDateTime laid) {
    return limits(fleet, given)
        .cureHours()
        .filter(h -> h > 0)
        .map(
            h ->
                " Laid at "
                    + TimeEntry.write(laid, laid.toLocalDate())
                    + ", it is to stay dry for "
                    + h
                    + " hours, until "
                    + TimeEntry.write(laid.plusHours(h), laid.toLocalDate())
                    + ".");
  }

  @Override
  List<SheetState.Block> more(Fleet fleet, Given given) {
    Product.Handling limits = limits(fleet, given);
    CoatingHours read = hours.hours(limits, given.sun());
    String words = HourWords.of(read, fleet.asOf());
    return List.of(
        hours.grid(make(fleet), limits, given.sun()),
        answer("day", "", words),
        new SheetState.Words((pasted + " " + HourWords.dew(read, limits, fleet.asOf())).strip()),
        new SheetState.Buttons(List.of(new SheetState.Button("empty", "Empty the table", false))));
  }

  @Override
  List<Formula> formulas() {
    return List.of(CoatingWindow.FORMULA);
  }

  @Override
  public void tick() {
    publishIfOther();
  }

  @Override
  public Said say(At at, String text) {
    return at.block().equals(HourTable.ID)
        ? fleet().map(f -> hours.say(make(f), at, text)).orElse(Said.NOTHING)
        : super.say(at, text);
  }

  @Override
  public void enter(At at, String text) {
    if (at.block().equals(HourTable.ID)) {
      pasted = "";
      fleet().ifPresent(f -> hours.enter(make(f), at, text));
      publish();
    } else {
      super.enter(at, text);
    }
  }

  @Override
  public void paste(At corner, List<List<String>> texts) {
    if (!corner.block().equals(HourTable.ID)) {
      return;
    }
    fleet()
        .ifPresent(
            f -> {
              int refused = hours.paste(make(f), corner, texts);
              pasted =
                  refused == 0
                      ? ""
                      : refused + " of the pasted texts were not taken; they stand as they came.";
            });
    publish();
  }

  @Override
  public void remove(String block, String row) {
    hours.remove(row);
    publish();
  }

  @Override
  public void press(String button) {
    pasted = "";
    hours.clear();
    publish();
  }
}
