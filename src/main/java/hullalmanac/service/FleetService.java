package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.photo.Thumbnails;
import java.time.LocalDate;
import java.util.Optional;

/** Reads the record for those who show what is due. */
public interface FleetService {
  /** Reads the record's contents; touches the file, so for the database lane. */
  Almanac read();

  /** The day the record is worked on; may touch the file. */
  LocalDate today();

  /** Where the record lies and how it is kept, in words; may touch the file. */
  String status();

  /**
   * A photo, small and upright; touches its file, so for the database lane.
   *
   * @param file its name among the photos of the record
   * @param side of the square that it fits in, in pixels
   * @return nothing when it cannot be drawn
   */
  default Optional<Pixels> picture(String file, int side) {
    return Optional.empty();
  }

  /** Reads an open record. */
  static FleetService of(RecordService record) {
    return new FleetService() {
      @Override
      public Almanac read() {
        return record.almanac();
      }

      @Override
      public LocalDate today() {
        return record.today();
      }

      @Override
      public Optional<Pixels> picture(String file, int side) {
        return Thumbnails.pixels(record.photos().resolve(file), side);
      }

      @Override
      public String status() {
        String copy =
            record.newestCopy().map(day -> "last good copy " + day).orElse("no copy needed yet");
        String saved = record.saved().map(t -> String.format(" %tR", t)).orElse("");
        return (record.readOnly() ? "Open to read only · " : "All changes saved" + saved + " · ")
            + copy;
      }
    };
  }
}
