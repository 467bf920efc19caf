package hullalmanac.present.find;

import hullalmanac.core.find.Hit;
import java.util.List;

/**
 * All that finding shows.
 *
 * @param open whether it is to be seen
 * @param text what is typed
 * @param heading what the hits are, where that is not plain; empty otherwise
 * @param hits what was found, the best first
 * @param chosen the place among them of the one that is taken next; −1 when there is none
 * @param sentence what is to be said instead of hits; empty when there are some
 */
public record FindState(
    boolean open, String text, String heading, List<Hit> hits, int chosen, String sentence) {
  public FindState {
    hits = List.copyOf(hits);
    if (chosen < -1 || chosen >= hits.size()) {
      throw new IllegalArgumentException(chosen + " is none of " + hits.size() + " hits");
    }
  }

  /** Before it is opened. */
  public static FindState closed() {
    return new FindState(false, "", "", List.of(), -1, "");
  }

  FindState choosing(int hit) {
    return new FindState(open, text, heading, hits, hit, sentence);
  }
}
