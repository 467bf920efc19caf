package hullalmanac.store;

import hullalmanac.core.record.Id;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An item of a list that belongs to a row.
 *
 * @param place in the list, from 1
 */
record Placed<P, T>(Id<P> owner, int place, T item) {
  /** The items of each row, by its id; they must come in order. */
  static <P, T> Map<Long, List<T>> gather(List<Placed<P, T>> placed) {
    Map<Long, List<T>> lists = new HashMap<>();
    placed.forEach(
        p -> lists.computeIfAbsent(p.owner().value(), id -> new ArrayList<>()).add(p.item()));
    return lists;
  }

  /** The items of a row with their places. */
  static <P, T> List<Placed<P, T>> place(Id<P> owner, List<T> items) {
    List<Placed<P, T>> placed = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      placed.add(new Placed<>(owner, i + 1, items.get(i)));
    }
    return placed;
  }
}
