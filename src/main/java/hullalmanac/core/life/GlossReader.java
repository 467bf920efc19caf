package hullalmanac.core.life;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.SurfaceState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sorts the gloss findings of a coat into the first reading, those that are held against it, and
 * those that are charted only.
 *
 * <p>The first reading, G₀, is taken 7 to 21 days after laying and after a wash. Where there is
 * none, the earliest day within those three weeks stands in, and that is said; of several readings
 * on that day the highest, since work on a surface raises its gloss (practice).
 */
final class GlossReader {
  private static final int SETTLED_FROM = 7;
  private static final int SETTLED_UNTIL = 21;
  private static final int ENOUGH_READINGS = 3;

  private final CoatClock clock;
  private final List<Unused> unused = new ArrayList<>();
  private List<Finding> used = List.of();

  private GlossReader(CoatClock clock) {
    this.clock = clock;
  }

  /**
   * What gloss has to say.
   *
   * @param first the first reading, where there is one
   * @param used the first reading and those held against it; empty when gloss moves no date
   */
  record Read(Optional<FirstGloss> first, List<Finding> used, List<Unused> unused) {
    /** Adds what the used readings say. */
    void addTo(LogLikelihood log, CoatClock clock) {
      if (used.isEmpty()) {
        return;
      }
      Finding g0 = used.get(0);
      double firstDose = clock.dose(g0.day());
      List<GlossEvidence.Reading> readings =
          used.subList(1, used.size()).stream()
              .map(
                  f ->
                      new GlossEvidence.Reading(
                          Math.log(Math.max(0.1, gloss(f).mean()) / gloss(g0).mean()),
                          clock.dose(f.day()) - firstDose,
                          sd(gloss(f))))
              .toList();
      log.add(x -> GlossEvidence.likelihood(readings, sd(gloss(g0)), Math.exp(x)));
    }
  }

  static Read read(Coat coat, CoatClock clock, List<Finding> findings) {
    GlossReader reader = new GlossReader(clock);
    Optional<FirstGloss> first = reader.sort(coat, findings);
    return new Read(first, reader.used, reader.unused);
  }

  private Optional<FirstGloss> sort(Coat coat, List<Finding> findings) {
    List<Finding> clean = new ArrayList<>();
    for (Finding f : findings) {
      if (!(f.seen() instanceof Observation.GlossRead)) {
        continue;
      }
      if (coat.over().isPresent() || clock.covered(f.day())) {
        leave(f, "gloss is charted only while a topper lies over the coat");
      } else if (f.state() == SurfaceState.DIRTY || f.state() == SurfaceState.WAXY_SOAP) {
        leave(f, "gloss counts only on a washed and dry surface");
      } else {
        clean.add(f);
      }
    }
    Optional<FirstGloss> first = first(clean);
    if (first.isEmpty()) {
      clean.forEach(f -> leave(f, "no gloss was read within three weeks of laying the coat"));
      return first;
    }
    Finding g0 = first.get().finding();
    List<Finding> later = new ArrayList<>();
    for (Finding f : clean) {
      if (f.equals(g0)) {
        continue;
      }
      if (!f.day().isAfter(g0.day())) {
        leave(f, "later readings are held against the one of " + g0.day());
      } else if (gloss(f).geometry() != gloss(g0).geometry()) {
        leave(f, "it was read at another angle than the first reading");
      } else {
        later.add(f);
      }
    }
    use(g0, later);
    return first;
  }

  private void use(Finding g0, List<Finding> later) {
    List<Finding> joined = new ArrayList<>();
    List<Finding> looks = Looks.joined(later, joined);
    joined.forEach(f -> leave(f, "another reading within ten days stands for it"));
    long enough = looks.stream().filter(f -> gloss(f).readings().size() >= ENOUGH_READINGS).count();
    if (gloss(g0).readings().size() < ENOUGH_READINGS || enough < 2) {
      looks.forEach(
          f ->
              leave(
                  f,
                  "gloss moves a date only with three readings at the first and two later dates"));
      return;
    }
    used = new ArrayList<>(List.of(g0));
    used.addAll(looks);
  }

  private void leave(Finding f, String why) {
    unused.add(new Unused(f, why));
  }

  private Optional<FirstGloss> first(List<Finding> clean) {
    LocalDate settled = clock.laid().plusDays(SETTLED_FROM);
    LocalDate last = clock.laid().plusDays(SETTLED_UNTIL);
    List<Finding> early =
        clean.stream().filter(f -> !f.day().isAfter(last) && gloss(f).mean() > 0).toList();
    return early.stream()
        .filter(f -> !f.day().isBefore(settled) && washedBefore(f.day()))
        .findFirst()
        .map(f -> new FirstGloss(f, true))
        .or(
            () ->
                early.stream()
                    .min(
                        Comparator.comparing(Finding::day)
                            .thenComparing(f -> -gloss(f).mean())
                            .thenComparing(Finding::id))
                    .map(f -> new FirstGloss(f, false)));
  }

  private boolean washedBefore(LocalDate day) {
    return clock.surface().washes().stream()
        .anyMatch(w -> w.day().isAfter(clock.laid()) && !w.day().isAfter(day));
  }

  private static Observation.GlossRead gloss(Finding f) {
    return (Observation.GlossRead) f.seen();
  }

  private static double sd(Observation.GlossRead g) {
    return GlossEvidence.sd(g.mean(), g.readings().size(), g.spread().orElse(0.0));
  }
}
