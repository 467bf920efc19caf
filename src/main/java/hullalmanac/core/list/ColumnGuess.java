package hullalmanac.core.list;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.ListReading;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Guesses what the columns of a list say, from their headings and from what stands in them. */
final class ColumnGuess {
  private static final double FEW = 0.25;
  private static final double MANY = 0.6;
  private static final int SAMPLES = 3;

  /** Fields of which a list may have several columns; of all others the first counts. */
  private static final Set<ListField> SEVERAL =
      EnumSet.of(
          ListField.PHONE,
          ListField.MAIL,
          ListField.ADDRESS,
          ListField.MAKE,
          ListField.KEYS,
          ListField.LAST_VISIT,
          ListField.PRODUCT,
          ListField.BOAT_NOTE,
          ListField.OWNER_NOTE,
          ListField.LEAVE_OUT);

  private final ListTable table;
  private final KnownNames known;
  private final Business business;
  private final List<ListColumn> columns = new ArrayList<>();
  private final List<ColumnContent> contents = new ArrayList<>();

  private ColumnGuess(ListTable table, KnownNames known, Business business) {
    this.table = table;
    this.known = known;
    this.business = business;
  }

  /**
   * The columns of a list.
   *
   * @param remembered how the same list was understood before
   * @param chosen what a person says some columns are, by their index
   */
  static List<ListColumn> of(
      ListTable table,
      KnownNames known,
      Business business,
      Optional<ListReading> remembered,
      Map<Integer, ListField> chosen) {
    ColumnGuess guess = new ColumnGuess(table, known, business);
    guess.byHeadings();
    guess.names();
    guess.onceEach();
    return guess.columns.stream()
        .map(
            c ->
                remembered
                    .map(r -> c.as(r.columns().get(c.index()).field(), "as the last time"))
                    .orElse(c))
        .map(c -> chosen.containsKey(c.index()) ? c.as(chosen.get(c.index()), "as you chose") : c)
        .toList();
  }

  private void byHeadings() {
    boolean firstNames =
        table.headings().texts().stream()
            .anyMatch(h -> Sense.of(h).equals(Optional.of(Sense.FIRST_NAME)));
    for (int c = 0; c < table.grid().width(); c++) {
      ColumnContent content = new ColumnContent(table.column(c));
      contents.add(content);
      String heading = table.headings().texts().get(c);
      Optional<Sense> sense = Sense.of(heading);
      if (sense.equals(Optional.of(Sense.NAME)) && firstNames && !has(Sense.LAST_NAME)) {
        sense = Optional.of(Sense.LAST_NAME);
      }
      columns.add(new Column(c, heading, content).guess(sense));
    }
  }

  private boolean has(Sense sense) {
    return table.headings().texts().stream().anyMatch(h -> Sense.of(h).equals(Optional.of(sense)));
  }

  private ListColumn column(int index, String heading, ListField field, String why) {
    List<String> samples =
        contents.get(index).cells().stream().map(Cell::text).distinct().limit(SAMPLES).toList();
    return new ListColumn(index, heading, field, why, samples);
  }

  /** One column. */
  private final class Column {
    private final int index;
    private final String heading;
    private final ColumnContent content;

    Column(int index, String heading, ColumnContent content) {
      this.index = index;
      this.heading = heading;
      this.content = content;
    }

    ListColumn guess(Optional<Sense> sense) {
      if (heading.equals(ListTable.BETWEEN)) {
        boolean harbours = content.size() == 0 && allKnownHarbours();
        return harbours
            ? as(ListField.HARBOUR, "sure: all are harbours that are known")
            : as(ListField.BOAT_NOTE, "kept as a note");
      }
      if (content.size() == 0) {
        return sense.isEmpty() || sense.get() == Sense.NAME
            ? as(ListField.BOAT_NOTE, "nothing stands in it")
            : byHeading(sense.get());
      }
      return sense.map(this::byHeading).orElseGet(this::byContent);
    }

    private boolean allKnownHarbours() {
      return table.rows().stream()
          .map(r -> table.grid().row(r).get(index))
          .filter(c -> !c.isBlank())
          .allMatch(c -> known.harbour(c.text()).isPresent());
    }

    private ListColumn as(ListField field, String why) {
      return column(index, heading, field, why);
    }

