package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Amount;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.ScratchDepth;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the last look at a boat lets one say before the work: what comes out, what improves and what
 * stays.
 *
 * <p>Common practice, no source: stains and spots come off by washing and decontaminating, a light
 * pass takes out light oxidation, swirls and scuffs; what a fingernail feels stays, and so does
 * damage, which belongs to a yard.
 */
public final class Expecting {
  /** Looks within so many days of the last one count as one (common practice, no source). */
  private static final int ONE_LOOK_DAYS = 30;

  private Expecting() {}

  /**
   * What can be expected on a boat, by its newest findings of each kind on each surface.
   *
   * @return what comes out first, what stays last; surfaces of which the same is said are joined
   */
  public static List<Estimate.Expectation> of(Almanac almanac, Id<Boat> boat) {
    Map<Id<Surface>, Surface> surfaces =
        almanac.surfaces().stream()
            .filter(s -> s.boat().equals(boat))
            .collect(Collectors.toMap(Surface::id, s -> s));
    List<Finding> findings =
        almanac.findings().stream()
            .filter(f -> surfaces.containsKey(f.surface()))
            .filter(f -> said(f.seen()).isPresent())
            .sorted(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .toList();
    if (findings.isEmpty()) {
      return List.of();
    }
    LocalDate since = findings.get(findings.size() - 1).day().minusDays(ONE_LOOK_DAYS);
    Map<String, Finding> newest = new LinkedHashMap<>();
    findings.stream()
        .filter(f -> !f.day().isBefore(since))
        .forEach(f -> newest.put(f.surface().value() + f.seen().what(), f));
    Map<Said, String> where =
        newest.values().stream()
            .collect(
                Collectors.groupingBy(
                    f -> said(f.seen()).orElseThrow(),
                    LinkedHashMap::new,
                    Collectors.mapping(
                        f -> surfaces.get(f.surface()).words(), Collectors.joining("; "))));
    return where.entrySet().stream()
        .filter(e -> e.getKey().result() != null)
        .map(
            e ->
                new Estimate.Expectation(
                    e.getKey().result(), e.getKey().words() + ": " + e.getValue()))
        .sorted(Comparator.comparing(Estimate.Expectation::result))
        .toList();
  }

  /** What is said of a finding; no result where there is nothing to promise. */
  private record Said(Estimate.Result result, String words) {}

  private static Optional<Said> said(Observation seen) {
    if (seen instanceof Observation.Staining s) {
      return Optional.of(new Said(washable(s.amount()), "staining"));
    }
    if (seen instanceof Observation.WaterSpots s) {
      return Optional.of(new Said(washable(s.amount()), "water spots"));
    }
    if (seen instanceof Observation.BufferTrails s) {
      return Optional.of(new Said(washable(s.amount()), "buffer trails"));
    }
    if (seen instanceof Observation.FingerRub rub) {
      return Optional.of(new Said(chalk(rub.level()), "chalking"));
    }
    if (seen instanceof Observation.Scratches s) {
      return Optional.of(scratch(s.depth()));
    }
    return seen instanceof Observation.Damage damage
        ? Optional.of(new Said(Estimate.Result.STAYS, damage.text()))
        : Optional.empty();
  }

  private static Estimate.Result washable(Amount amount) {
    return switch (amount) {
      case NONE -> null;
      case LITTLE, SOME -> Estimate.Result.COMES_OUT;
      case MUCH -> Estimate.Result.IMPROVES;
    };
  }

  private static Estimate.Result chalk(RubLevel level) {
    return switch (level) {
      case NONE -> null;
      case TRACE, CLEAR -> Estimate.Result.COMES_OUT;
      case HEAVY -> Estimate.Result.IMPROVES;
    };
  }

  private static Said scratch(ScratchDepth depth) {
    return switch (depth) {
      case NONE -> new Said(null, "scratches");
      case NOT_FELT -> new Said(Estimate.Result.COMES_OUT, "scratches that are not felt");
      case JUST_FELT -> new Said(Estimate.Result.IMPROVES, "scratches that are just felt");
      case FELT -> new Said(Estimate.Result.STAYS, "scratches felt by a nail");
      case THROUGH -> new Said(Estimate.Result.STAYS, "scratches through to what lies under");
    };
  }
}
