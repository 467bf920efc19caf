package hullalmanac.present.owner;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.present.Lookups;
import hullalmanac.present.words.DateWords;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The visits to a boat that were done, and the photos taken before and after in them. */
final class BoatHistory {
  /** What no Java library decodes; see {@code PhotoFormat}. */
  private static final String NEVER_SHOWN = ".heic";

  private static final Comparator<Photo> AS_TAKEN =
      Comparator.comparing((Photo p) -> p.takenAt().orElse(LocalDateTime.MAX))
          .thenComparing(Photo::key);

  private final Almanac almanac;
  private final Lookups lookups;
  private final List<Visit> visits;
  private final List<Surface> surfaces;
  private final Map<Id<Visit>, List<Step>> steps;
  private final Map<Id<Visit>, List<Coat>> coats;

  BoatHistory(Almanac almanac, Lookups lookups, Id<Boat> boat) {
    this.almanac = almanac;
    this.lookups = lookups;
    visits =
        almanac.visits().stream()
            .filter(v -> v.boat().equals(boat) && v.status() == VisitStatus.DONE)
            .sorted(Comparator.comparing(Visit::day).reversed().thenComparing(Visit::key))
            .toList();
    surfaces = almanac.surfaces().stream().filter(s -> s.boat().equals(boat)).toList();
    steps =
        almanac.steps().stream()
            .sorted(Comparator.comparingInt(Step::order))
            .collect(Collectors.groupingBy(Step::visit));
    coats =
        almanac.coats().stream()
            .filter(c -> c.visit().isPresent())
            .collect(Collectors.groupingBy(c -> c.visit().get()));
  }

  List<OwnerState.Visited> visits() {
    LookWords looks = new LookWords(almanac, lookups);
    return visits.stream()
        .map(
            v -> {
              List<Coat> laid = coats.getOrDefault(v.id(), List.of());
              List<String> done = new WorkWords(lookups, v, surfaces, steps(v), laid).sentences();
              List<String> seen = looks.sentences(v, surfaces);
              return new OwnerState.Visited(
                  day(v), done.isEmpty() ? List.of("Looked over") : done, seen);
            })
        .toList();
  }

  private List<Step> steps(Visit visit) {
    return steps.getOrDefault(visit.id(), List.of());
  }

  private String day(Visit visit) {
    List<LocalDate> days =
        Stream.concat(
                Stream.of(visit.day()),
                Stream.concat(
                    steps(visit).stream().map(Step::day),
                    visit.surfaces().stream().flatMap(p -> p.doneOn().stream())))
            .sorted()
            .toList();
    return DateWords.span(days.get(0), days.get(days.size() - 1));
  }

  /** Pairs of the same surface in the same visit, in the order in which they were taken. */
  List<OwnerState.Pair> pairs() {
    List<OwnerState.Pair> pairs = new ArrayList<>();
    for (Visit visit : visits) {
      Map<Surface, List<Photo>> before = photos(visit, Moment.BEFORE);
      Map<Surface, List<Photo>> after = photos(visit, Moment.AFTER);
      before.forEach(
          (surface, first) -> {
            List<Photo> then = after.getOrDefault(surface, List.of());
            for (int i = 0; i < Math.min(first.size(), then.size()); i++) {
              pairs.add(
                  new OwnerState.Pair(
                      Texts.capital(SurfaceNames.of(List.of(surface))),
                      day(visit),
                      first.get(i).file(),
                      then.get(i).file()));
            }
          });
    }
    return pairs;
  }

  private Map<Surface, List<Photo>> photos(Visit visit, Moment moment) {
    return almanac.photos().stream()
        .filter(p -> p.moment() == moment && p.visit().filter(visit.id()::equals).isPresent())
        .filter(p -> p.surface().isPresent() && !p.file().endsWith(NEVER_SHOWN))
        .sorted(AS_TAKEN)
        .collect(
            Collectors.groupingBy(
                p -> lookups.surface(p.surface().orElseThrow()),
                () -> new TreeMap<>(SurfaceNames.ORDER),
                Collectors.toList()));
  }
}
