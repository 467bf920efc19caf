package hullalmanac.core.list;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.ListReading;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.work.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What becomes of a list: how its columns are understood, what each row says, who is known already,
 * what is set aside, and the edit that brings it in. A function of the list, the record, the day
 * and what a person chose; the same list and choices always give the same plan.
 */
public final class ListPlan {
  /** Id of the answer that names the harbour of boats for which the list names none. */
  public static final String HARBOUR = "harbour";

  /** Id of the answer that names the type of boats for which the list names none. */
  public static final String TYPE = "type";

  /** Id of the answer that says on what a product of the list was laid. */
  public static final String COATS = "coats";

  /** Begins the id of the answer that gives the latitude of a new harbour. */
  public static final String LATITUDE = "latitude ";

  private static final String NO_COAT = "not written as a coat";
  private static final String TOPSIDES = "the topsides";
  private static final String HULL = "topsides and transom";

  private final Grid grid;
  private final Almanac almanac;
  private final LocalDate today;
  private final ListChoices choices;
  private final KnownNames known;
  private final ListTable table;
  private final List<ListColumn> columns;
  private final ListReaders readers;
  private final List<Line> lines;
  private final People people;
  private final Boats boats;
  private final List<Aside> asides;
  private final List<Question> questions;
  private final List<Alike> alikes;
  private final List<Mark> marks;

  /**
   * What would come in.
   *
   * @param boats new boats
   * @param filled boats of the record about whom the list says something
   * @param people new owners
   * @param visits days on which something was done
   */
  public record Counts(int boats, int filled, int people, int visits) {}

  private ListPlan(Grid grid, Almanac almanac, LocalDate today, ListChoices choices) {
    this.grid = grid;
    this.almanac = almanac;
    this.today = today;
    this.choices = choices;
    known = new KnownNames(almanac);
    ListTable parted = ListTable.of(grid, choices.headingRow(), known.harbourNames());
    table = parted.with(choices.typed());
    columns =
        ColumnGuess.of(
            table,
            known,
            almanac.business(),
            remembered(almanac, table.headings().folded()),
            choices.fields());
    readers = new ListReaders(table, columns, known, almanac.business(), today, choices);
    Lines read = Lines.of(table, columns, readers, choices);
    People everybody = new People(almanac, read.lines(), choices);
    Boats all = new Boats(almanac, today, read.lines(), everybody, choices);
    lines = read.lines().stream().filter(l -> !all.leftOut().contains(l)).toList();
    people = new People(almanac, lines, choices);
    boats = new Boats(almanac, today, lines, people, choices);
    asides = asides(read, all.leftOut());
    questions = new ArrayList<>(readers.questions());
    questions.addAll(read.questions());
    alikes = new ArrayList<>(boats.alikes());
    all.alikes().stream().filter(a -> a.choice() == Same.LEAVE_OUT).forEach(alikes::add);
    alikes.addAll(people.alikes());
    marks =
        lines.stream()
            .flatMap(l -> l.marks().stream())
            .distinct()
            .sorted(Comparator.comparingInt(Mark::row).thenComparingInt(Mark::column))
            .toList();
  }

  /**
   * Plans to bring a list in.
   *
   * @param today the day on which it comes in
   */
  public static ListPlan of(Grid grid, Almanac almanac, LocalDate today, ListChoices choices) {
    return new ListPlan(grid, almanac, today, choices);
  }

  private List<Aside> asides(Lines read, List<Line> leftOut) {
    List<Aside> all = new ArrayList<>(table.asides());
    leftOut.stream()
        .map(Line::row)
        .distinct()
        .forEach(
            r ->
                all.add(
                    Aside.row(
                        r, table.grid().row(r), "it is left out as known already, as you chose")));
    all.addAll(people.asides());
    all.addAll(read.asides());
    all.addAll(secretsWithoutBerth());
    return List.copyOf(all);
  }

  /** Keys and gate codes are kept with a berth only, so that they stay out of what is shown. */
  private List<Aside> secretsWithoutBerth() {
    List<Aside> all = new ArrayList<>();
    for (Boats.Vessel vessel : boats.all()) {
      boolean home = vessel.known().flatMap(boats::home).isPresent();
      boolean harbour =
          !usualHarbour().isEmpty()
              || vessel.lines().stream().anyMatch(l -> !l.place().harbour().isEmpty());
      for (Line line : home || harbour ? List.<Line>of() : vessel.lines()) {
        String texts = (line.place().keys() + " · " + line.place().gateCode()).strip();
        if (!texts.equals("·")) {
          all.add(
              new Aside(
                  Aside.place(line.row()),
                  texts.replaceAll("^· | ·$", ""),
                  "keys and gate codes are kept with a berth only; say in which harbour she lies"));
        }
      }
    }
    return all;
  }

