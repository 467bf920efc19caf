package hullalmanac.core.paper;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.SeenWords;
import hullalmanac.core.report.SurfaceNames;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The condition of a boat after a visit: what was done and left, what was seen before and after,
 * damage, photos before and after.
 */
public final class ConditionPaper {
  private final Almanac almanac;
  private final Visit visit;
  private final Lookups lookups;
  private final BoatHistory history;
  private final List<Finding> findings;
  private final List<Block> blocks = new ArrayList<>();

  private ConditionPaper(Almanac almanac, Visit visit, LocalDate today) {
    this.almanac = almanac;
    this.visit = visit;
    lookups = new Lookups(almanac, today);
    history = new BoatHistory(almanac, lookups, visit.boat());
    findings =
        almanac.findings().stream()
            .filter(f -> f.visit().equals(Optional.of(visit.id())))
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::key))
            .toList();
  }

  /**
   * The report of a visit.
   *
   * @param today the day on which it is printed
   */
  public static Paper of(Almanac almanac, LocalDate today, Visit visit) {
    return new ConditionPaper(almanac, visit, today).paper();
  }

  private Paper paper() {
    Boat boat = lookups.boat(visit.boat());
    BoatHistory.Visited done = history.visited(visit);
    blocks.add(
        new Block.Facts(
            List.of(
                new Block.Fact("Boat", BoatHistory.facts(boat, lookups)),
                new Block.Fact("Visit", done.day()),
                new Block.Fact("Hand-over", visit.handover().words()))));
    blocks.add(new Block.Heading(2, "What was done"));
    blocks.add(new Block.Points(done.done()));
    left();
    seen();
    damage();
    photos();
    blocks.add(
        new Block.Note(
            "What was seen by eye and hand on that day, on the surfaces named. Structural,"
                + " electrical and gelcoat repair beyond polishing is for qualified yards."));
    return Paper.of(almanac.business(), "Condition report", boat.name(), blocks);
  }

  private void left() {
    List<String> left =
        visit.surfaces().stream()
            .filter(p -> p.state() == WorkState.LEFT)
            .map(p -> Texts.capital(SurfaceNames.of(List.of(lookups.surface(p.surface())))))
            .toList();
    if (!left.isEmpty()) {
      blocks.add(new Block.Heading(3, "Left as it was"));
      blocks.add(new Block.Points(left));
    }
  }

  /** A row a surface and kind: what was seen before the work, and after it. */
  private void seen() {
    Map<Surface, Map<String, String[]>> rows = new TreeMap<>(SurfaceNames.ORDER);
    for (Finding f : findings) {
      if (!(f.seen() instanceof Observation.Damage)) {
        String[] cells =
            rows.computeIfAbsent(lookups.surface(f.surface()), s -> new LinkedHashMap<>())
                .computeIfAbsent(SeenWords.kind(f.seen()), k -> new String[] {"", ""});
        cells[f.moment().equals(Optional.of(Moment.BEFORE)) ? 0 : 1] = SeenWords.value(f.seen());
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    boolean before = findings.stream().anyMatch(f -> f.moment().equals(Optional.of(Moment.BEFORE)));
    List<Block.Column> columns = new ArrayList<>();
    columns.add(Block.Column.words("Surface"));
    columns.add(Block.Column.words("What", 18));
    if (before) {
      columns.add(Block.Column.words("Before", 24));
    }
    columns.add(Block.Column.words(before ? "After" : "Seen", 24));
    List<List<String>> texts = new ArrayList<>();
    rows.forEach(
        (surface, kinds) ->
            kinds.forEach(
                (kind, cells) -> {
                  List<String> row = new ArrayList<>();
                  row.add(Texts.capital(surface.words()));
                  row.add(kind);
                  if (before) {
                    row.add(cells[0]);
                  }
                  row.add(cells[1]);
                  texts.add(row);
                }));
    blocks.add(new Block.Heading(2, "What was seen"));
    blocks.add(new Block.Table("findings by surface", columns, texts, List.of()));
  }

  private void damage() {
    List<String> damage =
        findings.stream()
            .filter(f -> f.seen() instanceof Observation.Damage)
            .map(
                f ->
                    Texts.capital(lookups.surface(f.surface()).words())
                        + ": "
                        + SeenWords.value(f.seen())
                        + " ("
                        + DateWords.dated(f.day())
                        + ")")
            .toList();
    if (!damage.isEmpty()) {
      blocks.add(new Block.Heading(2, "Damage that was found"));
      blocks.add(new Block.Points(damage));
    }
  }

  private void photos() {
    List<BoatHistory.Pair> pairs = history.pairs(visit);
    Set<String> shown =
        pairs.stream()
            .flatMap(p -> java.util.stream.Stream.of(p.before(), p.after()))
            .collect(Collectors.toSet());
    if (!pairs.isEmpty()) {
      blocks.add(new Block.Heading(2, "Before and after"));
      pairs.forEach(p -> blocks.add(PhotoPairs.of(p)));
    }
    rest("Damage", shown, p -> p.moment() == Moment.DAMAGE);
    rest("More photos", shown, p -> p.moment() != Moment.DAMAGE);
  }

  private void rest(String heading, Set<String> shown, Predicate<Photo> which) {
    List<Block.Photo> more =
        almanac.photos().stream()
            .filter(p -> p.visit().equals(Optional.of(visit.id())) && which.test(p))
            .filter(p -> !shown.contains(p.file()) && BoatHistory.canBeShown(p))
            .sorted(BoatHistory.AS_TAKEN)
            .map(p -> new Block.Photo(p.file(), words(p)))
            .toList();
    if (more.isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, heading));
    for (int i = 0; i < more.size(); i += 2) {
      blocks.add(new Block.Photos("", more.subList(i, Math.min(more.size(), i + 2))));
    }
  }

  private String words(Photo photo) {
    String where =
        photo.surface().map(s -> Texts.capital(lookups.surface(s).words())).orElse("The boat");
    return where + (photo.moment() == Moment.OTHER ? "" : ", " + photo.moment().words());
  }
}
