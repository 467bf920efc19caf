package hullalmanac.core.record;

/** What a column of a person's own list says of a boat or of her owner. */
public enum ListField implements Coded {
  BOAT("boat", "boat"),
  TYPE("type", "type of boat"),
  MAKE("make", "make and model"),
  LENGTH_FEET("length-feet", "length in feet"),
  LENGTH_METRES("length-metres", "length in metres"),
  LENGTH_CENTIMETRES("length-centimetres", "length in centimetres"),
  BEAM_FEET("beam-feet", "beam in feet"),
  BEAM_METRES("beam-metres", "beam in metres"),
  BEAM_CENTIMETRES("beam-centimetres", "beam in centimetres"),
  HULL_NUMBER("hull-number", "hull number"),
  BUILT("built", "year built"),
  MATERIAL("material", "hull material"),
  COLOUR("colour", "hull colour"),
  OWNER("owner", "owner"),
  FIRST_NAME("first-name", "owner’s first name"),
  LAST_NAME("last-name", "owner’s last name"),
  FIRM("firm", "firm"),
  PHONE("phone", "phone"),
  MAIL("mail", "mail"),
  ADDRESS("address", "address"),
  HARBOUR("harbour", "harbour"),
  BERTH("berth", "berth number"),
  KEYS("keys", "where the keys are"),
  GATE_CODE("gate-code", "gate code"),
  LAST_VISIT("last-visit", "day of the last visit"),
  PRODUCT("product", "product laid"),
  BOAT_NOTE("boat-note", "note on the boat"),
  OWNER_NOTE("owner-note", "note on the owner"),
  LEAVE_OUT("leave-out", "leave out");

  private final String code;
  private final String words;

  ListField(String code, String words) {
    this.code = code;
    this.words = words;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return words;
  }

  /** Whether its texts are kept as they are, as a note. */
  public boolean isNote() {
    return this == BOAT_NOTE || this == OWNER_NOTE;
  }

  /** Whether it says something of the owner, not of the boat. */
  public boolean isOfOwner() {
    return switch (this) {
      case OWNER, FIRST_NAME, LAST_NAME, FIRM, PHONE, MAIL, ADDRESS, OWNER_NOTE -> true;
      default -> false;
    };
  }

  /** Whether it is a length over all, in whatever unit. */
  public boolean isLength() {
    return this == LENGTH_FEET || this == LENGTH_METRES || this == LENGTH_CENTIMETRES;
  }

  /** Whether it is a beam, in whatever unit. */
  public boolean isBeam() {
    return this == BEAM_FEET || this == BEAM_METRES || this == BEAM_CENTIMETRES;
  }
}
