package hullalmanac.present.ahead;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.present.Invitation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that Ahead shows.
 *
 * @param heading the day
 * @param summary one sentence that sums it up
 * @param today for the strips of dots
 * @param harbours to filter by, the first meaning all
 * @param harbour the one chosen
 * @param due what is due within the weeks that one looks ahead, in order of the early end
 * @param later the rest
 * @param toTell of how many boats somebody is to be told now
 * @param beside lists at the side, each with its heading
 * @param table all rows as a table, while one wants them so
 * @param part how many of how many rows are shown; empty when all are
 * @param invitation what to do while there are no rows at all
 */
public record AheadState(
    String heading,
    String summary,
    LocalDate today,
    List<String> harbours,
    String harbour,
    List<Row> due,
    List<Row> later,
    int toTell,
    List<Aside> beside,
    Optional<AheadTable> table,
    String part,
    Optional<Invitation> invitation) {
  public AheadState {
    harbours = List.copyOf(harbours);
    due = List.copyOf(due);
    later = List.copyOf(later);
    beside = List.copyOf(beside);
  }

  /** Choice that filters nothing. */
  public static final String ALL = "All harbours";

  /** Shown before the record has been read. */
  public static AheadState waiting() {
    return new AheadState(
        "",
        "Reading the record …",
        LocalDate.EPOCH,
        List.of(ALL),
        ALL,
        List.of(),
        List.of(),
        0,
        List.of(),
        Optional.empty(),
        "",
        Optional.empty());
  }

  /**
   * One boat.
   *
   * @param what what is due, in words
   * @param detail the chance, in words
   * @param dots days of twenty chances, absent where beyond the horizon; empty for a fixed date
   * @param chances the same in words; blank for a fixed date
   * @param told where it stands with telling her owner, in words; blank where nothing is to be told
   * @param pressing whether it is due before anything else
   */
  public record Row(
      Id<Boat> boat,
      String name,
      String harbour,
      String what,
      String detail,
      List<Optional<LocalDate>> dots,
      String chances,
      String told,
      boolean pressing) {
    public Row {
      dots = List.copyOf(dots);
    }
  }

  /** A list at the side. */
  public record Aside(String heading, List<Line> lines) {
    public Aside {
      lines = List.copyOf(lines);
    }
  }

  /** A line at the side: a small word over it, and the text. */
  public record Line(String small, String text) {}
}
