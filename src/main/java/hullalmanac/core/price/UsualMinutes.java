package hullalmanac.core.price;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How long the steps of a service took in the record's own visits.
 *
 * @param perSquareMetre minutes of one person for a square metre: the middle one of the visits
 * @param visits how many these are
 */
public record UsualMinutes(BigDecimal perSquareMetre, int visits) {
  /** So many of the newest visits are looked at. */
  private static final int NEWEST = 14;

  /**
   * Reads the newest visits in which all steps of a rate were done and their minutes written down,
   * on boats whose area is known. A helper's minutes count as one's own.
   *
   * @return nothing where there is no such visit
   */
  public static Optional<UsualMinutes> of(Almanac almanac, Rate rate) {
    Map<Id<Boat>, BigDecimal> areas = new HashMap<>();
    for (Boat boat : almanac.boats()) {
      PricedArea.of(boat, rate.extent())
          .filter(a -> a.signum() > 0)
          .ifPresent(a -> areas.put(boat.id(), a));
    }
    Map<Id<Visit>, List<Step>> steps =
        almanac.steps().stream()
            .filter(s -> rate.steps().contains(s.kind()) && s.minutes().isPresent())
            .collect(Collectors.groupingBy(Step::visit));
    List<BigDecimal> all =
        almanac.visits().stream()
            .filter(v -> areas.containsKey(v.boat()))
            .filter(v -> kinds(steps.getOrDefault(v.id(), List.of())).containsAll(rate.steps()))
            .sorted(Comparator.comparing(Visit::day).reversed().thenComparing(Visit::key))
            .limit(NEWEST)
            .map(
                v ->
                    minutes(steps.get(v.id())).divide(areas.get(v.boat()), 6, RoundingMode.HALF_UP))
            .sorted()
            .toList();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new UsualMinutes(middle(all), all.size()));
  }

  private static Set<StepKind> kinds(List<Step> steps) {
    return steps.stream()
        .map(Step::kind)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(StepKind.class)));
  }

  private static BigDecimal minutes(List<Step> steps) {
    return BigDecimal.valueOf(
        steps.stream()
            .mapToLong(s -> (long) s.minutes().orElse(0) + s.helperMinutes().orElse(0))
            .sum());
  }

  private static BigDecimal middle(List<BigDecimal> sorted) {
    int half = sorted.size() / 2;
    BigDecimal middle =
        sorted.size() % 2 == 1
            ? sorted.get(half)
            : sorted.get(half - 1).add(sorted.get(half)).divide(BigDecimal.valueOf(2));
    return middle.setScale(1, RoundingMode.HALF_UP);
  }
}
