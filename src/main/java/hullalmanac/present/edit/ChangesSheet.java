package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.RowChange;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.ChangeWords;
import hullalmanac.service.Fleet;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was changed of a boat, a visit or a party, and when. */
public final class ChangesSheet extends FleetSheet {
  private static final int MOST_ROWS = 300;
  private static final int MOST_FIELDS = 6;

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
            .map(c -> rows(c, new ChangeWords(fleet.almanac().business(), c.zone())))
            .orElse(List.of());
    return new SheetState(
        name,
        "What was changed, newest first",
        List.of(
            new SheetState.Table(
                "",
                List.of("When", "What was done", "Where", "Which", "Before", "After"),
                rows,
                changes.isEmpty() ? "Reading …" : "Nothing was changed yet."),
            new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", true)))),
        Optional.empty());
  }

  private static List<List<String>> rows(Told told, ChangeWords words) {
    return told.rows().stream().flatMap(r -> lines(r, words)).limit(MOST_ROWS).toList();
  }

  /** A row for each field, so that all of them can be read. */
  private static Stream<List<String>> lines(RowChange change, ChangeWords words) {
    List<RowChange.Field> told =
        change.fields().stream()
            .filter(f -> !f.name().endsWith("id") && !f.name().equals("key"))
            .filter(f -> !f.name().startsWith("secret"))
            .filter(f -> f.before().or(f::after).filter(v -> !v.isEmpty()).isPresent())
            .limit(MOST_FIELDS)
            .toList();
    return told.stream()
        .map(
            f ->
                List.of(
                    words.time(change.act().at()),
                    change.act().undoes().isPresent()
                        ? "undo or redo: " + change.act().what()
                        : change.act().what(),
                    change.table().replace('_', ' '),
                    ChangeWords.name(f.name()),
                    words.value(f.name(), f.before()),
                    words.value(f.name(), f.after())));
  }

  @Override
  public void press(String button) {
    desk.leave();
  }

  @Override
  public boolean inPassing() {
    return true;
  }

  @Override
  public Topic topic() {
    return Topic.FACTS;
  }
}
