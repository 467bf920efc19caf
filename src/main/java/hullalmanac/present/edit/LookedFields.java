package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.record.Amount;
import hullalmanac.core.record.ChalkingScale;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.ScratchDepth;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.present.sheet.Input;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The columns of the inspection grid: what became of a surface, and what was seen there. */
final class LookedFields {
  /** ASTM D523: above 70 at 60° measure at 20°; under 10 at 60° measure at 85°. */
  private static final double BRIGHT = 70;

  private static final double DULL = 10;

  private static final Pattern LEFT_BECAUSE =
      Pattern.compile("(?i)l(?:e|ef|eft)?(?:\\s*[,:;]\\s*|\\s+)(\\S.*)");

  private LookedFields() {}

  static List<FieldOf<Looked>> of(FieldMaker make) {
    return List.of(
        work(),
        doneOn(make),
        make.choice("state", "State", SurfaceState.class, Looked::state),
        coded("water", "Water", WaterBehaviour.class, Observation.WaterSeen::new),
        field("gloss", "Gloss", new Input.Line("85.5 86 84"), LookedFields::gloss),
        field("eye", "Eye 1–5", new Input.Line(""), LookedFields::eye),
        coded("finger-rub", "Rub", RubLevel.class, Observation.FingerRub::new),
        field("chalking", "Chalking", new Input.Line("iso 3 or astm 8"), LookedFields::chalking),
        coded("staining", "Staining", Amount.class, Observation.Staining::new),
        coded("water-spots", "Spots", Amount.class, Observation.WaterSpots::new),
        coded("buffer-trails", "Trails", Amount.class, Observation.BufferTrails::new),
        coded("scratches", "Scratches", ScratchDepth.class, Observation.Scratches::new),
        DamageFields.what("Damage"),
        make.line("note", "Note", Looked::note));
  }

  /** What became of it; why it was left may be written behind: {@code left, rain from noon}. */
  private static FieldOf<Looked> work() {
    List<String> words = new ArrayList<>(FieldMaker.words(WorkState.class));
    words.add(0, "");
    return new FieldOf<>(
        "work",
        "Work",
        new Input.Choice(words),
        row -> row.work().map(WorkState::words).orElse(""),
        (row, typed) -> {
          Matcher left = LEFT_BECAUSE.matcher(typed.strip());
          if (left.matches()) {
            return new Entry.Read<>(leftBecause(row, left.group(1)), "left, " + left.group(1));
          }
          Entry<WorkState> state = FieldMaker.oneOf(WorkState.class, typed);
          return state instanceof Entry.Empty<WorkState>
              ? new Entry.Read<>(row.worked(Optional.empty()), "")
              : state.map(s -> row.worked(Optional.of(s)));
        });
  }

  private static Looked leftBecause(Looked row, String why) {
    String note =
        row.note().isBlank() || row.note().contains(why) ? row.note() : row.note() + "; " + why;
    return With.component(
        row.worked(Optional.of(WorkState.LEFT)), "note", note.isBlank() ? why : note);
  }

  /** The day on which it was done, which also says that it was. */
  private static FieldOf<Looked> doneOn(FieldMaker make) {
    FieldOf<Looked> day = make.maybeDay("doneOn", "Done on", Looked::doneOn);
    return new FieldOf<>(
        day.id(),
        day.label(),
        day.input(),
        day.text(),
        (row, typed) -> {
          if (typed.isBlank()) {
            return row.doneOn().isEmpty()
                ? new Entry.Read<>(row, "")
                : new Entry.Refused<>(
                    "What was done has its day; write planned or left under Work instead.");
          }
          return make.readDay(typed).map(row::doneOn);
        });
  }

  private static <E extends Enum<E> & Coded> FieldOf<Looked> coded(
      String what, String label, Class<E> type, Function<E, Observation> observation) {
    List<String> words = new ArrayList<>(FieldMaker.words(type));
    words.add(0, "");
    return field(
        what,
        label,
        new Input.Choice(words),
        typed -> FieldMaker.oneOf(type, typed).map(observation));
  }

  private static FieldOf<Looked> field(
      String what, String label, Input input, Function<String, Entry<Observation>> read) {
    return new FieldOf<>(
        what,
        label,
        input,
        row -> Optional.ofNullable(row.seen().get(what)).map(LookedFields::text).orElse(""),
        (row, typed) -> taken(row, what, read.apply(typed)));
  }

