package hullalmanac.core.finish;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Readings before and after one stage that the record holds. A pair counts when both were read in
 * one visit, at 60°, on the clean surface and not with two meters, and when between them lie passes
 * of one kind of stage, its product named, and no others. What comes first is told by the day, and
 * within a day only by what was said of the finding: before or after the work. Readings that may
 * lie on either side teach nothing.
 */
final class GlossPairs {
  private final FinishPractice practice;
  private final DoneWork work;
  private final Map<Key, List<Found>> found = new LinkedHashMap<>();

  /** What a law is of. */
  record Key(Stage law, Finish finish, Tone tone) {}

  /** A pair, and where it was found. */
  record Found(Pair pair, Id<Boat> boat) {}

  private GlossPairs(FinishPractice practice, DoneWork work) {
    this.practice = practice;
    this.work = work;
  }

  /** All pairs by what they teach; those of one visit share the weight of one. */
  static Map<Key, List<Found>> of(FinishPractice practice, DoneWork work) {
    GlossPairs pairs = new GlossPairs(practice, work);
    work.visits().forEach(pairs::visit);
    return pairs.found;
  }

  private void visit(Visit visit) {
    Map<Key, List<Pair>> ofVisit = new HashMap<>();
    for (Surface surface : work.surfaces(visit)) {
      Film.of(surface, true).ifPresent(film -> new Walk(visit, surface, film).walk(ofVisit));
    }
    ofVisit.forEach(
        (key, pairs) ->
            pairs.forEach(
                p ->
                    found
                        .computeIfAbsent(key, k -> new ArrayList<>())
                        .add(new Found(p.weighing(1.0 / pairs.size()), visit.boat()))));
  }

  /** The correcting steps and the readings of one surface in one visit, in order. */
  private final class Walk {
    private final Visit visit;
    private final Surface surface;
    private final Film film;
    private final List<Step> steps;

    Walk(Visit visit, Surface surface, Film film) {
      this.visit = visit;
      this.surface = surface;
      this.film = film;
      steps =
          work.steps(visit, surface).stream()
              .filter(s -> Stage.usual(s, work.product(s)).isPresent())
              .toList();
    }

    void walk(Map<Key, List<Pair>> pairs) {
      if (steps.isEmpty()) {
        return;
      }
      Optional<Finding> last = Optional.empty();
      List<Step> between = new ArrayList<>();
      int next = 0;
      for (Placed reading : readings()) {
        while (next < reading.stepsBefore()) {
          between.add(steps.get(next));
          next++;
        }
        if (last.isPresent() && sameMeter(last.get(), reading.finding())) {
          add(pairs, last.get(), between, reading.finding());
        }
        last = Optional.of(reading.finding());
        between.clear();
      }
    }

    private void add(
        Map<Key, List<Pair>> pairs, Finding before, List<Step> between, Finding after) {
      Optional<OneStage> stage = OneStage.of(between, work);
      if (stage.isEmpty()) {
        return;
      }
      GlossLimit limit = GlossLimit.usual(practice, film, work.age(surface, visit.day()));
      double most =
          work.best(surface).map(b -> limit.seen(b, GlossLimit.Why.OWN_BEST)).orElse(limit).gloss();
      Pair pair = new Pair(reading(before), reading(after), stage.get().passes(), most, 1);
      pairs
          .computeIfAbsent(
              new Key(stage.get().law(), surface.finish(), surface.tone()), k -> new ArrayList<>())
          .add(pair);
    }

    /** Readings whose place among the steps is sure, in order, one a place. */
    private List<Placed> readings() {
      List<Placed> placed = new ArrayList<>();
      Set<Integer> taken = new HashSet<>();
      for (Finding f : work.findings(surface, visit)) {
        boolean counts =
            DoneWork.clean(f)
                && DoneWork.gloss(f).isPresent()
                && (f.entered() == Entered.GRID || f.entered() == Entered.IMPORTED);
        Optional<Integer> place = counts ? place(f) : Optional.empty();
        if (place.isPresent() && taken.add(place.get())) {
          placed.add(new Placed(f, place.get()));
        }
      }
      placed.sort(Comparator.comparing(Placed::stepsBefore));
      return placed;
    }

    /** How many of the steps lie before a finding; nothing when that is not sure. */
    private Optional<Integer> place(Finding f) {
      LocalDate day = f.day();
      int before = (int) steps.stream().filter(s -> s.day().isBefore(day)).count();
      int until = (int) steps.stream().filter(s -> !s.day().isAfter(day)).count();
      boolean late =
          until > 0 && steps.get(until - 1).day().plusDays(FinishPractice.AFTER_DAYS).isBefore(day);
      if (late) {
        return Optional.empty();
      }
      if (f.moment().equals(Optional.of(Moment.BEFORE))) {
        return before == 0 ? Optional.of(0) : Optional.empty();
      }
      if (f.moment().equals(Optional.of(Moment.AFTER))) {
        return until == steps.size() ? Optional.of(until) : Optional.empty();
      }
      return before == until ? Optional.of(before) : Optional.empty();
    }
  }

  /** A reading, and how many of the steps lie before it. */
  private record Placed(Finding finding, int stepsBefore) {}

  /**
   * Passes of one kind of stage. A paper counts together with the one pass of compound that follows
   * it.
   */
  private record OneStage(Stage law, int passes) {
    static Optional<OneStage> of(List<Step> steps, DoneWork work) {
      List<Stage> stages = new ArrayList<>();
      for (Step step : steps) {
        Optional<Stage> stage = Stage.of(step, work.product(step));
        if (stage.isEmpty()) {
          return Optional.empty();
        }
        for (int i = 0; i < step.passes().orElse(1); i++) {
          stages.add(stage.get());
        }
      }
      if (stages.size() == 2
          && stages.get(0).sands()
          && StageRules.follows(stages.get(0), stages.get(1))) {
        return Optional.of(new OneStage(stages.get(0).law(), 1));
      }
      boolean one =
          !stages.isEmpty()
              && !stages.get(0).sands()
              && stages.stream().allMatch(s -> s == stages.get(0));
      return one ? Optional.of(new OneStage(stages.get(0), stages.size())) : Optional.empty();
    }
  }

  private static boolean sameMeter(Finding a, Finding b) {
    Optional<String> one = DoneWork.gloss(a).flatMap(Observation.GlossRead::meter);
    Optional<String> other = DoneWork.gloss(b).flatMap(Observation.GlossRead::meter);
    return one.isEmpty() || other.isEmpty() || one.equals(other);
  }

  private static Pair.Reading reading(Finding f) {
    Observation.GlossRead g = DoneWork.gloss(f).orElseThrow();
    return new Pair.Reading(g.mean(), FinishPractice.sd(g));
  }
}
