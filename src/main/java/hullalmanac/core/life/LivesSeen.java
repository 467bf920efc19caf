package hullalmanac.core.life;

/**
 * What a record says of the lives of a product's coats, in doses of the exposure clock: days on
 * light topsides at 30° latitude in open salt water.
 *
 * @param coats how many coats say anything of their lives
 * @param lapsed how many of them were seen bare
 * @param early the dose by which 1 in 10 such coats are bare
 * @param middle the dose by which half of them are
 * @param late the dose by which 9 in 10 are
 */
public record LivesSeen(int coats, int lapsed, double early, double middle, double late) {
  /** Fewer coats than this, or none seen to lapse, is too little to speak of the record's own. */
  private static final int FEW = 5;

  /** Whether it is the label or practice that speaks, not the record (practice: under 5 coats). */
  public boolean tooFew() {
    return coats < FEW || lapsed == 0;
  }

  /** The middle in months of the reference berth. */
  public double middleMonths() {
    return middle / LifePractice.DAYS_A_MONTH;
  }
}
