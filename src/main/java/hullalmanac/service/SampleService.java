package hullalmanac.service;

import hullalmanac.core.record.RecordException;
import hullalmanac.store.Database;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;

/** The sample record of an invented business, which the program carries with it. */
public final class SampleService {
  private static final String RESOURCES = "/hullalmanac/sample/";

  private SampleService() {}

  /**
   * Writes the sample record into a folder that is new or empty.
   *
   * @throws RecordException when something is in the way, or it cannot be written
   */
  public static void write(Path folder) {
    try {
      refuseFull(folder);
      Files.createDirectories(folder.resolve("photos"));
      Files.createDirectories(folder.resolve("copies"));
      unpack("almanac.db", folder.resolve(Database.FILE));
      RecordService.Surroundings nobody =
          new RecordService.Surroundings(Clock.systemUTC(), () -> 0, "sample", 0);
      try (RecordService sample = RecordService.openReadOnly(folder, nobody)) {
        for (String file : sample.almanac().pictures()) {
          unpack("photos/" + file, folder.resolve("photos").resolve(file));
        }
      }
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The sample record cannot be written to " + folder + ". Choose a folder of your own.",
          e);
    }
  }

  private static void refuseFull(Path folder) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new RecordException(
          RecordException.Kind.IN_THE_WAY, folder + " is a file. Name a new or empty folder.");
    }
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        if (files.findAny().isPresent()) {
          throw new RecordException(
              RecordException.Kind.IN_THE_WAY,
              "The folder " + folder + " is not empty. Choose another.");
        }
      }
    }
  }

  private static void unpack(String name, Path target) throws IOException {
    try (InputStream in = SampleService.class.getResourceAsStream(RESOURCES + name)) {
      if (in == null) {
        throw new IOException("the program does not carry " + name);
      }
      Files.copy(in, target);
    }
  }
}
