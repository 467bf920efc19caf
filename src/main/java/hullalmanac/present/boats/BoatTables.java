package hullalmanac.present.boats;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.ObservationText;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The tables of a boat's page. */
final class BoatTables {
  private final Fleet fleet;
  private final Lookups lookups;
  private final Boat boat;

  BoatTables(Fleet fleet, Lookups lookups, Boat boat) {
    this.fleet = fleet;
    this.lookups = lookups;
    this.boat = boat;
  }

  List<BoatPage.Table> all() {
    return List.of(surfaces(), coats(), visits(), findings(), berths());
  }

  private Almanac almanac() {
    return fleet.almanac();
  }

  private boolean ours(Id<Surface> surface) {
    return lookups.surface(surface).boat().equals(boat.id());
  }

  private BoatPage.Table surfaces() {
    Map<Id<Surface>, CoatForecast> forecasts =
        fleet.coats().stream()
            .filter(f -> f.coat().over().isEmpty())
            .collect(Collectors.toMap(f -> f.surface().id(), Function.identity(), (a, b) -> b));
    ForecastWords words = new ForecastWords(fleet.asOf());
    return new BoatPage.Table(
        "Surfaces",
        List.of("Surface", "Finish", "Colour", "Now under", "Due"),
        almanac().surfaces().stream()
            .filter(s -> s.boat().equals(boat.id()))
            .sorted(Comparator.comparing(Surface::kind).thenComparing(Surface::side))
            .map(
                s -> {
                  CoatForecast f = forecasts.get(s.id());
                  return List.of(
                      s.words(),
                      s.finish().words(),
                      s.tone().words(),
                      f == null ? "nothing" : f.product().name(),
                      f == null ? "" : words.status(f));
                })
            .toList(),
        "No surface has been written down for this boat.");
  }

  private BoatPage.Table coats() {
    return new BoatPage.Table(
        "Coats",
        List.of("Laid on", "Surface", "Product", "Batch", "Ended", "Seen before"),
        almanac().coats().stream()
            .filter(c -> ours(c.surface()))
            .sorted(Comparator.comparing(Coat::since).reversed().thenComparing(Coat::key))
            .map(
                c ->
                    List.of(
                        c.laidOn().map(LocalDate::toString).orElse("not known"),
                        lookups.surface(c.surface()).words()
                            + (c.over().isPresent() ? ", topper" : ""),
                        lookups.product(c.product()).name(),
                        c.batch(),
                        c.ending().map(e -> e.how().words() + " " + e.on()).orElse(""),
                        c.ending().map(e -> e.seen().words()).orElse("")))
            .toList(),
        "No coat has been written down for this boat.");
  }

  private BoatPage.Table visits() {
    Map<Id<Visit>, List<Step>> steps =
        almanac().steps().stream().collect(Collectors.groupingBy(Step::visit));
    List<Visit> visits =
        almanac().visits().stream()
            .filter(v -> v.boat().equals(boat.id()))
            .sorted(Comparator.comparing(Visit::day).reversed())
            .toList();
    return new BoatPage.Table(
        "Visits",
        List.of("Day", "State", "Why", "Steps", "Hours"),
        visits.stream().map(v -> visit(v, steps.getOrDefault(v.id(), List.of()))).toList(),
        "No visit has been written down for this boat.",
        visits.stream().map(Visit::id).toList());
  }

  private static List<String> visit(Visit v, List<Step> steps) {
    int minutes = steps.stream().mapToInt(s -> s.minutes().orElse(0)).sum();
    String work =
        steps.stream()
            .sorted(Comparator.comparingInt(Step::order))
            .map(s -> s.kind().words())
            .distinct()
            .collect(Collectors.joining(", "));
    return List.of(
        v.day().toString(),
        v.status().words() + v.cancelled().map(r -> " (" + r.words() + ")").orElse(""),
        v.why().words(),
        work,
        minutes == 0 ? "" : String.format(Locale.ROOT, "%.1f", minutes / 60.0));
  }

  private BoatPage.Table findings() {
    return new BoatPage.Table(
        "Findings",
        List.of("Day", "Surface", "What", "Seen", "State", "Entered"),
        almanac().findings().stream()
            .filter(f -> ours(f.surface()))
            .sorted(Comparator.comparing(Finding::day).reversed().thenComparing(Finding::key))
            .map(
                f ->
                    List.of(
                        f.day().toString(),
                        lookups.surface(f.surface()).words(),
                        f.seen().what().replace('-', ' '),
                        seen(f.seen()),
                        f.state().words(),
                        f.entered().words()))
            .toList(),
        "Nobody has looked at this boat yet.");
  }

  private static String seen(Observation seen) {
    if (seen instanceof Observation.GlossRead g) {
      String spread = g.spread().map(s -> String.format(Locale.ROOT, " ± %.1f", s)).orElse("");
      return String.format(Locale.ROOT, "%.1f", g.mean()) + spread + " at " + g.geometry().words();
    }
    if (seen instanceof Observation.Damage d) {
      return d.text()
          + d.told()
              .map(t -> "; told " + t.whom() + ", " + DateWords.dated(t.on()))
              .orElse("; nobody was told yet");
    }
    ObservationText text = ObservationText.of(seen);
    String scale =
        seen instanceof Observation.Chalking c
            ? " (" + c.scale().code().toUpperCase(Locale.ROOT) + ")"
            : "";
    String value =
        seen instanceof Observation.EyeScale
            ? text.value() + " of 5"
            : text.value().replace('-', ' ');
    return value + scale;
  }

  private BoatPage.Table berths() {
    return new BoatPage.Table(
        "Berths",
        List.of("From", "Until", "Harbour", "Cover", "Water", "Berth", "Each year"),
        almanac().berths().stream()
            .filter(b -> b.boat().equals(boat.id()))
            .sorted(Comparator.comparing(Berth::from))
            .map(
                b ->
                    List.of(
                        b.from().toString(),
                        b.until().map(LocalDate::toString).orElse(""),
                        lookups.harbour(b).name(),
                        b.cover().words(),
                        b.water().words(),
                        b.access().place(),
                        b.yearly() ? "yes" : ""))
            .toList(),
        "It is not known where this boat lies, so nothing can be forecast.");
  }
}
