package hullalmanac.sample;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.service.RecordService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Writes the sample into a folder, {@code sample-db} unless another is named: the lists, and a
 * ready record.
 */
final class WriteSample {
  private WriteSample() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments.length == 0 ? "sample-db" : arguments[0]);
    SampleRecord sample = SampleRecord.make();
    for (String part : List.of("csv", "record")) {
      clear(folder.resolve(part));
    }
    CsvSet.write(folder.resolve("csv"), sample.almanac(), true);
    photos(folder.resolve("csv").resolve("photos"), sample.photos());
    Path record = folder.resolve("record");
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(
            Clock.fixed(Instant.parse("2026-05-01T06:00:00Z"), ZoneOffset.UTC),
            new Random(1)::nextLong,
            "sample",
            1);
    RecordService.create(record, surroundings);
    try (RecordService open = RecordService.open(record, surroundings)) {
      open.change("the sample", Edit.all(sample.almanac()));
    }
    forgetHowItWasMade(record);
    photos(record.resolve("photos"), sample.photos());
    Files.deleteIfExists(record.resolve("copies"));
    Almanac a = sample.almanac();
    System.out.printf(
        "%d boats, %d parties, %d surfaces, %d visits, %d steps, %d coats, %d findings, %d photos%n",
        a.boats().size(),
        a.parties().size(),
        a.surfaces().size(),
        a.visits().size(),
        a.steps().size(),
        a.coats().size(),
        a.findings().size(),
        a.photos().size());
  }

  /** Empties the change log: nobody should take the whole sample back by one undo. */
  private static void forgetHowItWasMade(Path record) throws IOException {
    try (Connection file =
            DriverManager.getConnection("jdbc:sqlite:" + record.resolve("almanac.db"));
        Statement statement = file.createStatement()) {
      statement.executeUpdate("DELETE FROM change");
      statement.executeUpdate("DELETE FROM act");
      statement.executeUpdate("VACUUM");
    } catch (SQLException e) {
      throw new IOException(e);
    }
  }

  private static void photos(Path folder, Map<String, byte[]> photos) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, byte[]> photo : photos.entrySet()) {
      Files.write(folder.resolve(photo.getKey()), photo.getValue());
    }
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
