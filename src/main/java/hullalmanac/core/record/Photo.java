package hullalmanac.core.record;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A photo kept in the record's {@code photos} folder under a name made from its content.
 *
 * @param file name in {@code photos}: the SHA-256 of the content in hex, and the ending of its
 *     format
 * @param takenAt local time at which it was taken; absent when the file does not say
 */
public record Photo(
    Id<Photo> id,
    String key,
    Id<Boat> boat,
    Optional<Id<Surface>> surface,
    Optional<Id<Visit>> visit,
    Optional<LocalDateTime> takenAt,
    Moment moment,
    String file,
    String caption)
    implements Row {
  public Photo {
    Texts.key(key);
    requireName(file);
  }

  static void requireName(String file) {
    if (!file.matches("[0-9a-f]{64}\\.[a-z0-9]{2,5}")) {
      throw new IllegalArgumentException(
          "a photo's file name is a SHA-256 in hex and an ending, not " + file);
    }
  }
}
