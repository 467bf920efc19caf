package hullalmanac.exchange.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A list read from a file: a header and rows, not yet understood. UTF-8 with or without a byte
 * order mark; fields parted by commas, semicolons or tabs, whichever the header has most of; quoted
 * as RFC 4180 has it.
 *
 * @param rows cells by column name
 */
record CsvTable(String file, boolean decimalComma, List<Row> rows) {
  /**
   * One row.
   *
   * @param line line of the file on which it begins
   */
  record Row(long line, Map<String, String> cells) {}

  /** Reads a file; what cannot be read is noted and nothing returned. */
  static Optional<CsvTable> read(Path path, List<Column> columns, List<CsvProblem> problems) {
    String file = path.getFileName().toString();
    Optional<String> text = text(path, file, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    char separator = separator(text.get());
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text.get())) {
      reader.forEach(records::add);
    } catch (CsvParseException e) {
      long line =
          records.isEmpty() ? 1 : records.get(records.size() - 1).getStartingLineNumber() + 1;
      problems.add(
          new CsvProblem(
              file,
              line,
              "",
              "a quotation mark from here on is not closed or stands within a field",
              "Close it, or write it twice"));
      return Optional.empty();
    } catch (IOException e) {
      problems.add(
          new CsvProblem(file, 0, "", "it cannot be read", "Look whether it is still there"));
      return Optional.empty();
    }
    if (records.isEmpty()) {
      problems.add(
          new CsvProblem(
              file, 1, "", "it has no header", "Write the names of the columns in line 1"));
      return Optional.empty();
    }
    return header(file, records.get(0), columns, problems)
        .map(names -> new CsvTable(file, separator != ',', rows(file, names, records, problems)));
  }

  private static Optional<List<String>> header(
      String file, CsvRecord record, List<Column> columns, List<CsvProblem> problems) {
    List<String> known = columns.stream().map(Column::name).toList();
    List<String> names =
        record.getFields().stream()
            .map(n -> n.strip().toLowerCase(Locale.ROOT).replace(' ', '_'))
            .toList();
    int before = problems.size();
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        problems.add(
            new CsvProblem(file, 1, name, "the column stands twice", "Take one of them out"));
      } else if (!known.contains(name)) {
        String advice =
            Nearest.of(name, known)
                .map(n -> "Is \"" + n + "\" meant")
                .orElse("Take it out; the columns are " + String.join(", ", known));
        problems.add(new CsvProblem(file, 1, name, "there is no column \"" + name + "\"", advice));
      }
    }
    for (Column column : columns) {
      if (column.needed() && !names.contains(column.name())) {
        problems.add(
            new CsvProblem(
                file,
                1,
                column.name(),
                "the column is missing",
                "Add it and fill it in every row"));
      }
    }
    return problems.size() == before ? Optional.of(names) : Optional.empty();
  }

  private static List<Row> rows(
      String file, List<String> names, List<CsvRecord> records, List<CsvProblem> problems) {
    List<Row> rows = new ArrayList<>();
    for (CsvRecord record : records.subList(1, records.size())) {
      long line = record.getStartingLineNumber();
      if (record.getFields().stream().allMatch(String::isBlank)) {
        continue;
      }
      if (record.getFieldCount() != names.size()) {
        problems.add(
            new CsvProblem(
                file,
                line,
                "",
                "the row has " + record.getFieldCount() + " fields, the header " + names.size(),
                "Look for a separator too many or too few, or for a text that needs quotation marks"));
        continue;
      }
      Map<String, String> cells = new HashMap<>();
      for (int i = 0; i < names.size(); i++) {
        cells.put(names.get(i), record.getField(i));
      }
      rows.add(new Row(line, cells));
    }
    return rows;
  }

  private static Optional<String> text(Path path, String file, List<CsvProblem> problems) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(path);
    } catch (IOException e) {
      problems.add(
          new CsvProblem(file, 0, "", "it cannot be read", "Look whether you may read it"));
      return Optional.empty();
    }
    String saveAs = "Save it as \"CSV UTF-8\"";
    if (bytes.length >= 2 && ((bytes[0] & 0xff) == 0xfe || (bytes[0] & 0xff) == 0xff)) {
      problems.add(new CsvProblem(file, 1, "", "it is written in UTF-16", saveAs));
      return Optional.empty();
    }
    boolean mark =
        bytes.length >= 3
            && (bytes[0] & 0xff) == 0xef
            && (bytes[1] & 0xff) == 0xbb
            && (bytes[2] & 0xff) == 0xbf;
    ByteBuffer in = ByteBuffer.wrap(bytes, mark ? 3 : 0, bytes.length - (mark ? 3 : 0));
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(in, out, true);
    long zero = indexOfZero(bytes);
    if (result.isError() || zero >= 0) {
      long at = result.isError() ? in.position() : zero;
      problems.add(
          new CsvProblem(
              file,
              lineOf(bytes, at),
              "",
              result.isError() ? "it holds letters that are not UTF-8" : "it holds a zero byte",
              saveAs));
      return Optional.empty();
    }
    return Optional.of(out.flip().toString());
  }

  private static long indexOfZero(byte[] bytes) {
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 0) {
        return i;
      }
    }
    return -1;
  }

  private static long lineOf(byte[] bytes, long at) {
    long line = 1;
    for (int i = 0; i < at; i++) {
      if (bytes[i] == '\n') {
        line++;
      }
    }
    return line;
  }

  private static char separator(String text) {
    String header = text.lines().findFirst().orElse("");
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(header, candidate) > count(header, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char c) {
    return text.chars().filter(x -> x == c).count();
  }
}
