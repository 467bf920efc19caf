package hullalmanac.core.record;

/**
 * The kinds of row in a record, in the order in which they can be written: each refers only to
 * kinds before it.
 */
public enum Kind implements Coded {
  BUSINESS("business", "the business"),
  HARBOUR("harbours", "harbour"),
  PARTY("parties", "party"),
  BOAT("boats", "boat"),
  ROLE("roles", "role"),
  SURFACE("surfaces", "surface"),
  BERTH("berths", "berth"),
  CARE_PLAN("care-plans", "care plan"),
  PRODUCT("products", "product"),
  BOTTLE("bottles", "bottle"),
  VISIT("visits", "visit"),
  STEP("steps", "step"),
  COAT("coats", "coat"),
  DUTY("duties", "duty"),
  FINDING("findings", "finding"),
  PHOTO("photos", "photo"),
  LIST_READING("list-readings", "list reading"),
  WORDING("wordings", "wording"),
  REMINDER("reminders", "reminder"),
  RATE("rates", "rate"),
  ESTIMATE("estimates", "estimate"),
  INVOICE("invoices", "invoice"),
  PAYMENT("payments", "payment"),
  TRIP("trips", "trip"),
  EXPENSE("expenses", "expense");

  private final String code;
  private final String one;

  Kind(String code, String one) {
    this.code = code;
    this.one = one;
  }

  @Override
  public String code() {
    return code;
  }

  /** The kind of a row. */
  public static Kind of(Row row) {
    for (Kind kind : values()) {
      if (kind.one.replace(" ", "").equalsIgnoreCase(row.getClass().getSimpleName())) {
        return kind;
      }
    }
    throw new IllegalArgumentException("no kind of row is called " + row.getClass());
  }

  /** The word for one of them. */
  public String one() {
    return one;
  }
}
