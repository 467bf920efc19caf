package hullalmanac.core.finish;

/**
 * The eye scale as gloss at 60°, so that the planner runs without a gloss meter. A rough reading
 * with a wide spread, and said so (common practice, no source).
 */
public final class EyeGloss {
  private static final double[] MIDDLE = {87, 80, 70, 55, 35};
  private static final double[] SD = {4, 5, 6, 8, 10};

  private EyeGloss() {}

  /**
   * The gloss of a surface that looks so.
   *
   * @param step 1 like new to 5 dull
   */
  public static Start start(int step) {
    require(step);
    return new Start(MIDDLE[step - 1], SD[step - 1], Start.By.EYE);
  }

  /**
   * The lowest gloss that still looks so: half way to the next duller step.
   *
   * @param step 1 like new to 4; 5 is dull and nothing to agree on
   */
  public static double lowest(int step) {
    require(step);
    if (step == MIDDLE.length) {
      throw new IllegalArgumentException("nobody agrees on a finish as dull as 5 on the eye scale");
    }
    return (MIDDLE[step - 1] + MIDDLE[step]) / 2;
  }

  private static void require(int step) {
    if (step < 1 || step > MIDDLE.length) {
      throw new IllegalArgumentException("the eye scale runs from 1 to 5, not " + step);
    }
  }
}
