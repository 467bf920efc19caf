package hullalmanac.sample;

import hullalmanac.core.record.Amount;
import hullalmanac.core.record.ChalkingScale;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.RubLevel;
import hullalmanac.core.record.ScratchDepth;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What was seen, with the scatter and the errors of real looks. */
final class SampleFindings {
  private final Draft d;
  private final SampleWear wear;

  SampleFindings(Draft draft, SampleWear wear) {
    d = draft;
    this.wear = wear;
  }

  /** The inspection before a spring visit, on the dirty boat. */
  void before(Visit visit, List<Surface> surfaces, LocalDate day) {
    for (Surface s : surfaces) {
      if (s.kind() == SurfaceKind.TOPSIDES && d.chance(0.5)) {
        chalking(visit, s, day);
      }
      if (s.kind() == SurfaceKind.TRANSOM && s.soot()) {
        note(
            visit,
            s,
            day,
            SurfaceState.DIRTY,
            new Observation.Staining(d.pick(List.of(Amount.values()))));
      }
      if (s.kind() == SurfaceKind.FOREDECK && d.chance(0.3)) {
        note(
            visit,
            s,
            day,
            SurfaceState.WASHED,
            new Observation.WaterSpots(d.pick(List.of(Amount.values()))));
      }
      if (d.chance(0.06)) {
        note(
            visit,
            s,
            day,
            SurfaceState.WASHED,
            new Observation.Scratches(d.pick(List.of(ScratchDepth.values()))));
      }
      if (d.chance(0.05)) {
        note(visit, s, day, SurfaceState.WASHED, new Observation.BufferTrails(Amount.LITTLE));
      }
      if (d.chance(0.03)) {
        note(
            visit,
            s,
            day,
            SurfaceState.DIRTY,
            new Observation.Damage(
                "chip at the rubbing strake, was there on arrival", told(visit, s, day)));
      }
    }
  }

  /** The owner, mostly; now and then nobody yet. */
  private Optional<Observation.Told> told(Visit visit, Surface s, LocalDate day) {
    return s.key().hashCode() % 6 == 0
        ? Optional.empty()
        : d.roles.stream()
            .filter(r -> r.boat().equals(visit.boat()) && r.kind() == RoleKind.OWNS)
            .filter(r -> r.holdsOn(day))
            .flatMap(r -> d.parties.stream().filter(p -> p.id().equals(r.party())))
            .findFirst()
            .map(p -> new Observation.Told(p.name(), day));
  }

  private void chalking(Visit visit, Surface s, LocalDate day) {
    boolean iso = s.key().hashCode() % 2 == 0;
    Observation seen =
        iso
            ? new Observation.Chalking(ChalkingScale.ISO_4628_6, d.between(0, 6) / 2.0)
            : new Observation.Chalking(ChalkingScale.ASTM_D4214, 10 - d.between(0, 4));
    note(visit, s, day, SurfaceState.WASHED, seen);
  }

  /**
   * A look at every surface: water everywhere, gloss on the topsides of boats that are measured.
   */
  void look(Visit visit, List<Surface> surfaces, LocalDate day) {
    for (Surface s : surfaces) {
      Optional<Coat> coat = serving(s, day);
      if (coat.isEmpty()) {
        continue;
      }
      double used = wear.used(coat.get(), s, day);
      if (d.chance(0.85)) {
        SurfaceState state = d.chance(0.75) ? SurfaceState.WASHED : SurfaceState.DIRTY;
        note(visit, s, day, state, new Observation.WaterSeen(water(used, state)));
      }
      boolean measured = s.kind() == SurfaceKind.TOPSIDES && s.finish() != Finish.VINYL;
      if (measured) {
        note(visit, s, day, SurfaceState.WASHED, gloss(s, used));
      } else if (d.chance(0.25)) {
        note(
            visit,
            s,
            day,
            SurfaceState.WASHED,
            used > 1.1
                ? new Observation.FingerRub(RubLevel.CLEAR)
                : new Observation.EyeScale(used > 0.8 ? 3 : 2));
      }
    }
  }

