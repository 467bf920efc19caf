package hullalmanac.core.list;

import hullalmanac.core.record.ListField;
import java.util.List;

/**
 * A column of a list and what it is taken as.
 *
 * @param index from 0
 * @param heading as it stands; empty for a column without
 * @param why how sure that is and what it rests on, in words
 * @param samples some of its texts
 */
public record ListColumn(
    int index, String heading, ListField field, String why, List<String> samples) {
  public ListColumn {
    samples = List.copyOf(samples);
  }

  /** Its heading, or its letter. */
  public String label() {
    return heading.isBlank() ? "Column " + Grid.letter(index) : heading;
  }

  /** The same, taken as something else. */
  ListColumn as(ListField other, String because) {
    return new ListColumn(index, heading, other, because, samples);
  }
}
