package hullalmanac.core.record;

/**
 * A person or a firm.
 *
 * @param language tag of the language they are written to in, such as {@code en}; empty for the
 *     business's own
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
    String note) {
  public Party {
    Texts.key(key);
    Texts.require(name, "the name of a party");
  }
}
