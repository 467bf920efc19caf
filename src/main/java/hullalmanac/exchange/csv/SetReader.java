package hullalmanac.exchange.csv;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads the lists of a folder: first all ids, then all rows, so that rows may refer to each other
 * in any order.
 */
final class SetReader {
  private final Path folder;
  private final Almanac existing;
  private final IdSource ids;
  private final Keys keys;
  private final List<CsvProblem> problems = new ArrayList<>();
  private final Map<CsvKind<?>, CsvTable> tables = new LinkedHashMap<>();
  private final Map<Kind, Map<String, CsvSet.Place>> places = new EnumMap<>(Kind.class);

  SetReader(Path folder, Almanac existing, IdSource ids) {
    this.folder = folder;
    this.existing = existing;
    this.ids = ids;
    this.keys = KeysOf.almanac(existing);
  }

  /** All files of the set, in the order in which they are written. */
  static List<CsvKind<?>> kinds(MoneyFiles money) {
    List<CsvKind<?>> work =
        List.of(
            BusinessFiles.BUSINESS,
            PlaceFiles.HARBOURS,
            BoatFiles.PARTIES,
            BoatFiles.BOATS,
            BoatFiles.ROLES,
            BoatFiles.SURFACES,
            PlaceFiles.BERTHS,
            PlaceFiles.SECRETS,
            money.carePlans,
            ProductFiles.PRODUCTS,
            ProductFiles.BOTTLES,
            WorkFiles.VISITS,
            WorkFiles.VISIT_SURFACES,
            WorkFiles.VISIT_MOVES,
            WorkFiles.STEPS,
            CoatFiles.COATS,
            CoatFiles.DUTIES,
            FindingFiles.FINDINGS,
            FindingFiles.PHOTOS,
            ListFiles.READINGS,
            WordingFiles.WORDINGS,
            ReminderFiles.REMINDERS,
            ReminderFiles.ABOUT,
            ReminderFiles.SAID);
    return Stream.concat(work.stream(), money.books().stream()).toList();
  }

  CsvSet.ReadResult read() {
    if (!folderIsReadable()) {
      return new CsvSet.ReadResult(Almanac.empty(existing.business()), problems, places);
    }
    table(BusinessFiles.BUSINESS);
    Business business = business();
    MoneyFiles money = new MoneyFiles(business);
    for (CsvKind<?> kind : kinds(money)) {
      if (kind != BusinessFiles.BUSINESS) {
        table(kind);
      }
    }
    noteIds();
    Almanac additions =
        new Almanac(
            business,
            all(PlaceFiles.HARBOURS),
            all(BoatFiles.PARTIES),
            all(BoatFiles.BOATS),
            all(BoatFiles.ROLES),
            all(BoatFiles.SURFACES),
            berths(),
            all(money.carePlans),
            all(ProductFiles.PRODUCTS),
            all(ProductFiles.BOTTLES),
            visits(),
            all(WorkFiles.STEPS),
            all(CoatFiles.COATS),
            all(CoatFiles.DUTIES),
            all(FindingFiles.FINDINGS),
            all(FindingFiles.PHOTOS),
            all(ListFiles.READINGS),
            all(WordingFiles.WORDINGS),
            reminders(),
            new BooksReader(this, money).read());
    return new CsvSet.ReadResult(additions, problems, places);
  }

  /** Whether no problem was found yet. */
  boolean sound() {
    return problems.isEmpty();
  }

  /** Notes a problem of a file that is of no one line. */
  void problem(String file, String column, String message, String advice) {
    problems.add(new CsvProblem(file, 0, column, message, advice));
  }

  private boolean folderIsReadable() {
    String name = folder.toString();
    if (!Files.isDirectory(folder)) {
      String what = Files.exists(folder) ? "it is a file, not a folder" : "there is no such folder";
      problems.add(new CsvProblem(name, 0, "", what, "Name the folder that holds the lists"));
      return false;
    }
    try {
      List<String> known = CsvSet.files();
      if (known.stream().noneMatch(f -> Files.exists(folder.resolve(f)))) {
        problems.add(
            new CsvProblem(
                name,
                0,
                "",
                "none of the lists is in it",
                "The lists are " + String.join(", ", known)));
        return false;
      }
      for (String stranger : CsvSet.strangers(folder)) {
        problems.add(
            new CsvProblem(
                stranger,
                0,
                "",
                "it is none of the lists",
                Nearest.of(stranger, known)
                    .map(n -> "Is \"" + n + "\" meant")
                    .orElse("Take it out of the folder")));
      }
      return true;
    } catch (IOException e) {
      problems.add(
          new CsvProblem(name, 0, "", "it cannot be read", "Look whether you may read it"));
      return false;
    }
  }

  private void table(CsvKind<?> kind) {
    Path path = folder.resolve(kind.file());
    if (Files.exists(path)) {
      CsvTable.read(path, kind.columns(), problems).ifPresent(t -> tables.put(kind, t));
    }
  }

  private Business business() {
    List<Business> rows = all(BusinessFiles.BUSINESS);
    if (rows.size() > 1) {
      problems.add(
          new CsvProblem(
              "business.csv", 3, "", "there is more than one business", "Leave one row in it"));
    }
    return rows.isEmpty() ? existing.business() : rows.get(0);
  }

  private void noteIds() {
    tables.forEach(
        (kind, table) -> {
          if (kind.hasIds()) {
            table.rows().forEach(row -> noteId(kind, row));
          }
        });
  }

