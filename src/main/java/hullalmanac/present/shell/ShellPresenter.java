package hullalmanac.present.shell;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.Outside;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.ahead.AheadPresenter;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.card.CardPresenter;
import hullalmanac.present.edit.BinSheet;
import hullalmanac.present.edit.CatchUpSheet;
import hullalmanac.present.edit.ListSheet;
import hullalmanac.present.edit.OthersSheet;
import hullalmanac.present.edit.ReminderSheet;
import hullalmanac.present.edit.TellAllSheet;
import hullalmanac.present.find.FindPresenter;
import hullalmanac.present.help.HelpPresenter;
import hullalmanac.present.house.CalendarFollower;
import hullalmanac.present.house.House;
import hullalmanac.present.owner.OwnerPresenter;
import hullalmanac.present.people.PeoplePresenter;
import hullalmanac.present.reckoner.ReckonerPresenter;
import hullalmanac.present.settings.SettingsPresenter;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shelf.ShelfPresenter;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.takings.TakingsPresenter;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads the record, hands it to the places, has it changed, and goes from place to place and back.
 */
public final class ShellPresenter implements Desk {
  private static final String NO_VISIT =
      "No visit is open or planned: Ctrl+T on a boat’s page begins one.";
  private final FleetService service;
  private final EditService edits;
  private final TaskRunner tasks;
  private final AheadPresenter ahead;
  private final BoatsPresenter boats;
  private final PeoplePresenter people = new PeoplePresenter(this);
  private final ShelfPresenter shelf = new ShelfPresenter(this);
  private final TakingsPresenter takings = new TakingsPresenter(this);
  private final ReckonerPresenter reckoner = new ReckonerPresenter(this);
  private final TimedPresenter timed = new TimedPresenter(this);
  private final TableMemory tables = new TableMemory();
  private final SettingsPresenter settings;
  private final Trail trail = new Trail();
  private final FindPresenter find;
  private final CatchUpSheet catchUp = new CatchUpSheet(this);
  private final ListSheet list = new ListSheet(this);
  private final OwnerPresenter owner;
  private final CardPresenter card = new CardPresenter(this, this::tell);
  private final HelpPresenter help;
  private final CalendarFollower calendar;
  private final List<Runnable> afterwards = new ArrayList<>();
  private final Notices notices = new Notices();
  private final DueNotice due = new DueNotice();
  private House house = House.still();
  private Outside outside = Outside.nothing();
  private long newest;
  private Optional<Fleet> fleet = Optional.empty();
  private Consumer<ShellState> view = s -> {};
  private String status = "";
  private Optional<String> trouble = Optional.empty();
  private EditService.Standing standing =
      new EditService.Standing(Optional.empty(), Optional.empty());

  public ShellPresenter(FleetService service, EditService edits, TaskRunner tasks) {
    this.service = service;
    this.edits = edits;
    this.tasks = tasks;
    this.ahead =
        new AheadPresenter(
            new AheadPresenter.Ways(
                this::openBoat,
                boat -> open(new ReminderSheet(this, boat)),
                () -> open(new TellAllSheet(this)),
                this::onPaper,
                this::newBoat,
                this::openList,
                this::openCatchUp));
    this.boats = new BoatsPresenter(this, this::openList, this::openCard);
    this.find = new FindPresenter(tasks, new ToFound(this)::open);
    this.owner = new OwnerPresenter(service, tasks);
    this.help = new HelpPresenter(tasks);
    this.calendar = new CalendarFollower(tasks, edits, () -> house);
    this.settings = new SettingsPresenter(this, () -> house, calendar);
    calendar.onTold(this::toldOfCalendars);
  }

  /** Says that something went wrong, and where the report of it lies. */
  public void tellOfCrash(String sentence) {
    notices.crashed(sentence);
    publish();
  }

  /** Tells who moves the record as a whole. */
  public void livesIn(House where) {
    house = where;
    notices.of(house);
    publish();
  }

  /** Tells what the computer offers beside the window. */
  public void reaches(Outside beside) {
    outside = beside;
  }

  @Override
  public Outside outside() {
    return outside;
  }

  public AheadPresenter ahead() {
    return ahead;
  }

  public PeoplePresenter people() {
    return people;
  }

  public ShelfPresenter shelf() {
    return shelf;
  }

  public TakingsPresenter takings() {
    return takings;
  }

  public ReckonerPresenter reckoner() {
    return reckoner;
  }

  public SettingsPresenter settings() {
    return settings;
  }

  public BoatsPresenter boats() {
    return boats;
  }

  public TimedPresenter timed() {
    return timed;
  }

  public FindPresenter find() {
    return find;
  }

  public OwnerPresenter owner() {
    return owner;
  }

  public CardPresenter card() {
    return card;
  }

  public HelpPresenter help() {
    return help;
  }

  /** Opens the guide at what it says of what is shown; leaving it leads back there. */
  public void openHelp() {
    new HelpHere(help, owner, card, find, settings, trail).open();
  }

  /** How one wants the columns of tables. */
  public TableMemory tables() {
    return tables;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<ShellState> view) {
    this.view = view;
    publish();
  }

