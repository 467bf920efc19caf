package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How a surface stands by the record: what was seen since it was last corrected, of each kind the
 * latest, and what was done to it.
 *
 * @param start gloss, by the latest meter reading at 60°, else the latest eye scale; absent where
 *     nobody looked at it clean
 * @param on the day of that look
 * @param seen what is there
 * @param best the highest gloss at 60° that it ever had
 * @param age of its finish in years
 * @param ageThen its age when it was first corrected by the record, as today where it never was
 * @param steps of correction that were done, each as it is usual, oldest first
 */
public record Inspection(
    Optional<Start> start,
    Optional<LocalDate> on,
    Set<Defect> seen,
    Optional<Double> best,
    Optional<Integer> age,
    Optional<Integer> ageThen,
    List<Taken> steps) {
  public Inspection {
    seen = Set.copyOf(seen.isEmpty() ? EnumSet.noneOf(Defect.class) : EnumSet.copyOf(seen));
    steps = List.copyOf(steps);
  }

  /** A step that took something off. */
  public record Taken(Stage stage, int passes, LocalDate day) {}

  /** How a surface stands on a day. */
  public static Inspection of(Almanac almanac, Id<Surface> id, LocalDate today) {
    DoneWork work = new DoneWork(almanac, today);
    Surface surface = work.surface(id);
    List<Taken> taken =
        work.visits().stream().flatMap(v -> taken(work, v, surface).stream()).toList();
    Optional<LocalDate> last = taken.stream().map(Taken::day).max(Comparator.naturalOrder());
    Map<String, Finding> latest = new LinkedHashMap<>();
    for (Finding f : work.findings(surface)) {
      boolean since =
          last.map(day -> f.day().isAfter(day) || (f.day().equals(day) && after(f))).orElse(true);
      boolean counts = Start.of(f.seen()).isPresent() ? DoneWork.clean(f) : !gloss(f);
      if (since && counts) {
        latest.put(f.seen().what(), f);
      }
    }
    Set<Defect> seen = EnumSet.noneOf(Defect.class);
    latest.values().forEach(f -> Defect.seen(f.seen(), f.state()).ifPresent(seen::add));
    Optional<Finding> look =
        Optional.ofNullable(latest.get("gloss")).or(() -> Optional.ofNullable(latest.get("eye")));
    return new Inspection(
        look.flatMap(f -> Start.of(f.seen())),
        look.map(Finding::day),
        seen,
        work.best(surface),
        work.age(surface, today),
        work.age(surface, taken.isEmpty() ? today : taken.get(0).day()),
        taken);
  }

  private static boolean gloss(Finding f) {
    return f.seen().what().equals("gloss");
  }

  private static boolean after(Finding f) {
    return f.moment().equals(Optional.of(Moment.AFTER));
  }

  private static List<Taken> taken(DoneWork work, Visit visit, Surface surface) {
    return work.steps(visit, surface).stream()
        .flatMap(
            s ->
                Stage.usual(s, work.product(s)).stream()
                    .map(stage -> new Taken(stage, s.passes().orElse(1), s.day())))
        .toList();
  }

  /** What was done to it, as a budget reckons. */
  Budget.History history(Surface surface, Film film, Optional<Measured> measured) {
    int all = 0;
    int later = 0;
    for (Taken t : steps) {
      int tenths = t.passes() * t.stage().tenths(film);
      all += tenths;
      later += measured.filter(m -> t.day().isAfter(m.day())).isPresent() ? tenths : 0;
    }
    return new Budget.History(surface.past(), ageThen, all, later);
  }
}