  private void noteId(CsvKind<?> kind, CsvTable.Row row) {
    String key = Guard.off(row.cells().getOrDefault("id", "")).strip();
    if (key.isEmpty()) {
      return;
    }
    places
        .computeIfAbsent(kind.kind(), k -> new HashMap<>())
        .putIfAbsent(key, new CsvSet.Place(kind.file(), row.line()));
    keys.note(kind.kind(), key, ids, row.line())
        .ifPresent(
            before ->
                problems.add(
                    new CsvProblem(
                        kind.file(),
                        row.line(),
                        "id",
                        before.line() == 0
                            ? "the record has a "
                                + kind.kind().one()
                                + " with the id \""
                                + key
                                + "\" already"
                            : "the id \"" + key + "\" stands in line " + before.line() + " already",
                        "Give each row an id of its own, or take the row out")));
  }

  <T> List<T> all(CsvKind<T> kind) {
    CsvTable table = tables.get(kind);
    if (table == null) {
      return List.of();
    }
    In.Context context = new In.Context(table.file(), table.decimalComma(), keys, problems);
    List<T> values = new ArrayList<>();
    for (CsvTable.Row row : table.rows()) {
      In in = new In(row.cells(), context, row.line());
      for (Column column : kind.columns()) {
        if (column.needed() && row.cells().getOrDefault(column.name(), "").isBlank()) {
          in.problem(column.name(), "it is empty", "Fill it in");
        }
      }
      if (!row.cells().getOrDefault("id", "x").isBlank()) {
        kind.read(in).ifPresent(values::add);
      }
    }
    return values;
  }

  private List<Berth> berths() {
    Map<Id<Berth>, Berth.Private> secrets = new HashMap<>();
    all(PlaceFiles.SECRETS).forEach(s -> secrets.put(s.berth(), s.facts()));
    List<Berth> berths = all(PlaceFiles.BERTHS);
    requireOwners(
        PlaceFiles.SECRETS.file(), secrets.keySet(), berths.stream().map(Berth::id).toList());
    return berths.stream()
        .map(
            b ->
                new Berth(
                    b.id(),
                    b.key(),
                    b.boat(),
                    b.harbour(),
                    b.cover(),
                    b.water(),
                    b.from(),
                    b.until(),
                    b.yearly(),
                    b.lastYear(),
                    b.bow(),
                    b.access(),
                    secrets.getOrDefault(b.id(), Berth.Private.NOTHING)))
        .toList();
  }

  private List<Visit> visits() {
    Map<Id<Visit>, List<Visit.Part>> parts = new HashMap<>();
    all(WorkFiles.VISIT_SURFACES)
        .forEach(p -> parts.computeIfAbsent(p.visit(), v -> new ArrayList<>()).add(p.part()));
    Map<Id<Visit>, List<Visit.Move>> moves = new HashMap<>();
    all(WorkFiles.VISIT_MOVES)
        .forEach(m -> moves.computeIfAbsent(m.visit(), v -> new ArrayList<>()).add(m.move()));
    List<Visit> visits = all(WorkFiles.VISITS).stream().map(WorkFiles.VisitRow::visit).toList();
    List<Id<Visit>> owners = visits.stream().map(Visit::id).toList();
    requireOwners(WorkFiles.VISIT_SURFACES.file(), parts.keySet(), owners);
    requireOwners(WorkFiles.VISIT_MOVES.file(), moves.keySet(), owners);
    return visits.stream()
        .map(
            v ->
                new Visit(
                    v.id(),
                    v.key(),
                    v.boat(),
                    v.day(),
                    v.status(),
                    v.why(),
                    v.plan(),
                    v.cancelled(),
                    v.handover(),
                    Optional.ofNullable(parts.get(v.id())).orElse(List.of()),
                    Optional.ofNullable(moves.get(v.id())).orElse(List.of()),
                    v.note()))
        .toList();
  }

  private List<Reminder> reminders() {
    Map<Id<Reminder>, List<Reminder.About>> about = new HashMap<>();
    all(ReminderFiles.ABOUT)
        .forEach(a -> about.computeIfAbsent(a.reminder(), r -> new ArrayList<>()).add(a.about()));
    Map<Id<Reminder>, List<ReminderFiles.SaidRow>> said = new HashMap<>();
    all(ReminderFiles.SAID)
        .forEach(s -> said.computeIfAbsent(s.reminder(), r -> new ArrayList<>()).add(s));
    List<ReminderFiles.Head> heads = all(ReminderFiles.REMINDERS);
    List<Id<Reminder>> owners = heads.stream().map(ReminderFiles.Head::id).toList();
    requireOwners(ReminderFiles.ABOUT.file(), about.keySet(), owners);
    requireOwners(ReminderFiles.SAID.file(), said.keySet(), owners);
    return heads.stream()
        .map(
            h ->
                h.whole(
                    about.getOrDefault(h.id(), List.of()), said.getOrDefault(h.id(), List.of())))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A line that belongs to a row of the record, not of the set, would be lost: refuse it. */
  <T> void requireOwners(String file, java.util.Set<Id<T>> named, List<Id<T>> owners) {
    if (problems.isEmpty() && !owners.containsAll(named)) {
      problems.add(
          new CsvProblem(
              file,
              0,
              "",
              "some of its lines belong to rows that are in the record already",
              "Take them out; lists can add rows, not change them"));
    }
  }
}
