package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Row;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.ListService;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * Brings a person's own list in: reads it, shows what would come of it and what is doubtful, and
 * brings it in by one act. Reading and planning are done in the background; the newest counts.
 */
public final class ListSheet extends FleetSheet {
  private Optional<ListService.Found> found = Optional.empty();
  private int chosen;
  private ListChoices choices = ListChoices.NONE;
  private Optional<ListPlan> plan = Optional.empty();
  private Optional<String> refused = Optional.empty();
  private Optional<Brought> brought = Optional.empty();
  private String doing = "";
  private long newest;

  /**
   * A list that came in.
   *
   * @param words what came in
   * @param one of the rows that it put into the record
   */
  private record Brought(String words, Row one) {}

  public ListSheet(Desk desk) {
    super(desk);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  @Override
  public void show(Fleet fleet) {
    Optional<Almanac> before = fleet().map(Fleet::almanac);
    super.show(fleet);
    if (brought.isPresent() && !isIn(brought.get(), fleet.almanac())) {
      brought = Optional.empty();
    }
    if (brought.isEmpty() && !before.equals(Optional.of(fleet.almanac()))) {
      plan();
    }
  }

  private static boolean isIn(Brought brought, Almanac almanac) {
    return almanac.rows().stream()
        .anyMatch(
            r ->
                r.getClass().equals(brought.one().getClass()) && r.id().equals(brought.one().id()));
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    if (brought.isPresent()) {
      return ListBlocks.done(brought.get().words());
    }
    return new ListBlocks(found, chosen, plan, choices).state(doing, refused);
  }

  @Override
  public void add(String block, List<String> files) {
    if (!files.isEmpty()) {
      String file = files.get(0);
      begin(name(file), () -> ListService.read(file));
    }
  }

  private static String name(String file) {
    return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
  }

  @Override
  public void add(String block, String text) {
    begin("the pasted text", () -> ListService.pasted(text));
  }

  private void begin(String name, Supplier<ListService.Found> read) {
    long mine = ++newest;
    doing = "Reading " + name + " …";
    brought = Optional.empty();
    publish();
    desk.ask(
        edits -> read.get(),
        answer -> {
          if (mine == newest) {
            arrived(answer);
          }
        });
  }

  private void arrived(ListService.Found answer) {
    doing = "";
    refused = answer.refused();
    found = refused.isPresent() ? Optional.empty() : Optional.of(answer);
    chosen = answer.fullest();
    choices = ListChoices.NONE;
    plan = Optional.empty();
    publish();
    plan();
  }

  private Optional<Grid> grid() {
    return found.map(f -> f.grids().get(chosen));
  }

  /** Plans anew, with all that was chosen so far. */
  private void plan() {
    if (fleet().isEmpty() || grid().isEmpty()) {
      return;
    }
    long mine = ++newest;
    Fleet fleet = fleet().get();
    Grid grid = grid().get();
    ListChoices now = choices;
    desk.reckon(
        () -> ListPlan.of(grid, fleet.almanac(), fleet.asOf(), now),
        answer -> {
          if (mine == newest) {
            plan = Optional.of(answer);
            publish();
          }
        });
  }

  @Override
  public Said say(At at, String text) {
    return plan.map(p -> new ListBlocks(found, chosen, plan, choices).say(p, at, text))
        .orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    if (found.isPresent() && at.field().equals(ListBlocks.SHEET)) {
      turnTo(text);
    } else if (plan.isPresent()) {
      choices = new ListBlocks(found, chosen, plan, choices).entered(plan.get(), at, text);
      plan();
    }
  }

  /** Takes texts into the rows as if each were typed, and plans once. */
  @Override
  public void paste(At corner, List<List<String>> texts) {
    if (plan.isEmpty() || !corner.block().equals(ListBlocks.PREVIEW)) {
      return;
    }
    for (Rows.Typed typed : cells(ListBlocks.preview(plan.get()), corner, texts)) {
      choices =
          new ListBlocks(found, chosen, plan, choices)
              .entered(plan.get(), typed.at(), typed.text());
    }
    plan();
  }

  private void turnTo(String sheet) {
    List<String> names = found.orElseThrow().grids().stream().map(Grid::name).toList();
    if (names.contains(sheet) && names.indexOf(sheet) != chosen) {
      chosen = names.indexOf(sheet);
      choices = ListChoices.NONE;
      plan = Optional.empty();
      publish();
      plan();
    }
  }

  /** Leaves a row out. */
  @Override
  public void remove(String block, String row) {
    if (block.equals(ListBlocks.PREVIEW)) {
      choices = choices.comesIn(Integer.parseInt(row), false);
      plan();
    }
  }

  @Override
  public void press(String button) {
    switch (button) {
      case ListBlocks.BRING -> plan.ifPresent(this::bringIn);
      case ListBlocks.ANOTHER -> {
        forget();
        publish();
      }
      case ListBlocks.LEAVE -> {
        forget();
        desk.leave();
      }
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void forget() {
    newest++;
    found = Optional.empty();
    plan = Optional.empty();
    refused = Optional.empty();
    brought = Optional.empty();
    choices = ListChoices.NONE;
    doing = "";
  }

  private void bringIn(ListPlan shown) {
    refused = shown.missing();
    if (refused.isPresent()) {
      publish();
      return;
    }
    Fleet fleet = fleet().orElseThrow();
    Grid grid = grid().orElseThrow();
    ListChoices now = choices;
    AtomicReference<Optional<Row>> first = new AtomicReference<>(Optional.empty());
    desk.change(
        shown.act(),
        almanac -> {
          Change change = ListService.bringIn(grid, almanac, fleet.asOf(), now, desk.ids());
          if (change instanceof Change.Ready ready) {
            first.set(ready.edit().put().stream().findFirst());
          }
          return change;
        },
        () -> cameIn(shown, first.get()));
  }

  private void cameIn(ListPlan shown, Optional<Row> first) {
    if (first.isEmpty()) {
      refused = Optional.of("All of it is known already; nothing was to be brought in.");
    } else {
      brought = Optional.of(new Brought(shown.words(), first.get()));
    }
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.LIST;
  }
}
