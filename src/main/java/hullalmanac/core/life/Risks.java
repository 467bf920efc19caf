package hullalmanac.core.life;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The chance of a bare coat at which it is to be renewed: as the one who decides for the boat has
 * it, else as her owner has, else as the business has, else as is practice for the surface and the
 * product.
 */
final class Risks {
  private final LifePractice practice;
  private final Optional<Double> business;
  private final Map<Id<Boat>, Double> ofBoats = new HashMap<>();

  Risks(Almanac almanac, LocalDate asOf) {
    practice = new LifePractice(almanac.business().practice());
    business = almanac.business().risk();
    Map<Id<Party>, Party> parties =
        almanac.parties().stream().collect(Collectors.toMap(Party::id, Function.identity()));
    for (RoleKind kind : List.of(RoleKind.OWNS, RoleKind.DECIDES)) {
      for (Role role : almanac.roles()) {
        if (role.kind() == kind && role.holdsOn(asOf)) {
          parties.get(role.party()).risk().ifPresent(r -> ofBoats.put(role.boat(), r));
        }
      }
    }
  }

  double of(Surface surface, Product product) {
    return Optional.ofNullable(ofBoats.get(surface.boat()))
        .or(() -> business)
        .orElseGet(() -> practice.risk(surface, product));
  }
}
