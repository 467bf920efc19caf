package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
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
import java.util.concurrent.ConcurrentHashMap;
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
  private final Map<At, Kept> refused = new HashMap<>();

  /**
   * What one's own texts made last of the row at a place; also known where the record is changed.
   */
  private final Map<String, Became> ours = new ConcurrentHashMap<>();

  /** Fields whose texts are on their way into the record. */
  private final Set<At> waiting = new HashSet<>();

  /** A row that is known by its place alone: by the time of a change another can stand there. */
  interface Placed {
    /** What it is a part of. */
    Kind within();

    /** What tells it from another that came to its place. */
    Object mark();
  }

  /** A text that was not taken, and the mark of its row where that has no more than a place. */
  private record Kept(String text, Optional<Object> mark) {}

  /**
   * What one's own texts made of a row, one after the other.
   *
   * @param before its marks until then
   * @param now its mark since
   */
  private record Became(Set<Object> before, Object now) {
    /** The same after one text more. */
    static Became and(Became until, Object was, Object now) {
      Set<Object> before = new HashSet<>();
      if (until != null && until.now().equals(was)) {
        before.addAll(until.before());
      }
      before.add(was);
      return new Became(before, now);
    }
  }

  /** A text that is taken into a row as it was shown. */
  private record Taken<T>(Typed typed, T shown) {}

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
    Kept kept = refused.get(new At(block.id(), key, field.id()));
    return kept == null
        ? field.on(row)
        : new SheetState.Field(
            field.id(), field.label(), field.input(), kept.text(), field.say(row, kept.text()));
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
                          Optional.ofNullable(refused.get(new At(block.id(), key, f.id())))
                              .map(Kept::text)
                              .orElseGet(() -> f.text().apply(row)))
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

  private static Optional<Object> mark(Object row) {
    return row instanceof Placed placed ? Optional.of(placed.mark()) : Optional.empty();
  }

  /** Whether a mark is that of a row as it was shown, or of what one's own texts made of it. */
  private static boolean same(Became became, Object shown, Object now) {
    return now.equals(shown)
        || (became != null && became.now().equals(now) && became.before().contains(shown));
  }

  /**
   * Lets texts that were not taken go along with rows that came to other places. Where such a row
   * is gone its texts are gone too, so that none stands in another.
   */
  void shown(Fleet fleet) {
    if (refused.values().stream().noneMatch(k -> k.mark().isPresent())) {
      return;
    }
    List<T> rows = block.rows().apply(fleet);
    Map<At, Kept> there = new HashMap<>();
    refused.forEach(
        (at, kept) -> {
          if (kept.mark().isEmpty()) {
            there.put(at, kept);
          } else {
            row(rows, at.row(), kept.mark().get())
                .ifPresent(
                    row ->
                        there.put(
                            new At(at.block(), block.key().apply(row), at.field()),
                            new Kept(kept.text(), mark(row))));
          }
        });
    refused.clear();
    refused.putAll(there);
  }

  /** Where the row with a mark is now: in its place, or else in another. */
  private Optional<T> row(List<T> rows, String key, Object shown) {
    Became became = ours.get(key);
    List<T> same =
        rows.stream().filter(r -> mark(r).filter(m -> same(became, shown, m)).isPresent()).toList();
    return same.stream()
        .filter(r -> block.key().apply(r).equals(key))
        .findFirst()
        .or(() -> same.stream().findFirst());
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
    List<Taken<T>> taken = new ArrayList<>();
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
          taken.add(new Taken<>(typed, row.get()));
          labels.add(block.label().apply(row.get()) + ", " + field.label());
        }
      } else {
        refused.put(typed.at(), new Kept(typed.text(), mark(row.get())));
        notTaken++;
      }
    }
    if (!taken.isEmpty()) {
      taken.forEach(t -> waiting.add(t.typed().at()));
      String what =
          labels.size() == 1
              ? labels.get(0)
              : labels.get(0) + " and " + (labels.size() - 1) + " more";
      desk.change(
          what,
          almanac -> changeAll(fleet, almanac, taken),
          () -> taken.forEach(t -> waiting.remove(t.typed().at())));
    }
    return notTaken;
  }

  private Change changeAll(Fleet fleet, Almanac almanac, List<Taken<T>> texts) {
    Edit all = Edit.put(List.of());
    Map<String, Became> made = new HashMap<>(ours);
    for (Taken<T> taken : texts) {
      Typed typed = taken.typed();
      String key = typed.at().row();
      Almanac now = almanac.with(all);
      Fleet beside = fleet.beside(now);
      Optional<T> row = find(beside, key);
      if (isAnother(made, key, taken.shown(), row)) {
        return another((Placed) taken.shown());
      }
      if (row.isPresent()
          && field(beside, typed.at().field()).enter().apply(row.get(), typed.text())
              instanceof Entry.Read<T> read
          && !read.value().equals(row.get())) {
        Change one = block.change().apply(now, read.value());
        if (one instanceof Change.Refused) {
          return one;
        }
        all = all.and(((Change.Ready) one).edit());
        mark(row.get())
            .ifPresent(
                was ->
                    made.put(
                        key, Became.and(made.get(key), was, mark(read.value()).orElseThrow())));
      }
    }
    ours.putAll(made);
    return new Change.Ready(all);
  }

  /**
   * Takes a row out of the record, unless another stands in its place by then.
   *
   * @param without what the record becomes without a row
   */
  void remove(Fleet fleet, String key, String what, BiFunction<Almanac, T, Change> without) {
    row(fleet, key)
        .ifPresent(
            shown -> {
              refused.keySet().removeIf(at -> at.row().equals(key));
              desk.change(
                  what,
                  almanac -> {
                    Optional<T> now = row(fleet.beside(almanac), key);
                    return isAnother(ours, key, shown, now)
                        ? another((Placed) shown)
                        : without.apply(almanac, now.orElse(shown));
                  });
            });
  }

  /** Whether a row that is known by its place is not in it any more. */
  private static <T> boolean isAnother(
      Map<String, Became> made, String key, T shown, Optional<T> now) {
    return mark(shown)
        .filter(was -> now.flatMap(Rows::mark).filter(is -> same(made.get(key), was, is)).isEmpty())
        .isPresent();
  }

  /** Refuses to write into a row that is not the one that was shown. */
  static Change another(Placed row) {
    return Change.refused(
        new Problem(row.within(), "", "", "this line was changed meanwhile", "Look again"));
  }
}
