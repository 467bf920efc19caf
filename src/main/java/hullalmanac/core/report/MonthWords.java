package hullalmanac.core.report;

/** Lengths of time in months, no finer than half a month under a year, whole months beyond. */
public final class MonthWords {
  private static final int WHOLE_FROM = 12;

  private MonthWords() {}

  /** A length: "7½ months", "1 month", "under half a month". */
  public static String of(double months) {
    long halves = Math.round(months * 2);
    if (halves == 0) {
      return "under half a month";
    }
    if (months >= WHOLE_FROM) {
      return Math.round(months) + " months";
    }
    String whole = halves < 2 ? "" : Long.toString(halves / 2);
    String text = whole + (halves % 2 == 1 ? "½" : "");
    return halves == 1 ? "half a month" : halves == 2 ? "1 month" : text + " months";
  }
}