  private Observation gloss(Surface s, double used) {
    double fresh = 86 + Math.floorMod(s.key().hashCode(), 6);
    double now = fresh * Math.pow(0.93, Math.min(1.6, used)) + 0.6 * d.random.nextGaussian();
    List<Double> readings =
        List.of(
            round(now + d.random.nextGaussian()),
            round(now + d.random.nextGaussian()),
            round(now + d.random.nextGaussian()));
    return new Observation.GlossRead(Geometry.DEG_60, readings, Optional.of("pocket meter"));
  }

  private static double round(double gloss) {
    return Math.round(gloss * 10) / 10.0;
  }

  /** Two touches after a plain wash: half of them without a look. */
  void twoTouch(Visit visit, List<Surface> surfaces, LocalDate day) {
    for (Surface s : surfaces) {
      Optional<Coat> coat = serving(s, day);
      if (coat.isPresent() && s.kind() == SurfaceKind.TOPSIDES) {
        boolean looked = d.chance(0.5);
        WaterBehaviour seen =
            looked
                ? water(wear.used(coat.get(), s, day), SurfaceState.WASHED)
                : WaterBehaviour.BEADS;
        add(
            Optional.of(visit),
            s,
            day,
            SurfaceState.WASHED,
            Entered.TWO_TOUCH,
            new Observation.WaterSeen(seen));
      }
    }
  }

  /** The owner complains that water no longer beads. */
  void complaint(Visit visit, List<Surface> surfaces, LocalDate day) {
    for (Surface s : surfaces) {
      if (s.kind() == SurfaceKind.FOREDECK && serving(s, day).isPresent()) {
        add(
            Optional.of(visit),
            s,
            day,
            SurfaceState.WAXY_SOAP,
            Entered.OWNER,
            new Observation.WaterSeen(WaterBehaviour.FLAT));
      }
      if (s.kind() == SurfaceKind.TOPSIDES && serving(s, day).isPresent()) {
        note(
            visit,
            s,
            day,
            SurfaceState.DECONTAMINATED,
            new Observation.WaterSeen(WaterBehaviour.SHEETS));
      }
    }
  }

  /** Seen bare on a washed surface, without a visit. */
  void bare(Surface s, LocalDate day) {
    add(
        Optional.empty(),
        s,
        day,
        SurfaceState.WASHED,
        Entered.GRID,
        new Observation.WaterSeen(WaterBehaviour.FLAT));
  }

  private WaterBehaviour water(double used, SurfaceState state) {
    boolean wrong = d.chance(state == SurfaceState.DIRTY ? 0.3 : 0.08);
    boolean alive = used < 1 != wrong;
    return alive
        ? (used < 0.7 ? WaterBehaviour.BEADS : WaterBehaviour.SHEETS)
        : WaterBehaviour.FLAT;
  }

  private Optional<Coat> serving(Surface s, LocalDate day) {
    return d.coats.stream()
        .filter(c -> c.surface().equals(s.id()) && c.ending().isEmpty() && c.since().isBefore(day))
        .filter(c -> c.laidOn().isPresent())
        .reduce((a, b) -> b);
  }

  private void note(Visit visit, Surface s, LocalDate day, SurfaceState state, Observation seen) {
    add(Optional.of(visit), s, day, state, d.chance(0.9) ? Entered.GRID : Entered.IMPORTED, seen);
  }

  private void add(
      Optional<Visit> visit,
      Surface s,
      LocalDate day,
      SurfaceState state,
      Entered entered,
      Observation seen) {
    d.findings.add(
        new Finding(
            d.id(),
            String.format("f-%05d", d.findings.size() + 1),
            s.id(),
            visit.map(Visit::id),
            day,
            state,
            entered,
            seen,
            ""));
  }
}
