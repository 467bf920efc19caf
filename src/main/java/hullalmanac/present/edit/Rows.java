package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Row;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Rows of a record on a sheet, as a form (one row) or a grid. A text that is refused stays as it
 * was typed, with the reason beside it, until it is mended.
 *
 * @param <T> the row
 */
final class Rows<T> {
  private final Block<T> block;
  private final Desk desk;
  private final Map<At, String> refused = new HashMap<>();

  /** Fields whose texts are on their way into the record. */
  private final Set<At> waiting = new HashSet<>();

  /**
   * What rows there are and what is written of them.
   *
   * @param rows of a record
   * @param key tells a row from the others of the block
   * @param label what a row of a grid is about
   * @param fields may depend on the record, for choices
   * @param change what the record becomes with another row in the place of one
   */
  record Block<T>(
      String id,
      String heading,
      Function<Fleet, List<T>> rows,
      Function<T, String> key,
      Function<T, String> label,
      Function<Fleet, List<FieldOf<T>>> fields,
      BiFunction<Almanac, T, Change> change) {
    /** Rows of the record that are written as they are. */
    static <R extends Record & Row> Block<R> plain(
        String id,
        String heading,
        Function<Fleet, List<R>> rows,
        Function<R, String> label,
        Function<Fleet, List<FieldOf<R>>> fields) {
      return new Block<>(
          id,
          heading,
          rows,
          r -> r.id().toString(),
          label,
          fields,
          (almanac, row) -> Change.checked(almanac, Edit.put(row)));
    }
  }

  Rows(Block<T> block, Desk desk) {
    this.block = block;
    this.desk = desk;
  }

  String id() {
    return block.id();
  }

  private Optional<T> row(Fleet fleet, String key) {
    return block.rows().apply(fleet).stream()
        .filter(r -> block.key().apply(r).equals(key))
        .findFirst();
  }

  private FieldOf<T> field(Fleet fleet, String id) {
    return block.fields().apply(fleet).stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no field is called " + id));
  }

  /** The first row as a form. */
  SheetState.Form form(Fleet fleet) {
    T row = block.rows().apply(fleet).get(0);
    List<SheetState.Field> fields =
        block.fields().apply(fleet).stream().map(f -> typed(f, row, "")).toList();
    return new SheetState.Form(block.id(), block.heading(), fields);
  }

  /** The fields of one row of several. */
  List<SheetState.Field> fields(Fleet fleet, T row) {
    return block.fields().apply(fleet).stream()
        .map(f -> typed(f, row, block.key().apply(row)))
        .toList();
  }

  private SheetState.Field typed(FieldOf<T> field, T row, String key) {
    String text = refused.get(new At(block.id(), key, field.id()));
    return text == null
        ? field.on(row)
        : new SheetState.Field(
            field.id(), field.label(), field.input(), text, field.say(row, text));
  }

  /** All rows as a grid. */
  SheetState.Grid grid(Fleet fleet, String empty) {
    return grid(fleet, "", empty);
  }

  /** All rows as a grid, each with its label in front under a heading. */
  SheetState.Grid grid(Fleet fleet, String labels, String empty) {
    List<FieldOf<T>> fields = block.fields().apply(fleet);
    List<SheetState.GridRow> rows = new ArrayList<>();
    for (T row : block.rows().apply(fleet)) {
      String key = block.key().apply(row);
      rows.add(
          new SheetState.GridRow(
              key,
              block.label().apply(row),
              fields.stream()
                  .map(
                      f ->
                          refused.getOrDefault(
                              new At(block.id(), key, f.id()), f.text().apply(row)))
                  .toList()));
    }
    return new SheetState.Grid(
        block.id(),
        block.heading(),
        labels,
        fields.stream().map(FieldOf::column).toList(),
        rows,
        empty);
  }

  /** Whether every text was taken. */
  boolean allTaken() {
    return refused.isEmpty();
  }

  /** What a text would mean. */
  Said say(Fleet fleet, At at, String text) {
    return find(fleet, at.row())
        .map(row -> field(fleet, at.field()).say(row, text))
        .orElse(Said.NOTHING);
  }

  private Optional<T> find(Fleet fleet, String key) {
    return key.isEmpty() ? block.rows().apply(fleet).stream().findFirst() : row(fleet, key);
  }

  /** Takes a text; says whether it was taken. */
  boolean enter(Fleet fleet, At at, String text) {
    return enterAll(fleet, List.of(new Typed(at, text))) == 0;
  }

  /** A text in a field. */
  record Typed(At at, String text) {}

  /**
   * Takes texts in one act; returns how many were not taken. Each is entered into its row as the
   * record has it when the act is done, so texts that follow fast upon each other keep each other.
   */
  int enterAll(Fleet fleet, List<Typed> texts) {
    List<Typed> taken = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    int notTaken = 0;
    for (Typed typed : texts) {
      Optional<T> row = find(fleet, typed.at().row());
      if (row.isEmpty()) {
        continue;
      }
      FieldOf<T> field = field(fleet, typed.at().field());
      Entry<T> entry = field.enter().apply(row.get(), typed.text());
      if (entry instanceof Entry.Read<T> read) {
        refused.remove(typed.at());
        if (!read.value().equals(row.get()) || waiting.contains(typed.at())) {
          taken.add(typed);
          labels.add(block.label().apply(row.get()) + ", " + field.label());
        }
      } else {
        refused.put(typed.at(), typed.text());
        notTaken++;
      }
    }
    if (!taken.isEmpty()) {
      taken.forEach(t -> waiting.add(t.at()));
      String what =
          labels.size() == 1
              ? labels.get(0)
              : labels.get(0) + " and " + (labels.size() - 1) + " more";
      desk.change(
          what,
          almanac -> changeAll(fleet, almanac, taken),
          () -> taken.forEach(t -> waiting.remove(t.at())));
    }
    return notTaken;
  }

  private Change changeAll(Fleet fleet, Almanac almanac, List<Typed> texts) {
    Edit all = Edit.put(List.of());
    for (Typed typed : texts) {
      Almanac now = almanac.with(all);
      Fleet beside = fleet.beside(now);
      Optional<T> row = find(beside, typed.at().row());
      if (row.isPresent()
          && field(beside, typed.at().field()).enter().apply(row.get(), typed.text())
              instanceof Entry.Read<T> read
          && !read.value().equals(row.get())) {
        Change one = block.change().apply(now, read.value());
        if (one instanceof Change.Refused) {
          return one;
        }
        all = all.and(((Change.Ready) one).edit());
      }
    }
    return new Change.Ready(all);
  }
}
