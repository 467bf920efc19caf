package hullalmanac.core.life;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One of the steps by which a date came about.
 *
 * @param stage which step
 * @param facts what it rests on, as short plain phrases
 * @param renewBy the renew-by day after this step, where there is one within 15 years
 */
public record Reason(Stage stage, List<String> facts, Optional<LocalDate> renewBy) {
  public Reason {
    facts = List.copyOf(facts);
  }

  /** The steps, in the order in which they are taken. */
  public enum Stage {
    /** The label alone, by the calendar. */
    LABEL("The label"),
    /** What the record says of such coats. */
    RECORD("Such coats"),
    /** Where this boat lies, under what cover, in which months. */
    BERTH("Where it lies"),
    /** What was seen of this coat. */
    FINDINGS("What was seen");

    private final String words;

    Stage(String words) {
      this.words = words;
    }

    /** The words on screen and paper. */
    public String words() {
      return words;
    }
  }
}
