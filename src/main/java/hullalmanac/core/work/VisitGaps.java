package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what nobody has written down yet of a visit, for the evening of one of its days. */
public final class VisitGaps {
  private VisitGaps() {}

  /** Something that is missing. */
  public sealed interface Gap {}

  /** Its day has come, and it was not finished. */
  public record StillPlanned(LocalDate day) implements Gap {}

  /** Damage was found, and nobody was told of it yet. */
  public record Untold(Surface surface) implements Gap {}

  /** Nobody wrote down how long a step took. */
  public record NoMinutes(Step step) implements Gap {}

  /** A coat that it laid has neither a bottle nor a batch. */
  public record NoBatch(Coat coat) implements Gap {}

  /** A coat ended on a surface, and nobody had looked at what water did there. */
  public record NotLooked(Surface surface) implements Gap {}

  /** It is done, and the owner has not agreed. */
  public record NoHandover() implements Gap {}

  /**
   * What is missing of a visit, the most pressing first; nothing of one that was cancelled.
   *
   * @param evening the day up to which it should be written down; what comes later is not missing
   */
  public static List<Gap> of(Almanac almanac, Visit visit, LocalDate evening) {
    List<Gap> gaps = new ArrayList<>();
    if (visit.status() == VisitStatus.CANCELLED) {
      return gaps;
    }
    boolean planned = visit.status() == VisitStatus.PLANNED;
    if (planned && !visit.day().isAfter(evening)) {
      gaps.add(new StillPlanned(visit.day()));
    }
    untold(almanac, visit).forEach(s -> gaps.add(new Untold(s)));
    if (!planned || !VisitWork.of(almanac, visit).done().isEmpty()) {
      InRecord.steps(almanac, visit).stream()
          .filter(s -> s.minutes().isEmpty() && !s.day().isAfter(evening))
          .forEach(s -> gaps.add(new NoMinutes(s)));
    }
    if (!planned) {
      coats(almanac, visit, gaps);
      if (visit.handover() == Handover.NOT_YET) {
        gaps.add(new NoHandover());
      }
    }
    return gaps;
  }

  /** Surfaces on which damage was found in a visit of which nobody was told yet. */
  public static List<Surface> untold(Almanac almanac, Visit visit) {
    Set<Id<Surface>> untold =
        almanac.findings().stream()
            .filter(f -> f.visit().equals(Optional.of(visit.id())))
            .filter(f -> f.seen() instanceof Observation.Damage d && d.told().isEmpty())
            .map(Finding::surface)
            .collect(Collectors.toSet());
    return InRecord.surfaces(almanac, visit.boat()).stream()
        .filter(s -> untold.contains(s.id()))
        .toList();
  }

  private static void coats(Almanac almanac, Visit visit, List<Gap> gaps) {
    Traces traces = new Traces(almanac, visit);
    traces.laid().stream()
        .filter(c -> c.bottle().isEmpty() && c.batch().isBlank())
        .forEach(c -> gaps.add(new NoBatch(c)));
    InRecord.surfaces(almanac, visit.boat()).stream()
        .filter(s -> notLooked(almanac, visit, traces, s))
        .forEach(s -> gaps.add(new NotLooked(s)));
  }

  /** One look counts for all that ended on a surface: under a topper nobody sees the base coat. */
  private static boolean notLooked(Almanac almanac, Visit visit, Traces traces, Surface surface) {
    List<Coat> ended =
        almanac.coats().stream()
            .filter(c -> c.surface().equals(surface.id()) && traces.ended(c))
            .toList();
    boolean looked =
        ended.stream()
                .flatMap(c -> c.ending().stream())
                .anyMatch(e -> e.seen() != EndState.NOT_LOOKED)
            || almanac.findings().stream()
                .filter(f -> f.visit().equals(Optional.of(visit.id())))
                .filter(f -> f.surface().equals(surface.id()))
                .anyMatch(f -> f.seen() instanceof Observation.WaterSeen);
    return !ended.isEmpty() && !looked;
  }
}
