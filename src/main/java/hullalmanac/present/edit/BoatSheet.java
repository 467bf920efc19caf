package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Water;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** All that is known of a boat, to be changed where it stands. */
public final class BoatSheet extends FleetSheet {
  /** The order in which surfaces are listed. */
  static final Comparator<Surface> IN_ORDER =
      Comparator.comparing(Surface::kind)
          .thenComparing(Surface::side)
          .thenComparing(Surface::name)
          .thenComparing(Surface::key);

  private final Id<Boat> boat;
  private final Rows<Boat> facts;
  private final Rows<Surface> surfaces;
  private final Rows<Berth> berths;
  private final Rows<Berth> access;
  private final Rows<Role> roles;
  private final Rows<CarePlan> plans;

  private final NewEstimate estimates;

  public BoatSheet(Desk desk, Id<Boat> boat) {
    super(desk);
    estimates = new NewEstimate(desk);
    this.boat = boat;
    facts = rows("facts", "", f -> one(f).stream().toList(), Boat::name, f -> fields(f).boat());
    surfaces =
        rows("surfaces", "Surfaces", this::surfaces, Surface::words, f -> fields(f).surface());
    berths =
        rows(
            "berths",
            "Where she lies",
            this::berths,
            b -> "berth from " + b.from(),
            f -> fields(f).berth(f.almanac().harbours()));
    access =
        rows(
            "access",
            "How to get to work there now",
            f -> new Lookups(f.almanac(), f.asOf()).home(boat).stream().toList(),
            b -> "access",
            f -> fields(f).access());
    roles =
        rows(
            "people",
            "People",
            f -> f.almanac().roles().stream().filter(r -> r.boat().equals(boat)).toList(),
            r -> r.kind().words(),
            f -> fields(f).role(f.almanac().parties()));
    plans =
        rows(
            "plans",
            "Care plans",
            f -> f.almanac().carePlans().stream().filter(p -> p.boat().equals(boat)).toList(),
            CarePlan::work,
            f -> fields(f).plan());
  }

  private static BoatFields fields(Fleet fleet) {
    return new BoatFields(new FieldMaker(fleet.almanac().business(), fleet.asOf()));
  }

  private <T extends Record & Row> Rows<T> rows(
      String id,
      String heading,
      Function<Fleet, List<T>> rows,
      Function<T, String> label,
      Function<Fleet, List<FieldOf<T>>> fields) {
    return new Rows<>(Rows.Block.plain(id, heading, rows, label, fields), desk);
  }

  private Optional<Boat> one(Fleet fleet) {
    return fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
  }

  private List<Surface> surfaces(Fleet fleet) {
    return fleet.almanac().surfaces().stream()
        .filter(s -> s.boat().equals(boat))
        .sorted(IN_ORDER)
        .toList();
  }

