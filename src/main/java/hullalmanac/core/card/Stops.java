package hullalmanac.core.card;

import hullalmanac.core.finish.Stage;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stops a step on the boat of a visit. The rules are common practice where {@link
 * Stop.Rule#source} names no other source.
 *
 * <p>Whether glass is tinted or mirrored stands in the name or note of a surface; of glass of which
 * nothing is said it is taken that it may be, unless its note says that it is plain. A painting to
 * come is read from the words of visits that are planned, of surfaces and of the boat.
 */
public final class Stops {
  private static final Pattern PAINTING =
      Pattern.compile("\\b(repaint\\w*|painting|respray\\w*|antifoul\\w*|gelcoat repair)\\b");
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final Pattern PLAIN = Pattern.compile("\\bplain\\b");
  private static final Pattern DARKENED = Pattern.compile("\\b(tint\\w*|mirror\\w*)\\b");
  private static final Set<SurfaceKind> UNDER_FOOT =
      EnumSet.of(SurfaceKind.NON_SKID, SurfaceKind.SWIM_PLATFORM);
  private static final Set<Finish> ETCHED_BY_ACID =
      EnumSet.of(Finish.BARE_ALUMINIUM, Finish.METAL, Finish.TEAK);
  private static final Set<Finish> NO_ABRASIVES = EnumSet.of(Finish.URETHANE_PAINT, Finish.VINYL);
  private static final Set<Finish> CLEAR_PLASTIC = EnumSet.of(Finish.ACRYLIC, Finish.CLEAR_VINYL);

  private final Almanac almanac;
  private final Boat boat;
  private final Visit visit;
  private final List<Surface> all;
  private final List<Step> steps;
  private final Optional<String> runoff;

  /**
   * @param all surfaces of the boat
   * @param steps of the visit
   * @param runoff where runoff is caught, as far as the berth says
   */
  Stops(
      Almanac almanac, Visit visit, List<Surface> all, List<Step> steps, Optional<String> runoff) {
    this.almanac = almanac;
    this.visit = visit;
    this.all = List.copyOf(all);
    this.steps = List.copyOf(steps);
    this.runoff = runoff;
    boat =
        almanac.boats().stream().filter(b -> b.id().equals(visit.boat())).findFirst().orElseThrow();
  }

  /** The surfaces of a step, all of the boat when it names none. */
  private List<Surface> on(Step step) {
    return step.surfaces().isEmpty()
        ? all
        : all.stream().filter(s -> step.surfaces().contains(s.id())).toList();
  }

  private Optional<Product> product(Step step) {
    return step.product()
        .flatMap(id -> almanac.products().stream().filter(p -> p.id().equals(id)).findFirst());
  }

  /** What stops a step. */
  List<Stop> of(Step step) {
    Optional<Product> product = product(step);
    Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
    product.ifPresent(p -> hazards.addAll(p.hazards()));
    List<Stop> stops = new ArrayList<>();
    if (hazards.contains(Hazard.ACID)) {
      acid(step, stops);
    }
    mixed(step, hazards).ifPresent(stops::add);
    if (slippery(product, hazards)) {
      named(
              on(step),
              s -> UNDER_FOOT.contains(s.kind()),
              Stop.Rule.SLIPPERY_UNDER_FOOT,
              "This is slippery under foot and is not marked non-slip: keep it off ")
          .ifPresent(stops::add);
    }
    if (cuts(step, product, hazards)) {
      named(
              on(step),
              s -> NO_ABRASIVES.contains(s.finish()),
              Stop.Rule.ABRASIVE_ON_PAINT,
              "Paint and wrap take no abrasives unless their maker allows it: ")
          .ifPresent(stops::add);
    }
    if (hazards.contains(Hazard.SILICONE)) {
      painting(step).ifPresent(stops::add);
    }
    if (hazards.contains(Hazard.SOLVENT) || hazards.contains(Hazard.AMMONIA)) {
      named(
              on(step),
              s -> CLEAR_PLASTIC.contains(s.finish()),
              Stop.Rule.SOLVENT_ON_CLEAR_PLASTIC,
              "Solvent and ammonia craze clear plastic: keep it off ")
          .ifPresent(stops::add);
    }
    if (product.filter(p -> p.kind().protects()).isPresent() && !step.surfaces().isEmpty()) {
      named(
              on(step),
              s -> s.kind() == SurfaceKind.BOTTOM,
              Stop.Rule.COAT_ON_BOTTOM,
              "No coat goes below the antifouling line: ")
          .ifPresent(stops::add);
    }
    return List.copyOf(stops);
  }

  private void acid(Step step, List<Stop> stops) {
    List<Surface> glass =
        all.stream()
            .filter(s -> s.finish() == Finish.GLASS)
            .filter(s -> !PLAIN.matcher(says(s)).find())
            .toList();
    if (!glass.isEmpty()) {
      boolean known = glass.stream().anyMatch(s -> DARKENED.matcher(says(s)).find());
      stops.add(
          new Stop(
              Stop.Rule.ACID_ON_GLASS,
              (known
                      ? "Acid spoils tinted and mirrored glass, which she has: "
                      : "Acid spoils tinted and mirrored glass. Look whether hers is: ")
                  + words(glass)
                  + ". "
                  + where(step, glass)));
    }
    List<Surface> etched = all.stream().filter(s -> ETCHED_BY_ACID.contains(s.finish())).toList();
    if (!etched.isEmpty()) {
      stops.add(
          new Stop(
              Stop.Rule.ACID_ON_METAL_OR_TEAK,
              "Acid etches bare metal, chrome, anodising and teak: "
                  + words(etched)
                  + ". "
                  + where(step, etched)));
    }
    stops.add(
        new Stop(
            Stop.Rule.ACID_RUNOFF,
            runoff
                .map(r -> "Acid runs off with the rinse. Written down of this berth: " + r)
                .orElse(
                    "Can the runoff of acid be caught here? Nothing is written down of this"
                        + " berth.")));
  }

  /** Whether it would be laid right on it, or runs down onto it. */
  private String where(Step step, List<Surface> surfaces) {
    return on(step).stream().anyMatch(surfaces::contains)
        ? "This step covers it: leave it out or mask it."
        : "It runs down: mask it and rinse at once.";
  }

  /** Acid and hypochlorite, or hypochlorite and ammonia, in one visit. */
  private Optional<Stop> mixed(Step step, Set<Hazard> hazards) {
    Set<Hazard> others = EnumSet.noneOf(Hazard.class);
    steps.stream()
        .filter(s -> !s.id().equals(step.id()))
        .flatMap(s -> product(s).stream())
        .forEach(p -> others.addAll(p.hazards()));
    boolean chlorine =
        (hazards.contains(Hazard.HYPOCHLORITE)
                && (others.contains(Hazard.ACID) || others.contains(Hazard.AMMONIA)))
            || (others.contains(Hazard.HYPOCHLORITE)
                && (hazards.contains(Hazard.ACID) || hazards.contains(Hazard.AMMONIA)));
    return chlorine
        ? Optional.of(
            new Stop(
                Stop.Rule.ACID_WITH_HYPOCHLORITE,
                "Another step of this visit uses what gives off poisonous gas with this: never"
                    + " together, and rinse well between."))
        : Optional.empty();
  }

  private static boolean slippery(Optional<Product> product, Set<Hazard> hazards) {
    return product
        .filter(p -> !p.nonSlip())
        .filter(
            p ->
                hazards.contains(Hazard.WAX)
                    || hazards.contains(Hazard.SILICONE)
                    || p.kind().coatClass().isPresent())
        .isPresent();
  }

  private static boolean cuts(Step step, Optional<Product> product, Set<Hazard> hazards) {
    return step.kind() == StepKind.CUT
        || step.kind() == StepKind.POLISH
        || hazards.contains(Hazard.ABRASIVE)
        || product.flatMap(p -> Stage.of(p.kind())).isPresent();
  }

  private static Optional<Stop> named(
      List<Surface> surfaces, Predicate<Surface> which, Stop.Rule rule, String sentence) {
    List<Surface> hit = surfaces.stream().filter(which).toList();
    return hit.isEmpty()
        ? Optional.empty()
        : Optional.of(new Stop(rule, sentence + words(hit) + "."));
  }

  private static String words(List<Surface> surfaces) {
    return surfaces.stream().map(Surface::words).collect(Collectors.joining("; "));
  }

  private static String says(Surface s) {
    return (s.name() + " " + s.note()).toLowerCase(Locale.ROOT);
  }

  /** The first painting to come that is written down. */
  private Optional<Stop> painting(Step step) {
    Optional<LocalDate> planned =
        almanac.visits().stream()
            .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.PLANNED)
            .filter(v -> !v.id().equals(visit.id()) && !v.day().isBefore(visit.day()))
            .filter(v -> speaksOfPainting(v.note()) || steps(v.id()).anyMatch(this::paints))
            .map(Visit::day)
            .min(LocalDate::compareTo);
    boolean noted =
        speaksOfPainting(boat.note())
            || on(step).stream().anyMatch(s -> speaksOfPainting(s.note()))
            || steps.stream().anyMatch(this::paints)
            || speaksOfPainting(visit.note());
    if (planned.isEmpty() && !noted) {
      return Optional.empty();
    }
    return Optional.of(
        new Stop(
            Stop.Rule.SILICONE_BEFORE_PAINT,
            "Paint does not hold on silicone, and painting is "
                + planned
                    .map(day -> "planned for " + DAY.format(day))
                    .orElse("written down for her")
                + "."));
  }

  private Stream<Step> steps(Id<Visit> of) {
    return almanac.steps().stream().filter(s -> s.visit().equals(of));
  }

  private boolean paints(Step step) {
    return step.kind() == StepKind.OTHER && speaksOfPainting(step.note());
  }

  private static boolean speaksOfPainting(String note) {
    return PAINTING.matcher(note.toLowerCase(Locale.ROOT)).find();
  }
}
