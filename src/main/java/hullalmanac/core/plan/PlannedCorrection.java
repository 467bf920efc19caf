package hullalmanac.core.plan;

import hullalmanac.core.finish.Agreed;
import hullalmanac.core.finish.Experience;
import hullalmanac.core.finish.FewestPasses;
import hullalmanac.core.finish.Judged;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.Supply;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.InService;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewKeys;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes a planned visit of a plan: wash, decontaminate, each stage with its passes, product and
 * pad, protect. The plan is judged once more by the record as it stands then, so that nothing is
 * planned that takes more than can be spared by now.
 */
public final class PlannedCorrection {
  private final Almanac almanac;
  private final IdSource ids;
  private final NewKeys keys;
  private final Surface surface;
  private final Boat boat;
  private final LocalDate today;

  /**
   * What is to be planned.
   *
   * @param stages of the plan that was chosen; none to clean and protect only
   * @param day of the visit
   */
  public record Wish(Asked asked, List<Stage> stages, LocalDate day) {
    public Wish {
      stages = List.copyOf(stages);
    }
  }

  private PlannedCorrection(Almanac almanac, IdSource ids, Id<Surface> id, LocalDate today) {
    this.almanac = almanac;
    this.ids = ids;
    this.today = today;
    keys = new NewKeys(almanac);
    surface = row(almanac.surfaces(), id);
    boat = row(almanac.boats(), surface.boat());
  }

  private static <R extends Row> R row(List<R> rows, Id<R> id) {
    return rows.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * The visit with its steps as one change, or why it is not planned. Pure and possibly long.
   *
   * @param experience as the plan was reckoned with; learning it anew takes longest
   */
  public static Change of(
      Almanac almanac, Experience experience, IdSource ids, Wish wish, LocalDate today) {
    Id<Surface> id = wish.asked().surface();
    if (almanac.surfaces().stream().noneMatch(s -> s.id().equals(id))) {
      return Change.refused(
          new Problem(
              Kind.SURFACE, "", "", "this surface is not in the record", "Choose another one"));
    }
    PlannedCorrection made = new PlannedCorrection(almanac, ids, id, today);
    if (wish.day().isBefore(today)) {
      return made.refused(
          "day",
          "a visit is planned for today or later, not for " + wish.day(),
          "Write another day");
    }
    FewestPasses passes = FewestPasses.on(almanac, experience, id, wish.asked().said(today), today);
    Agreed agreed = wish.asked().agreed(passes.seen(), passes.limit());
    Judged judged = passes.judge(agreed, wish.stages());
    return judged instanceof Judged.Fits fits
        ? Change.checked(almanac, made.edit(fits.plan(), wish, agreed))
        : made.refused(
            "", withoutPoint(((Judged.Refused) judged).sentence()), "Choose another plan");
  }

  private static String withoutPoint(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  private Change refused(String field, String message, String advice) {
    return Change.refused(new Problem(Kind.VISIT, boat.key(), field, message, advice));
  }

  private Edit edit(Plan plan, Wish wish, Agreed agreed) {
    Visit visit =
        new Visit(
            ids.next(),
            keys.next(Kind.VISIT, boat.key(), wish.day()),
            boat.id(),
            wish.day(),
            VisitStatus.PLANNED,
            VisitWhy.OTHER,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            List.of(new Visit.Part(surface.id(), WorkState.PLANNED, Optional.empty(), "")),
            List.of(),
            note(plan, wish.asked(), agreed));
    List<Row> put = new ArrayList<>();
    put.add(visit);
    put.add(step(visit, put.size(), StepKind.WASH, last(almanac, boat.id(), StepKind.WASH)));
    put.add(
        step(
            visit,
            put.size(),
            StepKind.DECONTAMINATE,
            last(almanac, boat.id(), StepKind.DECONTAMINATE)));
    for (Plan.Need need : plan.needs()) {
      put.add(corrects(visit, put.size(), need));
    }
    put.add(step(visit, put.size(), StepKind.PROTECT, protection(almanac, surface, today)));
    return Edit.put(put);
  }

  /** What was agreed and what the test spots said, for the day of the work. */
  private String note(Plan plan, Asked asked, Agreed agreed) {
    StringBuilder note =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "%s to a gloss of %.0f agreed, %d chances in 10%s.",
                Texts.capital(plan.words()),
                agreed.gloss(),
                (int) Math.floor(10 * plan.chance() + 1e-9),
                asked.edgesTaped() ? ", edges taped" : ""));
    for (TestSpot spot : asked.spots()) {
      note.append(
          String.format(
              Locale.ROOT,
              " Test spot, %s, %d×: gloss %.1f before, %.1f after.",
              spot.stage().words(),
              spot.passes(),
              spot.before().mean(),
              spot.after().mean()));
    }
    return note.toString();
  }

