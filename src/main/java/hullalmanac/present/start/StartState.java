package hullalmanac.present.start;

import java.util.List;
import java.util.Optional;

/**
 * What the first window shows.
 *
 * @param trouble why the last wish could not be granted
 */
public record StartState(String title, String words, List<Way> ways, Optional<String> trouble) {
  public StartState {
    ways = List.copyOf(ways);
  }

  /** A way to begin. */
  public record Way(String id, String words, String about) {}
}
