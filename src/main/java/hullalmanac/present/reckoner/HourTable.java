package hullalmanac.present.reckoner;

import hullalmanac.core.entry.ClimateEntry;
import hullalmanac.core.entry.TimeEntry;
import hullalmanac.core.reckon.CoatingHours;
import hullalmanac.core.reckon.CoatingWindow;
import hullalmanac.core.record.Climate;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;
import hullalmanac.present.edit.Draft;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Readings of a day, typed or pasted one a row, with what each means for a coat. */
final class HourTable {
  static final String ID = "hours";

  /** Rows are added so many at once, so that one can type on. */
  private static final int STEP = 8;

  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  private final List<Draft<Hour>> rows = new ArrayList<>();

  /** A row; public so that it can be copied with one component changed. */
  public record Hour(
      Optional<LocalDateTime> at,
      Optional<Quantity> air,
      Optional<Double> humidity,
      Optional<Quantity> surface) {
    private static final Hour EMPTY =
        new Hour(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The reading, when it is whole and can be. */
    Optional<Climate> climate() {
      if (at.isEmpty() || air.isEmpty() || humidity.isEmpty() || surface.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(
            new Climate(
                ClimateEntry.celsius(air.get()),
                humidity.get(),
                ClimateEntry.celsius(surface.get()),
                at.get()));
      } catch (IllegalArgumentException e) {
        return Optional.empty();
      }
    }

    private String missing() {
      if (equals(EMPTY)) {
        return "";
      }
      if (at.isEmpty() || air.isEmpty() || humidity.isEmpty() || surface.isEmpty()) {
        List<String> needs = new ArrayList<>();
        at.ifPresentOrElse(a -> {}, () -> needs.add("time"));
        air.ifPresentOrElse(a -> {}, () -> needs.add("air"));
        humidity.ifPresentOrElse(a -> {}, () -> needs.add("humidity"));
        surface.ifPresentOrElse(a -> {}, () -> needs.add("surface"));
        return "needs " + String.join(", ", needs);
      }
      return "cannot be: air is −40 to 60 °C, humidity over 0 to 100 %, a surface −40 to 90 °C";
    }
  }

  HourTable() {
    clear();
  }

  void clear() {
    rows.clear();
    grow(1);
  }

  private void grow(int atLeast) {
    while (rows.size() < atLeast || rows.size() % STEP != 0) {
      rows.add(new Draft<>(ID, Hour.EMPTY));
    }
  }

  private static List<FieldOf<Hour>> fields(FieldMaker make) {
    return List.of(
        time(make.today()),
        make.quantity("air", "Air, °C", Unit.CELSIUS, Hour::air),
        make.maybeNumber("humidity", "Humidity, %", Hour::humidity),
        make.quantity("surface", "Surface, °C", Unit.CELSIUS, Hour::surface));
  }

  private static FieldOf<Hour> time(LocalDate day) {
    return new FieldOf<>(
        "at",
        "Time",
        new Input.Line("10:30"),
        h -> h.at().map(t -> TimeEntry.write(t, day)).orElse(""),
        (hour, typed) -> FieldMaker.maybe(hour, "at", TimeEntry.read(typed, day)));
  }

  /** The whole readings, held against a label. */
  CoatingHours hours(Product.Handling limits, boolean sun) {
    List<Climate> readings = rows.stream().flatMap(r -> r.value().climate().stream()).toList();
    return CoatingHours.of(readings, limits, sun);
  }

  SheetState.Grid grid(FieldMaker make, Product.Handling limits, boolean sun) {
    List<FieldOf<Hour>> fields = fields(make);
    List<SheetState.Column> columns = new ArrayList<>();
    fields.forEach(f -> columns.add(f.column()));
    columns.add(new SheetState.Column("margin", "Above dew point", new Input.Fixed()));
    columns.add(new SheetState.Column("window", "Window", new Input.Fixed()));
    List<SheetState.GridRow> shown = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<String> cells = new ArrayList<>(rows.get(i).cells(fields));
      Hour hour = rows.get(i).value();
      Optional<CoatingWindow> window = hour.climate().map(c -> CoatingWindow.then(c, limits, sun));
      cells.add(
          window
              .map(w -> String.format(Locale.ROOT, "%.1f °C", Math.floor(w.margin() * 10) / 10))
              .orElse(""));
      cells.add(window.map(HourTable::word).orElse(hour.missing()));
      shown.add(new SheetState.GridRow(String.valueOf(i), "", cells));
    }
    return new SheetState.Grid(
        ID, "By the hour, typed or pasted", "", columns, shown, "No readings yet.");
  }

  private static String word(CoatingWindow window) {
    return window instanceof CoatingWindow.Closed closed
        ? "closed: " + String.join("; ", closed.reasons())
        : "open";
  }

  private Optional<Draft<Hour>> row(At at) {
    return Optional.of(Integer.parseInt(at.row())).filter(i -> i < rows.size()).map(rows::get);
  }

  Said say(FieldMaker make, At at, String text) {
    boolean known = at.field().equals("margin") || at.field().equals("window");
    return known
        ? new Said(text, false)
        : row(at).map(r -> r.say(fields(make), at, text)).orElse(Said.NOTHING);
  }

  void enter(FieldMaker make, At at, String text) {
    row(at).ifPresent(r -> r.enter(fields(make), at, text));
    growBelowTheLast();
  }

  private void growBelowTheLast() {
    int last =
        IntStream.range(0, rows.size())
            .filter(i -> !rows.get(i).value().equals(Hour.EMPTY))
            .max()
            .orElse(-1);
    grow(last + 2);
  }

  void remove(String row) {
    rows.remove(Integer.parseInt(row));
    grow(1);
  }

  /**
   * Takes texts from a cell on, with rows added where they are needed.
   *
   * @return how many were not taken
   */
  int paste(FieldMaker make, At corner, List<List<String>> texts) {
    List<FieldOf<Hour>> fields = fields(make);
    List<String> ids = fields.stream().map(FieldOf::id).toList();
    int top = Integer.parseInt(corner.row());
    int left = ids.indexOf(corner.field());
    List<List<String>> lines = texts.stream().map(HourTable::parted).toList();
    grow(top + lines.size());
    int refused = 0;
    for (int r = 0; left >= 0 && r < lines.size(); r++) {
      for (int c = 0; c < lines.get(r).size() && left + c < ids.size(); c++) {
        At at = new At(ID, String.valueOf(top + r), ids.get(left + c));
        rows.get(top + r).enter(fields, at, lines.get(r).get(c));
        refused += rows.get(top + r).say(fields, at, lines.get(r).get(c)).refused() ? 1 : 0;
      }
    }
    growBelowTheLast();
    return refused;
  }

  /** A line that came as one text is parted at blanks or semicolons; a day stays with its time. */
  private static List<String> parted(List<String> line) {
    if (line.size() > 1) {
      return line;
    }
    String text = line.isEmpty() ? "" : line.get(0).strip();
    List<String> parts =
        new ArrayList<>(Arrays.stream(text.split("[;\\s]+")).filter(p -> !p.isEmpty()).toList());
    if (parts.size() > 1 && DAY.matcher(parts.get(0)).matches()) {
      parts.set(0, parts.get(0) + " " + parts.remove(1));
    }
    return parts.isEmpty() ? List.of("") : parts;
  }
}