  private static Entry<Looked> taken(Looked row, String what, Entry<Observation> entry) {
    if (entry instanceof Entry.Empty<Observation>) {
      return new Entry.Read<>(row.with(what, Optional.empty()), "");
    }
    return entry.map(observation -> row.with(what, Optional.of(observation)));
  }

  /** An observation as one types it. */
  static String text(Observation seen) {
    if (seen instanceof Observation.GlossRead g) {
      String readings = g.readings().stream().map(Numbers::plain).collect(Collectors.joining(" "));
      return g.geometry() == Geometry.DEG_60 ? readings : g.geometry().code() + ": " + readings;
    }
    if (seen instanceof Observation.Chalking c) {
      return (c.scale() == ChalkingScale.ISO_4628_6 ? "iso " : "astm ") + Numbers.plain(c.rating());
    }
    return hullalmanac.core.record.ObservationText.of(seen).value().replace('-', ' ');
  }

  private static Entry<Observation> eye(String typed) {
    Entry<Integer> step = NumberEntry.readWhole(typed);
    if (step instanceof Entry.Read<Integer> read && (read.value() < 1 || read.value() > 5)) {
      return new Entry.Refused<>("The eye scale runs from 1, like new, to 5, dull.");
    }
    return step.map(Observation.EyeScale::new);
  }

  private static Entry<Observation> chalking(String typed) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return new Entry.Empty<>();
    }
    boolean iso = text.startsWith("i");
    if (!iso && !text.startsWith("a")) {
      return new Entry.Refused<>(
          "Say on which scale, for they run in opposite directions: iso 3 or astm 8.");
    }
    Entry<BigDecimal> rating = NumberEntry.read(text.replaceFirst("^[a-z]+", ""));
    ChalkingScale scale = iso ? ChalkingScale.ISO_4628_6 : ChalkingScale.ASTM_D4214;
    if (rating instanceof Entry.Read<BigDecimal> read && scale.allows(read.value().doubleValue())) {
      return new Entry.Read<>(
          new Observation.Chalking(scale, read.value().doubleValue()),
          iso ? "ISO 4628-6, 0 none to 5 worst" : "ASTM D4214, 10 none, lower is worse");
    }
    return new Entry.Refused<>(
        iso
            ? "ISO 4628-6 runs from 0 to 5 in half steps."
            : "ASTM D4214 runs from 10 down to 0 in half steps.");
  }

  /** Gloss readings as people type them. */
  static Entry<Observation> gloss(String typed) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return new Entry.Empty<>();
    }
    Geometry geometry = Geometry.DEG_60;
    int colon = text.indexOf(':');
    if (colon >= 0) {
      Optional<Geometry> named =
          Coded.parse(Geometry.class, text.substring(0, colon).replace("°", ""));
      if (named.isEmpty()) {
        return new Entry.Refused<>("The angle is 20, 60 or 85, as in 20: 45.1 44.8.");
      }
      geometry = named.get();
      text = text.substring(colon + 1).strip();
    }
    List<Double> readings = new ArrayList<>();
    for (String one : text.split("[\\s;]+")) {
      Entry<BigDecimal> entry = NumberEntry.read(one);
      if (!(entry instanceof Entry.Read<BigDecimal> read)) {
        return new Entry.Refused<>(
            entry instanceof Entry.Refused<BigDecimal> refused
                ? refused.sentence()
                : "Readings are parted by blanks, as in 85.5 86 84.");
      }
      readings.add(read.value().doubleValue());
    }
    return gloss(geometry, readings);
  }

  private static Entry<Observation> gloss(Geometry geometry, List<Double> readings) {
    if (readings.stream().anyMatch(r -> !(r >= 0 && r <= Observation.GlossRead.HIGHEST))) {
      return new Entry.Refused<>("A gloss reading lies between 0 and 2000.");
    }
    Observation.GlossRead read = new Observation.GlossRead(geometry, readings, Optional.empty());
    String spread = read.spread().map(s -> String.format(Locale.ROOT, " ± %.1f", s)).orElse("");
    String echo =
        String.format(Locale.ROOT, "%.1f", read.mean())
            + spread
            + " at "
            + geometry.words()
            + advice(geometry, read.mean());
    return new Entry.Read<>(read, echo);
  }

  private static String advice(Geometry geometry, double mean) {
    if (geometry != Geometry.DEG_60 || (mean >= DULL && mean <= BRIGHT)) {
      return "";
    }
    return mean > BRIGHT
        ? "; over 70, so 20° tells more (ASTM D523)"
        : "; under 10, so 85° tells more (ASTM D523)";
  }
}
