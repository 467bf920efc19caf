package hullalmanac.present.owner;

import hullalmanac.core.report.BoatHistory;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.present.boats.BoatPage;
import java.util.List;

/**
 * A boat as her owner sees her: no prices but what is still to pay, no notes, keys, absences or
 * names of people.
 *
 * @param facts length, type and harbour
 * @param next what comes next, and why
 * @param timeline the boat over time
 * @param history visits that were done, newest first
 * @param pairs pictures before and after, newest first
 * @param morePairs says how many older pairs are not among them; empty when all are
 * @param toPay what of invoices to who owns her is still to pay, a sentence each
 */
public record OwnerState(
    String name,
    String facts,
    Next next,
    BoatTimeline timeline,
    List<BoatHistory.Visited> history,
    List<BoatHistory.Pair> pairs,
    String morePairs,
    List<String> toPay) {
  public OwnerState {
    history = List.copyOf(history);
    pairs = List.copyOf(pairs);
    toPay = List.copyOf(toPay);
  }

  /**
   * What comes next.
   *
   * @param heading what is due first
   * @param sentence its range and chance
   * @param reasons how its date came about
   * @param caution that it is a forecast and no more
   */
  public record Next(
      String heading, String sentence, List<BoatPage.ReasonCard> reasons, String caution) {
    public Next {
      reasons = List.copyOf(reasons);
    }
  }
}
