package hullalmanac.present.ahead;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.present.words.ReminderWords;
import hullalmanac.service.Fleet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Where it stands with telling owners, a line a boat. */
final class AheadTold {
  private AheadTold() {}

  /** What is to be told leads; that a date moved since it was told is said with it. */
  static Map<Id<Boat>, String> of(Fleet fleet) {
    ReminderWords words = new ReminderWords(new AboutWords(fleet.almanac()), fleet.asOf());
    Map<Id<Boat>, String> lines = new HashMap<>();
    Map<Id<Boat>, List<Standing>> byBoat =
        fleet.reminders().stream().collect(Collectors.groupingBy(s -> s.boat().id()));
    byBoat.forEach((boat, standings) -> lines.put(boat, line(standings, words)));
    return lines;
  }

  private static String line(List<Standing> standings, ReminderWords words) {
    List<Standing> inOrder =
        standings.stream()
            .sorted(Comparator.comparing(Standing::state).thenComparing(Standing::by))
            .toList();
    String states = inOrder.stream().map(words::state).distinct().collect(Collectors.joining("; "));
    boolean moved = inOrder.stream().anyMatch(s -> !s.moved().isEmpty());
    return "Owner: " + states + (moved ? " · a date moved since" : "");
  }
}
