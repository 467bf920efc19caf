package hullalmanac.present.start;

import hullalmanac.core.record.RecordException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Three ways to begin; and where a record was not found, ways to find it. */
public final class StartPresenter {
  private final Beginning beginning;
  private final String folder;
  private final boolean missing;
  private Consumer<StartState> view = s -> {};
  private Optional<String> trouble;

  /** What is done outside the window when a person has chosen. */
  public interface Beginning {
    /** Opens a scratch copy of the sample. */
    void lookAround();

    /** Makes an empty record and opens it; with the page on which a list comes in, if wanted. */
    void startEmpty(boolean withList);

    /** Looks again for the record where it was. */
    void lookAgain();

    /** Opens the record in another folder. */
    void open(String folder);
  }

  /**
   * @param folder where the record is looked for
   * @param missing whether there was one before
   * @param said why the last wish could not be granted
   */
  public StartPresenter(
      Beginning beginning, String folder, boolean missing, Optional<String> said) {
    this.beginning = beginning;
    this.folder = folder;
    this.missing = missing;
    this.trouble = said;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<StartState> view) {
    this.view = view;
    publish();
  }

  private void publish() {
    List<StartState.Way> ways = new ArrayList<>();
    if (missing) {
      ways.add(
          new StartState.Way(
              "again", "Look again", "After putting the stick back in, or renaming the folder."));
      ways.add(
          new StartState.Way(
              "other", "Open it where it is now", "Choose the folder that holds almanac.db."));
    }
    ways.add(
        new StartState.Way(
            "sample",
            "Look around in a sample",
            "An invented business with forty boats. Nothing you write there is kept."));
    ways.add(
        new StartState.Way(
            "list",
            "Bring a list in",
            "Your own list of boats and owners, from a spreadsheet or a file. You see what comes"
                + " in before it does."));
    ways.add(
        new StartState.Way(
            "empty", "Start empty", "Write the first boat down as she calls. Five fields do."));
    if (!missing) {
      ways.add(
          new StartState.Way(
              "other", "Open a record I have", "Choose the folder that holds almanac.db."));
    }
    view.accept(
        new StartState(
            missing ? "Where is your record?" : "Welcome to Hull Almanac",
            missing
                ? "It was in " + folder + " and is not there now. Nothing was made or changed."
                : "A record of boats, their coats, and when they are due. It is one folder on this"
                    + " computer, "
                    + folder
                    + ", and nothing of it leaves this computer.",
            ways,
            trouble));
  }

  /**
   * Goes a way.
   *
   * @param chosen the folder, for the way that needs one
   */
  public void go(String way, Optional<String> chosen) {
    try {
      switch (way) {
        case "again" -> beginning.lookAgain();
        case "sample" -> beginning.lookAround();
        case "list" -> beginning.startEmpty(true);
        case "empty" -> beginning.startEmpty(false);
        case "other" -> chosen.ifPresent(beginning::open);
        default -> throw new IllegalArgumentException("there is no way " + way);
      }
    } catch (RecordException e) {
      trouble = Optional.of(e.getMessage());
      publish();
    }
  }
}
