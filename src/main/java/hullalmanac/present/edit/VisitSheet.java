package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.core.work.VisitFinish;
import hullalmanac.core.work.VisitMove;
import hullalmanac.present.Desk;
import hullalmanac.present.Lookups;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.DateWords;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** A visit: when, what was looked at and seen, what was done with what, and its end. */
public final class VisitSheet extends FleetSheet {
  private final Id<Visit> visit;
  private final Rows<Visit> facts;
  private final Rows<Looked> looked;
  private final Rows<Step> steps;
  private final VisitPhotos photos;

  public VisitSheet(Desk desk, Id<Visit> visit) {
    super(desk);
    this.visit = visit;
    photos = new VisitPhotos(desk, visit, this::publish);
    facts =
        new Rows<>(
            new Rows.Block<>(
                "visit",
                "",
                f -> one(f).stream().toList(),
                v -> v.id().toString(),
                v -> "visit of " + v.day(),
                f -> new VisitFields(make(f)).visit(one(f).orElseThrow()),
                this::facts),
            desk);
    looked =
        new Rows<>(
            new Rows.Block<>(
                "surfaces",
                "What was looked at",
                f -> one(f).map(v -> Looked.all(f.almanac(), v)).orElse(List.of()),
                row -> row.surface().id().toString(),
                row -> row.surface().words(),
                f -> LookedFields.of(make(f)),
                (almanac, row) -> again(almanac, row.edit(almanac, desk.ids()))),
            desk);
    steps =
        new Rows<>(
            new Rows.Block<>(
                "steps",
                "What was done",
                this::steps,
                s -> s.id().toString(),
                s -> s.kind().words(),
                f -> new VisitFields(make(f)).step(f.almanac(), surfaces(f)),
                (almanac, row) -> again(almanac, Edit.put(row))),
            desk);
  }

  private static FieldMaker make(Fleet fleet) {
    return new FieldMaker(fleet.almanac().business(), fleet.asOf());
  }

  private Optional<Visit> one(Fleet fleet) {
    return one(fleet.almanac());
  }

  private Optional<Visit> one(Almanac almanac) {
    return almanac.visits().stream().filter(v -> v.id().equals(visit)).findFirst();
  }

  private List<Surface> surfaces(Fleet fleet) {
    return one(fleet)
        .map(
            v ->
                fleet.almanac().surfaces().stream()
                    .filter(s -> s.boat().equals(v.boat()))
                    .sorted(BoatSheet.IN_ORDER)
                    .toList())
        .orElse(List.of());
  }

  private List<Step> steps(Fleet fleet) {
    return fleet.almanac().steps().stream()
        .filter(s -> s.visit().equals(visit))
        .sorted(Comparator.comparingInt(Step::order))
        .toList();
  }

  /** A planned visit that comes on another day was moved; all else is written as it stands. */
  private Change facts(Almanac almanac, Visit now) {
    Visit before = one(almanac).orElseThrow();
    if (before.status() == VisitStatus.PLANNED && !before.day().equals(now.day())) {
      return VisitMove.move(almanac, before, now.day(), MoveReason.SELF);
    }
    return Change.checked(almanac, Edit.put(now));
  }

  /**
   * A change of a visit that is done already also changes the coats that it laid and ended; but
   * where these were not written down from its steps (in lists that were brought in), they are left
   * as they are.
   */
  private Change again(Almanac almanac, Edit edit) {
    Change first = Change.checked(almanac, edit);
    Optional<Visit> done = one(almanac).filter(v -> v.status() == VisitStatus.DONE);
    if (first instanceof Change.Refused || done.isEmpty() || !fromSteps(almanac, done.get())) {
      return first;
    }
    Change finished = VisitFinish.finish(almanac.with(edit), desk.ids(), visit, done.get().day());
    return finished instanceof Change.Ready ready
        ? new Change.Ready(edit.and(ready.edit()))
        : finished;
  }

