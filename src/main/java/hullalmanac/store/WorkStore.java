package hullalmanac.store;

import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Visits and their steps. */
final class WorkStore {
  private static final Columns VISIT =
      Columns.of(
          "visit",
          """
          id
          key
          boat_id
          day
          status
          why
          care_plan_id
          cancelled
          handover
          note
          """);

  private static final Columns VISIT_SURFACE =
      Columns.of(
          "visit_surface",
          """
          visit_id
          place
          surface_id
          state
          done_on
          note
          """);

  private static final Columns VISIT_MOVE =
      Columns.of(
          "visit_move",
          """
          visit_id
          place
          from_day
          to_day
          reason
          """);

  private static final Columns STEP =
      Columns.of(
          "step",
          """
          id
          key
          visit_id
          place
          kind
          day
          product_id
          bottle_id
          parts_water
          pad
          speed
          passes
          minutes
          helper_minutes
          timed_since
          air_celsius
          humidity
          surface_celsius
          climate_at
          note
          """);

  private static final Columns STEP_SURFACE =
      Columns.of(
          "step_surface",
          """
          step_id
          place
          surface_id
          """);

  private final Tx tx;

  WorkStore(Tx tx) {
    this.tx = tx;
  }

  List<Visit> visits() throws SQLException {
    Map<Long, List<Visit.Part>> parts = Placed.gather(parts());
    Map<Long, List<Visit.Move>> moves = Placed.gather(moves());
    return tx.list(
        VISIT.select("id"),
        row ->
            new Visit(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.day("day"),
                row.coded(VisitStatus.class, "status"),
                row.coded(VisitWhy.class, "why"),
                row.maybeId("care_plan_id"),
                row.maybeCoded(MoveReason.class, "cancelled"),
                row.coded(Handover.class, "handover"),
                parts.getOrDefault(row.number("id"), List.of()),
                moves.getOrDefault(row.number("id"), List.of()),
                row.text("note")));
  }

  private List<Placed<Visit, Visit.Part>> parts() throws SQLException {
    return tx.list(
        VISIT_SURFACE.select("visit_id, place"),
        row ->
            new Placed<>(
                row.id("visit_id"),
                row.whole("place"),
                new Visit.Part(
                    row.id("surface_id"),
                    row.coded(WorkState.class, "state"),
                    row.maybeDay("done_on"),
                    row.text("note"))));
  }

  private List<Placed<Visit, Visit.Move>> moves() throws SQLException {
    return tx.list(
        VISIT_MOVE.select("visit_id, place"),
        row ->
            new Placed<>(
                row.id("visit_id"),
                row.whole("place"),
                new Visit.Move(
                    row.day("from_day"),
                    row.day("to_day"),
                    row.coded(MoveReason.class, "reason"))));
  }

  void putVisits(List<Visit> visits) throws SQLException {
    tx.each(
        VISIT.put(),
        visits,
        (to, v) ->
            to.set("id", v.id())
                .set("key", v.key())
                .set("boat_id", v.boat())
                .set("day", v.day())
                .set("status", v.status())
                .set("why", v.why())
                .set("care_plan_id", v.plan())
                .set("cancelled", v.cancelled())
                .set("handover", v.handover())
                .set("note", v.note()));
    List<Placed<Visit, Visit.Part>> parts =
        visits.stream().flatMap(v -> Placed.place(v.id(), v.surfaces()).stream()).toList();
    tx.each(
        VISIT_SURFACE.cut(),
        visits,
        (to, v) -> to.set("visit_id", v.id()).set("place", v.surfaces().size()));
    tx.each(
        VISIT_SURFACE.put(),
        parts,
        (to, p) ->
            to.set("visit_id", p.owner())
                .set("place", p.place())
                .set("surface_id", p.item().surface())
                .set("state", p.item().state())
                .set("done_on", p.item().doneOn())
                .set("note", p.item().note()));
    List<Placed<Visit, Visit.Move>> moves =
        visits.stream().flatMap(v -> Placed.place(v.id(), v.moves()).stream()).toList();
    tx.each(
        VISIT_MOVE.cut(),
        visits,
        (to, v) -> to.set("visit_id", v.id()).set("place", v.moves().size()));
    tx.each(
        VISIT_MOVE.put(),
        moves,
        (to, m) ->
            to.set("visit_id", m.owner())
                .set("place", m.place())
                .set("from_day", m.item().from())
                .set("to_day", m.item().to())
                .set("reason", m.item().reason()));
  }

  List<Step> steps() throws SQLException {
    List<Placed<Step, Id<Surface>>> placed =
        tx.list(
            STEP_SURFACE.select("step_id, place"),
            row -> new Placed<>(row.id("step_id"), row.whole("place"), row.id("surface_id")));
    Map<Long, List<Id<Surface>>> surfaces = Placed.gather(placed);
    return tx.list(
        STEP.select("id"),
        row ->
            new Step(
                row.id("id"),
                row.text("key"),
                row.id("visit_id"),
                row.whole("place"),
                row.coded(StepKind.class, "kind"),
                row.day("day"),
                surfaces.getOrDefault(row.number("id"), List.of()),
                row.maybeId("product_id"),
                row.maybeId("bottle_id"),
                row.maybeWhole("parts_water"),
                row.text("pad"),
                row.text("speed"),
                row.maybeWhole("passes"),
                row.maybeWhole("minutes"),
                row.maybeWhole("helper_minutes"),
                row.maybeInstant("timed_since"),
                climate(row),
                row.text("note")));
  }

  private static Optional<Climate> climate(Cells row) throws SQLException {
    Optional<LocalDateTime> at = row.maybeTime("climate_at");
    return at.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Climate(
                row.real("air_celsius"),
                row.real("humidity"),
                row.real("surface_celsius"),
                at.get()));
  }

  void putSteps(List<Step> steps) throws SQLException {
    tx.each(
        STEP.put(),
        steps,
        (to, s) ->
            to.set("id", s.id())
                .set("key", s.key())
                .set("visit_id", s.visit())
                .set("place", s.order())
                .set("kind", s.kind())
                .set("day", s.day())
                .set("product_id", s.product())
                .set("bottle_id", s.bottle())
                .set("parts_water", s.partsWater())
                .set("pad", s.pad())
                .set("speed", s.speed())
                .set("passes", s.passes())
                .set("minutes", s.minutes())
                .set("helper_minutes", s.helperMinutes())
                .set("timed_since", s.timedSince())
                .set("air_celsius", s.climate().map(Climate::air))
                .set("humidity", s.climate().map(Climate::humidity))
                .set("surface_celsius", s.climate().map(Climate::surface))
                .set("climate_at", s.climate().map(Climate::takenAt))
                .set("note", s.note()));
    List<Placed<Step, Id<Surface>>> surfaces =
        steps.stream().flatMap(s -> Placed.place(s.id(), s.surfaces()).stream()).toList();
    tx.each(
        STEP_SURFACE.cut(),
        steps,
        (to, s) -> to.set("step_id", s.id()).set("place", s.surfaces().size()));
    tx.each(
        STEP_SURFACE.put(),
        surfaces,
        (to, p) ->
            to.set("step_id", p.owner()).set("place", p.place()).set("surface_id", p.item()));
  }
}
