package hullalmanac.app;

import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableChoices;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * How one wants tables, as lines of a properties file: {@code table.Coats.1=shown 120 Laid on} says
 * that the first column of Coats is shown, 120 pixels wide at 100 %; {@code table.Coats.sort=down
 * Laid on} that the newest coat comes first. A width of 0 is as wide as the texts need.
 */
final class TableLines {
  private static final Logger LOG = Logger.getLogger(TableLines.class.getName());
  private static final String BEGIN = "table.";
  private static final String SORT = "sort";
  private static final String SHOWN = "shown";
  private static final String DOWN = "down";

  private TableLines() {}

  static void write(TableChoices choices, Properties p) {
    choices
        .byTable()
        .forEach(
            (table, choice) -> {
              for (int n = 0; n < choice.columns().size(); n++) {
                TableChoice.Column c = choice.columns().get(n);
                p.setProperty(
                    BEGIN + table + "." + (n + 1),
                    (c.shown() ? SHOWN : "hidden") + " " + c.width().orElse(0) + " " + c.id());
              }
              choice
                  .sort()
                  .ifPresent(
                      s ->
                          p.setProperty(
                              BEGIN + table + "." + SORT,
                              (s.down() ? DOWN : "up") + " " + s.column()));
            });
  }

  /** What can be read of it; a table whose lines make no sense is as it comes. */
  static TableChoices read(Properties p) {
    Map<String, Map<String, String>> tables = new HashMap<>();
    for (String name : p.stringPropertyNames()) {
      int end = name.lastIndexOf('.');
      if (name.startsWith(BEGIN) && end >= BEGIN.length()) {
        tables
            .computeIfAbsent(name.substring(BEGIN.length(), end), t -> new HashMap<>())
            .put(name.substring(end + 1), p.getProperty(name));
      }
    }
    Map<String, TableChoice> read = new HashMap<>();
    tables.forEach((table, lines) -> table(lines).ifPresent(choice -> read.put(table, choice)));
    return new TableChoices(read);
  }

  private static Optional<TableChoice> table(Map<String, String> lines) {
    try {
      List<TableChoice.Column> columns = new ArrayList<>();
      for (int n = 1; lines.containsKey(Integer.toString(n)); n++) {
        columns.add(column(lines.get(Integer.toString(n))));
      }
      return Optional.of(
          new TableChoice(columns, Optional.ofNullable(lines.get(SORT)).map(TableLines::sort)));
    } catch (IllegalArgumentException e) {
      LOG.log(Level.INFO, "the columns of a table were not remembered", e);
      return Optional.empty();
    }
  }

  private static TableChoice.Column column(String line) {
    String[] parts = parts(line, 3);
    int width = Integer.parseInt(parts[1]);
    return new TableChoice.Column(
        parts[2], parts[0].equals(SHOWN), width == 0 ? Optional.empty() : Optional.of(width));
  }

  private static TableChoice.Sort sort(String line) {
    String[] parts = parts(line, 2);
    return new TableChoice.Sort(parts[1], parts[0].equals(DOWN));
  }

  private static String[] parts(String line, int many) {
    String[] parts = line.split(" ", many);
    if (parts.length < many) {
      throw new IllegalArgumentException("not " + many + " words: " + line);
    }
    return parts;
  }
}