  private boolean fromSteps(Almanac almanac, Visit done) {
    return VisitFinish.finish(almanac, desk.ids(), visit, done.day()) instanceof Change.Ready ready
        && ready.edit().isEmpty();
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, looked, steps, photos.rows());
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Visit> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "This visit is not in the record", "It was removed.", List.of(), Optional.empty());
    }
    Visit v = now.get();
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(facts.form(fleet));
    blocks.add(looked.grid(fleet, "Surface", "This boat has no surfaces yet."));
    blocks.add(steps.grid(fleet, "Nothing was done yet."));
    blocks.add(
        new SheetState.Buttons(List.of(new SheetState.Button("add step", "Add a step", false))));
    blocks.add(photos.block(fleet));
    words(fleet, v).forEach(w -> blocks.add(new SheetState.Words(w)));
    blocks.add(new SheetState.Buttons(buttons(fleet, v)));
    return new SheetState(
        new Lookups(fleet.almanac(), fleet.asOf()).boat(v.boat()).name(),
        heading(v),
        blocks,
        photos.trouble());
  }

  private static String heading(Visit v) {
    return switch (v.status()) {
      case PLANNED -> "Visit planned for " + DateWords.full(v.day());
      case DONE -> "Visit of " + DateWords.full(v.day());
      case CANCELLED -> "Visit that was planned for " + DateWords.full(v.day()) + ", cancelled";
    };
  }

  private static List<SheetState.Button> buttons(Fleet fleet, Visit v) {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (v.status() == VisitStatus.PLANNED) {
      buttons.add(new SheetState.Button("finish", "Finish", true));
      buttons.add(new SheetState.Button("done", "Back", false));
    } else {
      buttons.add(new SheetState.Button("done", "Done", true));
    }
    if (v.status() == VisitStatus.DONE) {
      buttons.add(VisitInvoice.button(fleet, v));
    }
    buttons.add(new SheetState.Button("changes", "What changed", false));
    buttons.add(new SheetState.Button("remove", "Remove this visit", false));
    return buttons;
  }

  /** What is to be known before the visit ends, and after. */
  private List<String> words(Fleet fleet, Visit v) {
    List<String> words = new ArrayList<>();
    if (v.status() == VisitStatus.PLANNED) {
      List<Surface> asked = VisitFinish.questions(fleet.almanac(), visit, lastDay(fleet, v));
      if (!asked.isEmpty()) {
        words.add(
            "Before you take the old coat off: what does water do on "
                + asked.stream().map(Surface::words).collect(Collectors.joining("; "))
                + "? Write beads, sheets or flat above; left empty means that nobody looked.");
      }
    }
    curing(fleet).ifPresent(words::add);
    return words;
  }

  private LocalDate lastDay(Fleet fleet, Visit v) {
    return steps(fleet).stream().map(Step::day).max(Comparator.naturalOrder()).orElse(v.day());
  }

  private Optional<String> curing(Fleet fleet) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    Optional<LocalDate> until = Optional.empty();
    String name = "";
    for (Step step : steps(fleet)) {
      boolean lays = step.kind() == StepKind.PROTECT || step.kind() == StepKind.TOP;
      Optional<Product> product = step.product().map(lookups::product);
      int hours = product.flatMap(p -> p.handling().cureHours()).orElse(0);
      LocalDate end = step.day().plusDays((hours + 23) / 24);
      if (lays && hours > 0 && until.map(end::isAfter).orElse(true)) {
        until = Optional.of(end);
        name = product.orElseThrow().name();
      }
    }
    String what = name;
    return until.map(
        day ->
            "Curing until the end of "
                + DateWords.full(day)
                + ": keep it dry, and do not wash, polish or cover it before ("
                + what
                + "; its own label comes first).");
  }

  @Override
  public void add(String block, List<String> files) {
    fleet().ifPresent(f -> photos.add(f, files));
  }

  @Override
  public void add(String block, Pixels picture) {
    fleet().ifPresent(f -> photos.add(f, picture));
  }

  @Override
  public void picture(String file, int side, Consumer<Picture> answer) {
    photos.picture(file, side, answer);
  }

  @Override
  public void remove(String block, String row) {
    fleet().filter(f -> block.equals(VisitPhotos.BLOCK)).ifPresent(f -> photos.remove(f, row));
    fleet()
        .flatMap(f -> steps(f).stream().filter(s -> s.id().toString().equals(row)).findFirst())
        .ifPresent(
            step ->
                desk.change(
                    step.kind().words() + " taken out",
                    almanac -> again(almanac, Edit.remove(List.of(step)))));
  }

  @Override
  public void press(String button) {
    fleet().ifPresent(f -> press(button, f));
  }

  private void press(String button, Fleet fleet) {
    Optional<Visit> now = one(fleet);
    switch (button) {
      case "finish" -> whenAllTaken(() -> now.ifPresent(v -> finish(fleet, v)));
      case "invoice" -> now.ifPresent(v -> VisitInvoice.open(desk, fleet, v));
      case "add step" -> now.ifPresent(v -> addStep(fleet, v));
      case "changes" ->
          desk.open(
              new ChangesSheet(
                  desk, Kind.VISIT, visit, "Visit of " + now.map(Visit::day).orElse(null)));
      case "remove" ->
          now.ifPresent(
              v ->
                  desk.change(
                      "visit of " + v.day() + " removed",
                      almanac -> Removal.of(almanac, v),
                      desk::leave));
      case "done" -> desk.leave();
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void finish(Fleet fleet, Visit v) {
    LocalDate day = lastDay(fleet, v);
    desk.change(
        "visit of " + v.day() + " finished",
        almanac -> VisitFinish.finish(almanac, desk.ids(), visit, day),
        () -> desk.openBoat(v.boat()));
  }

  private void addStep(Fleet fleet, Visit v) {
    List<Step> before = steps(fleet);
    Id<Step> id = desk.ids().next();
    Step step =
        new Step(
            id,
            Long.toString(id.value(), Character.MAX_RADIX),
            visit,
            before.isEmpty() ? 1 : before.get(before.size() - 1).order() + 1,
            before.isEmpty() ? StepKind.WASH : StepKind.OTHER,
            before.isEmpty() ? v.day() : before.get(before.size() - 1).day(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");
    desk.change("a step added", almanac -> again(almanac, Edit.put(step)));
  }
}
