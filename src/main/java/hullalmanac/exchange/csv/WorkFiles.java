package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Visits, what became of their surfaces, how they were moved, and their steps. */
final class WorkFiles {
  private WorkFiles() {}

  /** A visit without its surfaces and moves. */
  record VisitRow(Visit visit) {}

  /** One surface in a visit. */
  record PartRow(Id<Visit> visit, Visit.Part part) {}

  /** One move of a visit. */
  record MoveRow(Id<Visit> visit, Visit.Move move) {}

  private static List<Visit> inOrder(Almanac almanac) {
    return almanac.visits().stream().sorted(Comparator.comparing(Visit::key)).toList();
  }

  static final CsvKind<VisitRow> VISITS =
      new CsvKind<>(
          "visits.csv",
          Kind.VISIT,
          List.of(
              needText("id"),
              needText("boat"),
              need("day"),
              value("status"),
              value("why"),
              text("care_plan"),
              value("cancelled"),
              value("handover"),
              text("note"))) {
        @Override
        List<VisitRow> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream().map(VisitRow::new).toList();
        }

        @Override
        void write(VisitRow row, Out out) {
          Visit v = row.visit();
          out.put("id", v.key())
              .ref("boat", Kind.BOAT, v.boat())
              .put("day", v.day())
              .put("status", v.status())
              .put("why", v.why())
              .ref("care_plan", Kind.CARE_PLAN, v.plan())
              .put("cancelled", v.cancelled())
              .put("handover", v.handover())
              .put("note", v.note());
        }