  /** The reading of a list with the same headings, if one was brought in before. */
  static Optional<ListReading> remembered(Almanac almanac, List<String> headings) {
    return headings.stream().allMatch(String::isEmpty)
        ? Optional.empty()
        : almanac.listReadings().stream()
            .filter(r -> r.headings().equals(headings))
            .min(Comparator.comparing(ListReading::key));
  }

  /**
   * The columns as they are to be remembered; empty where there are no headings to know them by.
   */
  List<ListReading.Column> remembering() {
    List<String> headings = headings();
    if (headings.stream().allMatch(String::isEmpty)) {
      return List.of();
    }
    return columns.stream()
        .map(c -> new ListReading.Column(headings.get(c.index()), c.field()))
        .toList();
  }

  List<String> headings() {
    return table.headings().folded();
  }

  /** The name of the list. */
  public String name() {
    return grid.name();
  }

  /** Sentences on how the list was read from its file. */
  public List<String> remarks() {
    return grid.remarks();
  }

  LocalDate today() {
    return today;
  }

  /** Number of the last row of headings, from 1; 0 where there are none. */
  public int headingRow() {
    return table.headings().last() + 1;
  }

  /** The columns, from left to right. */
  public List<ListColumn> columns() {
    return columns;
  }

  /** How many rows the list has, headings and all. */
  public int height() {
    return table.grid().rows().size();
  }

  /** Names of the harbours of the record, in order. */
  public List<String> knownHarbours() {
    return almanac.harbours().stream().map(Harbour::name).sorted().toList();
  }

  /** What comes in, in order of rows. */
  public List<Line> lines() {
    return lines;
  }

  /** What stands in a cell of a row that is read. */
  public String text(int row, int column) {
    return table.grid().row(row).get(column).text();
  }

  /** What does not come in. */
  public List<Aside> asides() {
    return asides;
  }

  /** What only a person can say. */
  public List<Question> questions() {
    return List.copyOf(questions);
  }

  /** Who is known already. */
  public List<Alike> alikes() {
    return List.copyOf(alikes);
  }

  /** Sentences about cells, in order of rows and columns. */
  public List<Mark> marks() {
    return marks;
  }

  /**
   * Cells that need a look: those with a sentence about them, and those that name somebody who may
   * be known already.
   */
  public List<Mark> looks() {
    Set<Integer> rows = lines.stream().map(Line::row).collect(Collectors.toSet());
    Stream<Mark> known =
        alikes.stream()
            .filter(a -> !a.certain() && !choices.answers().containsKey(a.id()))
            .filter(a -> rows.contains(a.who().row()))
            .flatMap(a -> name(a.who().isBoat()).map(c -> look(a.who(), c)).stream());
    return Stream.concat(marks.stream(), known)
        .sorted(Comparator.comparingInt(Mark::row).thenComparingInt(Mark::column))
        .toList();
  }

  private static Mark look(Alike.Who who, int column) {
    return new Mark(
        who.row(),
        column,
        who.name(),
        "Perhaps known already; both stand side by side below.",
        true);
  }

  /** The column that names the boats, or the owners. */
  private Optional<Integer> name(boolean boats) {
    Set<ListField> names =
        boats
            ? Set.of(ListField.BOAT)
            : Set.of(ListField.OWNER, ListField.FIRST_NAME, ListField.LAST_NAME, ListField.FIRM);
    return columns.stream()
        .filter(c -> names.contains(c.field()))
        .map(ListColumn::index)
        .findFirst();
  }

  /** Questions that nobody has answered yet. */
  public int openQuestions() {
    return (int) questions.stream().filter(q -> !choices.answers().containsKey(q.id())).count();
  }

  People people() {
    return people;
  }

  Boats boats() {
    return boats;
  }

  /** Harbours that the record does not have. */
  public List<NewHarbour> newHarbours() {
    return NewHarbour.of(lines, usualHarbour(), almanac, choices);
  }

  /** How a row is shown before it comes in; only rows that are read. */
  public List<ShownRow> rows() {
    Map<Integer, List<Line>> byRow = lines.stream().collect(Collectors.groupingBy(Line::row));
    Map<Integer, List<Mark>> marked = looks().stream().collect(Collectors.groupingBy(Mark::row));
    return table.rows().stream()
        .map(
            r ->
                ShownRow.of(
                    r,
                    byRow.getOrDefault(r, List.of()),
                    marked.getOrDefault(r, List.of()),
                    table.grid().row(r),
                    choices))
        .toList();
  }

  /** What a text would mean in a cell of a row, as a sentence. */
  public String say(int row, int column, String text) {
    LineMaker maker = new LineMaker(row, readers);
    if (!text.isBlank()) {
      maker.take(columns.get(column), Cell.of(text));
    }
    return maker.said(column);
  }

  /** The harbour of boats for which the list names none; empty where nobody said. */
  public String usualHarbour() {
    return choices.answer(HARBOUR).map(String::strip).orElse("");
  }

