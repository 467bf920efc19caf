package hullalmanac.core.finish;

import hullalmanac.core.record.Texts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why no plan reaches what was agreed, and what could be done or agreed instead. */
final class WhatCould {
  private final Planner planner;
  private final Subject subject;
  private final Agreed agreed;
  private final List<List<Stage>> possible;
  private final List<List<Stage>> taking;

  WhatCould(Planner planner, Subject subject, Agreed agreed) {
    this.planner = planner;
    this.subject = subject;
    this.agreed = agreed;
    possible = planner.possible();
    taking = planner.taking(possible);
  }

  Plans answer() {
    List<List<Stage>> within = planner.within(taking);
    Optional<List<Stage>> nearest = nearest(within);
    Optional<Integer> gloss =
        nearest.map(s -> (int) Math.floor(Math.min(surely(s), subject.limit().gloss())));
    List<String> could = new ArrayList<>();
    nearest
        .filter(s -> gloss.orElse(0) > 0)
        .ifPresent(s -> could.add(lowerGloss(gloss.orElseThrow(), s)));
    beyondBudget().ifPresent(could::add);
    papers().ifPresent(could::add);
    fewerDefects().ifPresent(could::add);
    return new Plans.NoneReaches(
        why(within), could, gloss.filter(g -> g > 0), nearest.map(planner::plan));
  }

  /** The stages that reach most; the gloss itself is looked for only where one reaches more. */
  private Optional<List<Stage>> nearest(List<List<Stage>> within) {
    Optional<List<Stage>> best = Optional.empty();
    double most = Double.NEGATIVE_INFINITY;
    for (List<Stage> stages : within) {
      if (planner.spread(stages).atLeast(most) > FinishPractice.CHANCE) {
        most = surely(stages);
        best = Optional.of(stages);
      }
    }
    return best;
  }

  /** The gloss that stages reach with the chance that is asked for. */
  private double surely(List<Stage> stages) {
    return planner.spread(stages).quantile(1 - FinishPractice.CHANCE);
  }

  private String why(List<List<Stage>> within) {
    if (subject.film() == Film.NO_ABRASIVES) {
      return "This finish takes no abrasives, so it stays as it is under a clean coat.";
    }
    if (taking.isEmpty()) {
      return "No plan takes out " + words(unreached()) + ".";
    }
    if (within.isEmpty()) {
      return "Every plan that takes out what was agreed takes more than can be spared.";
    }
    boolean withMore = taking.stream().anyMatch(s -> planner.chance(s) >= FinishPractice.CHANCE);
    return String.format(
        Locale.ROOT,
        "No plan reaches a gloss of %.0f in 8 cases of 10%s.",
        agreed.gloss(),
        withMore ? " without taking more than can be spared" : "");
  }

  private List<Defect> unreached() {
    return agreed.gone().stream()
        .filter(d -> possible.stream().noneMatch(s -> d.reachedBy(s, agreed.paper())))
        .sorted()
        .toList();
  }

  private static String words(List<Defect> defects) {
    return defects.stream().map(Defect::words).collect(Collectors.joining(" and "));
  }

  private String lowerGloss(int gloss, List<Stage> stages) {
    String by = stages.isEmpty() ? "washing and protecting" : series(stages);
    return "A gloss of " + gloss + " could be agreed: 8 in 10 reach it by " + by + ".";
  }

  private static String series(List<Stage> stages) {
    return stages.stream().map(Stage::words).collect(Collectors.joining(", "));
  }

  /** The plan that takes least of those that would reach everything if more could be spared. */
  private Optional<String> beyondBudget() {
    return taking.stream()
        .filter(s -> planner.chance(s) >= FinishPractice.CHANCE)
        .min(Comparator.comparingInt(s -> planner.totals(s).tenths()))
        .map(this::beyond);
  }

  private String beyond(List<Stage> stages) {
    Budget b = subject.budget();
    int tenths = planner.totals(stages).tenths();
    boolean tapeHelps = !agreed.edgesTaped() && tenths <= b.flats();
    int spare = agreed.edgesTaped() ? b.flats() : Math.min(b.flats(), b.edges());
    String needs =
        String.format(
            Locale.ROOT,
            "%s would reach it, but takes %.1f µm where %.1f can be spared (%s)",
            Texts.capital(series(stages)),
            tenths / 10.0,
            spare / 10.0,
            b.basis().words());
    if (tapeHelps) {
      return needs + ": tape the edges.";
    }
    boolean measure = subject.film() == Film.GELCOAT && b.basis() != Budget.Basis.MEASURED;
    return needs + (measure ? ": measure how thick it is." : ".");
  }

  private Optional<String> papers() {
    boolean scratched =
        agreed.gone().contains(Defect.SCRATCHES_FELT)
            && agreed.paper().isEmpty()
            && subject.film() == Film.GELCOAT;
    return scratched
        ? Optional.of("Scratches felt by a nail: only wet sanding by trained hands improves them.")
        : Optional.empty();
  }

  private Optional<String> fewerDefects() {
    List<Defect> staying = agreed.gone().stream().filter(Defect::stays).sorted().toList();
    if (staying.isEmpty()) {
      return Optional.empty();
    }
    String repair =
        staying.contains(Defect.SCRATCHES_THROUGH) ? " Mending them is for a qualified yard." : "";
    return Optional.of(
        "Tell the owner that no polishing takes out " + words(staying) + "." + repair);
  }
}
