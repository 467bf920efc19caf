package hullalmanac.present.words;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Surface;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.report.Letters;
import hullalmanac.service.Fleet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a letter about a boat says in its fields. */
public final class LetterWords {
  private LetterWords() {}

  /** What falls due first of a boat; absent where nothing does. */
  public static Optional<BoatDue> due(Fleet fleet, Id<Boat> boat) {
    return fleet.due().stream().filter(d -> d.boat().id().equals(boat)).findFirst();
  }

  /**
   * The fields.
   *
   * @param name of the person written to
   * @return by the names of {@link Letters#FIELDS}
   */
  public static Map<String, String> of(Fleet fleet, Id<Boat> boat, String name) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    Optional<BoatDue> due = due(fleet, boat);
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name);
    fields.put("boat", lookups.boat(boat).name());
    fields.put("harbour", lookups.harbour(boat));
    fields.put("surfaces", due.map(d -> ForecastWords.surfaces(surfaces(d))).orElse(""));
    fields.put(
        "when", due.map(d -> new ForecastWords(fleet.asOf()).due(d.coats().get(0))).orElse(""));
    fields.put("business", fleet.almanac().business().name());
    return fields;
  }

  private static List<Surface> surfaces(BoatDue due) {
    return due.coats().stream().map(CoatForecast::surface).toList();
  }
}
