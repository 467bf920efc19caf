package hullalmanac.core.work;

import hullalmanac.core.record.PartyKind;
import java.util.List;
import java.util.Optional;

/**
 * A person or a firm as another program's contact card has them.
 *
 * @param uid the card's own name, as it stands there
 * @param name as it is called; never blank
 * @param phones the one to ring first
 * @param emails the one to write to first
 * @param address lines of it; empty when there is none
 * @param language tag of the language they are written to in; empty when not said
 */
public record Card(
    Optional<String> uid,
    PartyKind kind,
    String name,
    List<String> phones,
    List<String> emails,
    String address,
    String language,
    String note) {
  public Card {
    phones = List.copyOf(phones);
    emails = List.copyOf(emails);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a card has a name");
    }
  }
}
