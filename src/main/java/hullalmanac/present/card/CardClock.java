package hullalmanac.present.card;

import java.util.List;

/**
 * What goes with the clock on a card.
 *
 * @param large the dwell of the step shown, such as "2:41"; empty while none is timed
 * @param words what is to be done now
 * @param urgent whether it is to be done at once
 * @param rows a text for each step in the list, empty where none is timed
 */
public record CardClock(String large, String words, boolean urgent, List<String> rows) {
  /** Nothing is timed. */
  static final CardClock NOTHING = new CardClock("", "", false, List.of());

  public CardClock {
    rows = List.copyOf(rows);
  }
}
