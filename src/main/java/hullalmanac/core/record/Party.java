package hullalmanac.core.record;

import java.util.Optional;

/**
 * A person or a firm.
 *
 * @param language tag of the language they are written to in, such as {@code en}; empty for the
 *     business's own
 * @param risk chance of a bare coat at which their boats are to be renewed, 0.05 to 0.95; absent:
 *     as the business has it
 */
public record Party(
    Id<Party> id,
    String key,
    PartyKind kind,
    String name,
    String phone,
    String email,
    String address,
    String language,
    Optional<Double> risk,
    String note)
    implements Row {
  public Party {
    Texts.key(key);
    Texts.require(name, "the name of a party");
    risk.ifPresent(Business::requireRisk);
  }
}
