package hullalmanac.core.life;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Joins surfaces of one boat that fall due near each other: one thing to tell, not one for each
 * surface.
 */
final class Joined {
  private Joined() {}

  /**
   * @param forecasts in order of the early end
   * @param togetherDays surfaces due within so many days are one thing to tell
   */
  static List<BoatDue> byBoat(
      List<CoatForecast> forecasts, Map<Id<Boat>, Boat> boats, long togetherDays) {
    Map<Id<Boat>, List<CoatForecast>> ofBoat = new LinkedHashMap<>();
    for (CoatForecast f : forecasts) {
      ofBoat.computeIfAbsent(f.surface().boat(), b -> new ArrayList<>()).add(f);
    }
    List<BoatDue> joined = new ArrayList<>();
    ofBoat.forEach((boat, list) -> joined.addAll(groups(boats.get(boat), list, togetherDays)));
    joined.sort(
        Comparator.comparing((BoatDue d) -> d.early().orElse(LocalDate.MAX))
            .thenComparing(d -> d.boat().name())
            .thenComparing(d -> d.boat().id()));
    return List.copyOf(joined);
  }

  private static List<BoatDue> groups(Boat boat, List<CoatForecast> inOrder, long togetherDays) {
    List<CoatForecast> byDay = new ArrayList<>(inOrder);
    byDay.sort(Comparator.comparing((CoatForecast f) -> f.bestBy().orElse(LocalDate.MAX)));
    List<BoatDue> groups = new ArrayList<>();
    List<CoatForecast> open = new ArrayList<>();
    LocalDate until = null;
    for (CoatForecast f : byDay) {
      Optional<LocalDate> day = f.bestBy();
      boolean near = until != null && day.isPresent() && !day.get().isAfter(until);
      boolean bothWithout = until == null && day.isEmpty();
      if (!open.isEmpty() && !near && !bothWithout) {
        groups.add(due(boat, open));
        open = new ArrayList<>();
      }
      if (open.isEmpty()) {
        until = day.map(d -> d.plusDays(togetherDays)).orElse(null);
      }
      open.add(f);
    }
    if (!open.isEmpty()) {
      groups.add(due(boat, open));
    }
    return groups;
  }

  private static BoatDue due(Boat boat, List<CoatForecast> coats) {
    List<CoatForecast> byEarly = new ArrayList<>(coats);
    byEarly.sort(Comparator.comparing((CoatForecast f) -> f.early().orElse(LocalDate.MAX)));
    return new BoatDue(
        boat,
        byEarly,
        byEarly.stream()
            .map(CoatForecast::early)
            .flatMap(Optional::stream)
            .min(Comparator.naturalOrder()),
        byEarly.stream()
            .map(CoatForecast::bestBy)
            .flatMap(Optional::stream)
            .min(Comparator.naturalOrder()));
  }
}
