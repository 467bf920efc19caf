package hullalmanac.core.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold of the planner on whatever surface. */
@Tag("slow")
class PlannerPropertyTest {
  private static final int TRIES = 300;
  private static final int NONE = 99;

  private static List<Plan> plans(Planner planner) {
    return planner.plans() instanceof Plans.Found f ? f.plans() : List.of();
  }

  private static List<Plan> plans(Job job) {
    return plans(job.planner());
  }

  private static List<String> words(Job job) {
    return words(job.planner());
  }

  private static List<String> words(Planner planner) {
    return plans(planner).stream().map(p -> EveryWord.word(p.stages())).sorted().toList();
  }

  private static int fewest(Job job) {
    return plans(job).stream().mapToInt(p -> p.totals().passes()).min().orElse(NONE);
  }

  @Property(tries = 10_000)
  void findsTheSamePlansAsLookingAtEveryWord(@ForAll long seed) {
    Job job = Job.made(seed);
    Planner planner = job.planner();
    assertThat(words(planner)).isEqualTo(new EveryWord(job, planner).best());
  }

  @Property(tries = 2_000)
  void neverTakesMoreThanCanBeSpared(@ForAll long seed) {
    Job job = Job.made(seed);
    Budget budget = job.subject().budget();
    for (Plan plan : plans(job)) {
      int taken = plan.stages().stream().mapToInt(s -> s.tenths(job.subject().film())).sum();
      assertThat(taken).isEqualTo(plan.totals().tenths()).isLessThanOrEqualTo(budget.flats());
      assertThat(plan.left().flats()).isEqualTo(budget.flats() - taken);
      if (!job.agreed().edgesTaped()) {
        assertThat(taken).isLessThanOrEqualTo(budget.edges());
        assertThat(plan.left().edges()).isEqualTo(budget.edges() - taken);
      }
      assertThat(plan.chance()).isGreaterThanOrEqualTo(0.8);
    }
  }

  @Property(tries = TRIES)
  void aDullerStartNeverNeedsFewerPasses(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 15) double duller) {
    Job job = Job.made(seed);
    Job dull = job.starting(job.subject().start().gloss() - duller);
    assertThat(fewest(dull)).isGreaterThanOrEqualTo(fewest(job));
  }

  @Property(tries = TRIES)
  void aHigherGlossNeverNeedsFewerPasses(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 15) double more) {
    Job job = Job.made(seed);
    assertThat(fewest(job.agreeing(job.agreed().gloss() + more)))
        .isGreaterThanOrEqualTo(fewest(job));
  }

  @Property(tries = TRIES)
  void oneMoreDefectNeverNeedsFewerPasses(@ForAll long seed, @ForAll Defect one) {
    Job job = Job.made(seed);
    Set<Defect> more = EnumSet.of(one);
    more.addAll(job.agreed().gone());
    Agreed a = job.agreed();
    Job harder = job.agreeing(new Agreed(a.gloss(), more, a.edgesTaped(), a.paper()));
    assertThat(fewest(harder)).isGreaterThanOrEqualTo(fewest(job));
  }

  /** What a smaller budget leaves are the plans of the larger that fit: never more microns. */
  @Property(tries = TRIES)
  void aSmallerBudgetOnlyTakesPlansAway(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Job job = Job.made(seed);
    Budget b = job.subject().budget();
    Job smaller = job.sparing((int) (share * b.flats()), (int) (share * b.edges()));
    List<String> fitting =
        plans(job).stream()
            .filter(
                p ->
                    smaller
                        .subject()
                        .budget()
                        .allows(p.totals().tenths(), job.agreed().edgesTaped()))
            .map(p -> EveryWord.word(p.stages()))
            .sorted()
            .toList();
    assertThat(words(smaller)).isEqualTo(fitting);
  }

  /** Whatever gloss is offered instead can then be had. */
  @Property(tries = TRIES)
  void whatCouldBeAgreedInsteadCanBeReached(@ForAll long seed) {
    Job job = Job.made(seed);
    if (job.planner().plans() instanceof Plans.NoneReaches none && none.gloss().isPresent()) {
      int gloss = none.gloss().get();
      assertThat(gloss).isLessThan((int) Math.ceil(job.agreed().gloss()));
      assertThat(plans(job.agreeing(gloss))).isNotEmpty();
      assertThat(job.agreeing(gloss).planner().judge(none.nearest().orElseThrow().stages()))
          .isInstanceOfSatisfying(Judged.Fits.class, f -> assertThat(f.reaches()).isTrue());
    }
  }

  /** Stages chosen by hand are judged as the planner judges them. */
  @Property(tries = TRIES)
  void whatItPlansItWouldAlsoLetOneChoose(@ForAll long seed) {
    Job job = Job.made(seed);
    for (Plan plan : plans(job)) {
      assertThat(job.planner().judge(plan.stages()))
          .isInstanceOfSatisfying(Judged.Fits.class, f -> assertThat(f.reaches()).isTrue());
    }
  }
}
