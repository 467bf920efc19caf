package hullalmanac.core.record;

import java.util.List;
import java.util.Optional;

/**
 * An observation as plain fields, the form in which tables and files keep it.
 *
 * @param what kind of observation, such as {@code water}
 * @param value what was seen: a code, a number or, for damage, words; empty for gloss
 * @param scale scale of a chalking rating
 * @param geometry angle of gloss readings
 * @param readings gloss readings; empty otherwise
 * @param meter which gloss meter
 * @param told who was told of damage
 */
public record ObservationText(
    String what,
    String value,
    Optional<String> scale,
    Optional<String> geometry,
    List<Double> readings,
    Optional<String> meter,
    Optional<Observation.Told> told) {
  /** All kinds of observation. */
  public static final List<String> KINDS =
      List.of(
          "water",
          "gloss",
          "eye",
          "finger-rub",
          "chalking",
          "staining",
          "water-spots",
          "buffer-trails",
          "scratches",
          "damage");

  public ObservationText {
    readings = List.copyOf(readings);
  }

  private static ObservationText plain(Observation seen, String value) {
    return new ObservationText(
        seen.what(),
        value,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** Returns an observation as plain fields. */
  public static ObservationText of(Observation seen) {
    if (seen instanceof Observation.WaterSeen w) {
      return plain(seen, w.behaviour().code());
    } else if (seen instanceof Observation.GlossRead g) {
      return new ObservationText(
          seen.what(),
          "",
          Optional.empty(),
          Optional.of(g.geometry().code()),
          g.readings(),
          g.meter(),
          Optional.empty());
    } else if (seen instanceof Observation.EyeScale e) {
      return plain(seen, String.valueOf(e.step()));
    } else if (seen instanceof Observation.FingerRub r) {
      return plain(seen, r.level().code());
    } else if (seen instanceof Observation.Chalking c) {
      return new ObservationText(
          seen.what(),
          Numbers.plain(c.rating()),
          Optional.of(c.scale().code()),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty());
    } else if (seen instanceof Observation.Staining s) {
      return plain(seen, s.amount().code());
    } else if (seen instanceof Observation.WaterSpots s) {
      return plain(seen, s.amount().code());
    } else if (seen instanceof Observation.BufferTrails b) {
      return plain(seen, b.amount().code());
    } else if (seen instanceof Observation.Scratches s) {
      return plain(seen, s.depth().code());
    }
    Observation.Damage damage = (Observation.Damage) seen;
    return new ObservationText(
        seen.what(),
        damage.text(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        damage.told());
  }

  /**
   * Returns the observation that these fields are.
   *
   * @throws IllegalArgumentException with a sentence for people when they are none
   */
  public Observation observation() {
    return switch (what) {
      case "water" -> new Observation.WaterSeen(choice(WaterBehaviour.class, value));
      case "gloss" ->
          new Observation.GlossRead(choice(Geometry.class, geometry.orElse("60")), readings, meter);
      case "eye" -> new Observation.EyeScale(Numbers.whole(value));
      case "finger-rub" -> new Observation.FingerRub(choice(RubLevel.class, value));
      case "chalking" ->
          new Observation.Chalking(
              choice(ChalkingScale.class, scale.orElse("")), Numbers.real(value));
      case "staining" -> new Observation.Staining(choice(Amount.class, value));
      case "water-spots" -> new Observation.WaterSpots(choice(Amount.class, value));
      case "buffer-trails" -> new Observation.BufferTrails(choice(Amount.class, value));
      case "scratches" -> new Observation.Scratches(choice(ScratchDepth.class, value));
      case "damage" -> new Observation.Damage(value, told);
      default ->
          throw new IllegalArgumentException(
              "there is no observation \"" + what + "\"; write " + String.join(", ", KINDS));
    };
  }

  private static <E extends Enum<E> & Coded> E choice(Class<E> type, String code) {
    return Coded.parse(type, code)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + code + "\" is none of " + Coded.allCodes(type)));
  }
}
