package hullalmanac.store;

import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.ObservationText;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.SurfaceState;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings and photos. */
final class FindingStore {
  private static final Columns FINDING =
      Columns.of(
          "finding",
          """
          id
          key
          surface_id
          visit_id
          day
          moment
          state
          entered
          what
          value
          scale
          geometry
          meter
          told_whom
          told_on
          note
          """);

  private static final Columns GLOSS_READING =
      Columns.of(
          "gloss_reading",
          """
          finding_id
          place
          gloss
          """);

  private static final Columns PHOTO =
      Columns.of(
          "photo",
          """
          id
          key
          boat_id
          surface_id
          visit_id
          taken_at
          moment
          file
          caption
          """);

  private final Tx tx;

  FindingStore(Tx tx) {
    this.tx = tx;
  }

  private record Reading(Id<Finding> finding, int place, double gloss) {}

  private record Fields(Finding finding, ObservationText seen) {}

  List<Finding> findings() throws SQLException {
    Map<Long, List<Double>> readings = new HashMap<>();
    tx.list(
            GLOSS_READING.select("finding_id, place"),
            row -> new Reading(row.id("finding_id"), row.whole("place"), row.real("gloss")))
        .forEach(
            r ->
                readings
                    .computeIfAbsent(r.finding().value(), id -> new ArrayList<>())
                    .add(r.gloss()));
    return tx.list(
        FINDING.select("id"),
        row ->
            new Finding(
                row.id("id"),
                row.text("key"),
                row.id("surface_id"),
                row.maybeId("visit_id"),
                row.day("day"),
                row.maybeCoded(Moment.class, "moment"),
                row.coded(SurfaceState.class, "state"),
                row.coded(Entered.class, "entered"),
                new ObservationText(
                        row.text("what"),
                        row.text("value"),
                        row.maybeText("scale"),
                        row.maybeText("geometry"),
                        readings.getOrDefault(row.number("id"), List.of()),
                        row.maybeText("meter"),
                        told(row))
                    .observation(),
                row.text("note")));
  }

  private static Optional<Observation.Told> told(Cells row) throws SQLException {
    Optional<String> whom = row.maybeText("told_whom");
    return whom.isEmpty()
        ? Optional.empty()
        : Optional.of(new Observation.Told(whom.get(), row.day("told_on")));
  }

  void putFindings(List<Finding> findings) throws SQLException {
    List<Fields> fields =
        findings.stream().map(f -> new Fields(f, ObservationText.of(f.seen()))).toList();
    tx.each(
        FINDING.put(),
        fields,
        (to, f) ->
            to.set("id", f.finding().id())
                .set("key", f.finding().key())
                .set("surface_id", f.finding().surface())
                .set("visit_id", f.finding().visit())
                .set("day", f.finding().day())
                .set("moment", f.finding().moment())
                .set("state", f.finding().state())
                .set("entered", f.finding().entered())
                .set("what", f.seen().what())
                .set("value", f.seen().value())
                .set("scale", f.seen().scale())
                .set("geometry", f.seen().geometry())
                .set("meter", f.seen().meter())
                .set("told_whom", f.seen().told().map(Observation.Told::whom))
                .set("told_on", f.seen().told().map(Observation.Told::on))
                .set("note", f.finding().note()));
    List<Reading> readings = new ArrayList<>();
    for (Fields f : fields) {
      for (int i = 0; i < f.seen().readings().size(); i++) {
        readings.add(new Reading(f.finding().id(), i + 1, f.seen().readings().get(i)));
      }
    }
    tx.each(
        GLOSS_READING.cut(),
        fields,
        (to, f) -> to.set("finding_id", f.finding().id()).set("place", f.seen().readings().size()));
    tx.each(
        GLOSS_READING.put(),
        readings,
        (to, r) ->
            to.set("finding_id", r.finding()).set("place", r.place()).set("gloss", r.gloss()));
  }

  List<Photo> photos() throws SQLException {
    return tx.list(
        PHOTO.select("id"),
        row ->
            new Photo(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.maybeId("surface_id"),
                row.maybeId("visit_id"),
                row.maybeTime("taken_at"),
                row.coded(Moment.class, "moment"),
                row.text("file"),
                row.text("caption")));
  }

  void putPhotos(List<Photo> photos) throws SQLException {
    tx.each(
        PHOTO.put(),
        photos,
        (to, p) ->
            to.set("id", p.id())
                .set("key", p.key())
                .set("boat_id", p.boat())
                .set("surface_id", p.surface())
                .set("visit_id", p.visit())
                .set("taken_at", p.takenAt())
                .set("moment", p.moment())
                .set("file", p.file())
                .set("caption", p.caption()));
  }
}
