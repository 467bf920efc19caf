package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a party does for a boat, from a day, until a sale or change ends it.
 *
 * @param until first day on which it no longer holds
 */
public record Role(
    Id<Role> id,
    String key,
    Id<Boat> boat,
    Id<Party> party,
    RoleKind kind,
    LocalDate from,
    Optional<LocalDate> until)
    implements Row {
  public Role {
    Texts.key(key);
    Days.inOrder(from, until);
  }

  /** Whether this role holds on a day. */
  public boolean holdsOn(LocalDate day) {
    return !day.isBefore(from) && until.map(day::isBefore).orElse(true);
  }
}
