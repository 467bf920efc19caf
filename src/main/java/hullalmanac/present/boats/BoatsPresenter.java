package hullalmanac.present.boats;

import hullalmanac.core.card.JobCard;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Reason;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.DateSteps;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.core.work.VisitCopy;
import hullalmanac.core.work.Washed;
import hullalmanac.present.Desk;
import hullalmanac.present.Invitation;
import hullalmanac.present.edit.BoatSheet;
import hullalmanac.present.edit.NewBoatSheet;
import hullalmanac.present.edit.PapersSheet;
import hullalmanac.present.edit.PassesSheet;
import hullalmanac.present.edit.ReminderSheet;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The boats, and the page of the one chosen. */
public final class BoatsPresenter {
  private final Desk desk;
  private final Runnable openList;
  private final Runnable openCard;
  private Consumer<BoatsState> view = s -> {};
  private BoatsState state = BoatsState.waiting();
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<Lookups> lookups = Optional.empty();
  private boolean pageIsFresh;
  private Optional<NewBoatSheet> newBoat = Optional.empty();
  private boolean washing;

  /**
   * @param openList opens the sheet that brings a list in
   * @param openCard shows the card of the next planned visit to the boat chosen
   */
  public BoatsPresenter(Desk desk, Runnable openList, Runnable openCard) {
    this.desk = desk;
    this.openList = openList;
    this.openCard = openCard;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<BoatsState> view) {
    this.view = view;
    view.accept(state);
  }

  /** Shows a fleet; the boat chosen stays chosen. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    this.pageIsFresh = false;
    this.lookups = Optional.of(new Lookups(fleet.almanac(), fleet.asOf()));
    List<BoatsState.Item> list = list(state.find());
    Optional<Id<Boat>> chosen =
        state
            .chosen()
            .filter(boat -> fleet.almanac().boats().stream().anyMatch(b -> b.id().equals(boat)))
            .or(() -> list.stream().findFirst().map(BoatsState.Item::boat));
    publish(state.find(), list, chosen);
  }

  /** Lists the boats whose name, owner, harbour or hull number holds a text. */
  public void find(String text) {
    publish(text, list(text), state.chosen());
  }

  /** Shows the page of a boat. */
  public void choose(Id<Boat> boat) {
    boolean known =
        fleet.isEmpty()
            || fleet.get().almanac().boats().stream().anyMatch(b -> b.id().equals(boat));
    if (known && !state.chosen().equals(Optional.of(boat))) {
      washing = false;
      publish(state.find(), state.list(), Optional.of(boat));
    }
  }

  /** Writes a new boat down, from where it was left when that was in the middle. */
  public void newBoat() {
    newBoat = newBoat.filter(NewBoatSheet::begun).or(() -> Optional.of(new NewBoatSheet(desk)));
    desk.open(newBoat.orElseThrow());
  }

  /** Brings a list of boats in. */
  public void bringListIn() {
    openList.run();
  }

  /** Changes what is known of the boat chosen. */
  public void change() {
    state.chosen().ifPresent(boat -> desk.open(new BoatSheet(desk, boat)));
  }

  /** Plans the correction of a surface of the boat chosen. */
  public void fewestPasses() {
    state.chosen().ifPresent(boat -> desk.open(new PassesSheet(desk, boat)));
  }

  /** What her owner is to be told, was told, and said. */
  public void remind() {
    state.chosen().ifPresent(boat -> desk.open(new ReminderSheet(desk, boat)));
  }

  /** Puts what is known of the boat chosen on paper. */
  public void papers() {
    state.chosen().ifPresent(boat -> desk.open(new PapersSheet(desk, boat)));
  }

  /** Begins a visit to the boat chosen, as its last one was. */
  public void beginVisit() {
    state.chosen().ifPresent(this::beginVisit);
  }

