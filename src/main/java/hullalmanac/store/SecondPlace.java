package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/**
 * Another folder, best on another disk, that is kept as a whole record: the newest verified copy as
 * its file, and every photo.
 */
public final class SecondPlace {
  private SecondPlace() {}

  /**
   * Brings the second place up to date. What is there already is not written again, and no photo is
   * taken away.
   *
   * @param record the record's folder
   * @param place the second folder; it must be there, so that a stick that is not put in is no
   *     reason to fill another disk
   * @return how many files were written
   * @throws RecordException when it cannot be done
   */
  public static int bringUpToDate(Path record, Path place) {
    if (!Files.isDirectory(place)) {
      throw new RecordException(
          Kind.MISSING,
          "The second place for copies, " + place + ", is not there. Was a stick pulled out?");
    }
    try {
      if (place.toRealPath().startsWith(record.toRealPath())) {
        throw new RecordException(
            Kind.IN_THE_WAY,
            "The second place lies inside the record itself, so both would be lost together."
                + " Choose a folder on another disk.");
      }
      int written = photos(record.resolve("photos"), place.resolve("photos"));
      List<Path> copies = new Copies(record).all();
      if (!copies.isEmpty()) {
        written += copy(copies.get(0), place.resolve(Database.FILE));
      }
      return written;
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER,
          "The second place for copies, "
              + place
              + ", could not be written to. Your record is as it was.",
          e);
    }
  }

  private static int photos(Path from, Path to) throws IOException {
    if (!Files.isDirectory(from)) {
      return 0;
    }
    int written = 0;
    try (Stream<Path> all = Files.walk(from)) {
      for (Path photo : all.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(from.relativize(photo).toString());
        if (!Files.exists(target) || Files.size(target) != Files.size(photo)) {
          written += copy(photo, target);
        }
      }
    }
    return written;
  }

  /** Copies a file so that it is there as a whole or not at all; the same file is left alone. */
  private static int copy(Path from, Path to) throws IOException {
    if (Files.exists(to) && Files.mismatch(from, to) < 0) {
      return 0;
    }
    Files.createDirectories(to.getParent());
    Path rough = to.resolveSibling(to.getFileName() + ".tmp");
    Files.copy(from, rough, StandardCopyOption.REPLACE_EXISTING);
    try (FileChannel channel = FileChannel.open(rough, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
    Files.move(rough, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    return 1;
  }
}
