package hullalmanac.present.reckoner;

import hullalmanac.core.reckon.Formula;
import hullalmanac.core.reckon.HullArea;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Quantity;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Areas of a hull from its main dimensions. */
final class AreaSheet extends Calculator<AreaSheet.Given> {
  /** What is given; public so that it can be copied with one component changed. */
  public record Given(
      Optional<Id<Boat>> boat,
      Optional<Length> loa,
      Optional<Length> beam,
      Optional<Length> freeboard,
      Optional<Length> waterline,
      Optional<Length> draught,
      HullArea.Form form,
      Optional<Double> share) {}

  AreaSheet() {
    super(
        new Given(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            HullArea.Form.FIN_KEEL,
            Optional.empty()));
  }

  @Override
  ReckonerState.Item item() {
    return new ReckonerState.Item("Area", "Topsides, deck and bottom by rules");
  }

  @Override
  List<FieldOf<Given>> fields(Fleet fleet, FieldMaker make) {
    return List.of(
        make.maybeOf("boat", "Boat, for what is left empty", FromRecord.boats(fleet), Given::boat),
        make.length("loa", "Length over all", Given::loa),
        make.length("beam", "Beam", Given::beam),
        make.length("freeboard", "Freeboard, mean", Given::freeboard),
        make.length("waterline", "Waterline length", Given::waterline),
        make.length("draught", "Draught", Given::draught),
        make.choice("form", "Under water", HullArea.Form.class, Given::form),
        make.maybeNumber("share", "k, where not as usual", Given::share));
  }

  @Override
  Reckoned reckon(Fleet fleet, Given given) {
    Optional<Boat> boat = FromRecord.boat(fleet, given.boat());
    Optional<Double> loa = metres(given.loa(), boat, Boat::loa);
    Optional<Double> beam = metres(given.beam(), boat, Boat::beam);
    Optional<Double> freeboard = metres(given.freeboard(), boat, Boat::freeboard);
    Optional<Double> waterline = given.waterline().map(Length::metres);
    Optional<Double> draught = given.draught().map(Length::metres);
    double share = given.share().orElse(given.form().share());
    Optional<Double> topsides =
        loa.flatMap(l -> beam.flatMap(b -> freeboard.map(f -> HullArea.topsides(l, b, f))));
    Optional<Double> deck = loa.flatMap(l -> beam.map(b -> HullArea.deck(l, b)));
    Optional<Double> bottom =
        waterline.flatMap(
            l -> beam.flatMap(b -> draught.map(d -> HullArea.bottom(l, b, d, share))));
    List<String> needs = new ArrayList<>();
    if (topsides.isEmpty()) {
      needs.add("length over all, beam and freeboard for the topsides");
    }
    if (bottom.isEmpty()) {
      needs.add("waterline, beam and draught for the bottom");
    }
    return Reckoned.of(
            area(fleet, "topsides", "Topsides, both sides", topsides),
            area(fleet, "deck", "Deck", deck),
            area(fleet, "bottom", "Bottom", bottom))
        .note(needs.isEmpty() ? "" : "Needed: " + String.join("; ", needs) + ".");
  }

  private static Optional<Double> metres(
      Optional<Length> typed, Optional<Boat> boat, Function<Boat, Optional<Length>> of) {
    return typed.or(() -> boat.flatMap(of)).map(Length::metres);
  }

  /** An area in both units, copied in the business's own. */
  static Answer area(Fleet fleet, String id, String label, Optional<Double> squareMetres) {
    return squareMetres
        .map(
            a -> {
              Quantity area = FromRecord.area(fleet, a);
              return new Answer(id, label, area.both(), area.text());
            })
        .orElse(blank(id));
  }

  @Override
  List<Formula> formulas() {
    return List.of(HullArea.FORMULA);
  }
}
