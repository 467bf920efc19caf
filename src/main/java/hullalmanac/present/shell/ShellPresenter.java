package hullalmanac.present.shell;

import hullalmanac.core.find.Target;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.RecordException;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.ahead.AheadPresenter;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.find.FindPresenter;
import hullalmanac.present.shelf.ShelfPresenter;
import hullalmanac.present.words.DateWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads the record, hands it to the places, and goes from place to place and back. */
public final class ShellPresenter {
  private final FleetService service;
  private final TaskRunner tasks;
  private final AheadPresenter ahead;
  private final BoatsPresenter boats = new BoatsPresenter();
  private final ShelfPresenter shelf = new ShelfPresenter();
  private final FindPresenter find;
  private final List<Spot> trail = new ArrayList<>();
  private int at;
  private long newest;
  private Consumer<ShellState> view = s -> {};
  private String status = "";
  private Optional<String> trouble = Optional.empty();

  /** Where one has been: a place, and the boat that was chosen there. */
  private record Spot(Place place, Optional<Id<Boat>> boat) {}

  private record Read(Almanac almanac, LocalDate today, String status) {}

  public ShellPresenter(FleetService service, TaskRunner tasks) {
    this.service = service;
    this.tasks = tasks;
    this.ahead = new AheadPresenter(this::openBoat);
    this.find = new FindPresenter(tasks, this::open);
    trail.add(new Spot(Place.AHEAD, Optional.empty()));
  }

  public AheadPresenter ahead() {
    return ahead;
  }

  public ShelfPresenter shelf() {
    return shelf;
  }

  public BoatsPresenter boats() {
    return boats;
  }

  public FindPresenter find() {
    return find;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<ShellState> view) {
    this.view = view;
    publish();
  }

  /** Reads the record and shows it; only the newest reading counts. */
  public void load() {
    long mine = ++newest;
    tasks.run(
        Lane.DATABASE,
        () -> new Read(service.read(), service.today(), service.status()),
        read -> reckon(read, mine),
        this::failed);
  }

  private void reckon(Read read, long mine) {
    tasks.run(
        Lane.COMPUTING,
        () -> Fleet.of(read.almanac(), read.today()),
        fleet -> {
          if (mine == newest) {
            boolean sample = read.almanac().business().asOf().isPresent();
            status =
                sample
                    ? "Sample record, opened as of "
                        + DateWords.full(read.today())
                        + " · "
                        + read.status()
                    : read.status();
            trouble = Optional.empty();
            ahead.show(fleet);
            boats.show(fleet);
            shelf.show(fleet);
            find.show(fleet);
            publish();
          }
        },
        this::failed);
  }

  private void failed(RuntimeException e) {
    if (!(e instanceof RecordException)) {
      throw e;
    }
    trouble = Optional.of(e.getMessage());
    publish();
  }

  /** Goes to a place. */
  public void go(Place place) {
    visit(new Spot(place, place == Place.BOATS ? boats.chosen() : Optional.empty()));
  }

  /** Goes to a boat's page. */
  public void openBoat(Id<Boat> boat) {
    visit(new Spot(Place.BOATS, Optional.of(boat)));
  }

  /** Begins to find anything in the record. */
  public void startFinding() {
    rememberBoat();
    find.open();
  }

  /** Goes to what was found. */
  private void open(Target target) {
    if (target instanceof Target.OnBoat found) {
      openBoat(found.boat());
    } else if (target instanceof Target.ToParty found) {
      boats.firstOf(found.party()).ifPresentOrElse(this::openBoat, () -> go(Place.BOATS));
    } else if (target instanceof Target.ToHarbour found) {
      ahead.chooseHarbour(found.harbour());
      go(Place.AHEAD);
    } else if (target instanceof Target.ToProduct found) {
      shelf.choose(found.product());
      go(Place.SHELF);
    }
  }

  /** Keeps in mind for finding which boat is shown. */
  private void rememberBoat() {
    if (trail.get(at).place() == Place.BOATS) {
      boats.chosen().ifPresent(find::opened);
    }
  }

  /** Goes back to where one was before; stays where there is no before. */
  public void back() {
    if (at > 0) {
      at--;
      show(trail.get(at));
    }
  }

  /** Goes forward again after going back. */
  public void forward() {
    if (at + 1 < trail.size()) {
      at++;
      show(trail.get(at));
    }
  }

  private void visit(Spot spot) {
    rememberBoat();
    if (!trail.get(at).equals(spot)) {
      trail.subList(at + 1, trail.size()).clear();
      trail.add(spot);
      at++;
    }
    show(spot);
  }

  private void show(Spot spot) {
    spot.boat().ifPresent(boats::choose);
    publish();
    rememberBoat();
    find.leave();
  }

  private void publish() {
    view.accept(new ShellState(trail.get(at).place(), status, trouble));
  }
}
