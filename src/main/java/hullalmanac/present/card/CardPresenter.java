package hullalmanac.present.card;

import hullalmanac.core.card.DwellTimer;
import hullalmanac.core.card.JobCard;
import hullalmanac.core.card.JobCard.CardStep;
import hullalmanac.core.card.Stop;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.TimeEntry;
import hullalmanac.core.paper.CardPaper;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.present.Desk;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Shows the card of a visit until one leaves. Ticks, acknowledgements and dwells are kept while the
 * program is open and stand in no record; a dwell goes on when another step, or no card, is shown.
 */
public final class CardPresenter {
  private final Desk desk;
  private final Consumer<String> tell;
  private Consumer<Optional<CardState>> view = s -> {};
  private Consumer<CardClock> clock = c -> {};
  private Runnable sound = () -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<Id<Visit>> visit = Optional.empty();
  private Optional<JobCard> card = Optional.empty();
  private final Map<Id<Visit>, Kept> kept = new HashMap<>();
  private final Map<Id<Step>, String> names = new HashMap<>();
  private long newest;

  /**
   * @param tell says something that stands in the main window, for a dwell that ends while no card
   *     is shown
   */
  public CardPresenter(Desk desk, Consumer<String> tell) {
    this.desk = desk;
    this.tell = tell;
  }

  /** Tells who shows the card, empty while none is shown; called at once and on changes. */
  public void onChange(Consumer<Optional<CardState>> view) {
    this.view = view;
    publish();
  }

  /** Tells who shows what goes with the clock. */
  public void onClock(Consumer<CardClock> clock) {
    this.clock = clock;
    clock.accept(clock());
  }

  /** Tells who makes a sound when a dwell comes to its end. */
  public void onSound(Runnable sound) {
    this.sound = sound;
  }

  /** Goes on with a fleet; leaves when the visit shown is not in it any more. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    visit.ifPresent(this::open);
  }

  /** Shows the card of a visit. */
  public void open(Id<Visit> shown) {
    visit = Optional.of(shown);
    long mine = ++newest;
    fleet.ifPresent(
        f ->
            desk.reckon(
                () -> JobCard.of(f.almanac(), shown),
                came -> {
                  if (mine == newest) {
                    arrived(came);
                  }
                }));
  }

  private void arrived(Optional<JobCard> came) {
    card = came;
    if (came.isEmpty()) {
      visit = Optional.empty();
    }
    came.ifPresent(
        c ->
            c.steps()
                .forEach(
                    s ->
                        names.put(
                            s.step().id(), s.step().kind().words() + " on " + c.boat().name())));
    publish();
  }

  /** The visit whose card is shown. */
  public Optional<Id<Visit>> shown() {
    return visit;
  }

  /** Leaves the card, if one is shown. */
  public void leave() {
    newest++;
    visit = Optional.empty();
    card = Optional.empty();
    publish();
  }

  /** Leaves the card that is shown; hands back what shows it again. */
  public Runnable setAside() {
    Id<Visit> again = visit.orElseThrow();
    leave();
    return () -> open(again);
  }

  private Kept kept(JobCard of) {
    return kept.computeIfAbsent(of.visit().id(), v -> new Kept());
  }

  private void publish() {
    view.accept(card.map(c -> CardWords.state(c, kept(c), index(c), expected(c))));
    clock.accept(clock());
  }

  /** Prints the card that is shown, with the dialog of the system. */
  public void print() {
    Fleet now = fleet.orElseThrow();
    card.ifPresent(
        c ->
            desk.ask(
                EditService::papers,
                maker ->
                    desk.reckon(
                        () -> maker.make(CardPaper.of(now.almanac(), c, back(c)), now.asOf()),
                        paper -> desk.outside().print(paper, not -> not.ifPresent(tell)))));
  }

  private String back(JobCard c) {
    return expected(c) instanceof Entry.Read<LocalDateTime> read ? read.echo() : "";
  }

