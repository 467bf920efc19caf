package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.finish.Budget;
import hullalmanac.core.finish.Defect;
import hullalmanac.core.finish.EyeGloss;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.plan.Asked;
import hullalmanac.core.plan.SurfacePlans;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Observation.GlossRead;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Unit;
import hullalmanac.core.record.With;
import hullalmanac.present.edit.FieldMaker.Named;
import hullalmanac.present.sheet.Input;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The fields in which a plan of correction is asked for. What is usual stands in a field while it
 * is empty.
 */
final class PassesFields {
  private static final String EYE = "eye";
  private final FieldMaker make;
  private final List<Surface> surfaces;
  private final SurfacePlans plans;

  /**
   * @param surfaces that may be chosen
   * @param plans the last answer, which knows what is usual
   */
  PassesFields(FieldMaker make, List<Surface> surfaces, SurfacePlans plans) {
    this.make = make;
    this.surfaces = surfaces;
    this.plans = plans;
  }

  /** What is agreed with the owner. */
  List<FieldOf<Asked>> agreed() {
    Unit area =
        make.business().units() == Business.Units.FEET ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    return List.of(
        make.of(
            "surface",
            "Surface",
            surfaces.stream().map(s -> new Named<>(s.id(), s.words())).toList(),
            Asked::surface),
        gloss(),
        make.yesNo("edgesTaped", "Edges and corners are taped", Asked::edgesTaped),
        hinted(
            make.quantity("area", "Area", area, Asked::area),
            plans
                .area()
                .map(a -> Roughly.area(a, area))
                .map(text -> text + " by rule of thumb")
                .orElse("not known, such as 24 m²")),
        hinted(
            make.maybeNumber("offFlats", "May come off flats, µm", Asked::offFlats),
            spare(Budget::flatsMicrons)),
        hinted(
            make.maybeNumber("offEdges", "May come off edges, µm", Asked::offEdges),
            spare(Budget::edgesMicrons)));
  }

  private String spare(Function<Budget, Double> microns) {
    return plans
        .spare()
        .map(b -> Roughly.microns(microns.apply(b), b.basis()) + ", all that can be spared")
        .orElse("");
  }

  /** What else is known or agreed. */
  List<FieldOf<Asked>> more() {
    List<FieldOf<Asked>> fields = new ArrayList<>();
    Some<Defect> gone =
        new Some<>("gone", "To be gone", usuallyGone(), List.of(Defect.values()), Defect::words);
    fields.add(
        gone.field(
            asked -> asked.gone().orElse(List.of()),
            (asked, all) ->
                With.component(asked, "gone", Optional.of(all).filter(a -> !a.isEmpty()))));
    fields.add(
        new Some<>(
                "also",
                "Seen besides",
                "swirls; light scuffs",
                List.of(Defect.values()),
                Defect::words)
            .field(Asked::also, (asked, all) -> With.component(asked, "also", all)));
    fields.add(
        new Some<>(
                "own",
                "Stages of your own",
                "medium; finishing",
                List.of(Stage.values()),
                Stage::words)
            .field(Asked::own, (asked, all) -> With.component(asked, "own", all)));
    fields.add(
        hinted(
            make.maybeNumber("thickFlats", "Measured today on flats, µm", Asked::thickFlats),
            "not measured"));
    fields.add(
        hinted(
            make.maybeNumber("thickEdges", "Measured today at edges, µm", Asked::thickEdges),
            "half of the flats"));
    fields.add(paper());
    if (plans.surface().finish() == Finish.URETHANE_PAINT) {
      fields.add(make.yesNo("buffable", "Its maker lets one buff this paint", Asked::buffable));
    }
    return fields;
  }

  private String usuallyGone() {
    return plans.agreed().gone().isEmpty()
        ? "nothing that is seen"
        : plans.agreed().gone().stream()
            .sorted()
            .map(Defect::words)
            .collect(Collectors.joining("; "));
  }

  private static <T> FieldOf<T> hinted(FieldOf<T> field, String hint) {
    return new FieldOf<>(
        field.id(), field.label(), new Input.Line(hint), field.text(), field.enter());
  }

