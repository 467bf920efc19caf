package hullalmanac.present.edit;

import hullalmanac.core.report.DateWords;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is said of photos. */
final class PhotoWords {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final int MOST_TOLD = 3;
  private static final int NAMED = 8;

  private PhotoWords() {}

  /** When a photo was taken, seen from the day of its visit. */
  static String when(Optional<LocalDateTime> takenAt, Optional<LocalDate> day) {
    return takenAt
        .map(
            t ->
                day.equals(Optional.of(t.toLocalDate()))
                    ? CLOCK.format(t)
                    : DateWords.dated(t.toLocalDate()) + ", " + CLOCK.format(t))
        .orElse("time not known");
  }

  /** Enough of a name made from a content to find the file by. */
  static String brief(String file) {
    return file.substring(0, NAMED) + "…" + file.substring(file.indexOf('.'));
  }

  static String count(int photos) {
    return photos == 1 ? "a photo" : photos + " photos";
  }

  /** What did not go as wished; nothing where all did. */
  static Optional<String> trouble(List<String> refused, int already) {
    List<String> all = new ArrayList<>(refused.stream().distinct().limit(MOST_TOLD).toList());
    if (refused.stream().distinct().count() > MOST_TOLD) {
      all.add("And " + (refused.size() - MOST_TOLD) + " more like these.");
    }
    if (already > 0) {
      all.add(
          already == 1
              ? "One photo is in this visit already."
              : already + " photos are in their visit already.");
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", all));
  }
}
