package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Moves a record to another folder: by copying it, so that the old one stays until the end. */
public final class Moving {
  private static final String ROUGH = "almanac.moving";

  private Moving() {}

  /**
   * Copies a record that nobody has open into another folder, and looks whether all of it came
   * there. The old folder is left as it is.
   *
   * @param to a folder that is empty or not there yet
   * @throws RecordException when it cannot be done; nothing then counts as a record in the new
   *     folder
   */
  public static void copy(Path from, Path to) {
    if (Database.isIn(to)) {
      throw new RecordException(
          Kind.IN_THE_WAY, "There is a record in " + to + " already. Choose another folder.");
    }
    try {
      Files.createDirectories(to);
      Path target = to.toRealPath();
      if (target.startsWith(from.toRealPath())) {
        throw new RecordException(
            Kind.IN_THE_WAY, "That folder lies inside the record itself. Choose another folder.");
      }
      if (holdsAnything(target)) {
        throw new RecordException(
            Kind.IN_THE_WAY, "The folder " + to + " is not empty. Choose a new or an empty one.");
      }
      for (Path file : files(from)) {
        Path there = target.resolve(from.relativize(file).toString());
        boolean record = there.equals(target.resolve(Database.FILE));
        Files.createDirectories(there.getParent());
        Files.copy(file, record ? target.resolve(ROUGH) : there);
      }
      Copies.verify(target.resolve(ROUGH));
      requireSame(from, target);
      Files.move(target.resolve(ROUGH), target.resolve(Database.FILE));
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER,
          "The record could not be copied to "
              + to
              + ". It is where it was; look whether there is room and whether the folder can be"
              + " written to.",
          e);
    }
  }

  private static boolean holdsAnything(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.findAny().isPresent();
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .filter(f -> !f.getFileName().toString().equals("almanac.lock"))
          .toList();
    }
  }

  private static void requireSame(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path there = to.resolve(from.relativize(file).toString());
      Path copied = there.equals(to.resolve(Database.FILE)) ? to.resolve(ROUGH) : there;
      if (Files.mismatch(file, copied) >= 0) {
        throw new RecordException(
            Kind.OTHER, copied + " did not come over as it was. The record is where it was.");
      }
    }
  }
}
