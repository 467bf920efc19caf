package hullalmanac.present.edit;

import hullalmanac.core.card.JobCard;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.paper.CardPaper;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.core.work.VisitChange;
import hullalmanac.core.work.VisitFinish;
import hullalmanac.core.work.VisitMove;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.Instant;
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
  private final VisitDamage damage;
  private final VisitSteps steps;
  private final VisitPhotos photos;

  private final VisitInvoice invoices;

  public VisitSheet(Desk desk, Id<Visit> visit) {
    super(desk);
    invoices = new VisitInvoice(desk);
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
                f -> new VisitFields(make(f)).visit(one(f).orElseThrow(), desk::busyOn),
                this::facts),
            desk);
    looked =
        new Rows<>(
            new Rows.Block<>(
                "surfaces",
                "What was looked at",
                this::looked,
                row -> row.surface().id().toString(),
                row -> row.surface().words(),
                f -> LookedFields.of(make(f)),
                this::looked),
            desk);
    damage = new VisitDamage(desk, visit, this::looked, this::looked);
    steps = new VisitSteps(desk, visit, this::surfaces);
  }

  private List<Looked> looked(Fleet fleet) {
    return one(fleet).map(v -> Looked.all(fleet.almanac(), v, fleet.asOf())).orElse(List.of());
  }

  private Change looked(Almanac almanac, Looked row) {
    return VisitChange.of(almanac, desk.ids(), visit, row.edit(almanac, desk.ids()));
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

  /** A planned visit that comes on another day was moved; all else is written as it stands. */
  private Change facts(Almanac almanac, Visit now) {
    Visit before = one(almanac).orElseThrow();
    if (before.status() == VisitStatus.PLANNED && !before.day().equals(now.day())) {
      return VisitMove.move(almanac, before, now.day(), MoveReason.SELF);
    }
    return Stopwatch.ending(
        almanac, Change.checked(almanac, Edit.put(now)), desk.now().toInstant());
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, looked, damage.rows(), steps.rows(), photos.rows());
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
    blocks.add(damage.grid(fleet));
    blocks.add(steps.grid(fleet));
    blocks.add(
        new SheetState.Buttons(List.of(new SheetState.Button("add step", "Add a step", false))));
    blocks.add(photos.block(fleet));
    blocks.add(new SheetState.Words(String.join("\n", words(fleet, v))));
    blocks.add(new SheetState.Buttons(buttons(fleet, v)));
    return new SheetState(
        new Lookups(fleet.almanac(), fleet.asOf()).boat(v.boat()).name(),
        heading(fleet, v),
        blocks,
        photos.trouble());
  }

  private String heading(Fleet fleet, Visit v) {
    List<String> running = steps.running(fleet);
    return running.isEmpty() ? heading(v) : heading(v) + ". " + String.join(" ", running);
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
    buttons.add(new SheetState.Button("card", "Job card", false));
    buttons.add(new SheetState.Button("paper", "On paper", false));
    buttons.add(new SheetState.Button("changes", "What changed", false));
    buttons.add(new SheetState.Button("remove", "Remove this visit", false));
    return buttons;
  }

  /** What is to be known before the visit ends, and after. */
  private List<String> words(Fleet fleet, Visit v) {
    List<String> words = new ArrayList<>();
    damage.untold(fleet).ifPresent(words::add);
    if (v.status() == VisitStatus.PLANNED) {
      List<Surface> asked = VisitFinish.questions(fleet.almanac(), visit, lastDay(fleet, v));
      if (!asked.isEmpty()) {
        words.add(
            "Before you take the old coat off: what does water do on "
                + asked.stream().map(Surface::words).collect(Collectors.joining("; "))
                + "? Write beads, sheets or flat above; left empty means that nobody looked.");
      }
    }
    words.addAll(steps.climate(fleet, v));
    curing(fleet).ifPresent(words::add);
    return words;
  }

  private LocalDate lastDay(Fleet fleet, Visit v) {
    return steps.of(fleet.almanac()).stream()
        .map(Step::day)
        .max(Comparator.naturalOrder())
        .orElse(v.day());
  }

  private Optional<String> curing(Fleet fleet) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    Optional<LocalDate> until = Optional.empty();
    String name = "";
    for (Step step : steps.of(fleet.almanac())) {
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
    fleet().filter(f -> block.equals(steps.rows().id())).ifPresent(f -> steps.remove(f, row));
  }

  @Override
  public void press(At at) {
    fleet()
        .filter(f -> at.block().equals(steps.rows().id()))
        .ifPresent(f -> steps.press(f, at.row()));
  }

  /** How long a step has been timed goes with the clock. */
  @Override
  public void tick() {
    publishIfOther();
  }

  @Override
  public void press(String button) {
    fleet().ifPresent(f -> press(button, f));
  }

  private void press(String button, Fleet fleet) {
    Optional<Visit> now = one(fleet);
    switch (button) {
      case "finish" -> whenAllTaken(() -> now.ifPresent(v -> finish(fleet, v)));
      case "invoice" -> now.ifPresent(v -> invoices.open(fleet, v));
      case "add step" -> now.ifPresent(v -> steps.add(fleet, v));
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
      case "card" -> desk.showCard(visit);
      case "paper" -> now.ifPresent(this::onPaper);
      case "done" -> desk.leave();
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  @Override
  public void onPaper() {
    fleet().flatMap(this::one).ifPresent(this::onPaper);
  }

  /** Of a visit that was done there are several papers. */
  private void onPaper(Visit v) {
    desk.open(
        v.status() == VisitStatus.DONE
            ? new PapersSheet(desk, v.boat(), Optional.of(v.day()))
            : PaperSheet.of(
                desk,
                f -> JobCard.of(f.almanac(), visit).map(c -> CardPaper.of(f.almanac(), c)),
                Topic.CARD));
  }

  private void finish(Fleet fleet, Visit v) {
    LocalDate day = lastDay(fleet, v);
    Instant now = desk.now().toInstant();
    desk.change(
        "visit of " + v.day() + " finished",
        almanac ->
            Stopwatch.ending(almanac, VisitFinish.finish(almanac, desk.ids(), visit, day), now),
        () -> desk.openBoat(v.boat()));
  }

  @Override
  public Optional<Id<Visit>> visit() {
    return Optional.of(visit);
  }

  @Override
  public Topic topic() {
    return Topic.VISIT;
  }
}
