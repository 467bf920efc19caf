package hullalmanac.present.edit;

import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Budget;
import hullalmanac.core.finish.Defect;
import hullalmanac.core.finish.Estimate;
import hullalmanac.core.finish.GlossPath;
import hullalmanac.core.finish.Judged;
import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Plans;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.Start;
import hullalmanac.core.finish.Supply;
import hullalmanac.core.plan.SurfacePlans;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.Caution;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.SheetState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is shown of an answer of the planner: tables, a picture and words. */
final class PassesBlocks {
  static final String PLANS = "plans";
  static final String SHOW = "show";
  private static final int OVER = 95;
  private final SurfacePlans answer;
  private final int chosen;

  /**
   * @param chosen which plan is shown in full
   */
  PassesBlocks(SurfacePlans answer, int chosen) {
    this.answer = answer;
    this.chosen = chosen;
  }

  private Optional<Plan> plan() {
    List<Plan> all = answer.choices();
    return chosen < all.size() ? Optional.of(all.get(chosen)) : Optional.empty();
  }

  /** How the surface stands. */
  SheetState.Words standing() {
    List<String> lines = new ArrayList<>();
    lines.add(look() + reach());
    lines.add(
        Texts.capital(answer.surface().tone().words())
            + " "
            + answer.surface().finish().words()
            + answer.inspection().age().map(a -> ", " + years(a)).orElse(", age not known")
            + answer.area().map(PassesBlocks::area).orElse("")
            + ". "
            + seen());
    answer.spare().ifPresent(b -> lines.add(spare(b)));
    return new SheetState.Words(String.join("\n", lines));
  }

  private static String years(int age) {
    return age == 1 ? "1 year old" : age + " years old";
  }

  private static String area(Area area) {
    return ", " + Roughly.area(area) + " " + area.how().words();
  }

  private String look() {
    Optional<Start> start = answer.inspection().start();
    return start
        .map(
            s ->
                String.format(
                    Locale.ROOT,
                    s.by() == Start.By.METER
                        ? "Gloss %.1f at 60°, read on %s."
                        : "Gloss of about %.0f at 60°, by eye on %s.",
                    s.gloss(),
                    answer.inspection().on().map(DateWords::dated).orElse("an unknown day")))
        .orElse("Nobody looked at its gloss since it was last corrected.");
  }

  private String reach() {
    return answer
        .limit()
        .map(
            l -> String.format(Locale.ROOT, " It can reach %.0f (%s).", l.gloss(), l.why().words()))
        .orElse("");
  }

  private String seen() {
    return answer.seen().isEmpty()
        ? "No scratches, chalking or trails are written down."
        : "Seen: "
            + answer.seen().stream().sorted().map(Defect::words).collect(Collectors.joining("; "))
            + ".";
  }

  private static String spare(Budget b) {
    return String.format(
        Locale.ROOT,
        "%s: %s µm on flats, %s at edges and corners (%s).",
        Texts.capital(b.spare().words()).equals("None to spare")
            ? "None to spare"
            : "To spare, " + b.spare().words(),
        Roughly.microns(b.flatsMicrons(), b.basis()),
        Roughly.microns(b.edgesMicrons(), b.basis()),
        b.basis().words());
  }

  /** Why there is no plan, or what is to be known of all of them. */
  SheetState.Words remarks() {
    List<String> lines = new ArrayList<>();
    if (answer.plans() instanceof Plans.Refused refused) {
      lines.add(refused.sentence());
    } else if (answer.plans() instanceof Plans.NoneReaches none) {
      lines.add(none.sentence());
      lines.addAll(none.could());
    } else if (answer.plans() instanceof Plans.Found found) {
      lines.addAll(found.remarks());
    }
    answer
        .own()
        .filter(Judged.Refused.class::isInstance)
        .map(Judged.Refused.class::cast)
        .filter(r -> !lines.contains(r.sentence()))
        .ifPresent(r -> lines.add("Stages of your own: " + r.sentence()));
    return new SheetState.Words(String.join("\n", lines), true);
  }

  /** The plans, one of them shown in full. */
  SheetState.Grid plans() {
    List<Plan> all = answer.choices();
    return new SheetState.Grid(
        PLANS,
        answer.plans() instanceof Plans.NoneReaches
            ? "The plan that comes nearest"
            : "Plans that no other beats on passes, minutes and microns",
        "",
        List.of(
            new SheetState.Column(SHOW, "", new Input.Press("ctrl M")),
            fixed("plan", "Plan"),
            fixed("passes", "Passes"),
            fixed("minutes", "Minutes"),
            fixed("microns", "µm off"),
            fixed("chance", "Chance"),
            fixed("flats", "Left, flats"),
            fixed("edges", "Left, edges"),
            fixed("rests", "Rests on"),
            fixed("needs", "Products and pads"),
            fixed("stays", "Stays behind")),
        IntStream.range(0, all.size()).mapToObj(i -> row(i, all.get(i))).toList(),
        "");
  }

  private static SheetState.Column fixed(String id, String label) {
    return new SheetState.Column(id, label, new Input.Fixed());
  }

  private SheetState.GridRow row(int n, Plan plan) {
    return new SheetState.GridRow(
        String.valueOf(n),
        "",
        List.of(
            n == chosen ? "Shown" : "Show",
            brief(plan) + (isOwn(plan) ? " (your own)" : ""),
            String.valueOf(plan.totals().passes()),
            String.valueOf(plan.totals().minutes()),
            Numbers.plain(plan.totals().microns()),
            chance(plan.chance()),
            Roughly.microns(plan.left().flatsMicrons(), plan.left().basis()) + " µm",
            Roughly.microns(plan.left().edgesMicrons(), plan.left().basis()) + " µm",
            rests(plan),
            needs(plan),
            plan.staysBehind().isEmpty() ? "nothing seen" : String.join(" ", plan.staysBehind())));
  }

