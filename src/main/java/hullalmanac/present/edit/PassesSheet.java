package hullalmanac.present.edit;

import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.plan.Asked;
import hullalmanac.core.plan.PlannedCorrection;
import hullalmanac.core.plan.SurfacePlans;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.takings.OfferedPlan;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * The fewest passes to an agreed finish of one surface of a boat. All is reckoned in the
 * background, the newest counts; nothing is written into the record but by the one act that plans a
 * visit.
 */
public final class PassesSheet implements Sheet {
  private static final String AGREED = "agreed";
  private static final String MORE = "more";
  private static final String SPOTS = "spots";
  private static final String DAY = "when";
  private static final String TITLE = "Fewest passes";
  private final Desk desk;
  private final Id<Boat> boat;
  private Consumer<SheetState> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<Draft<Asked>> draft = Optional.empty();
  private Optional<Answer> answer = Optional.empty();

  /** What the record teaches; until it changes, for it takes longest to reckon. */
  private Optional<Experience> experience = Optional.empty();

  private final Map<String, Draft<SpotRow>> spots = new LinkedHashMap<>();
  private Draft<When> when = new Draft<>(DAY, new When(LocalDate.EPOCH));
  private Optional<String> trouble = Optional.empty();
  private int spotsMade;
  private int chosen;
  private long newest;
  private boolean nothingToCorrect;

  /**
   * What came back from the background.
   *
   * @param all surfaces that may be chosen
   */
  private record Answer(Experience experience, List<Surface> all, SurfacePlans plans) {}

  /** When the visit is planned for; public so that it can be copied with another day. */
  public record When(LocalDate day) {}

  public PassesSheet(Desk desk, Id<Boat> boat) {
    this.desk = desk;
    this.boat = boat;
  }

  @Override
  public void onChange(Consumer<SheetState> view) {
    this.view = view;
    publish();
  }

  @Override
  public void show(Fleet fleet) {
    if (this.fleet.isEmpty()) {
      when = new Draft<>(DAY, new When(fleet.asOf()));
    }
    this.fleet = Optional.of(fleet);
    experience = Optional.empty();
    publish();
    reckon();
  }

  private void publish() {
    view.accept(fleet.map(this::stateOf).orElse(state("", "", List.of())));
  }

  private SheetState state(String title, String facts, List<SheetState.Block> blocks) {
    return new SheetState(title, facts, blocks, trouble);
  }

  /** Asks the planner anew, with all that was written so far. */
  private void reckon() {
    if (fleet.isEmpty()) {
      return;
    }
    long mine = ++newest;
    Fleet now = fleet.get();
    Optional<Asked> asked = draft.map(d -> With.component(d.value(), SPOTS, tried()));
    desk.reckon(
        () -> answer(now, asked, experience),
        came -> {
          if (mine == newest) {
            arrived(came);
          }
        });
  }

  /** Absent where nothing on the boat is corrected by stages. */
  private Optional<Answer> answer(Fleet now, Optional<Asked> asked, Optional<Experience> known) {
    Almanac almanac = now.almanac();
    List<Surface> all = SurfacePlans.correctable(almanac, boat);
    Optional<Asked> wanted =
        asked
            .filter(a -> all.stream().anyMatch(s -> s.id().equals(a.surface())))
            .or(() -> SurfacePlans.looksFirst(almanac, all).map(s -> Asked.of(s.id())));
    return wanted.map(
        a -> {
          Experience taught = known.orElseGet(() -> Experience.of(almanac, now.asOf()));
          return new Answer(taught, all, SurfacePlans.of(almanac, taught, a, now.asOf()));
        });
  }

  private void arrived(Optional<Answer> came) {
    nothingToCorrect = came.isEmpty();
    answer = came;
    experience = came.map(Answer::experience);
    came.ifPresent(
        a -> {
          Id<Surface> surface = a.plans().surface().id();
          if (draft.filter(d -> d.value().surface().equals(surface)).isEmpty()) {
            draft = Optional.of(new Draft<>(AGREED, Asked.of(surface)));
            spots.clear();
          }
          chosen = Math.min(chosen, Math.max(0, a.plans().choices().size() - 1));
        });
    publish();
  }

