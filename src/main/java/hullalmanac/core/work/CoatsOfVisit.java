package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes the coats of a boat agree with what a visit did. It starts from how they would stand
 * without the visit, so it does not matter what the visit was taken to have done before; coats that
 * it laid then keep their identity.
 */
final class CoatsOfVisit {
  private final Almanac almanac;
  private final Visit visit;
  private final IdSource ids;
  private final NewKeys keys;
  private final Traces traces;
  private final Map<Id<Coat>, Coat> before = new LinkedHashMap<>();
  private final Map<Id<Coat>, Coat> after = new LinkedHashMap<>();
  private final List<Surface> notLooked = new ArrayList<>();
  private final Set<Problem> problems = new LinkedHashSet<>();

  /**
   * @param visit as it stands in the record
   * @param earlier its work before it was changed, where it was finished already
   */
  CoatsOfVisit(Almanac almanac, IdSource ids, Visit visit, Optional<VisitWork> earlier) {
    this.almanac = almanac;
    this.visit = visit;
    this.ids = ids;
    keys = new NewKeys(almanac);
    traces = new Traces(almanac, visit, earlier);
    traces.without().forEach(c -> before.put(c.id(), c));
    after.putAll(before);
  }

  /** Surfaces whose coats end, and of which nobody said what water did before. */
  List<Surface> notLooked() {
    return List.copyOf(notLooked);
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Does to the coats of a surface what the visit did to it. */
  void treat(Surface surface, Treatment treatment) {
    treatment.spoiltBy().ifPresent(step -> problems.add(spoilt(surface, step)));
    List<Coat> ended = new ArrayList<>();
    treatment.strippedOn().ifPresent(day -> ended.addAll(endAll(surface, day, CoatEnd.STRIPPED)));
    treatment.base().ifPresent(laying -> ended.addAll(base(surface, laying, treatment)));
    treatment.topper().ifPresent(laying -> ended.addAll(topper(surface, laying, treatment)));
    boolean looked =
        water(surface.id()).findAny().isPresent()
            || ended.stream()
                .flatMap(c -> c.ending().stream())
                .anyMatch(e -> e.seen() != EndState.NOT_LOOKED);
    if (!ended.isEmpty() && !looked) {
      notLooked.add(surface);
    }
  }

  private List<Coat> base(Surface surface, Treatment.Laying laying, Treatment treatment) {
    Optional<Coat> kept = laid(surface, false);
    if (kept.isEmpty() && treatment.topper().isEmpty()) {
      kept = laid(surface, true);
    }
    CoatEnd how = laying.cleared() ? CoatEnd.STRIPPED : CoatEnd.RENEWED;
    Optional<Coat.Ending> later =
        serving(surface, laying.day()).stream()
            .filter(c -> c.over().isEmpty())
            .flatMap(c -> c.ending().stream())
            .findFirst();
    List<Coat> ended = endAll(surface, laying.day(), how);
    lay(surface, laying, new Lie(kept, Optional.empty(), later));
    return ended;
  }

  private List<Coat> topper(Surface surface, Treatment.Laying laying, Treatment treatment) {
    Optional<Coat> kept = laid(surface, true);
    if (kept.isEmpty() && treatment.base().isEmpty()) {
      kept = laid(surface, false);
    }
    LocalDate day = laying.day();
    refuseYounger(surface, day);
    Optional<Coat> under =
        treatment.base().isPresent()
            ? after.values().stream()
                .filter(c -> c.surface().equals(surface.id()) && traces.laid(c))
                .findFirst()
            : servingNow(surface, day).stream()
                .filter(c -> c.over().isEmpty())
                .findFirst()
                .or(() -> kept(laid(surface, true).flatMap(Coat::over), day));
    List<Coat> ended = new ArrayList<>();
    if (treatment.base().isEmpty()) {
      CoatEnd how = laying.cleared() ? CoatEnd.STRIPPED : CoatEnd.RENEWED;
      servingNow(surface, day).stream()
          .filter(c -> c.over().isPresent())
          .forEach(c -> ended.add(end(c, day, how, true)));
    }
    lay(surface, laying, new Lie(kept, under.map(Coat::id), Optional.empty()));
    return ended;
  }

  /** What a topper was laid over, when that was renewed later that day. */
  private Optional<Coat> kept(Optional<Id<Coat>> base, LocalDate day) {
    return base.map(after::get)
        .filter(c -> c.ending().map(e -> e.on().equals(day)).orElse(false))
        .filter(c -> c.over().isEmpty() && !c.since().isAfter(day));
  }

  /**
   * How a coat of the visit lies.
   *
   * @param kept the coat it was before
   * @param later when it ended, if the coat it renewed was taken to have gone on until then
   */
  private record Lie(Optional<Coat> kept, Optional<Id<Coat>> over, Optional<Coat.Ending> later) {}

  private void lay(Surface surface, Treatment.Laying laying, Lie lie) {
    Step step = laying.step();
    Optional<Product> product = step.product().map(p -> InRecord.row(almanac.products(), p));
    Optional<Coat.Ending> ending = lie.kept().flatMap(Coat::ending).or(lie::later);
    Optional<Problem> wrong = wrong(step, product, laying.day(), ending);
    if (wrong.isPresent()) {
      problems.add(wrong.get());
      return;
    }
    Optional<Bottle> bottle = step.bottle().map(b -> InRecord.row(almanac.bottles(), b));
    Coat coat =
        new Coat(
            lie.kept().map(Coat::id).orElseGet(ids::next),
            lie.kept()
                .map(Coat::key)
                .orElseGet(() -> keys.next(Kind.COAT, surface.key(), laying.day())),
            surface.id(),
            product.orElseThrow().id(),
            Optional.of(laying.day()),
            Optional.empty(),
            Optional.of(visit.id()),
            bottle.map(Bottle::id),
            bottle.map(Bottle::batch).orElseGet(() -> batchByHand(lie.kept())),
            laying.layers(),
            lie.over(),
            ending,
            lie.kept().map(Coat::note).orElse(""));
    after.put(coat.id(), coat);
  }

  /** A batch that was written on the coat itself, not taken from a bottle. */
  private static String batchByHand(Optional<Coat> kept) {
    return kept.filter(c -> c.bottle().isEmpty()).map(Coat::batch).orElse("");
  }

  private Optional<Problem> wrong(
      Step step, Optional<Product> product, LocalDate day, Optional<Coat.Ending> ending) {
    if (product.isEmpty()) {
      return Optional.of(
          problem(
              step,
              "product",
              "the step " + step.kind().words() + " does not say with which product",
              "Name the product that was laid"));
    }
    if (!product.get().kind().protects()) {
      return Optional.of(
          problem(
              step,
              "product",
              "the product " + product.get().name() + " is not one that protects",
              "Name what was laid on the surface, or correct the kind of the product"));
    }
    return ending
        .filter(e -> e.on().isBefore(day))
        .map(
            e ->
                problem(
                    step,
                    "day",
                    "what this step laid had ended on " + e.on() + ", before " + day,
                    "Correct the day of the step, or how the coat ended"));
  }

  private static Problem problem(Step step, String field, String message, String advice) {
    return new Problem(Kind.STEP, step.key(), field, message, advice);
  }

  private static Problem spoilt(Surface surface, Step step) {
    return problem(
        step,
        "order",
        surface.words() + ": the step " + step.kind().words() + " comes after a coat was laid",
        "Put it before the coat, or take the step out that laid the coat");
  }

  private List<Coat> endAll(Surface surface, LocalDate day, CoatEnd how) {
    refuseYounger(surface, day);
    List<Coat> serving = servingNow(surface, day);
    boolean topped = serving.stream().anyMatch(c -> c.over().isPresent());
    return serving.stream().map(c -> end(c, day, how, c.over().isPresent() || !topped)).toList();
  }

  /**
   * Ends a coat.
   *
   * @param seen whether water showed this coat, and not a topper over it
   */
  private Coat end(Coat coat, LocalDate day, CoatEnd how, boolean seen) {
    Optional<Coat.Ending> said =
        almanac.coats().stream()
            .filter(c -> c.id().equals(coat.id()) && traces.ended(c))
            .flatMap(c -> c.ending().stream())
            .findFirst();
    EndState found =
        water(coat.surface())
            .filter(f -> seen && !f.day().isAfter(day))
            .min(Comparator.comparing(Finding::day).thenComparing(Finding::id))
            .map(CoatsOfVisit::state)
            .orElseGet(() -> said.map(Coat.Ending::seen).orElse(EndState.NOT_LOOKED));
    Coat ended =
        Altered.ending(
            coat,
            Optional.of(
                new Coat.Ending(day, how, found, said.map(Coat.Ending::reason).orElse(""))));
    after.put(ended.id(), ended);
    return ended;
  }

  private Stream<Finding> water(Id<Surface> surface) {
    return almanac.findings().stream()
        .filter(f -> f.visit().equals(Optional.of(visit.id())) && f.surface().equals(surface))
        .filter(f -> f.seen() instanceof Observation.WaterSeen);
  }

  static EndState state(Finding water) {
    WaterBehaviour behaviour = ((Observation.WaterSeen) water.seen()).behaviour();
    return switch (behaviour) {
      case BEADS -> EndState.BEADS;
      case SHEETS -> EndState.SHEETS;
      case FLAT -> EndState.FLAT;
    };
  }

  /**
   * A day before the coat that the visit ended was laid is a slip of the pen. A visit that is
   * written down late ends what lay there then, and no younger coat.
   */
  private void refuseYounger(Surface surface, LocalDate day) {
    new InService(almanac.coats())
        .of(surface.id()).stream()
            .filter(c -> !traces.laid(c) && c.since().isAfter(day) && traces.ended(c))
            .findFirst()
            .ifPresent(
                c ->
                    problems.add(
                        new Problem(
                            Kind.VISIT,
                            visit.key(),
                            "day",
                            surface.words()
                                + ": the coat that was there is of "
                                + c.since()
                                + ", after "
                                + day,
                            "Correct the day of the visit, or the day of the coat " + c.key())));
  }

  private List<Coat> serving(Surface surface, LocalDate day) {
    return serving(before, surface, day);
  }

  private List<Coat> servingNow(Surface surface, LocalDate day) {
    return serving(after, surface, day);
  }

  /** Coats in service on a surface but for the visit's own and what was laid over those. */
  private List<Coat> serving(Map<Id<Coat>, Coat> coats, Surface surface, LocalDate day) {
    List<Id<Coat>> own = traces.laid().stream().map(Coat::id).toList();
    return new InService(
            coats.values().stream()
                .filter(c -> c.over().map(o -> !own.contains(o)).orElse(true))
                .filter(c -> before.containsKey(c.id()) && !laidAfter(c, day))
                .toList())
        .on(surface.id(), day);
  }

  /**
   * Whether a coat was laid on the same day, but after this visit: of the visit's own coats one
   * ended that day, or its cut had taken off another and not this one. What its own coats lie over
   * was there before.
   */
  private boolean laidAfter(Coat coat, LocalDate day) {
    if (!coat.since().equals(day) || visit.status() != VisitStatus.DONE) {
      return false;
    }
    List<Coat> there =
        almanac.coats().stream().filter(c -> c.surface().equals(coat.surface())).toList();
    List<Coat> own = there.stream().filter(traces::laid).toList();
    boolean endedByIt =
        there.stream().filter(c -> c.id().equals(coat.id())).anyMatch(traces::ended);
    if (endedByIt || own.stream().anyMatch(c -> c.over().equals(Optional.of(coat.id())))) {
      return false;
    }
    return own.isEmpty()
        ? traces.stripped(coat.surface())
            && there.stream().flatMap(c -> c.ending().stream()).anyMatch(e -> strips(e, day))
        : own.stream().flatMap(c -> c.ending().stream()).anyMatch(e -> e.on().equals(day));
  }

  private static boolean strips(Coat.Ending ending, LocalDate day) {
    return ending.on().equals(day) && ending.how() == CoatEnd.STRIPPED;
  }

  private Optional<Coat> laid(Surface surface, boolean topper) {
    return traces.laid().stream()
        .filter(c -> c.surface().equals(surface.id()) && c.over().isPresent() == topper)
        .min(Comparator.comparing(Coat::since).thenComparing(Coat::id));
  }

  /** Coats that are new or otherwise than in the record. */
  List<Coat> changed() {
    rehome();
    List<Coat> known = almanac.coats();
    return after.values().stream().filter(c -> !known.contains(c)).toList();
  }

  /** What the visit was taken to have laid and did not, with the duties of it. */
  List<Row> gone() {
    List<Row> gone = new ArrayList<>();
    for (Coat coat : traces.laid()) {
      if (!after.containsKey(coat.id())) {
        gone.add(coat);
        almanac.duties().stream().filter(d -> d.coat().equals(coat.id())).forEach(gone::add);
      }
    }
    return gone;
  }

  /** Later toppers over a coat that is none any more lie over what was under it. */
  private void rehome() {
    List<Coat> homeless =
        after.values().stream().filter(c -> c.over().map(o -> !isBase(o)).orElse(false)).toList();
    for (Coat coat : homeless) {
      InService bases =
          new InService(after.values().stream().filter(c -> c.over().isEmpty()).toList());
      Optional<Id<Coat>> under =
          bases.on(coat.surface(), coat.since()).stream().findFirst().map(Coat::id);
      after.put(coat.id(), Altered.over(coat, under));
    }
  }

  private boolean isBase(Id<Coat> id) {
    return Optional.ofNullable(after.get(id)).map(c -> c.over().isEmpty()).orElse(false);
  }
}
