package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.RowChange;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was changed of a boat, a visit or a party, and when. */
public final class ChangesSheet extends FleetSheet {
  private static final int MOST_ROWS = 300;
  private static final int MOST_FIELDS = 6;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

  private final Kind kind;
  private final Id<?> row;
  private final String name;
  private Optional<Told> changes = Optional.empty();

  private record Told(ZoneId zone, List<RowChange> rows) {}

  /**
   * @param name of the row, for the title
   */
  public ChangesSheet(Desk desk, Kind kind, Id<?> row, String name) {
    super(desk);
    this.kind = kind;
    this.row = row;
    this.name = name;
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  @Override
  public void show(Fleet fleet) {
    super.show(fleet);
    desk.ask(
        edits -> new Told(edits.zone(), edits.history(kind, row)),
        answer -> {
          changes = Optional.of(answer);
          publish();
        });
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<List<String>> rows =
        changes
            .map(c -> c.rows().stream().limit(MOST_ROWS).map(r -> line(r, c.zone())).toList())
            .orElse(List.of());
    return new SheetState(
        name,
        "What was changed, newest first",
        List.of(
            new SheetState.Table(
                "",
                List.of("When", "What was done", "Where", "Before", "After"),
                rows,
                changes.isEmpty() ? "Reading …" : "Nothing was changed yet."),
            new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", true)))),
        Optional.empty());
  }

  private static List<String> line(RowChange change, ZoneId zone) {
    List<RowChange.Field> told =
        change.fields().stream()
            .filter(f -> !f.name().endsWith("id") && !f.name().equals("key"))
            .filter(f -> !f.name().startsWith("secret"))
            .filter(f -> f.before().or(f::after).filter(v -> !v.isEmpty()).isPresent())
            .limit(MOST_FIELDS)
            .toList();
    return List.of(
        TIME.withZone(zone).format(change.act().at()),
        change.act().undoes().isPresent()
            ? "undo or redo: " + change.act().what()
            : change.act().what(),
        change.table().replace('_', ' '),
        values(told, RowChange.Field::before, zone),
        values(told, RowChange.Field::after, zone));
  }

  private static String values(
      List<RowChange.Field> fields,
      java.util.function.Function<RowChange.Field, Optional<String>> which,
      ZoneId zone) {
    return fields.stream()
        .filter(f -> which.apply(f).filter(v -> !v.isEmpty()).isPresent())
        .map(f -> f.name().replace('_', ' ') + " " + said(f, which.apply(f).orElse(""), zone))
        .collect(Collectors.joining(", "));
  }

  /** A value as it is kept, but a moment as the clock on the wall shows it. */
  private static String said(RowChange.Field field, String value, ZoneId zone) {
    return field.name().equals("timed_since")
        ? TIME.withZone(zone).format(Instant.parse(value))
        : value;
  }

  @Override
  public void press(String button) {
    desk.leave();
  }

  @Override
  public Topic topic() {
    return Topic.FACTS;
  }
}
