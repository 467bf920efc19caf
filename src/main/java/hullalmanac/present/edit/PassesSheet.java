package hullalmanac.present.edit;

import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.plan.Asked;
import hullalmanac.core.plan.PlannedCorrection;
import hullalmanac.core.plan.SurfacePlans;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
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
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The fewest passes to an agreed finish of one surface of a boat. All is reckoned in the
 * background, the newest counts; nothing is written into the record but by the one act that plans a
 * visit.
 */
public final class PassesSheet extends ShownSheet {
  private static final String AGREED = "agreed";
  private static final String MORE = "more";
  private static final String SPOTS = "spots";
  private static final String DAY = "when";
  private static final String PLAN = "plan";
  private static final String OFFER = "offer";
  private static final String TITLE = "Fewest passes";
  private final Id<Boat> boat;
  private final Making making;
  private Optional<Draft<Asked>> draft = Optional.empty();
  private Optional<Answer> answer = Optional.empty();

  /** What the record teaches; until it changes, for it takes longest to reckon. */
  private Optional<Experience> experience = Optional.empty();

  private final Map<String, Draft<SpotRow>> spots = new LinkedHashMap<>();
  private Draft<When> when = new Draft<>(DAY, new When(LocalDate.EPOCH));

  /**
   * The stages of the plan that was chosen; while none was, or it is no more, the first is shown.
   */
  private Optional<List<Stage>> chosen = Optional.empty();

  /** A button that was pressed while its answer was still to come. */
  private Optional<String> kept = Optional.empty();