  private boolean isOwn(Plan plan) {
    return answer
        .own()
        .filter(j -> j instanceof Judged.Fits fits && fits.plan().equals(plan))
        .isPresent();
  }

  private static String brief(Plan plan) {
    return plan.stages().isEmpty()
        ? "clean and protect"
        : plan.stages().stream().map(Stage::brief).collect(Collectors.joining(", "));
  }

  /** In plain frequencies. */
  static String chance(double chance) {
    if (100 * chance >= OVER) {
      return "over 9 in 10";
    }
    int tenths = (int) Math.floor(10 * chance + 1e-9);
    return tenths == 0 ? "under 1 in 10" : tenths + " in 10";
  }

  private static String rests(Plan plan) {
    return plan.needs().isEmpty()
        ? plan.around().clean().origin().words()
        : plan.needs().stream()
            .map(n -> n.gloss().words())
            .distinct()
            .collect(Collectors.joining("; "));
  }

  private String needs(Plan plan) {
    return plan.needs().stream()
        .map(n -> pads(n) + product(n).map(p -> ", " + p).orElse(""))
        .collect(Collectors.joining("; "));
  }

  private static String pads(Plan.Need need) {
    return need.pads() + " × " + need.pad();
  }

  private Optional<String> product(Plan.Need need) {
    List<Supply> supplies = answer.supplies().getOrDefault(need.stage(), List.of());
    return supplies.stream()
        .filter(s -> s.enoughFor(need).orElse(false))
        .findFirst()
        .or(() -> supplies.stream().findFirst())
        .map(
            s ->
                s.product().name()
                    + s.enoughFor(need)
                        .map(enough -> enough ? "" : ", " + s.leftMl().get() + " ml may not do")
                        .orElse(""));
  }

  /** The words of a plan in full, for the line under the table. */
  String inFull(int row) {
    List<Plan> all = answer.choices();
    if (row >= all.size()) {
      return "";
    }
    Plan plan = all.get(row);
    return Stream.concat(
            Stream.of(
                Texts.capital(plan.words())
                    + ". "
                    + needs(plan)
                    + (needs(plan).isEmpty() ? "" : ".")),
            plan.staysBehind().stream())
        .collect(Collectors.joining(" "))
        .strip();
  }

  /** Gloss step by step to what was agreed. */
  SheetState.Way way() {
    return new SheetState.Way(
        "way",
        "Gloss step by step",
        plan().map(Plan::path),
        plan().map(p -> p.words() + ". " + told(p.path())).orElse(""));
  }

  private static String told(GlossPath path) {
    return path.points().stream()
            .map(
                p ->
                    p.name()
                        + (p.middle().isPresent()
                            ? String.format(
                                Locale.ROOT,
                                " %.0f, between %.0f and %.0f",
                                p.middle().getAsDouble(),
                                p.low().getAsDouble(),
                                p.high().getAsDouble())
                            : " matt"))
            .collect(Collectors.joining("; "))
        + String.format(Locale.ROOT, "; agreed %.0f", path.agreed());
  }

  /** What the plan shown takes, step by step. */
  SheetState.Table takes() {
    List<List<String>> rows = new ArrayList<>();
    plan()
        .ifPresent(
            p -> {
              rows.add(around("wash, decontaminate", p.around().clean(), Optional.empty()));
              p.needs().forEach(n -> rows.add(stage(n)));
              rows.add(
                  around("protect", p.around().protect(), Optional.of(p.around().protection())));
            });
    return new SheetState.Table(
        "What it takes",
        List.of(
            "Step",
            "Passes",
            "Minutes",
            "Product",
            "Millilitres",
            "Pads",
            "Gloss rests on",
            "Minutes rest on"),
        rows,
        "No plan to show yet.");
  }

  private List<String> around(String what, Estimate minutes, Optional<Estimate> ml) {
    return List.of(
        what,
        "",
        range(minutes),
        ml.flatMap(m -> answer.protection()).map(Product::name).orElse(""),
        ml.map(PassesBlocks::range).orElse(""),
        "",
        "",
        minutes.origin().words());
  }

  private List<String> stage(Plan.Need need) {
    return List.of(
        need.stage().words(),
        String.valueOf(need.passes()),
        range(need.minutes()),
        product(need).orElse("none on the shelf"),
        need.stage().sands() ? "" : range(need.millilitres()),
        pads(need),
        need.gloss().words(),
        need.minutes().origin().words());
  }

  private static String range(Estimate e) {
    return String.format(Locale.ROOT, "%.0f (%.0f to %.0f)", e.middle(), e.low(), e.high());
  }

  /** What the plan shown leaves on the surface. */
  SheetState.Words stays() {
    return new SheetState.Words(
        plan()
            .map(p -> "Ranges hold 8 times in 10. " + String.join(" ", p.staysBehind()))
            .orElse("")
            .strip());
  }

  /** What to heed. */
  SheetState.Words cautions() {
    List<String> lines =
        plan().stream().flatMap(p -> answer.cautions(p).stream()).map(Caution::text).toList();
    return new SheetState.Words(
        plan().isEmpty()
            ? ""
            : Stream.concat(lines.stream(), Stream.of(Caution.LABEL_FIRST))
                .collect(Collectors.joining("\n")),
        true);
  }
}
