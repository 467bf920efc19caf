package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Harbour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A harbour that a list names and the record does not have yet.
 *
 * @param latitude degrees, north positive; absent while nobody said
 * @param why where the latitude comes from, in words
 */
public record NewHarbour(String name, Optional<Double> latitude, String why) {
  /**
   * The new harbours of a list.
   *
   * @param usual the harbour of boats for which the list names none; empty when nobody said
   */
  static List<NewHarbour> of(List<Line> lines, String usual, Almanac almanac, ListChoices choices) {
    KnownNames known = new KnownNames(almanac);
    Map<String, String> names = new LinkedHashMap<>();
    for (Line line : lines) {
      String name = line.place().harbour().isEmpty() ? usual : line.place().harbour();
      if (line.hasBoat() && !name.isBlank() && known.harbour(name).isEmpty()) {
        names.putIfAbsent(Folding.name(name), name);
      }
    }
    return names.values().stream().map(name -> of(name, almanac, choices)).toList();
  }

  /** The id of the answer that gives its latitude. */
  public String id() {
    return ListPlan.LATITUDE + Folding.name(name);
  }

  private static NewHarbour of(String name, Almanac almanac, ListChoices choices) {
    Optional<Double> said = latitude(ListPlan.LATITUDE + Folding.name(name), choices);
    if (said.isPresent()) {
      return new NewHarbour(name, said, "as you wrote");
    }
    if (choices
        .answer(ListPlan.LATITUDE + Folding.name(name))
        .filter(a -> !a.isBlank())
        .isPresent()) {
      return new NewHarbour(name, Optional.empty(), "what you wrote is no latitude");
    }
    OptionalDouble mean = almanac.harbours().stream().mapToDouble(Harbour::latitude).average();
    if (mean.isPresent()) {
      return new NewHarbour(
          name,
          Optional.of(Math.round(mean.getAsDouble() * 10) / 10.0),
          "as your other harbours; correct it where it lies elsewhere");
    }
    Optional<Double> other =
        choices.answers().keySet().stream()
            .filter(k -> k.startsWith(ListPlan.LATITUDE))
            .sorted()
            .flatMap(k -> latitude(k, choices).stream())
            .findFirst();
    return new NewHarbour(name, other, other.isPresent() ? "as the other new harbour" : "");
  }

  private static Optional<Double> latitude(String id, ListChoices choices) {
    return choices.answer(id).flatMap(NewHarbour::latitude);
  }

  /** The latitude that a text gives, in degrees, north positive; absent where it gives none. */
  public static Optional<Double> latitude(String text) {
    return Optional.of(text.strip().replace(',', '.'))
        .filter(t -> t.matches("[-−]?\\d{1,2}(\\.\\d+)?"))
        .map(t -> Double.valueOf(t.replace('−', '-')))
        .filter(d -> Math.abs(d) <= 90);
  }
}
