package hullalmanac.present.owner;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Shows a boat to her owner, until one leaves; nothing can be changed there. */
public final class OwnerPresenter {
  /** As many pairs as one looks at, and as fit into memory. */
  private static final int MOST_PAIRS = 8;

  private static final String CAUTION = "A forecast, not a guarantee.";

  private final FleetService service;
  private final TaskRunner tasks;
  private Consumer<Optional<OwnerState>> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<Id<Boat>> boat = Optional.empty();

  public OwnerPresenter(FleetService service, TaskRunner tasks) {
    this.service = service;
    this.tasks = tasks;
  }

  /** Tells who shows the state, empty while no boat is shown; called at once and on changes. */
  public void onChange(Consumer<Optional<OwnerState>> view) {
    this.view = view;
    publish();
  }

  /** Goes on with a fleet; leaves when the boat shown is not in it any more. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    if (boat.isPresent()) {
      boat = boat.filter(id -> fleet.almanac().boats().stream().anyMatch(b -> b.id().equals(id)));
      publish();
    }
  }

  /** Shows a boat. */
  public void open(Id<Boat> shown) {
    boat = Optional.of(shown);
    publish();
  }

  /** The boat that is shown. */
  public Optional<Id<Boat>> shown() {
    return boat;
  }

  /** Leaves, if a boat is shown. */
  public void leave() {
    if (boat.isPresent()) {
      boat = Optional.empty();
      publish();
    }
  }

  /**
   * Fetches a photo in the background.
   *
   * @param file its name, from a pair of the state
   * @param side of the square that it fits in, in pixels
   * @param answer gets nothing when the photo is not there or cannot be drawn
   */
  public void picture(String file, int side, Consumer<Optional<Pixels>> answer) {
    tasks.run(
        TaskRunner.Lane.DATABASE,
        () -> service.picture(file, side),
        answer,
        e -> {
          if (!(e instanceof RecordException)) {
            throw e;
          }
          answer.accept(Optional.empty());
        });
  }

  private void publish() {
    view.accept(fleet.flatMap(f -> boat.map(id -> state(f, id))));
  }

  private static OwnerState state(Fleet fleet, Id<Boat> id) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    Boat boat = lookups.boat(id);
    BoatHistory history = new BoatHistory(fleet.almanac(), lookups, id);
    List<BoatHistory.Pair> pairs = history.pairs();
    List<BoatHistory.Pair> newest = pairs.subList(0, Math.min(MOST_PAIRS, pairs.size()));
    return new OwnerState(
        boat.name(),
        BoatHistory.facts(boat, lookups),
        next(fleet, id),
        BoatTimeline.of(fleet.almanac(), boat, fleet.coats(), fleet.asOf()),
        history.visits(),
        newest,
        newest.size() == pairs.size()
            ? ""
            : "The newest " + newest.size() + " of " + pairs.size() + " pairs",
        toPay(fleet, id));
  }

  private static List<String> toPay(Fleet fleet, Id<Boat> boat) {
    return OpenItems.ofOwner(fleet.almanac(), fleet.accounts(), boat, fleet.asOf()).stream()
        .map(
            i ->
                i.open().words()
                    + (i.open().equals(i.total()) ? "" : " of " + i.total().words())
                    + " of "
                    + i.invoice().words()
                    + (i.daysLate() > 0 ? ", which was due on " : ", due on ")
                    + DateWords.dated(i.invoice().issue().orElseThrow().due()))
        .toList();
  }

  private static OwnerState.Next next(Fleet fleet, Id<Boat> boat) {
    Optional<CoatForecast> leading = fleet.leading(boat);
    ForecastWords words = new ForecastWords(fleet.asOf());
    return leading
        .map(
            f ->
                new OwnerState.Next(
                    Texts.capital(f.surface().words()) + ": " + words.due(f),
                    words.sentence(f),
                    BoatsPresenter.reasons(f),
                    CAUTION))
        .orElseGet(
            () ->
                new OwnerState.Next(
                    "No coat is in service",
                    "What is laid on this boat next will be followed from here.",
                    List.of(),
                    CAUTION));
  }
}