        @Override
        Optional<VisitRow> read(In in) {
          Id<Visit> id = in.ref(Kind.VISIT, "id");
          Id<Boat> boat = in.ref(Kind.BOAT, "boat");
          LocalDate day = in.day("day");
          VisitStatus status = in.coded(VisitStatus.class, "status", VisitStatus.DONE);
          VisitWhy why = in.coded(VisitWhy.class, "why", VisitWhy.OTHER);
          Optional<Id<CarePlan>> plan = in.maybeRef(Kind.CARE_PLAN, "care_plan");
          Optional<MoveReason> cancelled = in.maybeCoded(MoveReason.class, "cancelled");
          Handover handover = in.coded(Handover.class, "handover", Handover.NOT_YET);
          return in.made(
              () ->
                  new VisitRow(
                      new Visit(
                          id,
                          in.key("id"),
                          boat,
                          day,
                          status,
                          why,
                          plan,
                          cancelled,
                          handover,
                          List.of(),
                          List.of(),
                          in.text("note"))));
        }
      };

  static final CsvKind<PartRow> VISIT_SURFACES =
      new CsvKind<>(
          "visit-surfaces.csv",
          Kind.VISIT,
          List.of(
              needText("visit"),
              needText("surface"),
              value("state"),
              value("done_on"),
              text("note"))) {
        @Override
        List<PartRow> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream()
              .flatMap(v -> v.surfaces().stream().map(p -> new PartRow(v.id(), p)))
              .toList();
        }

        @Override
        void write(PartRow row, Out out) {
          out.ref("visit", Kind.VISIT, row.visit())
              .ref("surface", Kind.SURFACE, row.part().surface())
              .put("state", row.part().state())
              .put("done_on", row.part().doneOn())
              .put("note", row.part().note());
        }

        @Override
        Optional<PartRow> read(In in) {
          Id<Visit> visit = in.ref(Kind.VISIT, "visit");
          Id<Surface> surface = in.ref(Kind.SURFACE, "surface");
          Optional<LocalDate> done = in.maybeDay("done_on");
          WorkState state =
              in.coded(
                  WorkState.class, "state", done.isPresent() ? WorkState.DONE : WorkState.PLANNED);
          return in.made(
              () -> new PartRow(visit, new Visit.Part(surface, state, done, in.text("note"))));
        }
      };

  static final CsvKind<MoveRow> VISIT_MOVES =
      new CsvKind<>(
          "visit-moves.csv",
          Kind.VISIT,
          List.of(needText("visit"), need("from"), need("to"), need("reason"))) {
        @Override
        List<MoveRow> rows(Almanac almanac, Keys keys) {
          return inOrder(almanac).stream()
              .flatMap(v -> v.moves().stream().map(m -> new MoveRow(v.id(), m)))
              .toList();
        }

        @Override
        void write(MoveRow row, Out out) {
          out.ref("visit", Kind.VISIT, row.visit())
              .put("from", row.move().from())
              .put("to", row.move().to())
              .put("reason", row.move().reason());
        }

        @Override
        Optional<MoveRow> read(In in) {
          Id<Visit> visit = in.ref(Kind.VISIT, "visit");
          LocalDate from = in.day("from");
          LocalDate to = in.day("to");
          MoveReason reason = in.coded(MoveReason.class, "reason", MoveReason.SELF);
          return in.made(() -> new MoveRow(visit, new Visit.Move(from, to, reason)));
        }
      };

  static final CsvKind<Step> STEPS =
      new CsvKind<>(
          "steps.csv",
          Kind.STEP,
          List.of(
              needText("id"),
              needText("visit"),
              value("order"),
              need("kind"),
              need("day"),
              text("surfaces"),
              text("product"),
              text("bottle"),
              value("parts_water"),
              text("pad"),
              text("speed"),
              value("passes"),
              value("minutes"),
              value("helper_minutes"),
              value("timed_since"),
              value("air_celsius"),
              value("humidity"),
              value("surface_celsius"),
              value("climate_at"),
              text("note"))) {
        @Override
        List<Step> rows(Almanac almanac, Keys keys) {
          return almanac.steps().stream().sorted(Comparator.comparing(Step::key)).toList();
        }

        @Override
        void write(Step s, Out out) {
          out.put("id", s.key())
              .ref("visit", Kind.VISIT, s.visit())
              .put("order", s.order())
              .put("kind", s.kind())
              .put("day", s.day())
              .refs("surfaces", Kind.SURFACE, s.surfaces())
              .ref("product", Kind.PRODUCT, s.product())
              .ref("bottle", Kind.BOTTLE, s.bottle())
              .put("parts_water", s.partsWater())
              .put("pad", s.pad())
              .put("speed", s.speed())
              .put("passes", s.passes())
              .put("minutes", s.minutes())
              .put("helper_minutes", s.helperMinutes())
              .put("timed_since", s.timedSince())
              .put("air_celsius", s.climate().map(Climate::air))
              .put("humidity", s.climate().map(Climate::humidity))
              .put("surface_celsius", s.climate().map(Climate::surface))
              .put("climate_at", s.climate().map(Climate::takenAt))
              .put("note", s.note());
        }

        @Override
        Optional<Step> read(In in) {
          Id<Step> id = in.ref(Kind.STEP, "id");
          Id<Visit> visit = in.ref(Kind.VISIT, "visit");
          int order = in.maybeWhole("order").orElse(1);
          StepKind kind = in.coded(StepKind.class, "kind", StepKind.OTHER);
          LocalDate day = in.day("day");
          List<Id<Surface>> surfaces = in.refs(Kind.SURFACE, "surfaces");
          Optional<Id<Product>> product = in.maybeRef(Kind.PRODUCT, "product");
          Optional<Id<Bottle>> bottle = in.maybeRef(Kind.BOTTLE, "bottle");
          Optional<Integer> water = in.maybeWhole("parts_water");
          Optional<Integer> passes = in.maybeWhole("passes");
          Optional<Integer> minutes = in.maybeWhole("minutes");
          Optional<Integer> helper = in.maybeWhole("helper_minutes");
          Optional<Instant> timed = in.maybeInstant("timed_since");
          Optional<Climate> climate = climate(in);
          return in.made(
              () ->
                  new Step(
                      id,
                      in.key("id"),
                      visit,
                      order,
                      kind,
                      day,
                      surfaces,
                      product,
                      bottle,
                      water,
                      in.text("pad"),
                      in.text("speed"),
                      passes,
                      minutes,
                      helper,
                      timed,
                      climate,
                      in.text("note")));
        }
      };

  private static Optional<Climate> climate(In in) {
    Optional<Double> air = in.maybeReal("air_celsius");
    Optional<Double> humidity = in.maybeReal("humidity");
    Optional<Double> surface = in.maybeReal("surface_celsius");
    Optional<LocalDateTime> at = in.maybeTime("climate_at");
    long given = Stream.of(air, humidity, surface, at).filter(Optional::isPresent).count();
    if (given > 0 && given < 4) {
      in.problem(
          "climate_at",
          "a reading has air, humidity, surface and time",
          "Fill all four columns of the reading, or none");
    }
    return given < 4
        ? Optional.empty()
        : in.made(() -> new Climate(air.get(), humidity.get(), surface.get(), at.get()));
  }
}
