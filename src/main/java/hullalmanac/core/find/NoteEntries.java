package hullalmanac.core.find;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is found by words written down at work: notes of visits and findings, captions of photos.
 */
final class NoteEntries {
  private final Rows rows;
  private final List<Entry> entries = new ArrayList<>();

  private NoteEntries(Rows rows) {
    this.rows = rows;
  }

  static List<Entry> of(Rows rows) {
    NoteEntries all = new NoteEntries(rows);
    all.visits();
    all.findings();
    all.photos();
    return all.entries;
  }

  private void add(
      HitKind kind, String text, String about, Optional<LocalDate> day, Target.OnBoat target) {
    if (!text.isBlank()) {
      Boat boat = rows.boats.get(target.boat());
      String detail = Rows.joined(boat.name(), about, day.map(Rows::day).orElse(""));
      entries.add(
          new Entry(
              new Hit(kind, text, detail, target),
              false,
              Rows.gone(boat),
              day.map(LocalDate::toEpochDay).orElse(0L),
              List.of(),
              List.of()));
    }
  }

  private void visits() {
    for (Visit visit : rows.almanac.visits()) {
      Target.OnBoat target = new Target.ToVisit(visit.id(), visit.boat());
      add(HitKind.VISIT, visit.note(), "", Optional.of(visit.day()), target);
      for (Visit.Part part : visit.surfaces()) {
        add(
            HitKind.VISIT,
            part.note(),
            words(part.surface()),
            part.doneOn().or(() -> Optional.of(visit.day())),
            target);
      }
    }
    for (Step step : rows.almanac.steps()) {
      Visit visit = rows.visits.get(step.visit());
      add(
          HitKind.VISIT,
          step.note(),
          step.kind().words(),
          Optional.of(step.day()),
          new Target.ToVisit(visit.id(), visit.boat()));
    }
  }

  private void findings() {
    for (Finding finding : rows.almanac.findings()) {
      Target.OnBoat target =
          new Target.ToFinding(finding.id(), rows.surfaces.get(finding.surface()).boat());
      String surface = words(finding.surface());
      if (finding.seen() instanceof Observation.Damage damage) {
        String told = damage.told().map(t -> "told " + t.whom()).orElse("");
        add(
            HitKind.FINDING,
            damage.text(),
            Rows.joined(surface, told),
            Optional.of(finding.day()),
            target);
      }
      add(HitKind.FINDING, finding.note(), surface, Optional.of(finding.day()), target);
    }
  }

  private void photos() {
    for (Photo photo : rows.almanac.photos()) {
      add(
          HitKind.PHOTO,
          photo.caption(),
          photo.surface().map(this::words).orElse(""),
          photo.takenAt().map(t -> t.toLocalDate()),
          new Target.ToPhoto(photo.id(), photo.boat()));
    }
  }

  private String words(Id<Surface> surface) {
    return rows.surfaces.get(surface).words();
  }
}
