package hullalmanac.present.shell;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.present.Desk;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.present.words.TimedWords;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;

/** Says in every place of the window that a step is being timed, so that it is not forgotten. */
public final class TimedPresenter {
  private final Desk desk;
  private Consumer<Optional<String>> view = words -> {};
  private Optional<Timed> timed = Optional.empty();

  /** A step that is being timed, and where. */
  private record Timed(Step step, Visit visit, Boat boat) {
    static Timed of(Almanac almanac, Step step) {
      Visit visit =
          almanac.visits().stream()
              .filter(v -> v.id().equals(step.visit()))
              .findFirst()
              .orElseThrow();
      Boat boat =
          almanac.boats().stream()
              .filter(b -> b.id().equals(visit.boat()))
              .findFirst()
              .orElseThrow();
      return new Timed(step, visit, boat);
    }
  }

  TimedPresenter(Desk desk) {
    this.desk = desk;
  }

  /**
   * Tells who shows it; called at once and after each change. What is shown is such as "Wash on
   * Merganser: running since 14:02, 37 min so far"; nothing while nothing is timed.
   */
  public void onChange(Consumer<Optional<String>> view) {
    this.view = view;
    publish();
  }

  /** Shows what is timed in a record. */
  void show(Fleet fleet) {
    timed = Stopwatch.running(fleet.almanac()).map(step -> Timed.of(fleet.almanac(), step));
    publish();
  }

  /** Says it again, for time has passed; says whether anything is timed. */
  boolean tick() {
    publish();
    return timed.isPresent();
  }

  /** Opens the visit in which it is timed. */
  public void open() {
    timed.ifPresent(
        t -> {
          desk.openBoat(t.boat().id());
          desk.open(new VisitSheet(desk, t.visit().id()));
        });
  }

  /** Stops it. */
  public void stop() {
    Instant now = desk.now().toInstant();
    timed
        .map(Timed::step)
        .ifPresent(
            step ->
                desk.change(
                    step.kind().words() + ", time stopped",
                    almanac -> Stopwatch.stop(almanac, step.id(), now)));
  }

  private void publish() {
    view.accept(
        timed.map(
            t ->
                Texts.capital(t.step().kind().words())
                    + " on "
                    + t.boat().name()
                    + ": "
                    + new TimedWords(desk.now()).running(t.step()).orElseThrow()));
  }
}