    private ListColumn byHeading(Sense sense) {
      return switch (sense) {
        case AHEAD -> note("kept as a note: it speaks of what lies ahead");
        case OTHER, NOTE -> note("kept as a note, by its heading");
        case HULL_NUMBER -> when(ListField.HULL_NUMBER, ColumnContent::isHullNumber, "");
        case MAIL -> when(ListField.MAIL, ColumnContent::isMail, "");
        case PHONE -> when(ListField.PHONE, ColumnContent::isPhone, "");
        case GATE_CODE -> plain(ListField.GATE_CODE);
        case KEYS -> plain(ListField.KEYS);
        case ADDRESS -> plain(ListField.ADDRESS);
        case LENGTH -> {
          UnitGuess unit = UnitGuess.length(heading, content, business.units());
          yield when(unit.field(), ColumnContent::isLength, unit.why());
        }
        case BEAM -> {
          UnitGuess unit = UnitGuess.beam(heading, content, lengthField(), business.units());
          yield when(unit.field(), ColumnContent::isLength, unit.why());
        }
        case BUILT ->
            when(ListField.BUILT, c -> ColumnContent.isYear(c) || c.kind() == Cell.Kind.DAY, "");
        case COLOUR -> plain(ListField.COLOUR);
        case MATERIAL -> plain(ListField.MATERIAL);
        case TYPE ->
            content.size() > 0 && content.share(c -> HullWords.type(c.text()).isPresent()) < FEW
                ? as(ListField.MAKE, "likely: its texts are no types of boat")
                : plain(ListField.TYPE);
        case MAKE -> plain(ListField.MAKE);
        case LAST_VISIT, PRODUCT -> visit();
        case BERTH, HARBOUR -> place(sense);
        case FIRM -> plain(ListField.FIRM);
        case FIRST_NAME -> plain(ListField.FIRST_NAME);
        case LAST_NAME -> plain(ListField.LAST_NAME);
        case OWNER -> owner();
        case BOAT -> plain(ListField.BOAT);
        case NAME -> as(ListField.BOAT_NOTE, NAME);
        case COUNT ->
            content.counts()
                ? as(ListField.LEAVE_OUT, "it only numbers the rows")
                : note("kept as a note, by its heading");
      };
    }

    private Optional<ListField> lengthField() {
      return columns.stream().map(ListColumn::field).filter(ListField::isLength).findFirst();
    }

    private ListColumn note(String why) {
      return as(ListField.BOAT_NOTE, why);
    }

    private ListColumn plain(ListField field) {
      return as(field, "likely: by its heading");
    }

    /** By its heading, if what stands in it does not speak against it. */
    private ListColumn when(ListField field, Predicate<Cell> fits, String unit) {
      double share = content.share(fits);
      String more = unit.isEmpty() ? "" : "; " + unit;
      if (content.size() == 0) {
        return as(field, "likely: by its heading; nothing stands in it");
      }
      if (share >= MANY) {
        return as(field, "sure: by its heading and what stands in it" + more);
      }
      return share >= FEW
          ? as(field, "likely: by its heading, though not all of it reads so" + more)
          : note("kept as a note: what stands in it does not read as " + field.words());
    }

    /** "Last wax" is a day or a product, as what stands in it says. */
    private ListColumn visit() {
      Set<Sense> senses = Sense.all(heading);
      if (content.share(ColumnContent::isDay) >= FEW) {
        return when(ListField.LAST_VISIT, ColumnContent::isDay, "");
      }
      return senses.contains(Sense.PRODUCT)
          ? plain(ListField.PRODUCT)
          : note("kept as a note: what stands in it does not read as days");
    }

    private ListColumn place(Sense sense) {
      if (content.mostly(c -> known.harbour(c.text()).isPresent())) {
        return as(ListField.HARBOUR, "sure: by its heading, and its harbours are known");
      }
      boolean numbered =
          content.different() > MANY && content.mostly(c -> c.text().matches(".*\\d.*"));
      if (sense == Sense.HARBOUR) {
        boolean withBerth = content.mostly(c -> known.harbourBefore(c.text()).isPresent());
        return numbered && !withBerth
            ? as(ListField.BERTH, "likely: its texts have numbers")
            : plain(ListField.HARBOUR);
      }
      return plain(ListField.BERTH);
    }

    private ListColumn owner() {
      if (content.mostly(ColumnContent::isPhone)) {
        return as(ListField.PHONE, "sure: by what stands in it");
      }
      if (content.mostly(ColumnContent::isMail)) {
        return as(ListField.MAIL, "sure: by what stands in it");
      }
      return plain(ListField.OWNER);
    }