  private void beginVisit(Id<Boat> boat) {
    AtomicReference<Optional<Id<Visit>>> begun = new AtomicReference<>(Optional.empty());
    desk.edit(
        name(boat) + ": a visit begun",
        almanac -> {
          Edit copy = VisitCopy.of(almanac, desk.ids(), boat, fleet.orElseThrow().asOf());
          begun.set(
              copy.put().stream()
                  .filter(Visit.class::isInstance)
                  .map(row -> ((Visit) row).id())
                  .findFirst());
          return copy;
        },
        () -> begun.get().ifPresent(this::openVisit));
  }

  private String name(Id<Boat> boat) {
    return lookups.orElseThrow().boat(boat).name();
  }

  /** Opens a visit. */
  public void openVisit(Id<Visit> visit) {
    desk.open(new VisitSheet(desk, visit));
  }

  /** Asks what water did on the boat chosen, which was washed; asked again, asks no more. */
  public void washed() {
    washing = !washing && state.chosen().isPresent();
    publish(state.find(), state.list(), state.chosen());
  }

  /**
   * Writes down that the boat chosen was washed today.
   *
   * @param look what water did, if anybody looked
   */
  public void washed(Optional<WaterBehaviour> look) {
    washing = false;
    Instant now = desk.now().toInstant();
    state
        .chosen()
        .ifPresent(
            boat ->
                desk.change(name(boat) + " washed", almanac -> washed(almanac, boat, look, now)));
    publish(state.find(), state.list(), state.chosen());
  }

  private Change washed(
      Almanac almanac, Id<Boat> boat, Optional<WaterBehaviour> look, Instant now) {
    Edit edit = Washed.edit(almanac, desk.ids(), boat, fleet.orElseThrow().asOf(), look);
    return Stopwatch.ending(almanac, Change.checked(almanac, edit), now);
  }

  /** Shows the card of the next planned visit to the boat chosen. */
  public void showCard() {
    openCard.run();
  }

  /** Shows the boat chosen to her owner. */
  public void showOwner() {
    state.chosen().ifPresent(desk::showOwner);
  }

  /** The visit to the boat chosen that is planned next. */
  public Optional<Id<Visit>> nextVisit() {
    return fleet.flatMap(
        f -> state.chosen().flatMap(b -> JobCard.next(f.almanac(), b, f.asOf())).map(Visit::id));
  }

  /** The boat chosen. */
  public Optional<Id<Boat>> chosen() {
    return state.chosen();
  }

  private void publish(String find, List<BoatsState.Item> list, Optional<Id<Boat>> chosen) {
    boolean keep = pageIsFresh && chosen.equals(state.chosen());
    Optional<BoatPage> page =
        keep ? state.page() : fleet.isPresent() ? chosen.map(this::page) : Optional.empty();
    pageIsFresh = true;
    state = new BoatsState(find, list, found(list, find), chosen, page, washing, invitation());
    view.accept(state);
  }

  private static String found(List<BoatsState.Item> list, String find) {
    if (list.isEmpty()) {
      return find.isBlank()
          ? "No boat has been written down yet."
          : "No boat, owner or harbour is called that.";
    }
    return list.size() == 1 ? "1 boat" : list.size() + " boats";
  }

  private List<BoatsState.Item> list(String find) {
    if (fleet.isEmpty()) {
      return List.of();
    }
    String wanted = find.strip().toLowerCase(Locale.ROOT);
    return fleet.get().almanac().boats().stream()
        .filter(b -> wanted.isEmpty() || matches(b, wanted))
        .sorted(Comparator.comparing(Boat::name, String.CASE_INSENSITIVE_ORDER))
        .map(this::item)
        .toList();
  }

  private boolean matches(Boat b, String wanted) {
    Lookups l = lookups.orElseThrow();
    return Stream.of(b.name(), b.key(), b.hullNumber(), l.owner(b.id()), l.harbour(b.id()))
        .anyMatch(t -> t.toLowerCase(Locale.ROOT).contains(wanted));
  }