  private List<Berth> berths(Fleet fleet) {
    return fleet.almanac().berths().stream()
        .filter(b -> b.boat().equals(boat))
        .sorted(Comparator.comparing(Berth::from))
        .toList();
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, surfaces, berths, access, roles, plans);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Boat> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "This boat is not in the record", "She was removed.", List.of(), Optional.empty());
    }
    List<SheetState.Block> blocks = new java.util.ArrayList<>();
    blocks.add(facts.form(fleet));
    blocks.add(
        buttons(
            new SheetState.Button("done", "Done", true),
            new SheetState.Button("price", "What it costs", false),
            new SheetState.Button("estimate", "New estimate", false),
            new SheetState.Button("changes", "What changed", false),
            new SheetState.Button("remove", "Remove this boat", false)));
    blocks.add(surfaces.grid(fleet, "No surface is known yet."));
    blocks.add(buttons(new SheetState.Button("add surface", "Add a surface", false)));
    blocks.add(berths.grid(fleet, "Nobody knows where she lies."));
    blocks.add(buttons(new SheetState.Button("add berth", "Add a berth or lay-up", false)));
    if (!berths(fleet).isEmpty()) {
      blocks.add(access.form(fleet));
    }
    blocks.add(roles.grid(fleet, "Nobody is written down for her."));
    blocks.add(buttons(new SheetState.Button("add person", "Add a person", false)));
    blocks.add(plans.grid(fleet, "No work repeats by itself."));
    blocks.add(buttons(new SheetState.Button("add plan", "Add a care plan", false)));
    return new SheetState(now.get().name(), "What is known of her", blocks, Optional.empty());
  }

  private static SheetState.Buttons buttons(SheetState.Button... buttons) {
    return new SheetState.Buttons(List.of(buttons));
  }

  @Override
  public void remove(String block, String row) {
    fleet()
        .flatMap(
            f -> f.almanac().rows().stream().filter(r -> r.id().toString().equals(row)).findFirst())
        .ifPresent(this::remove);
  }

  private void remove(Row row) {
    String what = hullalmanac.core.record.Kind.of(row).one() + " removed";
    desk.change(name() + ": " + what, almanac -> Removal.of(almanac, row));
  }

  private String name() {
    return fleet().flatMap(this::one).map(Boat::name).orElse("a boat");
  }

  @Override
  public void press(String button) {
    fleet().ifPresent(f -> press(button, f));
  }

  private void press(String button, Fleet fleet) {
    switch (button) {
      case "done" -> desk.leave();
      case "price" -> desk.open(new PriceSheet(desk, Optional.of(boat), false));
      case "estimate" -> estimates.begin(fleet, boat);
      case "changes" ->
          desk.open(new ChangesSheet(desk, hullalmanac.core.record.Kind.BOAT, boat, name()));
      case "remove" -> one(fleet).ifPresent(this::remove);
      case "add surface" -> add("a surface", a -> surface());
      case "add berth" -> add("a berth", a -> berth(a, fleet.asOf()));
      case "add person" -> add("a person", a -> role(a, fleet.asOf()));
      case "add plan" -> add("a care plan", a -> plan(fleet.asOf()));
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void add(String what, Function<Almanac, Row> row) {
    desk.edit(name() + ": " + what + " added", almanac -> Edit.put(row.apply(almanac)));
  }

  private static String key(Id<?> id) {
    return Long.toString(id.value(), Character.MAX_RADIX);
  }

  private Surface surface() {
    Id<Surface> id = desk.ids().next();
    return new Surface(
        id,
        key(id),
        boat,
        SurfaceKind.TOPSIDES,
        Side.BOTH,
        "",
        Finish.GELCOAT,
        Tone.LIGHT,
        SurfaceKind.TOPSIDES.usualAttitude(),
        Optional.empty(),
        Past.UNKNOWN,
        false,
        Optional.empty(),
        "");
  }

  private Berth berth(Almanac almanac, LocalDate today) {
    Id<Berth> id = desk.ids().next();
    return new Berth(
        id,
        key(id),
        boat,
        new Lookups(almanac, today)
            .home(boat)
            .map(Berth::harbour)
            .orElseGet(() -> almanac.harbours().get(0).id()),
        Cover.OPEN,
        Water.SALT,
        today,
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Berth.Access.UNKNOWN,
        Berth.Private.NOTHING);
  }

  private Role role(Almanac almanac, LocalDate today) {
    Id<Role> id = desk.ids().next();
    return new Role(
        id, key(id), boat, almanac.parties().get(0).id(), RoleKind.PAYS, today, Optional.empty());
  }

  private CarePlan plan(LocalDate today) {
    Id<CarePlan> id = desk.ids().next();
    return new CarePlan(
        id,
        key(id),
        boat,
        "wash",
        4,
        List.of(Month.values()),
        Optional.empty(),
        today,
        Optional.empty(),
        List.of());
  }

  @Override
  public Topic topic() {
    return Topic.FACTS;
  }
}