  private Step corrects(Visit visit, int order, Plan.Need need) {
    List<Supply> supplies = Supply.of(almanac, need.stage(), today);
    Optional<Product> product =
        supplies.stream()
            .filter(s -> s.enoughFor(need).orElse(false))
            .findFirst()
            .or(() -> supplies.stream().findFirst())
            .map(Supply::product);
    boolean polish = need.stage().compareTo(Stage.ONE_STEP) >= 0;
    return step(
        visit, order, polish ? StepKind.POLISH : StepKind.CUT, product, need.pad(), need.passes());
  }

  private Step step(Visit visit, int order, StepKind kind, Optional<Product> product) {
    return step(visit, order, kind, product, "", 0);
  }

  private Step step(
      Visit visit, int order, StepKind kind, Optional<Product> product, String pad, int passes) {
    return new Step(
        ids.next(),
        keys.next(Kind.STEP, visit.key(), order),
        visit.id(),
        order,
        kind,
        visit.day(),
        List.of(surface.id()),
        product.map(Product::id),
        product.flatMap(p -> bottle(p, visit.day())),
        product.flatMap(p -> p.handling().partsWater()),
        pad,
        "",
        passes == 0 ? Optional.empty() : Optional.of(passes),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** The product with which such a step was done last on this boat, the newest visit first. */
  private static Optional<Product> last(Almanac almanac, Id<Boat> boat, StepKind kind) {
    List<Id<Visit>> hers =
        almanac.visits().stream()
            .filter(v -> v.boat().equals(boat) && v.status() == VisitStatus.DONE)
            .map(Visit::id)
            .toList();
    return almanac.steps().stream()
        .filter(s -> s.kind() == kind && s.product().isPresent() && hers.contains(s.visit()))
        .max(Comparator.comparing(Step::day).thenComparing(Step::id))
        .map(s -> row(almanac.products(), s.product().orElseThrow()));
  }

  /** What lies on the surface now, the base of it; else what she was protected with last. */
  static Optional<Product> protection(Almanac almanac, Surface surface, LocalDate today) {
    List<Coat> lies = new InService(almanac.coats()).on(surface.id(), today);
    return lies.stream()
        .findFirst()
        .map(Coat::product)
        .map(id -> row(almanac.products(), id))
        .or(() -> last(almanac, surface.boat(), StepKind.PROTECT));
  }

  /** The bottle to take: opened already, then soonest past its use-by; none that is empty. */
  private Optional<Id<Bottle>> bottle(Product product, LocalDate day) {
    return almanac.bottles().stream()
        .filter(b -> b.product().equals(product.id()))
        .filter(b -> b.leftMl().map(ml -> ml > 0).orElse(true))
        .filter(b -> b.useBy().map(end -> !end.isBefore(day)).orElse(true))
        .min(
            Comparator.comparing((Bottle b) -> b.openedOn().isEmpty())
                .thenComparing(b -> b.useBy().orElse(LocalDate.MAX))
                .thenComparing(Bottle::id))
        .map(Bottle::id);
  }
}
