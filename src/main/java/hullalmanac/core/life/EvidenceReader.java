package hullalmanac.core.life;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Reads the findings of one coat into {@link Evidence}. */
final class EvidenceReader {
  private static final int GLOSS_FIRST_FROM = 7;
  private static final int GLOSS_FIRST_UNTIL = 21;
  private static final int ENOUGH_READINGS = 3;

  private final Coat coat;
  private final CoatClock clock;
  private final Function<Finding, VisitWhy> why;
  private final List<Finding> used = new ArrayList<>();
  private final List<Unused> unused = new ArrayList<>();
  private final LogLikelihood log = new LogLikelihood();
  private final Map<Entered, LogLikelihood> easy = new EnumMap<>(Entered.class);
  private final Map<Entered, LogLikelihood> easyBlind = new EnumMap<>(Entered.class);
  private double lastGood;
  private LocalDate bareOn;

  private EvidenceReader(Coat coat, CoatClock clock, Function<Finding, VisitWhy> why) {
    this.coat = coat;
    this.clock = clock;
    this.why = why;
  }

  /**
   * Reads what was found of a coat.
   *
   * @param findings of its surface, from after it was laid to the day of the forecast
   * @param why the reason of the visit in which a finding was made
   */
  static Evidence read(
      Coat coat, CoatClock clock, List<Finding> findings, Function<Finding, VisitWhy> why) {
    EvidenceReader reader = new EvidenceReader(coat, clock, why);
    reader.readLooks(findings);
    Optional<Finding> firstGloss = reader.readGloss(findings);
    reader.metInService();
    return new Evidence(
        reader.total(), reader.used, reader.unused, Optional.ofNullable(reader.bareOn), firstGloss);
  }

  private void readLooks(List<Finding> findings) {
    Map<String, List<Finding>> kinds = new TreeMap<>();
    for (Finding f : findings) {
      if (!(f.seen() instanceof Observation.GlossRead) && isLook(f)) {
        if (coat.over().isEmpty() && clock.covered(f.day())) {
          unused.add(new Unused(f, "it speaks of the topper that lay over this coat"));
        } else {
          kinds.computeIfAbsent(f.seen().what(), what -> new ArrayList<>()).add(f);
        }
      }
    }
    List<Finding> joined = new ArrayList<>();
    List<Finding> looks = new ArrayList<>();
    kinds.values().forEach(list -> looks.addAll(Looks.joined(list, joined)));
    joined.forEach(
        f -> unused.add(new Unused(f, "a cleaner or later look within ten days stands for it")));
    looks.sort(java.util.Comparator.comparing(Finding::day).thenComparing(Finding::id));
    looks.forEach(this::readLook);
  }

  private static boolean isLook(Finding f) {
    return f.seen() instanceof Observation.WaterSeen
        || f.seen() instanceof Observation.EyeScale
        || f.seen() instanceof Observation.FingerRub;
  }

  private void readLook(Finding f) {
    double dose = clock.dose(f.day());
    Verdict verdict = verdict(f.seen());
    if (dose <= 0) {
      unused.add(new Unused(f, "it was seen the day the coat was laid"));
    } else if (verdict == Verdict.SILENT) {
      unused.add(new Unused(f, "it says nothing of protection either way"));
    } else {
      used.add(f);
      double misled = LifePractice.misled(f.state(), f.entered());
      if (verdict == Verdict.ALIVE) {
        good(f, dose, misled);
      } else {
        bare(f, dose, misled);
      }
    }
  }

  /** Whether an observation speaks for a living coat, against it, or says nothing. */
  private enum Verdict {
    ALIVE,
    BARE,
    SILENT
  }

  private static Verdict verdict(Observation seen) {
    if (seen instanceof Observation.WaterSeen w) {
      return w.behaviour() == WaterBehaviour.FLAT ? Verdict.BARE : Verdict.ALIVE;
    }
    if (seen instanceof Observation.EyeScale e) {
      return e.step() >= 4 ? Verdict.BARE : Verdict.SILENT;
    }
    RubLevel level = ((Observation.FingerRub) seen).level();
    return level == RubLevel.CLEAR || level == RubLevel.HEAVY ? Verdict.BARE : Verdict.SILENT;
  }

  private void good(Finding f, double dose, double misled) {
    easy.computeIfAbsent(f.entered(), e -> new LogLikelihood())
        .add(x -> WaterEvidence.good(x, dose, misled));
    easyBlind
        .computeIfAbsent(f.entered(), e -> new LogLikelihood())
        .add(x -> WaterEvidence.good(x, dose, LifePractice.BLIND));
    lastGood = Math.max(lastGood, dose);
    if (f.state() == SurfaceState.DECONTAMINATED) {
      bareOn = null;
    }
  }

