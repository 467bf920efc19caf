package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which coats are in service. A coat's service ends with its own ending, or when another coat is
 * laid on the same surface that does not lie over it. Cutting or polishing alone ends none: the
 * record says what it took off, or the next coat does.
 */
public final class InService {
  /** Of two coats of one day the one that ended that day was there first. */
  private static final Comparator<Coat> BY_AGE =
      Comparator.comparing(Coat::since)
          .thenComparing(c -> !endedThatDay(c))
          .thenComparing(Coat::id);

  private final Map<Id<Surface>, List<Coat>> bySurface;

  /**
   * @param coats of one or more surfaces
   */
  public InService(List<Coat> coats) {
    bySurface = coats.stream().sorted(BY_AGE).collect(Collectors.groupingBy(Coat::surface));
  }

  /** Coats of a surface in order of age. */
  public List<Coat> of(Id<Surface> surface) {
    return bySurface.getOrDefault(surface, List.of());
  }

  /** Coats of a surface in service on a day, base first, then toppers. */
  public List<Coat> on(Id<Surface> surface, LocalDate day) {
    List<Coat> serving = new ArrayList<>();
    for (Coat coat : of(surface)) {
      boolean begun = !coat.since().isAfter(day);
      boolean ended = end(coat).map(e -> !e.isAfter(day)).orElse(false);
      if (begun && !ended) {
        serving.add(coat);
      }
    }
    serving.sort(Comparator.comparing((Coat c) -> c.over().isPresent()).thenComparing(BY_AGE));
    return serving;
  }

  /** The day on which a coat's service ended, as far as the record says. */
  public Optional<LocalDate> end(Coat coat) {
    Optional<LocalDate> own = coat.ending().map(Coat.Ending::on);
    Optional<LocalDate> replaced =
        of(coat.surface()).stream()
            .filter(c -> BY_AGE.compare(c, coat) > 0 && replaces(c, coat))
            .map(Coat::since)
            .findFirst();
    Optional<LocalDate> baseEnded =
        coat.over()
            .flatMap(id -> of(coat.surface()).stream().filter(c -> c.id().equals(id)).findFirst())
            .flatMap(this::end);
    return Stream.of(own, replaced, baseEnded)
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder());
  }

  private static boolean replaces(Coat later, Coat coat) {
    boolean under = coat.over().equals(Optional.of(later.id()));
    boolean sameBase = coat.over().isPresent() && later.over().equals(coat.over());
    return (later.over().isEmpty() && !under) || sameBase;
  }

  private static boolean endedThatDay(Coat coat) {
    return coat.ending().filter(e -> e.on().equals(coat.since())).isPresent();
  }
}
