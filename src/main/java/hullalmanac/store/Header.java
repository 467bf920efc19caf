package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The first hundred bytes of a database file, read before SQLite touches it.
 *
 * <p>References: SQLite database file format, section 1.3, offsets 0 (magic), 60 (user version) and
 * 68 (application id).
 */
record Header(int applicationId, int userVersion) {
  /** Marks a file as a record of this program: "HALM". */
  static final int APPLICATION_ID = 0x48414C4D;

  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
  private static final int LENGTH = 100;

  /**
   * Reads the header of a file that is there.
   *
   * @throws RecordException when it is no database, or cannot be read
   */
  static Header read(Path file) {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(LENGTH);
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER, "The record " + file + " cannot be read. Look whether its disk answers.", e);
    }
    for (int i = 0; i < MAGIC.length; i++) {
      if (bytes.length < LENGTH || bytes[i] != MAGIC[i]) {
        throw new RecordException(
            Kind.NOT_OURS,
            file
                + " is not a record of Hull Almanac. It was left as it is; choose the folder of a record.");
      }
    }
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    return new Header(buffer.getInt(68), buffer.getInt(60));
  }

  /**
   * Refuses what this program must not touch.
   *
   * @param newestStep newest schema step this program knows
   */
  void require(Path file, int newestStep) {
    if (applicationId != APPLICATION_ID) {
      throw new RecordException(
          Kind.NOT_OURS,
          file
              + " belongs to another program. It was left as it is; choose the folder of a record.");
    }
    if (userVersion > newestStep) {
      throw new RecordException(
          Kind.NEWER,
          "The record "
              + file
              + " was written by a newer Hull Almanac (schema "
              + userVersion
              + ", this one knows "
              + newestStep
              + "). It was left as it is; open it with the newer program.");
    }
  }
}
