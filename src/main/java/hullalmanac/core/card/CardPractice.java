package hullalmanac.core.card;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Water;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What to see to and what to bring, by the steps of a visit: common practice, no source. */
final class CardPractice {
  private CardPractice() {}

  private static Set<StepKind> kinds(List<JobCard.CardStep> steps) {
    Set<StepKind> kinds = EnumSet.noneOf(StepKind.class);
    steps.forEach(s -> kinds.add(s.step().kind()));
    return kinds;
  }

  private static Set<Hazard> hazards(List<JobCard.CardStep> steps) {
    Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
    steps.forEach(s -> s.product().ifPresent(p -> hazards.addAll(p.hazards())));
    return hazards;
  }

  private static boolean cuts(Set<StepKind> kinds) {
    return kinds.contains(StepKind.CUT) || kinds.contains(StepKind.POLISH);
  }

  private static boolean wets(Set<StepKind> kinds) {
    return kinds.contains(StepKind.WASH) || kinds.contains(StepKind.DECONTAMINATE);
  }

  private static boolean lays(Set<StepKind> kinds) {
    return kinds.contains(StepKind.PROTECT) || kinds.contains(StepKind.TOP);
  }

  static List<String> checks(List<JobCard.CardStep> steps, Optional<Berth> berth) {
    Set<StepKind> kinds = kinds(steps);
    Set<Hazard> hazards = hazards(steps);
    List<String> checks = new ArrayList<>();
    boolean ashore = berth.filter(b -> b.water() == Water.ASHORE).isPresent();
    checks.add(
        ashore
            ? "Stands are not moved, and nothing is tied to them"
            : "Lifejacket on, a way back out, someone told");
    checks.add("Damage that is there looked for, photos before");
    if (wets(kinds)) {
      checks.add("Vents, blower and fuel fittings, hatches closed and taped");
    }
    if (cuts(kinds)) {
      checks.add("Leads over no water, mains behind a residual-current device");
      checks.add("Edges, hull number and lettering taped");
      checks.add("Test spot tried and read");
    }
    if (lays(kinds)) {
      checks.add("Dew point read within two hours, surface dry and shaded");
    }
    if (hazards.contains(Hazard.SOLVENT)) {
      checks.add("Not in closed covers or cabins, no sparks or flames");
    }
    if (hazards.contains(Hazard.OILY_RAGS)) {
      checks.add("Oily rags under water in a closed metal tin");
    }
    checks.add("Wash-water and slurry where the harbour lets them go");
    checks.add("Photos after, hand-over agreed");
    return checks;
  }

  static List<String> tools(List<JobCard.CardStep> steps) {
    Set<StepKind> kinds = kinds(steps);
    Set<Hazard> hazards = hazards(steps);
    Set<String> tools = new LinkedHashSet<>();
    for (JobCard.CardStep s : steps) {
      s.product().ifPresent(p -> tools.add(named(p, s.bottle())));
    }
    for (JobCard.CardStep s : steps) {
      if (!s.step().pad().isBlank()) {
        tools.add("pad: " + s.step().pad());
      }
    }
    if (wets(kinds)) {
      tools.add("hose, two buckets, mitt");
    }
    if (cuts(kinds)) {
      tools.add("polisher, lead, tape, gloss meter");
    }
    if (lays(kinds)) {
      tools.add("applicator, clean cloths, thermometer and hygrometer");
    }
    if (hazards.contains(Hazard.ACID) || hazards.contains(Hazard.HYPOCHLORITE)) {
      tools.add("gloves and goggles against splashes");
    }
    if (hazards.contains(Hazard.SOLVENT) || hazards.contains(Hazard.ISOCYANATE)) {
      tools.add("mask and gloves that the label names");
    }
    return List.copyOf(tools);
  }

  private static String named(Product product, Optional<Bottle> bottle) {
    return product.name()
        + bottle.map(Bottle::batch).filter(b -> !b.isBlank()).map(b -> ", batch " + b).orElse("");
  }
}
