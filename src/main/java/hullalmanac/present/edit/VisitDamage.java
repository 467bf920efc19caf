package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.VisitGaps;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Damage that was found in a visit: what and where, who was told, and how many photos show it. */
final class VisitDamage {
  private final Id<Visit> visit;
  private final Rows<Looked> rows;

  /**
   * @param looked the surfaces of the visit's boat, as they stand in it
   * @param change what the record becomes when something of a surface changes
   */
  VisitDamage(
      Desk desk,
      Id<Visit> visit,
      Function<Fleet, List<Looked>> looked,
      BiFunction<Almanac, Looked, Change> change) {
    this.visit = visit;
    rows =
        new Rows<>(
            new Rows.Block<>(
                "damage",
                "Damage found",
                f -> looked.apply(f).stream().filter(l -> l.seen().containsKey("damage")).toList(),
                row -> row.surface().id().toString(),
                row -> row.surface().words(),
                this::fields,
                change),
            desk);
  }

  Rows<Looked> rows() {
    return rows;
  }

  /** Nothing is said where none was found. */
  SheetState.Grid grid(Fleet fleet) {
    return rows.grid(fleet, "Surface", "");
  }

  private List<FieldOf<Looked>> fields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    List<FieldOf<Looked>> fields = new ArrayList<>(DamageFields.of(make, people(fleet)));
    fields.add(
        FieldMaker.unwritten(
            "photos", "Photos", new Input.Fixed(), row -> photos(fleet, row.surface())));
    return fields;
  }

  /** Photos of damage on a surface, taken in the visit. */
  private String photos(Fleet fleet, Surface surface) {
    long shown =
        fleet.almanac().photos().stream()
            .filter(p -> p.moment() == Moment.DAMAGE)
            .filter(p -> p.visit().equals(Optional.of(visit)))
            .filter(p -> p.surface().equals(Optional.of(surface.id())))
            .count();
    return shown == 0 ? "none" : String.valueOf(shown);
  }

  private Optional<Visit> visit(Fleet fleet) {
    return fleet.almanac().visits().stream().filter(v -> v.id().equals(visit)).findFirst();
  }

  /** Names of all who have to do with the boat now, or had on the day of the visit. */
  private List<String> people(Fleet fleet) {
    Optional<Visit> now = visit(fleet);
    Set<Id<Party>> hers =
        fleet.almanac().roles().stream()
            .filter(r -> now.filter(v -> v.boat().equals(r.boat())).isPresent())
            .filter(r -> r.holdsOn(fleet.asOf()) || r.holdsOn(now.orElseThrow().day()))
            .map(Role::party)
            .collect(Collectors.toSet());
    return fleet.almanac().parties().stream()
        .filter(p -> hers.contains(p.id()))
        .map(Party::name)
        .sorted()
        .toList();
  }

  /** A sentence about damage of which nobody was told, while there is some. */
  Optional<String> untold(Fleet fleet) {
    return visit(fleet)
        .map(v -> VisitGaps.untold(fleet.almanac(), v))
        .filter(surfaces -> !surfaces.isEmpty())
        .map(
            surfaces ->
                ForecastWords.surfaces(surfaces)
                    + ": damage that nobody was told of yet. Show it, and write under Damage found"
                    + " who was told.");
  }
}