  private int spotsMade;
  private long newest;
  private long answered;
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
    super(desk);
    this.boat = boat;
    making = new Making(desk);
  }

  @Override
  void begin(Fleet first) {
    when = new Draft<>(DAY, new When(first.asOf()));
  }

  @Override
  public void show(Fleet now) {
    experience = Optional.empty();
    super.show(now);
    reckon(now);
  }

  /** Asks the planner anew, with all that was written so far. */
  private void reckon(Fleet now) {
    long mine = ++newest;
    publish();
    Optional<Asked> asked = draft.map(d -> With.component(d.value(), SPOTS, tried()));
    Optional<Experience> known = experience;
    desk.reckon(
        () -> answer(now, asked, known),
        came -> {
          if (mine == newest) {
            answered = mine;
            arrived(came);
          }
        });
  }

  /** Whether what is shown answers an older question than what is written. */
  private boolean reckoning() {
    return answered != newest;
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
            begin(surface);
          }
        });
    Optional<String> pressed = kept;
    kept = Optional.empty();
    publish();
    pressed.ifPresent(this::actIfStillThere);
  }

  /** Another surface has a test spot, an area and a thickness of its own. */
  private void begin(Id<Surface> surface) {
    draft = Optional.of(new Draft<>(AGREED, Asked.of(surface)));
    spots.clear();
    chosen = Optional.empty();
  }

  /** Does what was pressed before the plans came, unless the one chosen is not among them. */
  private void actIfStillThere(String button) {
    boolean gone =
        chosen.isPresent() && answer.isPresent() && chosenIn(answer.get().plans()).isEmpty();
    if (gone) {
      trouble =
          Optional.of("The plan you chose is not among them any more: look, then press again.");
      publish();
    } else {
      act(button);
    }
  }

  /** The place of the plan that was chosen; absent where none was, or it is not among them. */
  private OptionalInt chosenIn(SurfacePlans plans) {
    List<Plan> all = plans.choices();
    return IntStream.range(0, all.size())
        .filter(i -> chosen.equals(Optional.of(all.get(i).stages())))
        .findFirst();
  }

  private PassesBlocks blocks(Answer a) {
    return new PassesBlocks(a.plans(), chosenIn(a.plans()).orElse(0));
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

  @Override
  SheetState stateOf(Fleet fleet) {
    if (nothingToCorrect) {
      return state(fleet, ": nothing on this boat is corrected by stages.", List.of());
    }
    if (answer.isEmpty() || draft.isEmpty()) {
      return state(fleet, ": reckoning …", List.of());
    }
    return state(
        fleet,
        reckoning()
            ? ": reckoning …" + kept.map(PassesSheet::follows).orElse("")
            : " to an agreed gloss. Nothing is written down before you plan it.",
        shown(fleet, answer.get(), draft.get()));
  }

  private static String follows(String button) {
    return button.equals(PLAN) ? " then the visit is planned." : " then the estimate is made.";
  }

  private SheetState state(Fleet fleet, String facts, List<SheetState.Block> blocks) {
    return new SheetState(name(fleet), TITLE + facts, blocks, Optional.empty());
  }

  private List<SheetState.Block> shown(Fleet fleet, Answer a, Draft<Asked> written) {
    PassesBlocks blocks = blocks(a);
    PassesFields fields = fields(fleet, a);
    return List.of(
        written.form("", fields.agreed()),
        blocks.standing(),
        blocks.remarks(),
        blocks.plans(),
        blocks.way(),
        blocks.takes(),
        blocks.stays(),
        tries(fields),
        new SheetState.Buttons(
            List.of(new SheetState.Button("add spot", "Add a test spot", false))),
        as(MORE, written.form("What else is known or agreed", fields.more())),
        blocks.cautions(),
        when.form("", day(fleet)),
        new SheetState.Buttons(
            List.of(
                new SheetState.Button(PLAN, "Plan a visit with these steps", true),
                new SheetState.Button(OFFER, "Offer it in an estimate", false),
                new SheetState.Button("leave", "Back", false))));
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
    Optional<Fleet> fleet = fleet();
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
          new Said(blocks(answer.get()).inFull(Integer.parseInt(at.row())), false);
      default -> Said.NOTHING;
    };
  }

  @Override
  public void enter(At at, String text) {
    Optional<Fleet> fleet = fleet();
    if (fleet.isEmpty() || answer.isEmpty() || draft.isEmpty()) {
      return;
    }
    otherwise();
    if (at.block().equals(DAY)) {
      when.enter(day(fleet.get()), at, text);
      publish();
      return;
    }
    if (at.block().equals(SPOTS) && spots.containsKey(at.row())) {
      spots.get(at.row()).enter(fields(fleet.get(), answer.get()).spot(), at, text);
    } else if (at.block().equals(AGREED) || at.block().equals(MORE)) {
      written(fleet.get(), at, text);
    }
    reckon(fleet.get());
  }

  private void written(Fleet fleet, At at, String text) {
    Draft<Asked> now = draft.orElseThrow();
    Id<Surface> before = now.value().surface();
    now.enter(all(fleet, answer.orElseThrow()), at, text);
    if (!now.value().surface().equals(before)) {
      begin(now.value().surface());
    }
  }

  /** What was pressed before its answer came was meant for what was written then. */
  private void otherwise() {
    trouble =
        kept.map(button -> "Something was written after you pressed: look, then press again.");
    kept = Optional.empty();
  }

  @Override
  public void remove(String block, String row) {
    if (block.equals(SPOTS)) {
      otherwise();
      spots.remove(row);
      fleet().ifPresent(this::reckon);
    }
  }

  /** Shows a plan in full. */
  @Override
  public void press(At at) {
    if (at.block().equals(PassesBlocks.PLANS) && answer.isPresent()) {
      List<Plan> all = answer.get().plans().choices();
      int row = Integer.parseInt(at.row());
      if (row < all.size()) {
        otherwise();
        chosen = Optional.of(all.get(row).stages());
        publish();
      }
    }
  }

  @Override
  public void press(String button) {
    switch (button) {
      case "add spot" -> {
        spots.put("spot " + ++spotsMade, new Draft<>(SPOTS, SpotRow.NEW));
        publish();
      }
      case PLAN, OFFER -> {
        if (reckoning()) {
          kept = Optional.of(button);
          publish();
        } else {
          act(button);
        }
      }
      case "leave" -> {
        kept = Optional.empty();
        desk.leave();
      }
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  /** Plans or offers the plan that is shown, which answers what is written. */
  private void act(String button) {
    trouble = fleet().flatMap(f -> answer.flatMap(a -> untaken(f, a)));
    publish();
    if (trouble.isPresent() || fleet().isEmpty() || answer.isEmpty() || draft.isEmpty()) {
      return;
    }
    Answer a = answer.get();
    Plan plan = a.plans().choices().get(chosenIn(a.plans()).orElse(0));
    if (button.equals(PLAN)) {
      plan(fleet().get(), a, plan);
    } else {
      offer(fleet().get(), a, plan);
    }
  }

  private void plan(Fleet now, Answer a, Plan plan) {
    PlannedCorrection.Wish wish =
        new PlannedCorrection.Wish(
            With.component(draft.orElseThrow().value(), SPOTS, tried()),
            plan.stages(),
            when.value().day());
    making.make(
        name(now) + ": a visit planned",
        almanac -> PlannedCorrection.of(almanac, a.experience(), desk.ids(), wish, now.asOf()),
        Visit.class,
        visit -> desk.open(new VisitSheet(desk, visit.id())));
  }

  /** Makes an estimate of the plan that is shown. */
  private void offer(Fleet now, Answer a, Plan plan) {
    Id<Surface> surface = a.plans().surface().id();
    double gloss = a.plans().agreed().gloss();
    making.make(
        name(now) + ": an estimate begun",
        almanac ->
            Change.checked(
                almanac, OfferedPlan.of(almanac, desk.ids(), surface, plan, gloss, now.asOf())),
        Estimate.class,
        estimate -> desk.open(new EstimateSheet(desk, estimate.id())));
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