  private int index(JobCard c) {
    for (int i = 0; i < c.steps().size(); i++) {
      if (kept(c).shown.equals(Optional.of(c.steps().get(i).step().id()))) {
        return i;
      }
    }
    return 0;
  }

  private Optional<CardStep> step() {
    return card.filter(c -> !c.steps().isEmpty()).map(c -> c.steps().get(index(c)));
  }

  /** Shows a step in full. */
  public void choose(int step) {
    card.filter(c -> step >= 0 && step < c.steps().size())
        .ifPresent(
            c -> {
              kept(c).shown = Optional.of(c.steps().get(step).step().id());
              publish();
            });
  }

  /** Shows the next step in full (1), or the one before (−1). */
  public void go(int by) {
    card.ifPresent(c -> choose(index(c) + by));
  }

  /** Ticks the step shown, or takes the tick away; not while something is to be read first. */
  public void tickStep() {
    step()
        .ifPresent(
            s -> {
              Kept k = kept(card.orElseThrow());
              Id<Step> id = s.step().id();
              if (!k.done.remove(id) && free(s, k)) {
                k.done.add(id);
              }
              publish();
            });
  }

  private static boolean free(CardStep s, Kept k) {
    return s.stops().stream().allMatch(stop -> k.isRead(s.step().id(), stop));
  }

  /** Says that what stops the step shown was read. */
  public void read(int stop) {
    step()
        .filter(s -> stop >= 0 && stop < s.stops().size())
        .ifPresent(
            s -> {
              Stop which = s.stops().get(stop);
              kept(card.orElseThrow()).read(s.step().id(), which);
              publish();
            });
  }

  /** Ticks something to see to, or takes the tick away. */
  public void tick(int check) {
    card.filter(c -> check >= 0 && check < c.checks().size())
        .ifPresent(
            c -> {
              String words = c.checks().get(check);
              if (!kept(c).ticked.remove(words)) {
                kept(c).ticked.add(words);
              }
              publish();
            });
  }

  /** Takes a bottle of another size in hand. */
  public void bottle(int millilitres) {
    card.ifPresent(
        c -> {
          kept(c).bottleMl = millilitres;
          publish();
        });
  }

  /** Writes down when one is expected back. */
  public void back(String typed) {
    card.ifPresent(
        c -> {
          kept(c).back = typed.strip();
          publish();
        });
  }

  private Entry<LocalDateTime> expected(JobCard c) {
    return TimeEntry.read(kept(c).back, c.visit().day());
  }

  /** Begins the dwell of the step shown, or ends it; not while something is to be read first. */
  public void time() {
    step()
        .filter(s -> s.dwell().isPresent())
        .ifPresent(
            s -> {
              Kept k = kept(card.orElseThrow());
              Id<Step> id = s.step().id();
              if (k.timers.remove(id) == null && free(s, k)) {
                k.timers.put(id, new DwellTimer(s.dwell().get(), now()));
              }
              k.told.remove(id);
              publish();
            });
  }

  private Instant now() {
    return desk.now().toInstant();
  }

  /** Whether any dwell is being timed, so that the clock has to be looked at. */
  public boolean timing() {
    return kept.values().stream().anyMatch(k -> !k.timers.isEmpty());
  }

  /** Looks at the clock: shows what goes with it, and tells by a sound what has come. */
  public void lookAtTheClock() {
    Instant now = now();
    kept.forEach(
        (of, k) ->
            k.timers.forEach(
                (step, timer) -> {
                  DwellTimer.Phase phase = timer.phase(now);
                  if (phase != DwellTimer.Phase.WORKING && k.told.put(step, phase) != phase) {
                    sound.run();
                    if (!visit.equals(Optional.of(of))) {
                      tell.accept(names.get(step) + ": " + CardWords.toDo(phase));
                    }
                  }
                }));
    clock.accept(clock());
  }

  private CardClock clock() {
    return card.map(c -> CardWords.clock(c, kept(c), index(c), now())).orElse(CardClock.NOTHING);
  }
}
