package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.Spread;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.core.report.Caution;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;

/** How much of a product an area takes, and in how many bottles it comes. */
final class SpreadSheet extends Calculator<SpreadSheet.Given> {
  private static final List<Answer> BLANK = List.of(blank("bottles"), blank("volume"));

  /** What is given; public so that it can be copied with one component changed. */
  public record Given(
      Optional<Quantity> area,
      int coats,
      Optional<Quantity> rate,
      double waste,
      Optional<Quantity> size) {}

  SpreadSheet() {
    super(new Given(Optional.empty(), 1, Optional.empty(), Spread.USUAL_WASTE, Optional.empty()));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Spread", "Product for an area, in bottles");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    boolean feet = FromRecord.inFeet(fleet);
    return List.of(
        make.quantity("area", "Area", feet ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE, Given::area),
        make.whole("coats", "Coats", Given::coats),
        make.quantity(
            "rate",
            "Spread rate of the label",
            feet ? Unit.SQUARE_FOOT_A_US_GALLON : Unit.SQUARE_METRE_A_LITRE,
            Given::rate),
        make.number("waste", "Lost on the way, %", Given::waste),
        make.quantity(
            "size", "A bottle holds", feet ? Unit.US_FLUID_OUNCE : Unit.MILLILITRE, Given::size));
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    if (given.area().isEmpty() || given.rate().isEmpty()) {
      return Reckoned.nothing(BLANK, "Write the area and the spread rate of the label.");
    }
    try {
      Spread spread =
          new Spread(given.area().get(), given.coats(), given.rate().get(), given.waste());
      return reckoned(spread, given.size()).cautions(List.of(Caution.LABEL_FIRST));
    } catch (IllegalArgumentException e) {
      return Reckoned.nothing(BLANK, Texts.capital(e.getMessage()) + ".");
    }
  }

  private static Reckoned reckoned(Spread spread, Optional<Quantity> size) {
    Quantity volume = FromRecord.volume(spread.volume());
    Answer needed = new Answer("volume", "", volume.both(), volume.text());
    return size.map(
            s -> {
              int bottles = spread.bottles(s);
              return Reckoned.of(
                      answer(
                          "bottles",
                          "",
                          bottles + (bottles == 1 ? " bottle of " : " bottles of ") + s.text()),
                      needed)
                  .note("Left over: " + FromRecord.volume(spread.over(s)).both() + ".");
            })
        .orElse(Reckoned.of(blank("bottles"), needed));
  }

  @Override
  List<Formula> formulas() {
    return List.of(Spread.FORMULA);
  }
}
