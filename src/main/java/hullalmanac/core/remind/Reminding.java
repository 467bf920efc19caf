package hullalmanac.core.remind;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which reminders stand on a day, from what falls due and from what was said.
 *
 * <p>What falls due near each other on one boat is one thing to tell. What somebody was told of is
 * not told again, however its date moves, unless the owner wanted to be asked again, the boat has
 * another owner, or work was done since that put the date off. A renewal makes a new coat, and so
 * something new to tell.
 */
public final class Reminding {
  private final RemindPractice practice;
  private final BoatRows rows;
  private final Map<Id<Boat>, List<BoatDue>> due;
  private final List<Boat> boats;
  private final LocalDate today;

  private Reminding(
      Almanac almanac, List<CoatForecast> inService, List<BoatDue> due, LocalDate today) {
    practice = RemindPractice.of(almanac.business());
    rows = new BoatRows(almanac, inService);
    this.due = due.stream().collect(Collectors.groupingBy(d -> d.boat().id()));
    boats = almanac.boats();
    this.today = today;
  }

  /**
   * The reminders that stand, in order of the day by which something is best done.
   *
   * @param inService every coat in service as it is forecast on the day
   * @param due the same, joined by boat
   */
  public static List<Standing> on(
      Almanac almanac, List<CoatForecast> inService, List<BoatDue> due, LocalDate today) {
    return new Reminding(almanac, inService, due, today).standings();
  }

  /** The reminders of one boat, without reading those of others. */
  public static List<Standing> ofBoat(
      Almanac almanac,
      List<CoatForecast> inService,
      List<BoatDue> due,
      LocalDate today,
      Id<Boat> boat) {
    return on(
        BoatAlone.of(almanac, boat),
        inService.stream().filter(f -> f.surface().boat().equals(boat)).toList(),
        due.stream().filter(d -> d.boat().id().equals(boat)).toList(),
        today);
  }

  /** Who is told of a boat on a day: who decides, else her owner, else who pays. */
  public static Optional<Party> whom(Almanac almanac, Id<Boat> boat, LocalDate day) {
    return new BoatRows(BoatAlone.of(almanac, boat), List.of()).whom(boat, day);
  }

  private List<Standing> standings() {
    List<Standing> all = new ArrayList<>();
    for (Boat boat : boats) {
      if (boat.status() == BoatStatus.ACTIVE) {
        all.addAll(
            new BoatReminders(rows, practice, boat, due.getOrDefault(boat.id(), List.of()), today)
                .standings());
      }
    }
    all.sort(
        Comparator.comparing(Standing::by)
            .thenComparing(s -> s.boat().name())
            .thenComparing(s -> s.boat().id())
            .thenComparing(Standing::state));
    return List.copyOf(all);
  }
}
