package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.exchange.photo.PhotoFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Writes the whole of a record out as lists and photo files. */
public final class ExportService {
  private ExportService() {}

  /**
   * What came of an export.
   *
   * @param secretsLeftOut how many berths have keys, gate codes or absences that were not written
   */
  public record Done(int secretsLeftOut) {}

  /**
   * Writes a record into a folder that is new, empty, or holds an earlier export.
   *
   * @param withSecrets whether keys, gate codes and absences are written too
   */
  public static Done export(RecordService record, Path folder, boolean withSecrets) {
    Almanac almanac = record.almanac();
    try {
      refuseStrangers(folder);
      CsvSet.write(folder, almanac, withSecrets);
      if (!withSecrets) {
        Files.deleteIfExists(folder.resolve("berth-secrets.csv"));
      }
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The lists cannot be written to "
              + folder
              + ". Choose a folder of your own with room in it.",
          e);
    }
    PhotoFiles.copy(record.photos(), folder.resolve("photos"), almanac.photos());
    long left =
        almanac.berths().stream().filter(b -> !b.secrets().equals(Berth.Private.NOTHING)).count();
    return new Done(withSecrets ? 0 : (int) left);
  }

  private static void refuseStrangers(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      List<String> ours = CsvSet.files();
      try (Stream<Path> files = Files.list(folder)) {
        List<String> strangers =
            files
                .map(f -> f.getFileName().toString())
                .filter(n -> !ours.contains(n) && !n.equals("photos"))
                .sorted()
                .toList();
        if (!strangers.isEmpty()) {
          throw new RecordException(
              RecordException.Kind.IN_THE_WAY,
              "The folder "
                  + folder
                  + " holds other things ("
                  + strangers.get(0)
                  + "). Choose an empty one.");
        }
      }
    }
  }
}
