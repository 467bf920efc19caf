package hullalmanac.study.generator;

import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How this business looks at coats and what it writes down.
 *
 * @param gloss whether gloss is read at all
 */
record Looks(boolean gloss) {
  private static final double LOOKED_AT_WASHED = 0.6;
  private static final double LOOKED_AT_DIRTY = 0.2;

  /** Share of looks at a washed surface before which a hand's breadth of it is decontaminated. */
  private static final double PATCH_CLEANED = 0.10;

  /** The looks of a regular visit. */
  void regular(Vessel vessel, Ledger.Sheet sheet, int day) {
    SplittableRandom chance = vessel.chance();
    SplittableRandom meter = chance.split();
    double visitError = Eye.visitError(meter);
    for (Skin skin : vessel.skins()) {
      TrueCoat coat = skin.coat().orElseThrow();
      boolean washed = chance.nextDouble() < LOOKED_AT_WASHED;
      boolean dirty = chance.nextDouble() < LOOKED_AT_DIRTY;
      boolean patch = chance.nextDouble() < PATCH_CLEANED;
      if (washed) {
        SurfaceState state = patch ? SurfaceState.DECONTAMINATED : SurfaceState.WASHED;
        water(sheet, coat, day, state, chance);
        if (reads(vessel, coat)) {
          gloss(sheet, coat, day, visitError, meter);
        }
      } else if (dirty) {
        water(sheet, coat, day, SurfaceState.DIRTY, chance);
      }
    }
  }

  /** The gloss readings some days after laying. */
  void afterLaying(Vessel vessel, Ledger.Sheet sheet, List<TrueCoat> coats, int day) {
    SplittableRandom meter = vessel.chance().split();
    double visitError = Eye.visitError(meter);
    for (TrueCoat coat : coats) {
      if (reads(vessel, coat)) {
        gloss(sheet, coat, day, visitError, meter);
      }
    }
  }

  /** What is written of a coat just before it is renewed, when somebody looks. */
  static EndState atTheEnd(Vessel vessel, TrueCoat coat, int day) {
    WaterBehaviour seen = Eye.water(coat, day, SurfaceState.WASHED, vessel.chance());
    if (coat.nature().neglected()) {
      return EndState.BEADS;
    }
    return switch (seen) {
      case BEADS -> EndState.BEADS;
      case SHEETS -> EndState.SHEETS;
      case FLAT -> EndState.FLAT;
    };
  }

  private boolean reads(Vessel vessel, TrueCoat coat) {
    return gloss && vessel.start().glossRead() && !coat.nature().neglected();
  }

  private static void water(
      Ledger.Sheet sheet, TrueCoat coat, int day, SurfaceState state, SplittableRandom chance) {
    WaterBehaviour seen = Eye.water(coat, day, state, chance);
    if (coat.nature().neglected()) {
      SurfaceState said = state == SurfaceState.DECONTAMINATED ? SurfaceState.WASHED : state;
      Observation always = new Observation.WaterSeen(WaterBehaviour.BEADS);
      sheet.found(coat.skin(), said, Entered.TWO_TOUCH, always);
    } else {
      sheet.found(coat.skin(), state, Entered.GRID, new Observation.WaterSeen(seen));
    }
  }

  private static void gloss(
      Ledger.Sheet sheet, TrueCoat coat, int day, double visitError, SplittableRandom meter) {
    Observation read = Eye.gloss(coat, day, visitError, meter);
    sheet.found(coat.skin(), SurfaceState.WASHED, Entered.GRID, read);
  }
}
