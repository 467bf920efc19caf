package hullalmanac.present.boats;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.DateSteps;
import java.util.List;
import java.util.Optional;

/**
 * A boat's page.
 *
 * @param facts length, type, finish, where it lies, whose it is
 * @param heading what is due first, in words
 * @param sentence the range and the chance, in words
 * @param reasons how that date came about
 * @param steps the same as a picture, where there is a day to draw
 * @param unused findings that did not move it, and why
 * @param tables what the record holds of the boat
 */
public record BoatPage(
    String name,
    String facts,
    String heading,
    String sentence,
    BoatTimeline timeline,
    List<ReasonCard> reasons,
    Optional<DateSteps> steps,
    List<String> unused,
    List<Table> tables) {
  public BoatPage {
    reasons = List.copyOf(reasons);
    unused = List.copyOf(unused);
    tables = List.copyOf(tables);
  }

  /**
   * One step of how a date came about.
   *
   * @param date the date after this step
   */
  public record ReasonCard(String title, List<String> facts, String date) {
    public ReasonCard {
      facts = List.copyOf(facts);
    }
  }

  /**
   * A table of texts.
   *
   * @param title what it lists
   * @param empty what is said when it has no rows
   * @param opens the visit that a row opens, one a row; empty where rows open nothing
   */
  public record Table(
      String title,
      List<String> columns,
      List<List<String>> rows,
      String empty,
      List<Id<Visit>> opens) {
    /** A table whose rows open nothing. */
    public Table(String title, List<String> columns, List<List<String>> rows, String empty) {
      this(title, columns, rows, empty, List.of());
    }

    public Table {
      opens = List.copyOf(opens);
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }
  }
}
