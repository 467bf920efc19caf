package hullalmanac.present.people;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.present.Invitation;
import hullalmanac.present.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * All that People shows.
 *
 * @param find what is looked for
 * @param list the people found, by name
 * @param found how many, in words
 * @param chosen whose sheet is shown
 * @param sheet that sheet
 * @param invitation what to do while nobody is written down
 */
public record PeopleState(
    String find,
    List<Item> list,
    String found,
    Optional<Id<Party>> chosen,
    Optional<Sheet> sheet,
    Optional<Invitation> invitation) {
  public PeopleState {
    list = List.copyOf(list);
  }

  /**
   * A person or a firm in the list.
   *
   * @param boats the boats they have to do with now
   * @param reach phone or e-mail
   */
  public record Item(Id<Party> party, String name, String boats, String reach) {}
}
