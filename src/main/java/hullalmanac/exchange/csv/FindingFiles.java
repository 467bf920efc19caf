package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.ObservationText;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Findings and photos. */
final class FindingFiles {
  private FindingFiles() {}

  static final CsvKind<Finding> FINDINGS =
      new CsvKind<>(
          "findings.csv",
          Kind.FINDING,
          List.of(
              needText("id"),
              needText("surface"),
              text("visit"),
              need("day"),
              value("moment"),
              value("state"),
              value("entered"),
              need("what"),
              needText("value"),
              value("scale"),
              value("geometry"),
              text("meter"),
              text("told_whom"),
              value("told_on"),
              text("note"))) {
        @Override
        List<Finding> rows(Almanac almanac, Keys keys) {
          return almanac.findings().stream().sorted(Comparator.comparing(Finding::key)).toList();
        }

        @Override
        void write(Finding f, Out out) {
          ObservationText seen = ObservationText.of(f.seen());
          out.put("id", f.key())
              .ref("surface", Kind.SURFACE, f.surface())
              .ref("visit", Kind.VISIT, f.visit())
              .put("day", f.day())
              .put("moment", f.moment())
              .put("state", f.state())
              .put("entered", f.entered())
              .put("what", seen.what())
              .put("value", seen.readings().isEmpty() ? seen.value() : seen.readings())
              .put("scale", seen.scale())
              .put("geometry", seen.geometry())
              .put("meter", seen.meter())
              .put("told_whom", seen.told().map(Observation.Told::whom))
              .put("told_on", seen.told().map(Observation.Told::on))
              .put("note", f.note());
        }

        @Override
        Optional<Finding> read(In in) {
          Id<Finding> id = in.ref(Kind.FINDING, "id");
          Id<Surface> surface = in.ref(Kind.SURFACE, "surface");
          Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
          LocalDate day = in.day("day");
          Optional<Moment> moment = in.maybeCoded(Moment.class, "moment");
          SurfaceState state = in.coded(SurfaceState.class, "state", SurfaceState.WASHED);
          Entered entered = in.coded(Entered.class, "entered", Entered.IMPORTED);
          Optional<ObservationText> seen = seen(in, day);
          return in.made(
              () ->
                  new Finding(
                      id,
                      in.key("id"),
                      surface,
                      visit,
                      day,
                      moment,
                      state,
                      entered,
                      seen.orElseThrow().observation(),
                      in.text("note")));
        }
      };

  private static Optional<ObservationText> seen(In in, LocalDate day) {
    String what = in.key("what").toLowerCase(Locale.ROOT);
    Optional<Observation.Told> told = told(in, day);
    if (told.isPresent() && !what.equals("damage")) {
      in.problem(
          "told_whom",
          "somebody was told of " + what + ", and not of damage",
          "Leave told_whom empty, or write damage under what");
    }
    boolean gloss = what.equals("gloss");
    List<Double> readings =
        gloss ? in.list("value", in::realOf, "Write gloss readings as 85.5|86.1|84.9") : List.of();
    return in.made(
        () ->
            new ObservationText(
                what,
                gloss ? "" : what.equals("damage") ? in.text("value") : in.key("value"),
                Optional.of(in.key("scale")).filter(s -> !s.isEmpty()),
                Optional.of(in.key("geometry")).filter(g -> !g.isEmpty()),
                readings,
                in.maybeText("meter"),
                told));
  }

  /** Who was told; on the day of the finding when no other is given. */
  private static Optional<Observation.Told> told(In in, LocalDate day) {
    Optional<LocalDate> on = in.maybeDay("told_on");
    Optional<String> whom = in.maybeText("told_whom").filter(t -> !t.isBlank());
    if (whom.isEmpty() && on.isPresent()) {
      in.problem(
          "told_whom", "the day is given, but not who was told", "Write who, or leave both empty");
    }
    return whom.map(w -> new Observation.Told(w, on.orElse(day)));
  }

  static final CsvKind<Photo> PHOTOS =
      new CsvKind<>(
          "photos.csv",
          Kind.PHOTO,
          List.of(
              needText("id"),
              needText("boat"),
              text("surface"),
              text("visit"),
              value("taken_at"),
              value("moment"),
              need("file"),
              text("caption"))) {
        @Override
        List<Photo> rows(Almanac almanac, Keys keys) {
          return almanac.photos().stream().sorted(Comparator.comparing(Photo::key)).toList();
        }

        @Override
        void write(Photo p, Out out) {
          out.put("id", p.key())
              .ref("boat", Kind.BOAT, p.boat())
              .ref("surface", Kind.SURFACE, p.surface())
              .ref("visit", Kind.VISIT, p.visit())
              .put("taken_at", p.takenAt())
              .put("moment", p.moment())
              .put("file", p.file())
              .put("caption", p.caption());
        }

        @Override
        Optional<Photo> read(In in) {
          Id<Photo> id = in.ref(Kind.PHOTO, "id");
          Id<Boat> boat = in.ref(Kind.BOAT, "boat");
          Optional<Id<Surface>> surface = in.maybeRef(Kind.SURFACE, "surface");
          Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
          Optional<LocalDateTime> taken = in.maybeTime("taken_at");
          Moment moment = in.coded(Moment.class, "moment", Moment.OTHER);
          return in.made(
              () ->
                  new Photo(
                      id,
                      in.key("id"),
                      boat,
                      surface,
                      visit,
                      taken,
                      moment,
                      in.key("file"),
                      in.text("caption")));
        }
      };
}