  /** Reads the record and shows it, then plans what care plans make fall due. */
  public void load() {
    during(
        Optional::empty,
        () -> {
          planVisits();
          lookAround();
        });
  }

  /** Looks whether another almanac lies in the folder, and keeps the second place up to date. */
  private void lookAround() {
    Optional<String> second = house.secondPlace().filter(s -> !house.isSample());
    tasks.run(
        Lane.DATABASE,
        () -> Notices.look(edits.house(), edits.zone(), second),
        seen -> {
          notices.seen(seen);
          publish();
        },
        this::failed);
  }

  /** Tells who says once a day whose owners are to be told. */
  public void onDue(Consumer<String> to) {
    due.to(to);
  }

  /** Says something that stands until it was taken note of. */
  public void tell(String sentence) {
    notices.tell(sentence);
    publish();
  }

  /** Does what can be done about a notice. */
  public void press(Notice notice) {
    if (notices.isCrash(notice)) {
      help.open(Topic.ABOUT);
    }
    if (notices.isCalendar(notice)) {
      calendar.tick();
    }
    notices.press(
        notice,
        house,
        other -> open(new OthersSheet(this, house, other, notices.zone(), this::lookAround)));
    lookAround();
  }

  private void toldOfCalendars() {
    notices.calendar(calendar.trouble());
    settings.tick();
    trail.now().sheet().ifPresent(Sheet::tick);
    publish();
  }

  @Override
  public Optional<String> busyOn(LocalDate day) {
    return calendar.busyOn(day);
  }

  private void planVisits() {
    tasks.run(
        Lane.DATABASE,
        () -> edits.planVisits(service.today()),
        planned -> {
          if (planned instanceof Change.Ready ready && !ready.edit().isEmpty()) {
            during(Optional::empty, () -> {});
          }
        },
        this::failed);
  }

  /** Does something with the boat whose page is open; nothing where none is. */
  public void onBoat(Runnable act) {
    if (trail.now().place() == Place.BOATS && trail.now().sheet().isEmpty()) {
      act.run();
    }
  }

  /** Reads the record again when another day has begun; what goes with the clock is shown anew. */
  public void lookAtTheClock() {
    tasks.run(
        Lane.DATABASE,
        service::today,
        day -> {
          if (fleet.isPresent() && !fleet.get().asOf().equals(day)) {
            load();
          } else {
            timed.tick();
            reckoner.tick();
            calendar.tick();
            trail.now().sheet().ifPresent(Sheet::tick);
          }
        },
        this::failed);
  }

  @Override
  public ZonedDateTime now() {
    return edits.wallTime();
  }

  @Override
  public void change(String what, Function<Almanac, Change> change, Runnable done) {
    during(() -> Deed.refusal(edits.change(what, change)), done);
  }

  @Override
  public void act(Consumer<EditService> act) {
    during(
        () -> {
          act.accept(edits);
          return Optional.empty();
        },
        () -> {});
  }

  @Override
  public <T> void act(Function<EditService, T> act, Consumer<T> answer) {
    AtomicReference<T> said = new AtomicReference<>();
    during(
        () -> {
          said.set(act.apply(edits));
          return Optional.empty();
        },
        () -> answer.accept(said.get()));
  }

  private void newBoat() {
    boats.newBoat();
  }

  /** Opens the evening catch-up, as it was left. */
  public void openCatchUp() {
    if (!trail.now().sheet().equals(Optional.of(catchUp))) {
      open(catchUp);
    }
  }

  /** Opens the sheet that brings a list in, as it was left. */
  public void openList() {
    if (!trail.now().sheet().equals(Optional.of(list))) {
      open(list);
    }
  }

  /** Opens what is shown as it would be printed. */
  public void onPaper() {
    new OnPaper(this).open(trail.now());
  }

  /** Opens the bin. */
  public void openBin() {
    open(new BinSheet(this));
  }

  /** Takes back the newest act. */
  public void undo() {
    new Undoing(this, edits).undo();
  }

  /** Does again what was undone last. */
  public void redo() {
    new Undoing(this, edits).redo();
  }

  /** Says at the bottom what was done, until the next act. */
  void sayDone(String sentence) {
    status = sentence;
    publish();
  }

  @Override
  public <T> void aside(Supplier<T> work, Consumer<T> answer) {
    tasks.run(Lane.FILES, work, answer, this::failed);
  }

  @Override
  public <T> void ask(Function<EditService, T> question, Consumer<T> answer) {
    tasks.run(Lane.DATABASE, () -> question.apply(edits), answer, this::failed);
  }

  @Override
  public <T> void reckon(Supplier<T> work, Consumer<T> answer) {
    tasks.run(Lane.COMPUTING, work, answer, this::failed);
  }

  @Override
  public IdSource ids() {
    return edits.ids();
  }

