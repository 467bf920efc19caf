package hullalmanac.core.report;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
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
public final class BoatHistory {
  /** What no Java library decodes; see {@code PhotoFormat}. */
  private static final String NEVER_SHOWN = ".heic";

  /** In the order in which they were taken. */
  public static final Comparator<Photo> AS_TAKEN =
      Comparator.comparing((Photo p) -> p.takenAt().orElse(LocalDateTime.MAX))
          .thenComparing(Photo::key);

  private final Almanac almanac;
  private final Lookups lookups;
  private final List<Visit> visits;
  private final List<Surface> surfaces;
  private final Map<Id<Visit>, List<Step>> steps;
  private final Map<Id<Visit>, List<Coat>> coats;

  /**
   * A visit that was done.
   *
   * @param day its day or days in words
   * @param done what was done, a sentence for surfaces treated alike
   * @param seen what water and gloss said when somebody looked
   */
  public record Visited(String day, List<String> done, List<String> seen) {
    public Visited {
      done = List.copyOf(done);
      seen = List.copyOf(seen);
    }
  }

  /**
   * Two photos of one surface in one visit.
   *
   * @param before name of a file among the photos of the record
   * @param after the same
   */
  public record Pair(String surface, String day, String before, String after) {}

  public BoatHistory(Almanac almanac, Lookups lookups, Id<Boat> boat) {
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

  /** What a stranger may know of a boat: length, type and home harbour. */
  public static String facts(Boat boat, Lookups lookups) {
    String harbour = lookups.harbour(boat.id());
    return String.join(
        " · ",
        Stream.of(
                boat.loa().map(x -> x.feetAndInches() + " (" + x.metresText() + ")").orElse(""),
                boat.type().words(),
                harbour.isBlank() ? "" : "lies at " + harbour)
            .filter(fact -> !fact.isEmpty())
            .toList());
  }

  /** The visits, newest first. */
  public List<Visited> visits() {
    LookWords looks = new LookWords(almanac, lookups);
    return visits.stream().map(v -> visited(v, looks)).toList();
  }

  /** One visit to the boat. */
  public Visited visited(Visit visit) {
    return visited(visit, new LookWords(almanac, lookups));
  }

  private Visited visited(Visit v, LookWords looks) {
    List<Coat> laid = coats.getOrDefault(v.id(), List.of());
    List<String> done = new WorkWords(lookups, v, surfaces, steps(v), laid).sentences();
    return new Visited(
        day(v), done.isEmpty() ? List.of("Looked over") : done, looks.sentences(v, surfaces));
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
  public List<Pair> pairs() {
    return visits.stream().flatMap(v -> pairs(v).stream()).toList();
  }

  /** Those of one visit. */
  public List<Pair> pairs(Visit visit) {
    List<Pair> pairs = new ArrayList<>();
    Map<Surface, List<Photo>> before = photos(visit, Moment.BEFORE);
    Map<Surface, List<Photo>> after = photos(visit, Moment.AFTER);
    before.forEach(
        (surface, first) -> {
          List<Photo> then = after.getOrDefault(surface, List.of());
          for (int i = 0; i < Math.min(first.size(), then.size()); i++) {
            pairs.add(
                new Pair(
                    Texts.capital(SurfaceNames.of(List.of(surface))),
                    day(visit),
                    first.get(i).file(),
                    then.get(i).file()));
          }
        });
    return pairs;
  }

  /** Whether a photo is of a format that can be drawn. */
  public static boolean canBeShown(Photo photo) {
    return !photo.file().endsWith(NEVER_SHOWN);
  }

  private Map<Surface, List<Photo>> photos(Visit visit, Moment moment) {
    return almanac.photos().stream()
        .filter(p -> p.moment() == moment && p.visit().filter(visit.id()::equals).isPresent())
        .filter(p -> p.surface().isPresent() && canBeShown(p))
        .sorted(AS_TAKEN)
        .collect(
            Collectors.groupingBy(
                p -> lookups.surface(p.surface().orElseThrow()),
                () -> new TreeMap<>(SurfaceNames.ORDER),
                Collectors.toList()));
  }
}
