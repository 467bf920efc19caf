package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Coats and makers' duties. */
final class CoatFiles {
  private CoatFiles() {}

  static final CsvKind<Coat> COATS =
      new CsvKind<>(
          "coats.csv",
          Kind.COAT,
          List.of(
              needText("id"),
              needText("surface"),
              needText("product"),
              value("coated_on"),
              value("known_from"),
              text("visit"),
              text("bottle"),
              text("batch"),
              value("layers"),
              text("over"),
              value("ended_on"),
              value("ended_how"),
              value("ended_seen"),
              text("ended_reason"),
              text("note"))) {
        @Override
        List<Coat> rows(Almanac almanac, Keys keys) {
          return almanac.coats().stream().sorted(Comparator.comparing(Coat::key)).toList();
        }

        @Override
        void write(Coat c, Out out) {
          out.put("id", c.key())
              .ref("surface", Kind.SURFACE, c.surface())
              .ref("product", Kind.PRODUCT, c.product())
              .put("coated_on", c.laidOn())
              .put("known_from", c.knownFrom())
              .ref("visit", Kind.VISIT, c.visit())
              .ref("bottle", Kind.BOTTLE, c.bottle())
              .put("batch", c.batch())
              .put("layers", c.layers())
              .ref("over", Kind.COAT, c.over())
              .put("ended_on", c.ending().map(Coat.Ending::on))
              .put("ended_how", c.ending().map(Coat.Ending::how))
              .put("ended_seen", c.ending().map(Coat.Ending::seen))
              .put("ended_reason", c.ending().map(Coat.Ending::reason))
              .put("note", c.note());
        }

        @Override
        Optional<Coat> read(In in) {
          Id<Coat> id = in.ref(Kind.COAT, "id");
          Id<Surface> surface = in.ref(Kind.SURFACE, "surface");
          Id<Product> product = in.ref(Kind.PRODUCT, "product");
          Optional<LocalDate> laid = in.maybeDay("coated_on");
          Optional<LocalDate> known = in.maybeDay("known_from");
          Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
          Optional<Id<Bottle>> bottle = in.maybeRef(Kind.BOTTLE, "bottle");
          int layers = in.maybeWhole("layers").orElse(1);
          Optional<Id<Coat>> over = in.maybeRef(Kind.COAT, "over");
          Optional<Coat.Ending> ending = ending(in);
          return in.made(
              () ->
                  new Coat(
                      id,
                      in.key("id"),
                      surface,
                      product,
                      laid,
                      known,
                      visit,
                      bottle,
                      in.text("batch"),
                      layers,
                      over,
                      ending,
                      in.text("note")));
        }
      };

  private static Optional<Coat.Ending> ending(In in) {
    Optional<LocalDate> on = in.maybeDay("ended_on");
    Optional<CoatEnd> how = in.maybeCoded(CoatEnd.class, "ended_how");
    EndState seen = in.coded(EndState.class, "ended_seen", EndState.NOT_LOOKED);
    String reason = in.text("ended_reason");
    if (on.isEmpty() && (how.isPresent() || !reason.isEmpty())) {
      in.problem(
          "ended_on", "it is said how the coat ended, but not when", "Write the day as 2026-05-01");
    }
    return on.map(day -> new Coat.Ending(day, how.orElse(CoatEnd.RENEWED), seen, reason));
  }

  static final CsvKind<Duty> DUTIES =
      new CsvKind<>(
          "duties.csv",
          Kind.DUTY,
          List.of(
              needText("id"),
              needText("coat"),
              need("kind"),
              need("due_on"),
              value("done_on"),
              text("note"))) {
        @Override
        List<Duty> rows(Almanac almanac, Keys keys) {
          return almanac.duties().stream().sorted(Comparator.comparing(Duty::key)).toList();
        }

        @Override
        void write(Duty d, Out out) {
          out.put("id", d.key())
              .ref("coat", Kind.COAT, d.coat())
              .put("kind", d.kind())
              .put("due_on", d.dueOn())
              .put("done_on", d.doneOn())
              .put("note", d.note());
        }

        @Override
        Optional<Duty> read(In in) {
          Id<Duty> id = in.ref(Kind.DUTY, "id");
          Id<Coat> coat = in.ref(Kind.COAT, "coat");
          DutyKind kind = in.coded(DutyKind.class, "kind", DutyKind.INSPECTION);
          LocalDate due = in.day("due_on");
          Optional<LocalDate> done = in.maybeDay("done_on");
          return in.made(() -> new Duty(id, in.key("id"), coat, kind, due, done, in.text("note")));
        }
      };
}
