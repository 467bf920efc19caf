package hullalmanac.present.boats;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.present.Invitation;
import java.util.List;
import java.util.Optional;

/**
 * All that Boats shows.
 *
 * @param find what is looked for
 * @param list the boats found, by name
 * @param found how many, in words
 * @param chosen the boat whose page is shown
 * @param page that page
 * @param washing whether it is being asked what water did on the boat that was washed
 * @param invitation what to do while there is no boat
 */
public record BoatsState(
    String find,
    List<Item> list,
    String found,
    Optional<Id<Boat>> chosen,
    Optional<BoatPage> page,
    boolean washing,
    Optional<Invitation> invitation) {
  public BoatsState {
    list = List.copyOf(list);
  }

  /** Shown before the record has been read. */
  public static BoatsState waiting() {
    return new BoatsState(
        "",
        List.of(),
        "Reading the record …",
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty());
  }

  /**
   * A boat in the list.
   *
   * @param detail owner and harbour
   * @param status what is due first
   */
  public record Item(Id<Boat> boat, String name, String detail, String status) {}
}