  /**
   * Does a deed, then reads the record and shows it. Only the newest reading is shown; what follows
   * the deeds before it follows then, too.
   */
  void during(Deed deed, Runnable done) {
    tasks.run(
        Lane.DATABASE,
        () -> deed.done(service, edits),
        after -> {
          after
              .read()
              .ifPresent(
                  read -> {
                    afterwards.add(done);
                    reckon(read, ++newest);
                  });
          after.refused().ifPresent(this::say);
        },
        this::failed);
  }

  /** Says why something did not go, until the next act. */
  void say(String sentence) {
    trouble = Optional.of(sentence);
    publish();
  }

  private void reckon(Deed.Read read, long mine) {
    if (fleet.isEmpty()) {
      reckonFirst(read, mine);
      return;
    }
    Fleet before = fleet.get();
    tasks.run(
        Lane.COMPUTING,
        () -> before.next(read.almanac(), read.today()),
        after -> {
          if (mine == newest) {
            say(read, after);
            ahead.show(after);
            showBesidesAhead(after);
          }
        },
        this::failed);
  }

  /** What is due is reckoned and shown before all else: that is what one waits for. */
  private void reckonFirst(Deed.Read read, long mine) {
    tasks.run(
        Lane.COMPUTING,
        () -> Fleet.dueOf(read.almanac(), read.today()),
        due -> {
          if (mine == newest) {
            say(read, due);
            ahead.show(due);
            publish();
            tasks.run(
                Lane.COMPUTING,
                due::withLives,
                whole -> {
                  if (mine == newest) {
                    fleet = Optional.of(whole);
                    showBesidesAhead(whole);
                  }
                },
                this::failed);
          }
        },
        this::failed);
  }

  private void say(Deed.Read read, Fleet after) {
    status = read.words();
    trouble = Optional.empty();
    standing = read.standing();
    fleet = Optional.of(after);
  }

  /** Shows a fleet in all other places; then comes what was to follow. */
  private void showBesidesAhead(Fleet after) {
    due.show(after);
    timed.show(after);
    boats.show(after);
    people.show(after);
    shelf.show(after);
    takings.show(after);
    reckoner.show(after);
    settings.show(after);
    find.show(after);
    owner.show(after);
    card.show(after);
    calendar.show(after);
    trail.now().sheet().ifPresent(sheet -> sheet.show(after));
    publish();
    List<Runnable> due = List.copyOf(afterwards);
    afterwards.clear();
    due.forEach(Runnable::run);
  }

  private void failed(RuntimeException e) {
    if (!(e instanceof RecordException)) {
      throw e;
    }
    say(e.getMessage());
  }

  /** Goes to a place. */
  public void go(Place place) {
    visit(
        new Trail.Spot(
            place, place == Place.BOATS ? boats.chosen() : Optional.empty(), Optional.empty()));
  }

  @Override
  public void openBoat(Id<Boat> boat) {
    visit(new Trail.Spot(Place.BOATS, Optional.of(boat), Optional.empty()));
  }

  @Override
  public void showOwner(Id<Boat> boat) {
    owner.open(boat);
  }

  @Override
  public void showCard(Id<Visit> visit) {
    card.open(visit);
  }

  /** Shows the card of the visit that is open; elsewhere at a boat, of her next planned one. */
  public void openCard() {
    boolean onBoat = trail.now().place() == Place.BOATS;
    trail
        .openVisit()
        .or(() -> onBoat ? boats.nextVisit() : Optional.empty())
        .ifPresentOrElse(this::showCard, () -> say(NO_VISIT));
  }

  @Override
  public void open(Sheet sheet) {
    fleet.ifPresent(sheet::show);
    visit(new Trail.Spot(trail.now().place(), trail.now().boat(), Optional.of(sheet)));
  }

  @Override
  public void leave() {
    if (trail.now().sheet().isPresent()) {
      show(trail.leave());
    }
  }

  /** Begins to find anything in the record. */
  public void startFinding() {
    rememberBoat();
    find.open();
  }

  /** Keeps in mind for finding, and for going back, which boat is shown. */
  private void rememberBoat() {
    if (trail.now().place() == Place.BOATS) {
      boats.chosen().ifPresent(find::opened);
      boats.chosen().ifPresent(trail::choose);
    }
  }

  /** Goes back to where one was before; stays where there is no before. */
  public void back() {
    rememberBoat();
    trail.back().ifPresent(this::show);
  }

  /** Goes forward again after going back. */
  public void forward() {
    rememberBoat();
    trail.forward().ifPresent(this::show);
  }

  private void visit(Trail.Spot spot) {
    rememberBoat();
    trail.visit(spot);
    show(spot);
  }

  private void show(Trail.Spot spot) {
    help.leaveFor();
    spot.boat().ifPresent(boats::choose);
    spot.sheet().ifPresent(sheet -> fleet.ifPresent(sheet::show));
    takings.inSight(spot.place() == Place.TAKINGS && spot.sheet().isEmpty());
    publish();
    rememberBoat();
    find.leave();
  }

  private void publish() {
    Trail.Spot now = trail.now();
    view.accept(
        new ShellState(
            now.place(),
            now.sheet(),
            status,
            trouble,
            standing.undo(),
            standing.redo(),
            notices.all()));
  }
}