  private BoatsState.Item item(Boat b) {
    Lookups l = lookups.orElseThrow();
    String detail =
        Stream.of(l.owner(b.id()), l.harbour(b.id()))
            .filter(t -> !t.isBlank())
            .reduce((x, y) -> x + " · " + y)
            .orElse("");
    String status =
        b.status() != BoatStatus.ACTIVE
            ? b.status().words()
            : fleet
                .orElseThrow()
                .leading(b.id())
                .map(new ForecastWords(fleet.orElseThrow().asOf())::status)
                .orElse("no coat");
    return new BoatsState.Item(b.id(), b.name(), detail, status);
  }

  private BoatPage page(Id<Boat> id) {
    Fleet f = fleet.orElseThrow();
    Lookups l = lookups.orElseThrow();
    Boat boat = l.boat(id);
    Optional<CoatForecast> leading = f.leading(id);
    ForecastWords words = new ForecastWords(f.asOf());
    BoatTimeline timeline = BoatTimeline.of(f.almanac(), boat, f.coats(), f.asOf());
    return new BoatPage(
        boat.name(),
        facts(boat, l),
        leading
            .map(x -> Texts.capital(x.surface().words()) + ": " + words.due(x))
            .orElse("No coat is in service"),
        leading
            .map(words::sentence)
            .orElse("What is laid on this boat next will be followed from here."),
        timeline,
        leading.map(x -> reasons(x)).orElse(List.of()),
        leading.flatMap(x -> steps(x, f.asOf())),
        leading.map(BoatsPresenter::unused).orElse(List.of()),
        Stream.concat(
                new BoatTables(f, l, boat).all().stream(),
                new TimelineTables(timeline).all().stream())
            .toList());
  }

  private Optional<Invitation> invitation() {
    return fleet
        .filter(f -> f.almanac().boats().isEmpty())
        .map(
            f ->
                new Invitation(
                    "Begin with a boat",
                    "Five fields do: owner, phone, boat, length, harbour. Her surfaces come from"
                        + " her type. A list that you have comes in as it is: CSV, .xlsx or pasted.",
                    "New boat",
                    "Bring a list in …"));
  }

  private String facts(Boat boat, Lookups l) {
    List<String> facts = new ArrayList<>();
    boat.loa().ifPresent(x -> facts.add(x.feetAndInches() + " (" + x.metresText() + ")"));
    facts.add(boat.type().words());
    boat.built().ifPresent(y -> facts.add("built " + y));
    fleet.orElseThrow().almanac().surfaces().stream()
        .filter(s -> s.boat().equals(boat.id()) && s.kind() == SurfaceKind.TOPSIDES)
        .findFirst()
        .ifPresent((Surface s) -> facts.add(s.tone().words() + " " + s.finish().words()));
    l.home(boat.id())
        .ifPresent(
            (Berth b) -> facts.add((l.harbour(b).name() + " " + b.access().place()).strip()));
    String owner = l.owner(boat.id());
    if (!owner.isBlank()) {
      facts.add(owner);
    }
    return String.join(" · ", facts);
  }

  /** How the date of a coat came about. */
  public static List<BoatPage.ReasonCard> reasons(CoatForecast f) {
    List<BoatPage.ReasonCard> cards = new ArrayList<>();
    for (Reason r : f.reasons()) {
      cards.add(
          new BoatPage.ReasonCard(
              r.stage().words(),
              r.facts(),
              r.renewBy().map(DateWords::dated).orElse("over 15 years ahead")));
    }
    return cards;
  }

  private static Optional<DateSteps> steps(CoatForecast f, LocalDate today) {
    return f.coat()
        .laidOn()
        .map(laid -> new DateSteps(laid, today, f.reasons().stream().map(Reason::renewBy).toList()))
        .filter(steps -> !steps.isEmpty());
  }

  private static List<String> unused(CoatForecast f) {
    return f.unused().stream()
        .map(
            u ->
                u.finding().day()
                    + ", "
                    + u.finding().seen().what().replace('-', ' ')
                    + ": "
                    + u.why())
        .sorted(Comparator.reverseOrder())
        .toList();
  }
}
