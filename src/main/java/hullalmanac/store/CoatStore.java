package hullalmanac.store;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.EndState;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Coats and makers' duties. */
final class CoatStore {
  private static final Columns COAT =
      Columns.of(
          "coat",
          """
          id
          key
          surface_id
          product_id
          laid_on
          known_from
          visit_id
          bottle_id
          batch
          layers
          over_id
          ended_on
          ended_how
          ended_seen
          ended_reason
          note
          """);

  private static final Columns DUTY =
      Columns.of(
          "duty",
          """
          id
          key
          coat_id
          kind
          due_on
          done_on
          note
          """);

  private final Tx tx;

  CoatStore(Tx tx) {
    this.tx = tx;
  }

  List<Coat> coats() throws SQLException {
    return tx.list(
        COAT.select("id"),
        row ->
            new Coat(
                row.id("id"),
                row.text("key"),
                row.id("surface_id"),
                row.id("product_id"),
                row.maybeDay("laid_on"),
                row.maybeDay("known_from"),
                row.maybeId("visit_id"),
                row.maybeId("bottle_id"),
                row.text("batch"),
                row.whole("layers"),
                row.maybeId("over_id"),
                ending(row),
                row.text("note")));
  }

  private static Optional<Coat.Ending> ending(Cells row) throws SQLException {
    Optional<LocalDate> on = row.maybeDay("ended_on");
    return on.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Coat.Ending(
                on.get(),
                row.coded(CoatEnd.class, "ended_how"),
                row.coded(EndState.class, "ended_seen"),
                row.text("ended_reason")));
  }

  /** Adds coats, those that lie over others after them. */
  void putCoats(List<Coat> coats) throws SQLException {
    tx.each(
        COAT.put(),
        coats,
        (to, c) ->
            to.set("id", c.id())
                .set("key", c.key())
                .set("surface_id", c.surface())
                .set("product_id", c.product())
                .set("laid_on", c.laidOn())
                .set("known_from", c.knownFrom())
                .set("visit_id", c.visit())
                .set("bottle_id", c.bottle())
                .set("batch", c.batch())
                .set("layers", c.layers())
                .set("over_id", c.over())
                .set("ended_on", c.ending().map(Coat.Ending::on))
                .set("ended_how", c.ending().map(Coat.Ending::how))
                .set("ended_seen", c.ending().map(Coat.Ending::seen))
                .set("ended_reason", c.ending().map(Coat.Ending::reason))
                .set("note", c.note()));
  }

  List<Duty> duties() throws SQLException {
    return tx.list(
        DUTY.select("id"),
        row ->
            new Duty(
                row.id("id"),
                row.text("key"),
                row.id("coat_id"),
                row.coded(DutyKind.class, "kind"),
                row.day("due_on"),
                row.maybeDay("done_on"),
                row.text("note")));
  }

  void putDuties(List<Duty> duties) throws SQLException {
    tx.each(
        DUTY.put(),
        duties,
        (to, d) ->
            to.set("id", d.id())
                .set("key", d.key())
                .set("coat_id", d.coat())
                .set("kind", d.kind())
                .set("due_on", d.dueOn())
                .set("done_on", d.doneOn())
                .set("note", d.note()));
  }
}
