package hullalmanac.core.finish;

import hullalmanac.core.record.Tone;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** One surface to plan for, made from a seed: anything the planner may meet. */
record Job(Subject subject, Agreed agreed, SurfaceLaws laws, Effort effort) {
  private static final Stage[] PAPERS = {
    Stage.SAND_P800, Stage.SAND_P1000, Stage.SAND_P1500, Stage.SAND_P2000
  };

  static Job made(long seed) {
    Random random = new Random(seed);
    Film film = random.nextInt(10) < 7 ? Film.GELCOAT : any(random, Film.values());
    Tone tone = any(random, Tone.values());
    double limit = 80 + 13 * random.nextDouble();
    Start start =
        new Start(
            15 + 75 * random.nextDouble(),
            0.3 + 7 * random.nextDouble() * random.nextDouble(),
            Start.By.METER);
    Subject subject =
        new Subject(
            film,
            tone,
            new GlossLimit(limit, GlossLimit.Why.AGE),
            start,
            defects(random, 4),
            budget(random, film));
    Optional<Stage> paper =
        random.nextInt(3) > 0 ? Optional.empty() : Optional.of(any(random, PAPERS));
    double gloss = Math.max(1, limit * (1 - 0.5 * random.nextDouble() * random.nextDouble()));
    Agreed agreed = new Agreed(gloss, defects(random, 2), random.nextBoolean(), paper);
    return new Job(subject, agreed, laws(random, tone, limit), effort(random));
  }

  private static <T> T any(Random random, T[] of) {
    return of[random.nextInt(of.length)];
  }

  private static Budget budget(Random random, Film film) {
    if (film == Film.NO_ABRASIVES) {
      return new Budget(0, 0, Budget.Basis.NO_ABRASIVES);
    }
    int flats =
        film == Film.GELCOAT
            ? (int) (2500 * Math.pow(random.nextDouble(), 3))
            : random.nextInt(101);
    return new Budget(flats, flats / (1 + random.nextInt(3)), Budget.Basis.MEASURED);
  }

  private static Set<Defect> defects(Random random, int most) {
    Set<Defect> some = EnumSet.noneOf(Defect.class);
    int n = random.nextInt(most + 1);
    for (int i = 0; i < n; i++) {
      Defect one = any(random, Defect.values());
      if (!one.stays() || random.nextInt(4) == 0) {
        some.add(one);
      }
    }
    return some;
  }

  private static SurfaceLaws laws(Random random, Tone tone, double limit) {
    Map<Stage, Experience.Learned> laws = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      double sdC = 0.3 + 3 * random.nextDouble();
      double sdX = 0.03 + 0.35 * random.nextDouble();
      GlossLaw law =
          new GlossLaw(
              FinishPractice.STANDARD.ceiling(stage.law(), tone) + 2 * random.nextGaussian(),
              Math.log(FinishPractice.STANDARD.q(stage.law())) + 0.2 * random.nextGaussian(),
              new Spread(sdC * sdC, sdX * sdX, (random.nextDouble() - 0.5) * sdC * sdX));
      laws.put(stage, new Experience.Learned(law.cappedAt(limit), Origin.STARTER));
    }
    return new SurfaceLaws(laws);
  }

  /** Whole minutes of a small range, so that plans often tie. */
  private static Effort effort(Random random) {
    Map<Stage, Effort.Labour> stages = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      int minutes = 1 + random.nextInt(random.nextBoolean() ? 6 : 300);
      stages.put(stage, labour(minutes));
    }
    return new Effort(stages, estimate(30), labour(40));
  }

  private static Effort.Labour labour(double minutes) {
    return new Effort.Labour(estimate(minutes), estimate(100), 2);
  }

  private static Estimate estimate(double middle) {
    return new Estimate(middle / 2, middle, middle * 2, Origin.STARTER);
  }

  Planner planner() {
    return new Planner(subject, agreed, laws, effort);
  }

  Job starting(double gloss) {
    Start start = new Start(gloss, subject.start().sd(), Start.By.METER);
    return with(
        new Subject(
            subject.film(),
            subject.tone(),
            subject.limit(),
            start,
            subject.seen(),
            subject.budget()));
  }

  Job sparing(int flats, int edges) {
    return with(
        new Subject(
            subject.film(),
            subject.tone(),
            subject.limit(),
            subject.start(),
            subject.seen(),
            new Budget(flats, edges, subject.budget().basis())));
  }

  private Job with(Subject other) {
    return new Job(other, agreed, laws, effort);
  }

  Job agreeing(double gloss) {
    return agreeing(new Agreed(gloss, agreed.gone(), agreed.edgesTaped(), agreed.paper()));
  }

  Job agreeing(Agreed other) {
    return new Job(subject, other, laws, effort);
  }
}
