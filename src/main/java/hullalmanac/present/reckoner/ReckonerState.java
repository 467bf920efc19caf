package hullalmanac.present.reckoner;

import hullalmanac.present.sheet.Sheet;
import java.util.List;

/**
 * All that the Reckoner shows.
 *
 * @param list the sums there are
 * @param chosen which is shown, from 0
 * @param sheet its sheet
 */
public record ReckonerState(List<Item> list, int chosen, Sheet sheet) {
  public ReckonerState {
    list = List.copyOf(list);
  }

  /**
   * A sum in the list.
   *
   * @param does what it is for
   */
  public record Item(String name, String does) {
    /** Its name, by which typing in the list chooses it. */
    @Override
    public String toString() {
      return name;
    }
  }
}
