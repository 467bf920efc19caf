package hullalmanac.core.life;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What was read of each coat, kept with all that it rests on: read again only when any of that has
 * changed. It is handed from one forecaster to the next; the answers are the same without it.
 */
final class Known {
  /** A coat that lies under toppers is read twice: as it teaches, and as it is forecast. */
  private static final int READINGS = 2;

  private final Map<Id<Coat>, List<Entry>> coats;
  private final Map<Id<Coat>, Lives.Taught> lessons;

  private record Entry(Object content, Evidence evidence) {}

  private Known(Map<Id<Coat>, List<Entry>> coats, Map<Id<Coat>, Lives.Taught> lessons) {
    this.coats = coats;
    this.lessons = lessons;
  }

  static Known nothing() {
    return new Known(new HashMap<>(), new HashMap<>());
  }

  /** A copy to go on with. */
  Known copy() {
    return new Known(new HashMap<>(coats), new HashMap<>(lessons));
  }

  /**
   * The evidence of a coat, kept or read.
   *
   * @param content all that the evidence rests on
   */
  Evidence evidence(Coat coat, Object content, Supplier<Evidence> read) {
    List<Entry> kept = coats.getOrDefault(coat.id(), List.of());
    for (Entry entry : kept) {
      if (entry.content().equals(content)) {
        return entry.evidence();
      }
    }
    Entry fresh = new Entry(content, read.get());
    coats.put(coat.id(), Stream.concat(Stream.of(fresh), kept.stream()).limit(READINGS).toList());
    return fresh.evidence();
  }

  /** The lesson of the same evidence with the same share, where one was drawn. */
  Optional<Lives.Taught> lesson(Coat coat, Evidence evidence, double share) {
    return Optional.ofNullable(lessons.get(coat.id()))
        .filter(t -> t.drawnFrom(evidence) && t.share() == share && t.coat().equals(coat));
  }

  /** Keeps a lesson. */
  Lives.Taught keep(Lives.Taught lesson) {
    lessons.put(lesson.coat().id(), lesson);
    return lesson;
  }
}
