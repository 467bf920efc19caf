package hullalmanac.exchange.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads and writes a folder of lists, as docs/formats/csv.md describes them. */
public final class CsvSet {
  private CsvSet() {}

  /**
   * What came of reading.
   *
   * @param additions what the lists hold; only of use without problems. Its business is the one
   *     there, unless the set has one
   * @param lines where each row stands, by kind and the person's own id
   */
  public record ReadResult(
      Almanac additions, List<CsvProblem> problems, Map<Kind, Map<String, Place>> lines) {
    public ReadResult {
      problems = List.copyOf(problems);
    }
  }

  /** Where a row stands. */
  public record Place(String file, long line) {}

  /** Names of all files of the set, in the order in which they are written. */
  public static List<String> files() {
    return SetReader.kinds(new MoneyFiles(Business.unnamed())).stream().map(CsvKind::file).toList();
  }

  /**
   * Reads a folder. Every problem is noted, with its place.
   *
   * @param existing the record that the lists are to be added to; they may refer to its rows
   */
  public static ReadResult read(Path folder, Almanac existing, IdSource ids) {
    return new SetReader(folder, existing, ids).read();
  }

  /**
   * Returns the files of a record, each as its text, in fixed order of files, rows and columns and
   * in fixed form of numbers, so that the same record always gives the same bytes.
   *
   * @param withSecrets whether keys, gate codes and absences are written too
   */
  public static Map<String, String> texts(Almanac almanac, boolean withSecrets) {
    Keys keys = KeysOf.almanac(almanac);
    Map<String, String> texts = new LinkedHashMap<>();
    for (CsvKind<?> kind : SetReader.kinds(new MoneyFiles(almanac.business()))) {
      if (withSecrets || kind != PlaceFiles.SECRETS) {
        texts.put(kind.file(), text(kind, almanac, keys));
      }
    }
    return texts;
  }

  /**
   * Returns the lists of a record as cells, in the same order as {@link #texts}.
   *
   * @param withSecrets whether keys, gate codes and absences are among them
   */
  public static List<OneList> lists(Almanac almanac, boolean withSecrets) {
    Keys keys = KeysOf.almanac(almanac);
    List<OneList> lists = new ArrayList<>();
    for (CsvKind<?> kind : SetReader.kinds(new MoneyFiles(almanac.business()))) {
      if (withSecrets || kind != PlaceFiles.SECRETS) {
        lists.add(OneList.of(kind, almanac, keys));
      }
    }
    return lists;
  }

  /** Writes a record into a folder; files that are there under the same names are written over. */
  public static void write(Path folder, Almanac almanac, boolean withSecrets) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : texts(almanac, withSecrets).entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
    }
  }

  private static <T> String text(CsvKind<T> kind, Almanac almanac, Keys keys) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      writer.writeRecord(
          kind.columns().stream()
              .filter(c -> c.form() != Column.Form.IMPORT_ONLY)
              .map(Column::name)
              .toList());
      for (T row : kind.rows(almanac, keys)) {
        Out out = new Out(keys);
        kind.write(row, out);
        writer.writeRecord(out.line(kind.columns()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** Names of lists in a folder that are none of the set. */
  static List<String> strangers(Path folder) throws IOException {
    List<String> known = files();
    List<String> strangers = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.toLowerCase(java.util.Locale.ROOT).endsWith(".csv") && !known.contains(n))
          .sorted()
          .forEach(strangers::add);
    }
    return strangers;
  }
}
