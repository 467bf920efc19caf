package hullalmanac.core.finish;

import hullalmanac.core.record.Amount;
import hullalmanac.core.record.ChalkingScale;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.SurfaceState;
import java.util.List;
import java.util.Optional;

/**
 * What is to go from a surface, and the lightest stage that takes it out (common practice, no
 * source). Heavier stages take it out as well, but compounds leave marks of the machine themselves:
 * these go only when a polish comes last.
 */
public enum Defect implements Coded {
  BUFFER_TRAILS("buffer-trails", Stage.FINISHING, true),
  LIGHT_SWIRLS("light-swirls", Stage.FINISHING, true),
  CHALKING_TRACE("chalking-trace", Stage.FINISHING, false),
  SWIRLS("swirls", Stage.ONE_STEP, true),
  LIGHT_SCUFFS("light-scuffs", Stage.ONE_STEP, false),
  ETCHED_WATER_MARKS("etched-water-marks", Stage.ONE_STEP, false),
  SCUFFS_NOT_FELT("scuffs-not-felt", Stage.MEDIUM, false),
  CHALKING_CLEAR("chalking-clear", Stage.MEDIUM, false),
  SCUFFS_JUST_FELT("scuffs-just-felt", Stage.HEAVY, false),
  CHALKING_HEAVY("chalking-heavy", Stage.HEAVY, false),
  SCRATCHES_FELT("scratches-felt", Stage.SAND_P2000, false),
  SCRATCHES_THROUGH("scratches-through"),
  CLOUDINESS("cloudiness-from-the-mould");

  private final String code;
  private final Optional<Stage> lightest;
  private final boolean machineMark;

  Defect(String code, Stage lightest, boolean machineMark) {
    this.code = code;
    this.lightest = Optional.of(lightest);
    this.machineMark = machineMark;
  }

  Defect(String code) {
    this.code = code;
    this.lightest = Optional.empty();
    this.machineMark = false;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return switch (this) {
      case ETCHED_WATER_MARKS -> "water marks etched in";
      case SCUFFS_NOT_FELT -> "scuffs not felt by a nail";
      case SCUFFS_JUST_FELT -> "scuffs just felt by a nail";
      case SCRATCHES_FELT -> "scratches felt by a nail";
      case SCRATCHES_THROUGH -> "scratches through the finish";
      case CHALKING_TRACE -> "a trace of chalking";
      case CHALKING_CLEAR -> "clear chalking";
      case CHALKING_HEAVY -> "heavy chalking";
      default -> Coded.super.words();
    };
  }

  /** Whether no correction at all takes it out. */
  public boolean stays() {
    return lightest.isEmpty();
  }

  /**
   * Whether stages take it out, in the case of scratches felt by a nail: improve it.
   *
   * @param paper the finest paper that takes the deepest scratch down; absent where nobody sands
   */
  public boolean reachedBy(List<Stage> stages, Optional<Stage> paper) {
    if (stages.isEmpty() || lightest.isEmpty()) {
      return false;
    }
    Stage needed = this == SCRATCHES_FELT ? paper.orElse(lightest.get()) : lightest.get();
    Stage last = stages.get(stages.size() - 1);
    boolean cut = stages.stream().anyMatch(s -> s.compareTo(needed) <= 0);
    return cut && (!machineMark || last.compareTo(Stage.ONE_STEP) >= 0);
  }

  /**
   * What an observation says is there. Soil, stains and water spots come off by washing and
   * decontaminating; spots that are there after that are etched in. Chalking is read on its own
   * scale, the borders on each are a house rule: no conversion between the scales is published.
   */
  static Optional<Defect> seen(Observation seen, SurfaceState state) {
    if (seen instanceof Observation.BufferTrails b) {
      return Optional.of(BUFFER_TRAILS).filter(d -> b.amount() != Amount.NONE);
    } else if (seen instanceof Observation.WaterSpots w) {
      boolean etched = state == SurfaceState.DECONTAMINATED && w.amount() != Amount.NONE;
      return Optional.of(ETCHED_WATER_MARKS).filter(d -> etched);
    } else if (seen instanceof Observation.Scratches s) {
      return switch (s.depth()) {
        case NONE -> Optional.empty();
        case NOT_FELT -> Optional.of(SCUFFS_NOT_FELT);
        case JUST_FELT -> Optional.of(SCUFFS_JUST_FELT);
        case FELT -> Optional.of(SCRATCHES_FELT);
        case THROUGH -> Optional.of(SCRATCHES_THROUGH);
      };
    } else if (seen instanceof Observation.FingerRub r) {
      return switch (r.level()) {
        case NONE -> Optional.empty();
        case TRACE -> Optional.of(CHALKING_TRACE);
        case CLEAR -> Optional.of(CHALKING_CLEAR);
        case HEAVY -> Optional.of(CHALKING_HEAVY);
      };
    } else if (seen instanceof Observation.Chalking c) {
      return chalking(c);
    }
    return Optional.empty();
  }

  private static Optional<Defect> chalking(Observation.Chalking seen) {
    double r = seen.rating();
    if (seen.scale() == ChalkingScale.ISO_4628_6) {
      return r == 0 ? Optional.empty() : Optional.of(level(r <= 1, r <= 3));
    }
    return r == 10 ? Optional.empty() : Optional.of(level(r >= 8, r >= 6));
  }

  private static Defect level(boolean trace, boolean clear) {
    return trace ? CHALKING_TRACE : clear ? CHALKING_CLEAR : CHALKING_HEAVY;
  }
}
