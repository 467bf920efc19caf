package hullalmanac.core.life;

import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Reads the findings of one coat into {@link Evidence}.
 *
 * <p>The answers of one way of entry are a mixture over whether anyone looked. Who does not look
 * says "fine", whatever the coat, and hardly ever anything else:
 *
 * <pre>
 *   ℓ = (1 − h) · Π p · Π (1 − p) + h · Π 1 · Π 0.02
 *               good    bare            good  bare
 * </pre>
 *
 * <p>So a good look never makes a date earlier when it is the first of its way of entry, and a bare
 * one never makes it later. After other looks of the same way of entry a look also bears on whether
 * those were real: a bare one proves that they were.
 */
final class EvidenceReader {
  private final Coat coat;
  private final CoatClock clock;
  private final Function<Finding, VisitWhy> why;
  private final LifePractice practice;
  private final List<Finding> used = new ArrayList<>();
  private final List<Unused> unused = new ArrayList<>();
  private final LogLikelihood log = new LogLikelihood();
  private final Map<Entered, LogLikelihood> looked = new EnumMap<>(Entered.class);
  private final Map<Entered, LogLikelihood> notLooked = new EnumMap<>(Entered.class);
  private double lastGood;
  private LocalDate bareOn;
  private double seenAlive;
  private double seenBare = Double.POSITIVE_INFINITY;

  private EvidenceReader(
      Coat coat, CoatClock clock, Function<Finding, VisitWhy> why, LifePractice practice) {
    this.practice = practice;
    this.coat = coat;
    this.clock = clock;
    this.why = why;
  }

  /**
   * Reads what was found of a coat.
   *
   * @param findings of its surface, from the day it was laid to the day of the forecast, while it
   *     was in service
   * @param why the reason of the visit in which a finding was made
   * @param asOf the day of the forecast: an ending after it is not known yet
   */
  static Evidence read(
      Coat coat,
      CoatClock clock,
      List<Finding> findings,
      Function<Finding, VisitWhy> why,
      LifePractice practice,
      LocalDate asOf) {
    EvidenceReader reader = new EvidenceReader(coat, clock, why, practice);
    reader.readLooks(findings);
    coat.ending().filter(e -> !e.on().isAfter(asOf)).ifPresent(reader::readEnding);
    GlossReader.Read gloss = GlossReader.read(coat, clock, findings);
    gloss.addTo(reader.log, clock);
    reader.used.addAll(gloss.used());
    reader.unused.addAll(gloss.unused());
    return new Evidence(
        reader.total(),
        reader.metInService(),
        reader.used,
        reader.unused,
        Optional.ofNullable(reader.bareOn),
        gloss.first(),
        reader.bracket());
  }

  private void readLooks(List<Finding> findings) {
    Map<String, List<Finding>> kinds = new TreeMap<>();
    for (Finding f : findings) {
      if (!(f.seen() instanceof Observation.GlossRead) && isLook(f)) {
        if (clock.dose(f.day()) <= 0) {
          unused.add(new Unused(f, "it was seen the day the coat was laid"));
        } else if (coat.over().isEmpty() && clock.covered(f.day())) {
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
    looks.sort(Comparator.comparing(Finding::day).thenComparing(Finding::id));
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
    if (verdict == Verdict.SILENT) {
      unused.add(new Unused(f, "it says nothing of protection either way"));
    } else {
      used.add(f);
      double misled = practice.misled(f.state(), f.entered());
      if (verdict == Verdict.ALIVE) {
        good(f.entered(), dose, misled);
        if (f.state() == SurfaceState.DECONTAMINATED) {
          bareOn = null;
          seenBare = Double.POSITIVE_INFINITY;
        }
        if (isClean(f) && f.entered() != Entered.TWO_TOUCH) {
          seenAlive = dose;
        }
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

  private void good(Entered entered, double dose, double misled) {
    answer(entered, WaterEvidence.goodAtPoints(dose, misled), 1);
    lastGood = Math.max(lastGood, dose);
  }

  private void bare(Finding f, double dose, double misled) {
    boolean complaint = why.apply(f) == VisitWhy.COMPLAINT;
    answer(
        f.entered(),
        complaint
            ? WaterEvidence.complaintAtPoints(dose, lastGood, misled)
            : WaterEvidence.bareAtPoints(dose, misled),
        LifePractice.BARE_UNSEEN);
    if (isClean(f) && f.seen() instanceof Observation.WaterSeen) {
      bareOn = f.day();
      seenBare = Math.min(seenBare, dose);
    }
  }

  private static boolean isClean(Finding f) {
    return f.state() == SurfaceState.WASHED || f.state() == SurfaceState.DECONTAMINATED;
  }

  private Optional<Lifetime> bracket() {
    if (coat.knownFrom().isPresent()) {
      return Optional.empty();
    }
    if (Double.isFinite(seenBare)) {
      return Optional.of(new Lifetime(seenAlive < seenBare ? seenAlive : 0, seenBare));
    }
    return seenAlive > 0 ? Optional.of(Lifetime.over(seenAlive)) : Optional.empty();
  }

  /**
   * Adds an answer.
   *
   * @param real its likelihood at the points of {@link LogLife} when somebody looked
   * @param unseen its likelihood when nobody did, the same for every life
   */
  private void answer(Entered entered, double[] real, double unseen) {
    looked.computeIfAbsent(entered, e -> new LogLikelihood()).add(real);
    notLooked.computeIfAbsent(entered, e -> new LogLikelihood()).add(unseen);
  }

  /**
   * What was seen just before a coat was renewed or stripped counts as a look at a washed surface
   * (practice); "not looked" says nothing, and neither does an end that was not asked about.
   */
  private void readEnding(Coat.Ending ending) {
    double dose = clock.dose(ending.on());
    double misled = practice.misled(SurfaceState.WASHED, Entered.GRID);
    if (dose <= 0 || ending.seen() == EndState.NOT_LOOKED) {
      return;
    }
    Entered entered = asItWasLookedAt();
    if (ending.seen() == EndState.FLAT) {
      answer(entered, WaterEvidence.bareAtPoints(dose, misled), LifePractice.BARE_UNSEEN);
      seenBare = Math.min(seenBare, dose);
    } else {
      good(entered, dose, misled);
      seenAlive = dose;
    }
  }

  /** Whoever never looked at a coat closely did not do so on its last day either. */
  private Entered asItWasLookedAt() {
    boolean onlyInPassing = looked.keySet().equals(Set.of(Entered.TWO_TOUCH));
    return onlyInPassing ? Entered.TWO_TOUCH : Entered.GRID;
  }

  /** A coat met already in service was alive on that day, or it would not have been met. */
  private Optional<Double> metInService() {
    Optional<Double> met =
        coat.knownFrom().filter(day -> day.isAfter(clock.laid())).map(clock::dose);
    met.ifPresent(log::addSurvived);
    return met;
  }

  /** Sum of all logarithms; the answers of each way of entry are a mixture. */
  private LogLikelihood total() {
    looked.forEach(
        (entered, real) ->
            log.addMixture(practice.notLooked(entered), real, notLooked.get(entered)));
    return log;
  }
}
