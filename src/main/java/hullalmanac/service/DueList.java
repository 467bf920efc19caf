package hullalmanac.service;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.exchange.json.Json;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The list of what is due as text for people and for other programs. */
public final class DueList {
  private static final List<String> COLUMNS =
      List.of(
          "boat",
          "surface",
          "product",
          "coated_on",
          "renew_by",
          "early",
          "middle",
          "late",
          "chance_lapsed");

  private final LocalDate asOf;
  private final List<DueRow> rows;

  private DueList(LocalDate asOf, List<DueRow> rows) {
    this.asOf = asOf;
    this.rows = rows;
  }

  /** Lists every coat in service, in order of the early end; those without any date last. */
  public static DueList of(Fleet fleet) {
    Map<Id<Boat>, Boat> boats =
        fleet.almanac().boats().stream().collect(Collectors.toMap(Boat::id, Function.identity()));
    return new DueList(
        fleet.asOf(),
        fleet.coats().stream().map(f -> DueRow.of(boats.get(f.surface().boat()), f)).toList());
  }

  /** The rows in order. */
  public List<DueRow> rows() {
    return rows;
  }

  /**
   * One line a row under a header, with a comma between fields (RFC 4180) and a line feed after
   * each line.
   */
  public String csv() {
    StringBuilder out = new StringBuilder(String.join(",", COLUMNS)).append('\n');
    for (DueRow row : rows) {
      out.append(
              fields(row).values().stream()
                  .map(v -> v == null ? "" : quoted(v.toString()))
                  .collect(Collectors.joining(",")))
          .append('\n');
    }
    return out.toString();
  }

  /** A JSON array of objects with the columns as names; null where there is none. */
  public String json() {
    return Json.of(rows.stream().map(DueList::fields).toList()) + "\n";
  }

  /** A plain frequency; neither end is ever certain. */
  private static String chance(double chance) {
    long tenths = Math.round(chance * 10);
    if (tenths == 0) {
      return "under 1 in 10";
    }
    return tenths == 10 ? "over 9 in 10" : tenths + " in 10";
  }

  private static Map<String, Object> fields(DueRow row) {
    CoatForecast f = row.forecast();
    Map<String, Object> fields = new LinkedHashMap<>();
    List<Object> values = new ArrayList<>();
    values.add(row.boat().key());
    values.add(f.surface().key());
    values.add(f.product().key());
    values.add(text(f.coat().laidOn()));
    values.add(text(row.renewBy()));
    values.add(text(row.early()));
    values.add(text(row.middle()));
    values.add(text(row.late()));
    values.add(
        f.lapsedNow()
            .map(c -> new java.math.BigDecimal(String.format(Locale.ROOT, "%.3f", c)))
            .orElse(null));
    for (int i = 0; i < values.size(); i++) {
      fields.put(COLUMNS.get(i), values.get(i));
    }
    return fields;
  }

  private static String text(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse(null);
  }

  private static String quoted(String field) {
    return field.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
        ? '"' + field.replace("\"", "\"\"") + '"'
        : field;
  }

  /** A table for people, one line a row. */
  public String text() {
    if (rows.isEmpty()) {
      return "Nothing is under protection on " + asOf + ", so nothing is due.\n";
    }
    StringBuilder out = new StringBuilder();
    out.append(
        String.format(Locale.ROOT, "Coats in service on %s, the soonest due first%n%n", asOf));
    out.append(line("boat", "surface", "product", "renew by", "likely bare between", "bare now"));
    for (DueRow row : rows) {
      CoatForecast f = row.forecast();
      out.append(
          line(
              row.boat().name(),
              f.surface().words(),
              f.product().name(),
              renewal(row),
              range(row),
              f.lapsedNow().map(DueList::chance).orElse("")));
    }
    out.append(
        String.format(
            "%nA forecast, not a guarantee. Labels and data sheets of the products come first.%n"));
    return out.toString();
  }

  private static String renewal(DueRow row) {
    Outcome outcome = row.forecast().outcome();
    if (outcome instanceof Outcome.AlreadyLapsed) {
      return "bare, seen";
    }
    if (outcome instanceof Outcome.TooFarAhead) {
      return "over 15 years";
    }
    return row.renewBy().map(LocalDate::toString).orElse("not forecast");
  }

  private static String range(DueRow row) {
    if (row.forecast().outcome() instanceof Outcome.NotForecast n) {
      return n.reason().words();
    }
    return row.early()
        .map(e -> e + " – " + row.late().map(LocalDate::toString).orElse("later"))
        .orElse("");
  }

  private static String line(
      String boat, String surface, String product, String by, String range, String now) {
    return String.format(
                Locale.ROOT,
                "%-18s %-24s %-22s %-13s %-25s %s",
                cut(boat, 18),
                cut(surface, 24),
                cut(product, 22),
                by,
                range,
                now)
            .stripTrailing()
        + System.lineSeparator();
  }

  private static String cut(String text, int width) {
    return text.length() <= width ? text : text.substring(0, width - 1) + "…";
  }
}
