package hullalmanac.core.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Looks at every series of at most four stages for one surface. A plan reaches what was agreed when
 * its chance of the gloss is at least 0.8 (common practice, no source), every agreed defect is
 * taken out and the budget holds on flats and edges.
 */
final class Planner {
  private final Subject subject;
  private final Agreed agreed;
  private final SurfaceLaws laws;
  private final Effort effort;
  private final Map<List<Stage>, GlossSpread> spreads = new HashMap<>();

  Planner(Subject subject, Agreed agreed, SurfaceLaws laws, Effort effort) {
    this.subject = subject;
    this.agreed = agreed;
    this.laws = laws;
    this.effort = effort;
  }

  /** The plans that no other beats, or why there is none. */
  Plans plans() {
    if (agreed.gloss() > subject.limit().gloss()) {
      return new Plans.Refused(
          String.format(
              Locale.ROOT,
              "A gloss of %.0f is more than this surface can reach, %.0f (%s): agree on less.",
              agreed.gloss(),
              subject.limit().gloss(),
              subject.limit().why().words()));
    }
    List<Plan> best = new ArrayList<>();
    List<Plan.Totals> kept = new ArrayList<>();
    for (List<Stage> stages : inOrder(within(taking(possible())))) {
      Plan.Totals totals = totals(stages);
      if (kept.stream().noneMatch(k -> k.beats(totals))
          && chance(stages) >= FinishPractice.CHANCE) {
        kept.add(totals);
        best.add(plan(stages));
      }
    }
    return best.isEmpty()
        ? new WhatCould(this, subject, agreed).answer()
        : new Plans.Found(best, remarks());
  }

  /** What becomes of stages that a person chose. */
  Judged judge(List<Stage> stages) {
    Optional<String> against =
        StageRules.against(stages, subject.film(), subject.tone(), agreed.paper().isPresent());
    if (against.isPresent()) {
      return new Judged.Refused(against.get());
    }
    if (!subject.budget().allows(totals(stages).tenths(), agreed.edgesTaped())) {
      return new Judged.Refused(overBudget(stages));
    }
    boolean reaches =
        takesOut(stages)
            && chance(stages) >= FinishPractice.CHANCE
            && agreed.gloss() <= subject.limit().gloss();
    return new Judged.Fits(plan(stages), reaches);
  }

  private String overBudget(List<Stage> stages) {
    Budget b = subject.budget();
    double spare =
        agreed.edgesTaped() ? b.flatsMicrons() : Math.min(b.flatsMicrons(), b.edgesMicrons());
    return String.format(
        Locale.ROOT,
        "These stages take %.1f µm, and no more than %.1f can be spared%s (%s).",
        totals(stages).microns(),
        spare,
        !agreed.edgesTaped() && b.edges() < b.flats() ? " where edges are not taped" : "",
        b.basis().words());
  }

  /** Series that make a correction on such a surface. */
  List<List<Stage>> possible() {
    boolean trained = agreed.paper().isPresent();
    return StageRules.FALLING.stream()
        .filter(s -> StageRules.against(s, subject.film(), subject.tone(), trained).isEmpty())
        .toList();
  }

  /** Those that take out every agreed defect. */
  List<List<Stage>> taking(List<List<Stage>> all) {
    return all.stream().filter(this::takesOut).toList();
  }

  private boolean takesOut(List<Stage> stages) {
    return agreed.gone().stream().allMatch(d -> d.reachedBy(stages, agreed.paper()));
  }

  /** Those that the surface can spare. */
  List<List<Stage>> within(List<List<Stage>> all) {
    return all.stream()
        .filter(s -> subject.budget().allows(totals(s).tenths(), agreed.edgesTaped()))
        .toList();
  }

  /**
   * Fewest passes first, then fewest minutes, then fewest microns: none is beaten by a later one.
   */
  private List<List<Stage>> inOrder(List<List<Stage>> all) {
    return all.stream()
        .sorted(
            Comparator.comparing(
                this::totals,
                Comparator.comparingInt(Plan.Totals::passes)
                    .thenComparingInt(Plan.Totals::minutes)
                    .thenComparingInt(Plan.Totals::tenths)))
        .toList();
  }

  Plan.Totals totals(List<Stage> stages) {
    return new Plan.Totals(
        stages.size(),
        effort.others() + stages.stream().mapToInt(effort::minutes).sum(),
        stages.stream().mapToInt(s -> s.tenths(subject.film())).sum());
  }

  /** Chance that stages reach the agreed gloss. */
  double chance(List<Stage> stages) {
    return spread(stages).atLeast(agreed.gloss());
  }

  /** Where the gloss may stand after stages; a paper is not the last of them. */
  GlossSpread spread(List<Stage> stages) {
    GlossSpread known = spreads.get(stages);
    if (known == null) {
      known = reckoned(stages);
      spreads.put(stages, known);
    }
    return known;
  }

  /**
   * Passes of one stage share its ceiling and its q, so they are reckoned at once. A paper and the
   * compound that follows it are one move, by the paper's law.
   */
  private GlossSpread reckoned(List<Stage> stages) {
    int n = stages.size();
    if (n == 0) {
      return GlossSpread.of(subject.start());
    }
    Stage last = stages.get(n - 1);
    int first = stages.indexOf(last);
    boolean afterPaper = first > 0 && stages.get(first - 1).sands();
    if (afterPaper && first == n - 1) {
      return spread(stages.subList(0, first - 1))
          .after(laws.law(stages.get(first - 1)), new Passes(0, 1));
    }
    return afterPaper
        ? spread(stages.subList(0, first + 1)).after(laws.law(last), new Passes(1, n - first - 1))
        : spread(stages.subList(0, first)).after(laws.law(last), new Passes(0, n - first));
  }

  /** A plan of stages that make a correction. */
  Plan plan(List<Stage> stages) {
    Plan.Totals totals = totals(stages);
    return new Plan(
        stages,
        totals,
        chance(stages),
        path(stages),
        needs(stages),
        new Plan.Around(effort.clean(), effort.protect().minutes(), effort.protect().millilitres()),
        StaysBehind.of(subject, stages, agreed.paper()),
        subject.budget().less(totals.tenths(), agreed.edgesTaped()));
  }

  private GlossPath path(List<Stage> stages) {
    List<GlossPath.Point> points = new ArrayList<>();
    points.add(GlossPath.point("before", spread(List.of())));
    for (int i = 0; i < stages.size(); i++) {
      String name = stages.get(i).brief();
      points.add(
          stages.get(i).sands()
              ? GlossPath.matt(name)
              : GlossPath.point(name, spread(stages.subList(0, i + 1))));
    }
    return new GlossPath(points, agreed.gloss());
  }

  private List<Plan.Need> needs(List<Stage> stages) {
    Map<Stage, Integer> passes =
        stages.stream().collect(Collectors.toMap(s -> s, s -> 1, Integer::sum, LinkedHashMap::new));
    List<Plan.Need> needs = new ArrayList<>();
    passes.forEach(
        (stage, n) -> {
          Effort.Labour one = effort.stages().get(stage);
          needs.add(
              new Plan.Need(
                  stage,
                  n,
                  one.minutes().times(n),
                  one.millilitres().times(n),
                  one.pads() * n,
                  FinishPractice.pad(stage),
                  laws.origin(stage)));
        });
    return needs;
  }

  private List<String> remarks() {
    return subject.start().by() == Start.By.EYE
        ? List.of(
            "Reckoned from the eye scale, which says the gloss only roughly: a meter says more.")
        : List.of();
  }
}