  /** The type of boats for which the list names none. */
  public BoatType usualType() {
    return choices.answer(TYPE).flatMap(a -> Coded.parse(BoatType.class, a)).orElse(BoatType.OTHER);
  }

  /** On what a product that the list names was laid, where it is a product of the record. */
  public Optional<Question> coats() {
    boolean any =
        boats.all().stream()
            .filter(v -> v.known().isEmpty())
            .flatMap(v -> v.lines().stream())
            .flatMap(l -> l.visits().stream())
            .anyMatch(w -> protecting(w).isPresent());
    return any
        ? Optional.of(
            Question.of(
                COATS,
                "Products were laid on",
                "The list names products of your shelf.",
                List.of(NO_COAT, TOPSIDES, HULL),
                choices))
        : Optional.empty();
  }

  Set<SurfaceKind> coatedSurfaces() {
    return coats()
        .map(Question::chosen)
        .map(
            chosen ->
                switch (chosen) {
                  case TOPSIDES -> EnumSet.of(SurfaceKind.TOPSIDES);
                  case HULL -> EnumSet.of(SurfaceKind.TOPSIDES, SurfaceKind.TRANSOM);
                  default -> EnumSet.noneOf(SurfaceKind.class);
                })
        .orElse(EnumSet.noneOf(SurfaceKind.class));
  }

  /** The product of the record that was laid, if it is one that protects. */
  Optional<Product> protecting(Line.Work work) {
    return Optional.of(work.product())
        .filter(p -> !p.isEmpty())
        .flatMap(known::product)
        .filter(p -> p.kind().protects());
  }

  /** What would come in. */
  public Counts counts() {
    long fresh = boats.all().stream().filter(v -> v.known().isEmpty()).count();
    return new Counts(
        (int) fresh,
        (int) (boats.all().size() - fresh),
        (int) people.all().stream().filter(p -> p.known().isEmpty()).count(),
        boats.all().stream()
            .mapToInt(
                v ->
                    (int)
                        v.lines().stream()
                            .flatMap(l -> l.visits().stream())
                            .map(Line.Work::day)
                            .distinct()
                            .count())
            .sum());
  }

  /** Why it cannot be brought in as it is; absent when it can. */
  public Optional<String> missing() {
    boolean noNames =
        columns.stream()
            .map(ListColumn::field)
            .noneMatch(
                f ->
                    Set.of(
                            ListField.BOAT,
                            ListField.OWNER,
                            ListField.FIRST_NAME,
                            ListField.LAST_NAME,
                            ListField.FIRM)
                        .contains(f));
    if (noNames) {
      return Optional.of(
          "No column is the boats or the owners. Choose which one is, among the columns.");
    }
    if (lines.isEmpty()) {
      return Optional.of("No row has a boat or an owner; nothing would come in.");
    }
    String without =
        newHarbours().stream()
            .filter(h -> h.latitude().isEmpty())
            .map(NewHarbour::name)
            .collect(Collectors.joining(", "));
    return without.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Latitude is needed for sun and wear of "
                + without
                + "; whole degrees do, north positive.");
  }

  /** What comes in, in words: {@code 34 boats and 2 owners}. */
  public String words() {
    Counts counts = counts();
    int all = counts.boats() + counts.filled();
    if (all == 0) {
      return counted(people.all().size(), "owner");
    }
    long alone = lines.stream().filter(l -> !l.hasBoat()).count();
    return counted(all, "boat") + (alone == 0 ? "" : " and " + counted((int) alone, "owner"));
  }

  private static String counted(int count, String one) {
    return count == 1 ? "1 " + one : count + " " + one + "s";
  }

  /** The act in words, for the change log. */
  public String act() {
    return "list brought in: " + name() + ", " + words();
  }

  /** The edit that brings the list into the record of this plan, all of it or nothing. */
  public Change change(IdSource ids) {
    return missing().isPresent()
        ? Change.refused(
            new hullalmanac.core.record.Problem(
                hullalmanac.core.record.Kind.LIST_READING,
                name(),
                "fields",
                "the list " + name() + " cannot come in yet",
                missing().get().replaceAll("\\.$", "")))
        : Change.checked(almanac, new ListEdit(this, almanac, ids).edit());
  }

  /** A field of a row in words, for a note. */
  static String fieldWords(String component) {
    return switch (component) {
      case "loa" -> "Length";
      case "beam" -> "Beam";
      case "built" -> "Built";
      case "hullNumber" -> "Hull number";
      case "email" -> "Mail";
      default -> hullalmanac.core.record.Texts.capital(component);
    };
  }

  /** A value as a note says it. */
  static String plain(Object value) {
    return value instanceof hullalmanac.core.record.Length length
        ? length.feetAndInches() + " (" + length.metresText() + ")"
        : String.valueOf(value);
  }
}