  private void bare(Finding f, double dose, double misled) {
    double since = lastGood;
    boolean complaint = why.apply(f) == VisitWhy.COMPLAINT;
    log.add(
        x ->
            complaint
                ? WaterEvidence.complaint(x, dose, since, misled)
                : WaterEvidence.bare(x, dose, misled));
    boolean clean = f.state() == SurfaceState.WASHED || f.state() == SurfaceState.DECONTAMINATED;
    if (clean && f.seen() instanceof Observation.WaterSeen) {
      bareOn = f.day();
    }
  }

  /** Reads gloss after the first reading; returns the first reading, where there is one. */
  private Optional<Finding> readGloss(List<Finding> findings) {
    List<Finding> all =
        findings.stream().filter(f -> f.seen() instanceof Observation.GlossRead).toList();
    List<Finding> clean = new ArrayList<>();
    for (Finding f : all) {
      if (coat.over().isPresent() || clock.covered(f.day())) {
        unused.add(new Unused(f, "gloss is charted only while a topper lies over the coat"));
      } else if (f.state() == SurfaceState.DIRTY || f.state() == SurfaceState.WAXY_SOAP) {
        unused.add(new Unused(f, "gloss counts only on a washed and dry surface"));
      } else {
        clean.add(f);
      }
    }
    Optional<Finding> first = firstGloss(clean);
    if (first.isEmpty()) {
      clean.forEach(
          f ->
              unused.add(new Unused(f, "no gloss was read within three weeks of laying the coat")));
      return first;
    }
    Observation.GlossRead g0 = (Observation.GlossRead) first.get().seen();
    List<Finding> same = new ArrayList<>();
    for (Finding f : clean) {
      Observation.GlossRead g = (Observation.GlossRead) f.seen();
      if (!f.day().isAfter(first.get().day())) {
        continue;
      }
      if (g.geometry() == g0.geometry()) {
        same.add(f);
      } else {
        unused.add(new Unused(f, "it was read at another angle than the first reading"));
      }
    }
    useGloss(first.get(), same);
    return first;
  }

  private void useGloss(Finding first, List<Finding> later) {
    List<Finding> joined = new ArrayList<>();
    List<Finding> looks = Looks.joined(later, joined);
    joined.forEach(f -> unused.add(new Unused(f, "another reading within ten days stands for it")));
    long enough = looks.stream().filter(f -> gloss(f).readings().size() >= ENOUGH_READINGS).count();
    if (gloss(first).readings().size() < ENOUGH_READINGS || enough < 2) {
      looks.forEach(
          f ->
              unused.add(
                  new Unused(
                      f,
                      "gloss moves a date only with three readings at the first and two later dates")));
      return;
    }
    used.add(first);
    used.addAll(looks);
    double firstDose = clock.dose(first.day());
    double firstMean = gloss(first).mean();
    double firstSd = sd(gloss(first));
    List<GlossEvidence.Reading> readings =
        looks.stream()
            .map(
                f ->
                    new GlossEvidence.Reading(
                        Math.log(Math.max(0.1, gloss(f).mean()) / firstMean),
                        clock.dose(f.day()) - firstDose,
                        sd(gloss(f))))
            .toList();
    log.add(x -> GlossEvidence.likelihood(readings, firstSd, Math.exp(x)));
  }

  /** The reading 7 to 21 days after laying and after a wash; otherwise the first within 21 days. */
  private Optional<Finding> firstGloss(List<Finding> clean) {
    LocalDate settled = clock.laid().plusDays(GLOSS_FIRST_FROM);
    LocalDate last = clock.laid().plusDays(GLOSS_FIRST_UNTIL);
    List<Finding> early =
        clean.stream().filter(f -> !f.day().isAfter(last) && gloss(f).mean() > 0).toList();
    return early.stream()
        .filter(f -> !f.day().isBefore(settled) && washedBefore(f.day()))
        .findFirst()
        .or(() -> early.stream().findFirst());
  }

  private boolean washedBefore(LocalDate day) {
    return clock.surface().washes().stream()
        .anyMatch(w -> w.day().isAfter(clock.laid()) && !w.day().isAfter(day));
  }

  /** A coat met already in service was alive on that day, or it would not have been met. */
  private void metInService() {
    coat.knownFrom()
        .filter(day -> day.isAfter(clock.laid()))
        .ifPresent(day -> log.add(x -> WaterEvidence.good(x, clock.dose(day), 0)));
  }

  /**
   * Sum of all logarithms; easy answers of each way of entry are a mixture over whether they were
   * real.
   */
  private LogLikelihood total() {
    easy.forEach(
        (entered, real) ->
            log.addMixture(LifePractice.notLooked(entered), real, easyBlind.get(entered)));
    return log;
  }

  private static Observation.GlossRead gloss(Finding f) {
    return (Observation.GlossRead) f.seen();
  }

  private static double sd(Observation.GlossRead g) {
    return GlossEvidence.sd(g.mean(), g.readings().size(), g.spread().orElse(0.0));
  }
}
