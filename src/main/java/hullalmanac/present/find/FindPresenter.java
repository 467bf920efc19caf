package hullalmanac.present.find;

import hullalmanac.core.find.FindIndex;
import hullalmanac.core.find.Hit;
import hullalmanac.core.find.Target;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.present.TaskRunner;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Finds anything in the record by what is typed, or one of the boats opened last. The index is made
 * when it is first wanted after a reading of the record, and only the newest counts.
 */
public final class FindPresenter {
  /** How many boats opened last are kept in mind. */
  static final int RECENT = 8;

  private static final int MOST = 50;

  private final TaskRunner tasks;
  private final Consumer<Target> take;
  private final List<Id<Boat>> recent = new ArrayList<>();
  private Consumer<FindState> view = s -> {};
  private FindState state = FindState.closed();
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<FindIndex> index = Optional.empty();
  private boolean reading;

  /** Whether the record was read anew since what is found in was made of it. */
  private boolean stale = true;

  private long newest;

  /**
   * @param take goes to what was found
   */
  public FindPresenter(TaskRunner tasks, Consumer<Target> take) {
    this.tasks = tasks;
    this.take = take;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<FindState> view) {
    this.view = view;
    view.accept(state);
  }

  /** Finds in this fleet's record from now on. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    stale = true;
    reading = false;
    newest++;
    if (state.open()) {
      read();
    }
  }

  /** Keeps in mind that a boat's page was opened. */
  public void opened(Id<Boat> boat) {
    recent.remove(boat);
    recent.add(0, boat);
    if (recent.size() > RECENT) {
      recent.remove(RECENT);
    }
  }

  /** Begins to find, with nothing typed. */
  public void open() {
    if (!state.open()) {
      look("");
    }
  }

  /** What is typed; nothing while one does not find. */
  public Optional<String> text() {
    return state.open() ? Optional.of(state.text()) : Optional.empty();
  }

  /** Finds what has these words. */
  public void type(String text) {
    if (state.open() && !text.equals(state.text())) {
      look(text);
    }
  }

  /** Chooses the next hit. */
  public void down() {
    choose(state.chosen() + 1);
  }

  /** Chooses the hit before. */
  public void up() {
    choose(state.chosen() - 1);
  }

  /** Chooses a hit by its place. */
  public void choose(int hit) {
    if (hit >= 0 && hit < state.hits().size() && hit != state.chosen()) {
      publish(state.choosing(hit));
    }
  }

  /** Goes to the hit chosen; stays where there is none. */
  public void take() {
    if (state.chosen() >= 0) {
      Target target = state.hits().get(state.chosen()).target();
      if (fleet.filter(f -> !target.isIn(f.almanac())).isPresent()) {
        publish(said(state.text(), "That is no longer in the record."));
        return;
      }
      take.accept(target);
      leave();
    }
  }

  /** Ends finding. */
  public void leave() {
    if (state.open()) {
      publish(FindState.closed());
    }
  }

  private void look(String text) {
    publish(
        index
            .map(i -> found(i, text))
            .orElseGet(() -> new FindState(true, text, "", List.of(), -1, "Reading the record …")));
    read();
  }

  /** Looks in a record that was read anew; the hit that was chosen stays chosen. */
  private void lookAgain() {
    Optional<Hit> chosen =
        state.chosen() < 0 ? Optional.empty() : Optional.of(state.hits().get(state.chosen()));
    FindState next = found(index.orElseThrow(), state.text());
    int again =
        chosen
            .map(c -> next.hits().stream().map(Hit::target).toList().indexOf(c.target()))
            .orElse(-1);
    publish(again < 0 ? next : next.choosing(again));
  }

  private void read() {
    if (fleet.isEmpty() || reading || !stale) {
      return;
    }
    Fleet wanted = fleet.get();
    long mine = newest;
    reading = true;
    tasks.run(
        Lane.COMPUTING,
        () -> FindIndex.of(wanted.almanac(), wanted.asOf()),
        made -> {
          if (mine == newest) {
            index = Optional.of(made);
            stale = false;
            reading = false;
            if (state.open()) {
              lookAgain();
            }
          }
        },
        e -> {
          throw e;
        });
  }

  private FindState found(FindIndex index, String text) {
    if (index.isEmpty()) {
      return said(text, "Nothing has been written down yet that could be found.");
    }
    if (text.isBlank()) {
      List<Hit> last = recent.stream().flatMap(b -> index.boat(b).stream()).toList();
      return last.isEmpty()
          ? said(text, "Type the beginning of a name, a number or a word of a note.")
          : new FindState(true, text, "Opened last", last, 0, "");
    }
    List<Hit> hits = index.find(text, MOST);
    return hits.isEmpty()
        ? said(text, nothing(index, text))
        : new FindState(true, text, "", hits, 0, "");
  }

  private static FindState said(String text, String sentence) {
    return new FindState(true, text, "", List.of(), -1, sentence);
  }

  /** What to try when nothing was found. */
  private static String nothing(FindIndex index, String text) {
    return index
        .unknown(text)
        .map(word -> "No word in the record begins with “" + word + "”. Try fewer letters of it.")
        .orElse(
            text.codePoints().anyMatch(Character::isLetterOrDigit)
                ? "Nothing has all of these words. Leave one out."
                : "Type a letter or a digit.");
  }

  private void publish(FindState next) {
    state = next;
    view.accept(state);
  }
}