  private List<TestSpot> tried() {
    return spots.values().stream().flatMap(d -> d.value().spot().stream()).toList();
  }

  private static FieldMaker make(Fleet fleet) {
    return new FieldMaker(fleet.almanac().business(), fleet.asOf());
  }

  private PassesFields fields(Fleet fleet, Answer a) {
    return new PassesFields(make(fleet), a.all(), a.plans());
  }

  private List<FieldOf<Asked>> all(Fleet fleet, Answer a) {
    List<FieldOf<Asked>> all = new ArrayList<>(fields(fleet, a).agreed());
    all.addAll(fields(fleet, a).more());
    return all;
  }

  private static List<FieldOf<When>> day(Fleet fleet) {
    return List.of(make(fleet).day("day", "Day of the visit", When::day));
  }

  private String name(Fleet fleet) {
    return fleet.almanac().boats().stream()
        .filter(b -> b.id().equals(boat))
        .findFirst()
        .map(Boat::name)
        .orElse("This boat is not in the record");
  }

  private SheetState stateOf(Fleet fleet) {
    if (nothingToCorrect) {
      return state(
          name(fleet), TITLE + ": nothing on this boat is corrected by stages.", List.of());
    }
    if (answer.isEmpty() || draft.isEmpty()) {
      return state(name(fleet), TITLE + ": reckoning …", List.of());
    }
    Answer a = answer.get();
    PassesBlocks blocks = new PassesBlocks(a.plans(), chosen);
    PassesFields fields = fields(fleet, a);
    return state(
        name(fleet),
        TITLE + " to an agreed gloss. Nothing is written down before you plan it.",
        List.of(
            draft.get().form("", fields.agreed()),
            blocks.standing(),
            blocks.remarks(),
            blocks.plans(),
            blocks.way(),
            blocks.takes(),
            blocks.stays(),
            tries(fields),
            new SheetState.Buttons(
                List.of(new SheetState.Button("add spot", "Add a test spot", false))),
            as(MORE, draft.get().form("What else is known or agreed", fields.more())),
            blocks.cautions(),
            when.form("", day(fleet)),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("plan", "Plan a visit with these steps", true),
                    new SheetState.Button("offer", "Offer it in an estimate", false),
                    new SheetState.Button("leave", "Back", false)))));
  }

  private static SheetState.Form as(String id, SheetState.Form form) {
    return new SheetState.Form(id, form.heading(), form.fields());
  }

  private SheetState.Grid tries(PassesFields fields) {
    return new SheetState.Grid(
        SPOTS,
        "Test spots",
        "",
        fields.spot().stream().map(FieldOf::column).toList(),
        spots.entrySet().stream()
            .map(e -> new SheetState.GridRow(e.getKey(), "", e.getValue().cells(fields.spot())))
            .toList(),
        "None yet. Try the lightest stage on a small spot, and read it before and after: the plans"
            + " follow at once.");
  }

  @Override
  public Said say(At at, String text) {
    if (fleet.isEmpty() || answer.isEmpty() || draft.isEmpty()) {
      return Said.NOTHING;
    }
    return switch (at.block()) {
      case AGREED, MORE -> draft.get().say(all(fleet.get(), answer.get()), at, text);
      case DAY -> when.say(day(fleet.get()), at, text);
      case SPOTS ->
          Optional.ofNullable(spots.get(at.row()))
              .map(d -> d.say(fields(fleet.get(), answer.get()).spot(), at, text))
              .orElse(Said.NOTHING);
      case PassesBlocks.PLANS ->
          new Said(
              new PassesBlocks(answer.get().plans(), chosen).inFull(Integer.parseInt(at.row())),
              false);
      default -> Said.NOTHING;
    };
  }

  @Override
  public void enter(At at, String text) {
    if (fleet.isEmpty() || answer.isEmpty() || draft.isEmpty()) {
      return;
    }
    trouble = Optional.empty();
    if (at.block().equals(DAY)) {
      when.enter(day(fleet.get()), at, text);
      publish();
      return;
    }
    if (at.block().equals(SPOTS) && spots.containsKey(at.row())) {
      spots.get(at.row()).enter(fields(fleet.get(), answer.get()).spot(), at, text);
    } else if (at.block().equals(AGREED) || at.block().equals(MORE)) {
      written(at, text);
    }
    publish();
    reckon();
  }

  /** Another surface has a test spot, an area and a thickness of its own. */
  private void written(At at, String text) {
    Id<Surface> before = draft.orElseThrow().value().surface();
    draft.get().enter(all(fleet.orElseThrow(), answer.orElseThrow()), at, text);
    Id<Surface> now = draft.get().value().surface();
    if (!now.equals(before)) {
      draft = Optional.of(new Draft<>(AGREED, Asked.of(now)));
      spots.clear();
      chosen = 0;
    }
  }

  @Override
  public void remove(String block, String row) {
    if (block.equals(SPOTS)) {
      spots.remove(row);
      publish();
      reckon();
    }
  }

  /** Shows a plan in full. */
  @Override
  public void press(At at) {
    if (at.block().equals(PassesBlocks.PLANS)) {
      chosen = Integer.parseInt(at.row());
      publish();
    }
  }

  @Override
  public void press(String button) {
    switch (button) {
      case "add spot" -> {
        spots.put("spot " + ++spotsMade, new Draft<>(SPOTS, SpotRow.NEW));
        publish();
      }
      case "plan" -> plan();
      case "offer" -> offer();
      case "leave" -> desk.leave();
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void plan() {
    trouble = fleet.flatMap(f -> answer.flatMap(a -> untaken(f, a)));
    publish();
    if (trouble.isPresent() || answer.isEmpty() || draft.isEmpty()) {
      return;
    }
    Plan plan = answer.get().plans().choices().get(chosen);
    PlannedCorrection.Wish wish =
        new PlannedCorrection.Wish(
            With.component(draft.get().value(), SPOTS, tried()), plan.stages(), when.value().day());
    LocalDate today = fleet.orElseThrow().asOf();
    AtomicReference<Optional<Visit>> made = new AtomicReference<>(Optional.empty());
    desk.change(
        name(fleet.get()) + ": a visit planned",
        almanac -> {
          Change change = PlannedCorrection.of(almanac, desk.ids(), wish, today);
          if (change instanceof Change.Ready ready) {
            made.set(ready.put(Visit.class));
          }
          return change;
        },
        () -> made.get().ifPresent(v -> desk.open(new VisitSheet(desk, v.id()))));
  }

  /** Makes an estimate of the plan that is shown. */
  private void offer() {
    trouble = fleet.flatMap(f -> answer.flatMap(a -> untaken(f, a)));
    publish();
    if (trouble.isPresent() || answer.isEmpty() || draft.isEmpty()) {
      return;
    }
    Plan plan = answer.get().plans().choices().get(chosen);
    LocalDate today = fleet.orElseThrow().asOf();
    Id<Surface> surface = draft.get().value().surface();
    double gloss = answer.get().plans().agreed().gloss();
    AtomicReference<Optional<Estimate>> made = new AtomicReference<>(Optional.empty());
    desk.edit(
        name(fleet.get()) + ": an estimate begun",
        almanac -> {
          Edit edit = OfferedPlan.of(almanac, desk.ids(), surface, plan, gloss, today);
          made.set(Optional.of((Estimate) edit.put().get(0)));
          return edit;
        },
        () -> made.get().ifPresent(e -> desk.open(new EstimateSheet(desk, e.id()))));
  }

  /** What stands on the sheet and was not taken, or that there is no plan. */
  private Optional<String> untaken(Fleet f, Answer a) {
    return draft
        .flatMap(d -> d.trouble(all(f, a)))
        .or(() -> when.trouble(day(f)))
        .or(
            () ->
                spots.values().stream()
                    .flatMap(d -> d.trouble(fields(f, a).spot()).stream())
                    .findFirst())
        .or(
            () ->
                a.plans().choices().isEmpty()
                    ? Optional.of("There is no plan to make a visit of.")
                    : Optional.empty());
  }

  @Override
  public Topic topic() {
    return Topic.PASSES;
  }
}