    private ListColumn byContent() {
      String why = "likely: by what stands in it";
      if (content.mostly(ColumnContent::isMail)) {
        return as(ListField.MAIL, why);
      }
      if (content.mostly(c -> Shape.isHullNumber(c.text()))) {
        return as(ListField.HULL_NUMBER, why);
      }
      if (content.counts()) {
        return as(ListField.LEAVE_OUT, "it only numbers the rows");
      }
      if (content.mostly(ColumnContent::isDay)) {
        return note("kept as a note: of what these days are is not said");
      }
      if (content.mostly(ColumnContent::isPhone)) {
        return as(ListField.PHONE, why);
      }
      if (content.mostly(c -> Shape.isLength(c.text()))) {
        UnitGuess unit = UnitGuess.length(heading, content, business.units());
        return lengthField().isEmpty()
            ? as(unit.field(), why)
            : note("kept as a note: another column is the length");
      }
      if (content.mostly(c -> known.harbour(c.text()).isPresent())) {
        return as(ListField.HARBOUR, "sure: its harbours are known");
      }
      boolean names = content.mostly(ColumnContent::isName);
      if (names && content.mostly(c -> HullWords.type(c.text()).isPresent())) {
        return as(ListField.TYPE, why);
      }
      return as(
          ListField.BOAT_NOTE,
          names && content.different() >= MANY ? MAYBE_NAME : "kept as a note");
    }
  }

  private static final String NAME = "its heading says name, but not of what";
  private static final String MAYBE_NAME = "kept as a note: what it says is not known";

  /** Finds the boats and the owners among columns that only say that they are names. */
  private void names() {
    boolean headed = table.headings().last() >= 0;
    List<ListColumn> open =
        columns.stream()
            .filter(c -> c.why().equals(NAME) || (!headed && c.why().equals(MAYBE_NAME)))
            .collect(Collectors.toCollection(ArrayList::new));
    boolean owner = isThere(ListField.OWNER) || isThere(ListField.LAST_NAME);
    if (!owner
        && !open.isEmpty()
        && (isThere(ListField.BOAT) || open.size() > 1 || isPeople(open))) {
      ListColumn most =
          open.stream().max((a, b) -> Double.compare(person(a), person(b))).orElseThrow();
      if (!isThere(ListField.BOAT) && open.size() > 1 && person(most) == person(open.get(0))) {
        most = open.get(1);
      }
      put(most.as(ListField.OWNER, "a guess: by what stands in it"));
      open.remove(most);
    }
    if (!isThere(ListField.BOAT) && !open.isEmpty()) {
      put(open.get(0).as(ListField.BOAT, "a guess: by what stands in it"));
    }
  }

  private boolean isThere(ListField field) {
    return columns.stream().anyMatch(c -> c.field() == field);
  }

  private void put(ListColumn column) {
    columns.set(column.index(), column);
  }

  /** Whether the only column of names is one of people: a list without boats. */
  private boolean isPeople(List<ListColumn> open) {
    return open.size() == 1
        && person(open.get(0)) >= 1
        && !isThere(ListField.HULL_NUMBER)
        && columns.stream().noneMatch(c -> c.field().isLength());
  }

  /** How much the names of a column are those of people, 0 to 3. */
  private double person(ListColumn column) {
    ColumnContent content = contents.get(column.index());
    double like =
        content.cells().stream().mapToInt(c -> Shape.likeAPerson(c.text())).average().orElse(0);
    return like
        + content.share(c -> known.party(c.text()))
        - content.share(c -> known.boat(c.text()));
  }

  /** Of most fields only one column counts: the surest, or the first of those. */
  private void onceEach() {
    for (ListField field : ListField.values()) {
      List<ListColumn> same = columns.stream().filter(c -> kind(c.field()) == kind(field)).toList();
      if (same.size() > 1 && !SEVERAL.contains(field)) {
        ListColumn first =
            same.stream().filter(c -> c.why().startsWith("sure")).findFirst().orElse(same.get(0));
        same.stream()
            .filter(c -> c.index() != first.index())
            .forEach(
                c ->
                    put(
                        c.as(
                            noteFor(c.field()),
                            "kept as a note: column " + first.label() + " is that already")));
      }
    }
    if (!isThere(ListField.BOAT)) {
      columns.replaceAll(
          c -> c.field() == ListField.BOAT_NOTE ? c.as(ListField.OWNER_NOTE, c.why()) : c);
    }
  }

  private static ListField kind(ListField field) {
    return field.isLength() ? ListField.LENGTH_FEET : field.isBeam() ? ListField.BEAM_FEET : field;
  }

  private static ListField noteFor(ListField field) {
    return switch (field) {
      case OWNER, FIRST_NAME, LAST_NAME, FIRM -> ListField.OWNER_NOTE;
      default -> ListField.BOAT_NOTE;
    };
  }
}