  /** As a number, or by eye. */
  private FieldOf<Asked> gloss() {
    String usual =
        plans
            .limit()
            .map(l -> String.format(Locale.ROOT, "%.0f is usual, or eye 2", usualGloss()))
            .orElse("");
    return new FieldOf<>(
        "gloss",
        "Gloss aimed at, at 60°",
        new Input.Line(usual),
        asked -> asked.gloss().map(Numbers::plain).orElse(""),
        (asked, typed) -> {
          String text = typed.strip().toLowerCase(Locale.ROOT);
          return text.startsWith(EYE)
              ? byEye(asked, text.substring(EYE.length()).strip())
              : FieldMaker.maybe(
                  asked, "gloss", NumberEntry.read(text).map(BigDecimal::doubleValue));
        });
  }

  private double usualGloss() {
    return plans.limit().map(l -> Math.floor(l.gloss() - Asked.USUALLY_BELOW)).orElse(0.0);
  }

  private static Entry<Asked> byEye(Asked asked, String step) {
    Entry<Integer> read = NumberEntry.readWhole(step);
    if (!(read instanceof Entry.Read<Integer> whole)) {
      return new Entry.Refused<>("The eye scale runs from 1 like new to 4, as in eye 2.");
    }
    try {
      double gloss = EyeGloss.lowest(whole.value());
      return new Entry.Read<>(
          With.component(asked, "gloss", Optional.of(gloss)),
          "a gloss of " + Numbers.plain(gloss) + ", the lowest that looks so");
    } catch (IllegalArgumentException e) {
      return new Entry.Refused<>(Texts.capital(e.getMessage()) + ".");
    }
  }

  private static FieldOf<Asked> paper() {
    List<Stage> papers = Arrays.stream(Stage.values()).filter(Stage::sands).toList();
    List<String> words = papers.stream().map(Stage::words).toList();
    List<String> offered = new ArrayList<>(words);
    offered.add(0, "");
    return new FieldOf<>(
        "paper",
        "Finest paper, trained hands only",
        new Input.Choice(offered),
        asked -> asked.paper().map(Stage::words).orElse(""),
        (asked, typed) ->
            FieldMaker.maybe(
                asked,
                "paper",
                FieldMaker.oneOf(words, typed).map(w -> papers.get(words.indexOf(w)))));
  }

  /** A field for some of a choice. */
  private record Some<E extends Enum<E>>(
      String id, String label, String hint, List<E> all, Function<E, String> words) {
    String text(List<E> chosen) {
      return chosen.stream().map(words).collect(Collectors.joining("; "));
    }

    /** Each as it begins, parted by semicolons. */
    Entry<List<E>> read(String typed) {
      List<E> chosen = new ArrayList<>();
      List<String> names = all.stream().map(words).toList();
      for (String one : typed.split("[;,+]")) {
        Entry<String> word = FieldMaker.oneOf(names, one);
        if (word instanceof Entry.Refused<String> refused) {
          return new Entry.Refused<>(refused.sentence());
        }
        word.map(w -> chosen.add(all.get(names.indexOf(w))));
      }
      return new Entry.Read<>(chosen, text(chosen));
    }

    FieldOf<Asked> field(Function<Asked, List<E>> get, BiFunction<Asked, List<E>, Asked> with) {
      return new FieldOf<>(
          id,
          label,
          new Input.Line(hint),
          asked -> text(get.apply(asked)),
          (asked, typed) -> read(typed).map(all -> with.apply(asked, all)));
    }
  }

  /** What is written of a test spot. */
  List<FieldOf<SpotRow>> spot() {
    return List.of(
        make.choice("stage", "Stage", Stage.class, SpotRow::stage),
        make.whole("passes", "Passes", SpotRow::passes),
        read("before", "Gloss before", SpotRow::before),
        read("after", "Gloss after", SpotRow::after));
  }

  private static FieldOf<SpotRow> read(
      String id, String label, Function<SpotRow, Optional<GlossRead>> get) {
    return new FieldOf<>(
        id,
        label,
        new Input.Line("85.5 86 84"),
        row ->
            get.apply(row).stream()
                .flatMap(g -> g.readings().stream())
                .map(Numbers::plain)
                .collect(Collectors.joining(" ")),
        (row, typed) -> {
          Entry<Observation> entry = LookedFields.gloss(typed);
          return FieldMaker.maybe(row, id, entry.map(seen -> (GlossRead) seen));
        });
  }
}
