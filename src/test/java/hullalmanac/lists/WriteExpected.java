package hullalmanac.lists;

import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.work.Change;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Random;

/**
 * Writes down what comes of each made-up list, to be read through by a person before it is kept:
 * nothing but that reading makes it an expectation.
 */
final class WriteExpected {
  private WriteExpected() {}

  public static void main(String[] arguments) throws IOException {
    for (MadeList list : MadeList.all().toList()) {
      Files.writeString(list.expectedFile(), told(list));
    }
  }

  /** What is planned with a list and what comes in. */
  static String told(MadeList list) {
    return told(list, ListBench.beginning(), ListChoices.NONE);
  }

  /** The same, into some record and with what a person chose. */
  static String told(MadeList list, Almanac before, ListChoices choices) {
    ListPlan plan = ListPlan.of(list.grid(), before, ListBench.TODAY, choices);
    return Told.plan(plan)
        + (plan.change(new IdSource(new Random(1)::nextLong)) instanceof Change.Ready ready
            ? "\n" + Told.rows(before, before.with(ready.edit()))
            : "");
  }
}
