package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.exchange.page.RecordPage;
import hullalmanac.exchange.photo.PhotoFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the whole of a record out as lists, photo files and a page that links them. */
public final class ExportService {
  /** The page that needs no program to read. */
  public static final String PAGE = "index.html";

  private static final Set<String> OURS = Set.of("photos", ExportedPapers.FOLDER, PAGE);

  private ExportService() {}

  /**
   * What came of an export.
   *
   * @param secretsLeftOut how many berths have keys, gate codes or absences that were not written
   * @param missing files of pictures that are not in the record's folder any more
   */
  public record Done(int secretsLeftOut, List<String> missing) {
    public Done {
      missing = List.copyOf(missing);
    }
  }

  /**
   * Writes a record into a folder that is new, empty, or holds an earlier export.
   *
   * @param withSecrets whether keys, gate codes and absences are written too
   * @param withPapers whether papers are written too, which takes a while
   */
  public static Done export(
      RecordService record, Path folder, boolean withSecrets, boolean withPapers) {
    Almanac almanac = record.almanac();
    try {
      refuseStrangers(folder);
      CsvSet.write(folder, almanac, withSecrets);
      Map<String, String> papers = withPapers ? ExportedPapers.write(record, folder) : Map.of();
      WholeFile.write(
          folder.resolve(PAGE),
          page(almanac, withSecrets, papers).getBytes(StandardCharsets.UTF_8));
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
    Map<Boolean, List<String>> pictures =
        almanac.pictures().stream()
            .collect(
                Collectors.partitioningBy(f -> Files.isRegularFile(record.photos().resolve(f))));
    PhotoFiles.copy(record.photos(), folder.resolve("photos"), pictures.get(true));
    long left =
        almanac.berths().stream().filter(b -> !b.secrets().equals(Berth.Private.NOTHING)).count();
    return new Done(withSecrets ? 0 : (int) left, pictures.get(false));
  }

  private static String page(Almanac almanac, boolean withSecrets, Map<String, String> papers) {
    return RecordPage.of(
        almanac.business().name(),
        CsvSet.lists(almanac, withSecrets),
        withSecrets ? "" : "Keys, gate codes and absences are not on it.",
        papers);
  }

  private static void refuseStrangers(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      List<String> ours = CsvSet.files();
      try (Stream<Path> files = Files.list(folder)) {
        List<String> strangers =
            files
                .map(f -> f.getFileName().toString())
                .filter(n -> !ours.contains(n) && !OURS.contains(n))
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
