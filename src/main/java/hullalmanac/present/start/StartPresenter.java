package hullalmanac.present.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Ways to begin; and where a record was not found, ways to find it. */
public final class StartPresenter {
  private final Beginning beginning;
  private final Found found;
  private Runnable gone = () -> {};
  private Consumer<StartState> view = s -> {};
  private final Optional<String> trouble;

  /** What is done outside the window when a person has chosen. */
  public interface Beginning {
    /** Opens a scratch copy of the sample. */
    void lookAround();

    /** Makes an empty record and opens it. */
    void startEmpty();

    /** Makes an empty record and opens it where a list is brought in. */
    void startWithAList();

    /** Looks again for the record where it was. */
    void lookAgain();

    /** Opens the record in another folder. */
    void open(String folder);

    /** Puts a copy in the place of the record. */
    void putBack(String copy);
  }

  /**
   * What was found where the record is looked for.
   *
   * @param there whether a record lies there, which cannot be opened
   * @param known whether one was opened there before
   * @param copy the newest verified copy
   */
  public record Found(String folder, boolean there, boolean known, Optional<String> copy) {
    boolean missing() {
      return known && !there;
    }
  }

  /**
   * @param said why the last wish could not be granted
   */
  public StartPresenter(Beginning beginning, Found found, Optional<String> said) {
    this.beginning = beginning;
    this.found = found;
    this.trouble = said;
  }

  /** Tells who closes the window once a way was gone. */
  public void onGone(Runnable close) {
    gone = close;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<StartState> view) {
    this.view = view;
    publish();
  }

  private void publish() {
    view.accept(new StartState(title(), words(), ways(), trouble));
  }

  private String title() {
    return found.there()
        ? "The record cannot be opened"
        : found.missing() ? "Where is your record?" : "Welcome to Hull Almanac";
  }

  private String words() {
    if (found.there()) {
      return "It lies in " + found.folder() + ". Nothing was changed.";
    }
    return found.missing()
        ? "It was in " + found.folder() + " and is not there now. Nothing was made or changed."
        : "A record of boats, their coats, and when they are due. It is one folder on this"
            + " computer, "
            + found.folder()
            + ", and nothing of it leaves this computer.";
  }

  private List<StartState.Way> ways() {
    StartState.Way other =
        new StartState.Way(
            "other", "Open a record elsewhere", "Choose the folder that holds almanac.db.");
    StartState.Way sample =
        new StartState.Way(
            "sample",
            "Look around in a sample",
            "An invented business with forty boats. Nothing you write there is kept.");
    List<StartState.Way> ways = new ArrayList<>();
    if (found.there() || found.missing()) {
      ways.add(
          new StartState.Way(
              "again",
              "Look again",
              "After putting the stick back in, closing the other program, or naming the folder"
                  + " as it was."));
      ways.add(other);
    }
    if (found.there() && found.copy().isPresent()) {
      ways.add(
          new StartState.Way(
              "restore",
              "Put the newest good copy in its place",
              "For a record that is damaged. As it stands it is kept beside it: "
                  + found.copy().get()));
    }
    ways.add(sample);
    if (!found.there()) {
      ways.add(
          new StartState.Way(
              "list",
              "Bring a list in",
              "Your boats and owners from a CSV or .xlsx file, or a copied table. You see what would"
                  + " come in before it does."));
      ways.add(
          new StartState.Way(
              "empty",
              "Start empty",
              "Write the first boat down as her owner calls. Five fields do."));
    }
    if (!ways.contains(other)) {
      ways.add(other);
    }
    return ways;
  }

  /**
   * Goes a way.
   *
   * @param chosen the folder, for the way that needs one
   */
  public void go(String way, Optional<String> chosen) {
    if (way.equals("other") && chosen.isEmpty()) {
      return;
    }
    gone.run();
    switch (way) {
      case "again" -> beginning.lookAgain();
      case "sample" -> beginning.lookAround();
      case "empty" -> beginning.startEmpty();
      case "list" -> beginning.startWithAList();
      case "restore" -> beginning.putBack(found.copy().orElseThrow());
      case "other" -> beginning.open(chosen.get());
      default -> throw new IllegalArgumentException("there is no way " + way);
    }
  }
}
