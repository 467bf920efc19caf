package hullalmanac.core.price;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
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
  /** So many of the newest visits are looked at (common practice, no source). */
  private static final int NEWEST = 14;

  private static final int DIGITS = 6;

  /**
   * Reads the newest visits in which all steps of a rate were done and their minutes written down,
   * on boats whose area is known. A helper's minutes count as one's own. The minutes of a step are
   * for the parts it was done on, which can be more or less than what the rate is for.
   *
   * @return nothing where there is no such visit
   */
  public static Optional<UsualMinutes> of(Almanac almanac, Rate rate) {
    Map<Id<Boat>, Boat> boats =
        almanac.boats().stream().collect(Collectors.toMap(Boat::id, b -> b));
    Map<Id<Surface>, Surface> surfaces =
        almanac.surfaces().stream().collect(Collectors.toMap(Surface::id, s -> s));
    Map<Id<Visit>, List<Step>> steps =
        almanac.steps().stream()
            .filter(s -> rate.steps().contains(s.kind()) && s.minutes().isPresent())
            .collect(Collectors.groupingBy(Step::visit));
    List<BigDecimal> all =
        almanac.visits().stream()
            .filter(v -> steps.containsKey(v.id()))
            .sorted(Comparator.comparing(Visit::day).reversed().thenComparing(Visit::key))
            .flatMap(v -> minutes(rate, boats.get(v.boat()), steps.get(v.id()), surfaces).stream())
            .limit(NEWEST)
            .sorted()
            .toList();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new UsualMinutes(middle(all), all.size()));
  }

  /** Minutes for a square metre of all steps of a rate together; nothing where one is missing. */
  private static Optional<BigDecimal> minutes(
      Rate rate, Boat boat, List<Step> steps, Map<Id<Surface>, Surface> surfaces) {
    BigDecimal sum = BigDecimal.ZERO;
    for (StepKind kind : rate.steps()) {
      List<Step> own = steps.stream().filter(s -> s.kind() == kind).toList();
      Optional<BigDecimal> area = area(boat, own, surfaces).filter(a -> a.signum() > 0);
      if (own.isEmpty() || area.isEmpty()) {
        return Optional.empty();
      }
      long minutes =
          own.stream()
              .mapToLong(s -> (long) s.minutes().orElse(0) + s.helperMinutes().orElse(0))
              .sum();
      sum = sum.add(BigDecimal.valueOf(minutes).divide(area.get(), DIGITS, RoundingMode.HALF_UP));
    }
    return Optional.of(sum);
  }

  /** Of the parts that steps were done on; half of one of which they did but one side. */
  private static Optional<BigDecimal> area(
      Boat boat, List<Step> steps, Map<Id<Surface>, Surface> surfaces) {
    Map<Extent, Set<Side>> parts = new EnumMap<>(Extent.class);
    for (Step step : steps) {
      if (step.surfaces().isEmpty()) {
        return PricedArea.of(boat, Extent.WHOLE_BOAT);
      }
      for (Id<Surface> id : step.surfaces()) {
        Surface surface = surfaces.get(id);
        parts
            .computeIfAbsent(Extent.of(surface.kind()), e -> EnumSet.noneOf(Side.class))
            .add(surface.side());
      }
    }
    Optional<BigDecimal> all = Optional.of(BigDecimal.ZERO);
    for (Map.Entry<Extent, Set<Side>> part : parts.entrySet()) {
      boolean half = part.getValue().size() == 1 && !part.getValue().contains(Side.BOTH);
      Optional<BigDecimal> area =
          PricedArea.of(boat, part.getKey()).map(a -> half ? a.divide(BigDecimal.valueOf(2)) : a);
      all = all.flatMap(sum -> area.map(sum::add));
    }
    return all;
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
