package hullalmanac.exchange.list;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import hullalmanac.core.list.Cell;
import hullalmanac.core.list.Grid;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a list that is written as text: cells parted by commas, semicolons, tabs or bars. */
final class TextList {
  private static final Map<Character, String> SEPARATORS =
      Map.of(',', "commas", ';', "semicolons", '\t', "tabs", '|', "bars");
  private static final List<Character> IN_ORDER = List.of('\t', ';', ',', '|');

  /** A mark of spreadsheets in the first line, which names the separator. */
  private static final Pattern SEPARATOR_LINE =
      Pattern.compile("sep=(.)\\R", Pattern.CASE_INSENSITIVE);

  private static final char NO_QUOTES = '\uE001';
  private static final int MOST_LINES_IN_A_CELL = 20;
  private static final double WIDER_IS_BETTER = 0.02;
  private static final int WIDE = 10;
  private static final int WORDS_OF_PROSE = 7;

  private TextList() {}

  static ListFile.Outcome read(String name, byte[] bytes) {
    Optional<Letters> letters = Letters.of(bytes);
    return letters.isEmpty()
        ? new ListFile.Refused(
            name
                + " is not a text and not a spreadsheet that can be read. Save the list as .xlsx or"
                + " CSV.")
        : read(name, letters.get().text(), letters.get().remarks());
  }

  static ListFile.Outcome read(String name, String text, List<String> remarks) {
    if (text.isBlank()) {
      return new ListFile.Refused(name + " has nothing in it but blanks and signs.");
    }
    Matcher said = SEPARATOR_LINE.matcher(text);
    boolean separatorSaid = said.lookingAt() && SEPARATORS.containsKey(said.group(1).charAt(0));
    Parsed parsed =
        separatorSaid
            ? parse(text.substring(said.end()), said.group(1).charAt(0))
            : IN_ORDER.stream()
                .map(s -> parse(text, s))
                .max(Comparator.comparingDouble(Parsed::fit))
                .orElseThrow();
    if (parsed.width() == 1 && isProse(parsed)) {
      return new ListFile.Refused(
          name
              + " reads like a letter, not like a list: its lines have no columns. Put each boat into"
              + " a row of its own, with a column for each thing that is known of it.");
    }
    List<String> all = new ArrayList<>(remarks);
    if (parsed.width() > 1) {
      all.add("Cells are parted by " + SEPARATORS.get(parsed.separator()) + ".");
    }
    if (!parsed.quoted()) {
      all.add(
          "Quotation marks do not fit together; where they do not, they are read as they stand.");
    }
    return new ListFile.Read(
        List.of(
            Grid.trimmed(
                name,
                parsed.records().stream()
                    .map(r -> r.stream().map(TextList::cell).toList())
                    .toList(),
                all)));
  }

  private static Cell cell(String text) {
    return Cell.of(
        text.replace('\u00A0', ' ')
            .replaceAll("[\\p{Cntrl}&&[^\\r\\n\\t]]", "")
            .replace("\uFEFF", ""));
  }

  /**
   * A text read with one separator.
   *
   * @param quoted whether quotation marks were taken as such
   */
  private record Parsed(char separator, List<List<String>> records, boolean quoted) {
    int width() {
      return records.stream().mapToInt(List::size).max().orElse(0);
    }

    /** How even the rows are, and how wide: the better, the likelier the separator. */
    double fit() {
      Map<Integer, Integer> widths = new HashMap<>();
      int rows = 0;
      for (List<String> record : records) {
        if (record.stream().anyMatch(f -> !f.isBlank())) {
          widths.merge(record.size(), 1, Integer::sum);
          rows++;
        }
      }
      if (widths.isEmpty()) {
        return 0;
      }
      Map.Entry<Integer, Integer> usual =
          widths.entrySet().stream()
              .max(
                  Map.Entry.<Integer, Integer>comparingByValue()
                      .thenComparing(Map.Entry.comparingByKey()))
              .orElseThrow();
      return usual.getKey() < 2
          ? 0
          : (double) usual.getValue() / rows + WIDER_IS_BETTER * Math.min(WIDE, usual.getKey());
    }
  }

  private static Parsed parse(String text, char separator) {
    try {
      List<List<String>> records = records(text, separator, '"');
      boolean swallowed =
          records.stream()
              .flatMap(List::stream)
              .anyMatch(f -> f.lines().count() > MOST_LINES_IN_A_CELL);
      if (!swallowed) {
        return new Parsed(separator, records, true);
      }
    } catch (CsvParseException e) {
      // A quotation mark that is not closed; read line by line below.
    }
    return new Parsed(
        separator,
        text.lines().limit(ListFile.MOST_ROWS + 2).map(l -> line(l, separator)).toList(),
        false);
  }

  /** One line; where its quotation marks do not fit together they are read as they stand. */
  private static List<String> line(String line, char separator) {
    if (line.isEmpty()) {
      return List.of("");
    }
    try {
      return records(line, separator, '"').get(0);
    } catch (CsvParseException e) {
      return records(line, separator, NO_QUOTES).get(0).stream()
          .map(
              f ->
                  f.length() > 1 && f.startsWith("\"") && f.endsWith("\"")
                      ? f.substring(1, f.length() - 1)
                      : f)
          .toList();
    }
  }

  private static List<List<String>> records(String text, char separator, char quote) {
    List<List<String>> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .quoteCharacter(quote)
            .skipEmptyLines(false)
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      for (CsvRecord record : reader) {
        records.add(record.getFields());
        if (records.size() > ListFile.MOST_ROWS + 1) {
          break;
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException("a text in memory can be read", e);
    }
    return records;
  }

  private static boolean isProse(Parsed parsed) {
    List<String> lines =
        parsed.records().stream().flatMap(List::stream).filter(l -> !l.isBlank()).toList();
    double words = lines.stream().mapToInt(l -> l.strip().split("\\s+").length).average().orElse(0);
    return words >= WORDS_OF_PROSE;
  }
}
