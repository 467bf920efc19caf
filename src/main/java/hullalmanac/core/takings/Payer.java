package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

/** Who pays for a boat. */
public final class Payer {
  private Payer() {}

  /** Who pays for a boat on a day: who is written down to pay, otherwise her owner. */
  public static Optional<Party> of(Almanac almanac, Id<Boat> boat, LocalDate day) {
    return almanac.roles().stream()
        .filter(r -> r.boat().equals(boat) && pays(r, day))
        .min(
            Comparator.comparing((Role r) -> r.kind() != RoleKind.PAYS)
                .thenComparing(Role::from, Comparator.reverseOrder())
                .thenComparing(Role::id))
        .map(r -> Accounts.row(almanac.parties(), r.party()));
  }

  private static boolean pays(Role role, LocalDate day) {
    return role.holdsOn(day) && (role.kind() == RoleKind.PAYS || role.kind() == RoleKind.OWNS);
  }

  /** Whether somebody pays for a boat on a day; reads a record once, for many of them. */
  public static BiPredicate<Id<Boat>, LocalDate> isKnown(Almanac almanac) {
    Map<Id<Boat>, List<Role>> roles =
        almanac.roles().stream().collect(Collectors.groupingBy(Role::boat));
    return (boat, day) -> roles.getOrDefault(boat, List.of()).stream().anyMatch(r -> pays(r, day));
  }
}
