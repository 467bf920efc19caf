package hullalmanac.core.supply;

/**
 * How pads of one kind wear.
 *
 * @param pad what it is called
 * @param uses so far, each until it is changed for a clean one
 * @param planned uses until the last day
 * @param life uses after which one is worn out; 1 for paper
 */
public record PadWear(String pad, int uses, int planned, int life) {
  /** A washed pad cuts evenly for so many uses (common practice, no source). */
  public static final int LIFE = 15;

  public PadWear {
    if (uses < 0 || planned < 0 || life < 1) {
      throw new IllegalArgumentException(
          "uses are not below 0 and a life is at least 1, not "
              + uses
              + ", "
              + planned
              + ", "
              + life);
    }
  }

  /** How many were worn out so far. */
  public int worn() {
    return uses / life;
  }

  /** Uses of the one in use. */
  public int onTheLast() {
    return uses % life;
  }

  /** How many new ones the plans take until the last day. */
  public int toBuy() {
    int spare = onTheLast() == 0 ? 0 : life - onTheLast();
    return (Math.max(0, planned - spare) + life - 1) / life;
  }
}
