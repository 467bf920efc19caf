package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/** Who pays for a boat. */
public final class Payer {
  private Payer() {}

  /** Who pays for a boat on a day: who is written down to pay, otherwise her owner. */
  public static Optional<Party> of(Almanac almanac, Id<Boat> boat, LocalDate day) {
    return almanac.roles().stream()
        .filter(r -> r.boat().equals(boat) && r.holdsOn(day))
        .filter(r -> r.kind() == RoleKind.PAYS || r.kind() == RoleKind.OWNS)
        .min(
            Comparator.comparing((Role r) -> r.kind() != RoleKind.PAYS)
                .thenComparing(Role::from, Comparator.reverseOrder())
                .thenComparing(Role::id))
        .map(r -> Accounts.row(almanac.parties(), r.party()));
  }
}
