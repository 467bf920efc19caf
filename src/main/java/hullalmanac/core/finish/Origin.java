package hullalmanac.core.finish;

/**
 * What a number rests on, which is always said.
 *
 * @param boats how many boats of the record taught it; 0 for a starter value
 * @param spot whether a test spot on this very surface did as well
 */
public record Origin(int boats, boolean spot) {
  /** A starter value of the trade. */
  public static final Origin STARTER = new Origin(0, false);

  public Origin {
    if (boats < 0) {
      throw new IllegalArgumentException("no number comes from " + boats + " boats");
    }
  }

  /** The same after a test spot. */
  Origin withSpot() {
    return new Origin(boats, true);
  }

  /** Such as "from your last 14 boats" or "starter value". */
  public String words() {
    String record =
        boats == 0
            ? "starter value"
            : boats == 1 ? "from your last boat" : "from your last " + boats + " boats";
    return spot ? record + " and the test spot" : record;
  }
}
