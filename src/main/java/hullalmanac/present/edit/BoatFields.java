package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.reckon.HullNumber;
import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import hullalmanac.present.edit.FieldMaker.Named;
import hullalmanac.present.sheet.Said;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Fields of a boat and of what belongs to it. */
final class BoatFields {
  private final FieldMaker make;

  BoatFields(FieldMaker make) {
    this.make = make;
  }

  List<FieldOf<Boat>> boat() {
    return List.of(
        make.line("name", "Name", Boat::name),
        make.choice("type", "Type", BoatType.class, Boat::type),
        make.length("loa", "Length over all", Boat::loa),
        make.length("beam", "Beam", Boat::beam),
        make.length("freeboard", "Mean freeboard", Boat::freeboard),
        hullNumber(),
        make.maybeWhole("built", "Year built", Boat::built),
        make.choice("use", "Use", Use.class, Boat::use),
        make.choice("status", "Status", BoatStatus.class, Boat::status),
        make.maybeDay("knownFrom", "Known since", Boat::knownFrom),
        make.paragraph("note", "Note", Boat::note));
  }

  /** Any text is taken, for older boats have other numbers; what it says is said back. */
  private FieldOf<Boat> hullNumber() {
    FieldOf<Boat> line = make.line("hullNumber", "Hull number", Boat::hullNumber);
    return new FieldOf<>(
        line.id(),
        line.label(),
        line.input(),
        line.text(),
        (boat, typed) ->
            line.enter().apply(boat, typed) instanceof Entry.Read<Boat> read
                ? new Entry.Read<>(read.value(), hullNumber(typed).words())
                : line.enter().apply(boat, typed));
  }

  /** What a hull number says. */
  static Said hullNumber(String typed) {
    if (typed.isBlank()) {
      return Said.NOTHING;
    }
    HullNumber.Reading reading = HullNumber.read(typed);
    if (reading instanceof HullNumber.Valid v) {
      String odd = v.warning().map(w -> "; " + w).orElse("");
      return new Said(
          "built "
              + v.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
              + " "
              + v.built()
              + ", model year "
              + v.modelYear()
              + odd,
          false);
    }
    return new Said("not of the usual form: " + ((HullNumber.Invalid) reading).reason(), false);
  }

  List<FieldOf<Surface>> surface() {
    return List.of(
        make.choice("kind", "Surface", SurfaceKind.class, Surface::kind),
        make.choice("side", "Side", Side.class, Surface::side),
        make.line("name", "Own name", Surface::name),
        make.choice("finish", "Finish", Finish.class, Surface::finish),
        make.choice("tone", "Colour", Tone.class, Surface::tone),
        make.choice("attitude", "Attitude", Attitude.class, Surface::attitude),
        make.maybeWhole("madeYear", "Finish made", Surface::madeYear),
        make.choice("past", "Past", Past.class, Surface::past),
        make.yesNo("soot", "Soot", Surface::soot),
        make.maybeNumber("intervalMonths", "Every … months", Surface::intervalMonths),
        make.line("note", "Note", Surface::note));
  }

  List<FieldOf<Berth>> berth(List<Harbour> harbours) {
    List<Named<Harbour>> named = harbours.stream().map(h -> new Named<>(h.id(), h.name())).toList();
    return List.of(
        make.of("harbour", "Harbour", named, Berth::harbour),
        make.line("access.place", "Berth", b -> b.access().place()),
        make.choice("cover", "Cover", Cover.class, Berth::cover),
        make.choice("water", "Water", Water.class, Berth::water),
        make.day("from", "From", Berth::from),
        make.maybeDay("until", "Until", Berth::until),
        make.yesNo("yearly", "Each year", Berth::yearly),
        make.maybeWhole("bow", "Bow, degrees", Berth::bow));
  }

  /** How to get to work at a berth. */
  List<FieldOf<Berth>> access() {
    return List.of(
        make.line("access.pontoonSide", "Side to the pontoon", b -> b.access().pontoonSide()),
        make.line("access.water", "Water", b -> b.access().water()),
        make.line("access.power", "Power and plug", b -> b.access().power()),
        make.line("access.hours", "Hours", b -> b.access().hours()),
        make.line("access.tide", "Tide or drying times", b -> b.access().tide()),
        make.line("access.runoff", "Runoff rule", b -> b.access().runoff()),
        make.line("secrets.keys", "Keys", b -> b.secrets().keys()),
        make.line("secrets.gateCode", "Gate code", b -> b.secrets().gateCode()),
        make.line("secrets.absence", "Away", b -> b.secrets().absence()));
  }

  List<FieldOf<Role>> role(List<Party> parties) {
    List<Named<Party>> named = parties.stream().map(p -> new Named<>(p.id(), p.name())).toList();
    return List.of(
        make.of("party", "Who", named, Role::party),
        make.choice("kind", "Does what", RoleKind.class, Role::kind),
        make.day("from", "From", Role::from),
        make.maybeDay("until", "Until", Role::until));
  }

  List<FieldOf<CarePlan>> plan() {
    return List.of(
        make.line("work", "Work", CarePlan::work),
        make.whole("everyWeeks", "Every … weeks", CarePlan::everyWeeks),
        make.months("months", "Months", CarePlan::months),
        make.money("price", "Price", CarePlan::price),
        make.day("from", "From", CarePlan::from),
        make.maybeDay("until", "Until", CarePlan::until),
        make.days("skips", "Skips", CarePlan::skips));
  }
}
