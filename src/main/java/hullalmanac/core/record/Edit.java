package hullalmanac.core.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A change to a record, done as a whole or not at all.
 *
 * @param business the business as it shall be; absent: as it is
 * @param put rows that are new, or that take the place of those with the same id
 * @param gone rows to take out
 */
public record Edit(Optional<Business> business, List<Row> put, List<Row> gone) {
  public Edit {
    put = List.copyOf(put);
    gone = List.copyOf(gone);
  }

  /** Puts rows in. */
  public static Edit put(List<? extends Row> rows) {
    return new Edit(Optional.empty(), List.copyOf(rows), List.of());
  }

  /** Puts rows in. */
  public static Edit put(Row... rows) {
    return put(Arrays.asList(rows));
  }

  /** Takes rows out. */
  public static Edit remove(List<? extends Row> rows) {
    return new Edit(Optional.empty(), List.of(), List.copyOf(rows));
  }

  /** Puts in all that an almanac holds. */
  public static Edit all(Almanac almanac) {
    return new Edit(Optional.of(almanac.business()), almanac.rows(), List.of());
  }

  /** This change and another in one. */
  public Edit and(Edit other) {
    List<Row> allPut = new ArrayList<>(put);
    allPut.addAll(other.put);
    List<Row> allGone = new ArrayList<>(gone);
    allGone.addAll(other.gone);
    return new Edit(other.business.or(() -> business), allPut, allGone);
  }

  /** Whether it changes nothing. */
  public boolean isEmpty() {
    return business.isEmpty() && put.isEmpty() && gone.isEmpty();
  }
}
