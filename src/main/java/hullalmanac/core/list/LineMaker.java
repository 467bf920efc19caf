package hullalmanac.core.list;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.find.Folding;
import hullalmanac.core.reckon.HullNumber;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Puts together what the cells of one row say of one boat. A second text for a field is kept as a
 * note.
 */
final class LineMaker {
  private static final Set<String> FIRM_WORDS =
      Set.of(
          "ltd",
          "limited",
          "llc",
          "llp",
          "inc",
          "plc",
          "gmbh",
          "ag",
          "kg",
          "ug",
          "ohg",
          "sarl",
          "sas",
          "bv",
          "nv",
          "srl",
          "spa",
          "sl",
          "oy",
          "ab",
          "aps",
          "company",
          "charter",
          "charters",
          "club",
          "marina",
          "boatyard",
          "yard",
          "werft",
          "association",
          "trust");

  /** No boat is shorter than so many times her width (common practice, no source). */
  private static final double WIDE = 1.4;

  private final int row;
  private final ListReaders readers;
  private final List<Mark> marks = new ArrayList<>();
  private final Map<Integer, String> shown = new HashMap<>();
  private final List<String> boatNotes = new ArrayList<>();
  private final List<String> ownerNotes = new ArrayList<>();
  private final Map<ListField, String> texts = new HashMap<>();
  private final WorkSaid work = new WorkSaid();
  private Optional<BoatType> type = Optional.empty();
  private Optional<Length> loa = Optional.empty();
  private Optional<Length> beam = Optional.empty();
  private Optional<ListColumn> beamColumn = Optional.empty();
  private Optional<Integer> built = Optional.empty();
  private Optional<Finish> finish = Optional.empty();
  private Optional<Tone> tone = Optional.empty();

  LineMaker(int row, ListReaders readers) {
    this.row = row;
    this.readers = readers;
  }

  /** Takes a cell of which it is not said to which of several boats it belongs. */
  void takeUndealt(ListColumn column, Cell cell) {
    shown.put(column.index(), cell.text());
    mark(
        column,
        cell,
        "Of which of the boats this is said is not clear; it is kept as a note.",
        false);
    note(column, cell);
  }

  /** Takes a cell. */
  void take(ListColumn column, Cell cell) {
    shown.put(column.index(), cell.text());
    if (cell.kind() == Cell.Kind.ERROR && !column.field().isNote()) {
      mark(column, cell, "The formula gives no value; it is kept as a note.", false);
      note(column, cell);
      return;
    }
    switch (column.field()) {
      case BOAT, OWNER, FIRST_NAME, LAST_NAME, FIRM, BERTH -> once(column, cell);
      case TYPE -> type(column, cell);
      case MAKE -> note(column, cell);
      case LENGTH_FEET, LENGTH_METRES, LENGTH_CENTIMETRES -> loa = length(column, cell, loa);
      case BEAM_FEET, BEAM_METRES, BEAM_CENTIMETRES -> {
        beam = length(column, cell, beam);
        beamColumn = Optional.of(column);
      }
      case HULL_NUMBER -> hullNumber(column, cell);
      case BUILT -> built(column, cell);
      case MATERIAL -> material(column, cell);
      case COLOUR -> colour(column, cell);
      case PHONE -> phone(column, cell);
      case MAIL -> mail(column, cell);
      case ADDRESS -> texts.merge(ListField.ADDRESS, cell.text(), (a, b) -> a + ", " + b);
      case HARBOUR -> harbour(column, cell);
      case KEYS, GATE_CODE -> texts.merge(column.field(), cell.text(), (a, b) -> a + "; " + b);
      case LAST_VISIT -> visit(column, cell);
      case PRODUCT -> product(column, cell);
      case BOAT_NOTE -> boatNotes.add(noted(column, cell));
      case OWNER_NOTE -> ownerNotes.add(noted(column, cell));
      default -> {
        // A column that is left out. It is set aside as a column.
      }
    }
  }

  private static String noted(ListColumn column, Cell cell) {
    return column.label() + ": " + cell.text();
  }

  /** Keeps a cell as it stands with whom it belongs to. */
  private void note(ListColumn column, Cell cell) {
    (column.field().isOfOwner() ? ownerNotes : boatNotes).add(noted(column, cell));
  }

  private void mark(ListColumn column, Cell cell, String sentence, boolean taken) {
    marks.add(new Mark(row, column.index(), cell.text(), sentence, taken));
  }

  private void once(ListColumn column, Cell cell) {
    String text = cell.text().replaceAll("\\s*\\R\\s*", " ");
    String before = texts.putIfAbsent(column.field(), text);
    if (before != null) {
      again(column, cell, before.equals(text));
    }
  }

  private void again(ListColumn column, Cell cell, boolean same) {
    if (!same) {
      mark(column, cell, "Another column says that already; it is kept as a note.", false);
      note(column, cell);
    }
  }

  private <T> Optional<T> value(ListColumn column, Cell cell, Understood<T> read) {
    shown.put(column.index(), read.shown());
    read.said().ifPresent(s -> mark(column, cell, s, read.value().isPresent()));
    if (read.said().isPresent()) {
      note(column, cell);
    }
    return read.value();
  }

  private Optional<Length> length(ListColumn column, Cell cell, Optional<Length> before) {
    Optional<Length> read = value(column, cell, readers.length(column).read(cell));
    if (before.isPresent() && read.isPresent()) {
      again(column, cell, before.equals(read));
      return before;
    }
    return read.or(() -> before);
  }

  private void hullNumber(ListColumn column, Cell cell) {
    if (texts.putIfAbsent(ListField.HULL_NUMBER, cell.text()) != null) {
      again(column, cell, texts.get(ListField.HULL_NUMBER).equals(cell.text()));
    } else if (HullNumber.read(cell.text()) instanceof HullNumber.Invalid wrong) {
      mark(column, cell, "It is kept as it stands, but look at it: " + wrong.reason() + ".", true);
    }
  }

  private void type(ListColumn column, Cell cell) {
    Optional<BoatType> read = HullWords.type(cell.text());
    if (read.isEmpty()) {
      mark(column, cell, "It is no type of boat that is known; it is kept as a note.", false);
    } else if (type.isEmpty()) {
      type = read;
      shown.put(column.index(), read.get().words());
    }
    if (read.isEmpty() || !read.get().words().equals(cell.text()) || !type.equals(read)) {
      note(column, cell);
    }
  }

  private void built(ListColumn column, Cell cell) {
    String text = cell.kind() == Cell.Kind.DAY ? cell.text().substring(0, 4) : cell.text();
    boolean year =
        NumberEntry.readWhole(text) instanceof Entry.Read<Integer> read
            && read.value() >= 1850
            && read.value() <= readers.today().getYear() + 1;
    if (year && built.isEmpty()) {
      built = Optional.of(Integer.parseInt(text.replaceAll("[.,]0*$", "").strip()));
      shown.put(column.index(), String.valueOf(built.get()));
      if (cell.kind() == Cell.Kind.DAY) {
        note(column, cell);
      }
    } else {
      mark(
          column,
          cell,
          "It is no year in which a boat can have been built; it is kept as a note.",
          false);
      note(column, cell);
    }
  }

  private void material(ListColumn column, Cell cell) {
    Optional<Finish> read = HullWords.finish(cell.text());
    if (read.isEmpty()) {
      mark(column, cell, "It names no finish that is known; it is kept as a note.", false);
    } else {
      finish = finish.or(() -> read);
      shown.put(column.index(), read.get().words());
    }
    note(column, cell);
  }

  private void colour(ListColumn column, Cell cell) {
    Optional<Tone> read = HullWords.tone(cell.text());
    if (read.isEmpty()) {
      mark(
          column, cell, "Whether that is light or dark is not clear; it is kept as a note.", false);
    } else {
      tone = tone.or(() -> read);
      shown.put(column.index(), cell.text() + " (" + read.get().words() + ")");
    }
    note(column, cell);
  }

  private void phone(ListColumn column, Cell cell) {
    String text = cell.text().replaceAll("\\s*\\R\\s*", ", ");
    if (!Shape.isPhone(cell.text()) && Shape.phoneIn(cell.text()).isEmpty()) {
      mark(column, cell, "It does not look like a phone number; it is kept as it stands.", true);
    }
    texts.merge(ListField.PHONE, text, (a, b) -> a.equals(b) ? a : a + ", " + b);
  }

  private void mail(ListColumn column, Cell cell) {
    List<String> mails =
        Arrays.stream(cell.text().split("[\\s;,<>]+")).filter(Shape::isMail).toList();
    if (mails.isEmpty()) {
      mark(column, cell, "It is no mail address; it is kept as a note.", false);
      note(column, cell);
      return;
    }
    boolean first = texts.putIfAbsent(ListField.MAIL, mails.get(0)) == null;
    boolean whole = mails.get(0).equals(cell.text());
    if (!whole || (!first && !texts.get(ListField.MAIL).equals(mails.get(0)))) {
      note(column, cell);
    }
  }

  private void harbour(ListColumn column, Cell cell) {
    Optional<Harbour> exact = readers.known().harbour(cell.text());
    Optional<Harbour> before = readers.known().harbourBefore(cell.text());
    if (exact.isEmpty() && before.isPresent() && !readers.hasBerths()) {
      String rest = after(cell.text(), Folding.words(before.get().name()).size());
      texts.put(ListField.HARBOUR, before.get().name());
      texts.put(ListField.BERTH, rest);
      shown.put(column.index(), before.get().name() + ", berth " + rest);
    } else {
      once(column, exact.map(h -> Cell.of(h.name())).orElse(cell));
    }
  }

  /** What stands after so many words. */
  private static String after(String text, int words) {
    String rest = text.strip();
    for (int i = 0; i < words; i++) {
      rest = rest.replaceFirst("^[^\\p{L}\\p{N}]*[\\p{L}\\p{N}]+", "");
    }
    return rest.replaceFirst("^[^\\p{L}\\p{N}]+", "").strip();
  }

  private void visit(ListColumn column, Cell cell) {
    Understood<LocalDate> read = readers.days(column).read(cell);
    shown.put(column.index(), read.shown());
    read.said().ifPresent(s -> mark(column, cell, s, read.value().isPresent()));
    if (read.value().isPresent()) {
      work.day(column.index(), read.value().get(), noted(column, cell));
    } else {
      boatNotes.add(noted(column, cell));
    }
  }

  private void product(ListColumn column, Cell cell) {
    Optional<String> name = readers.known().product(cell.text()).map(p -> p.name());
    work.product(column.index(), name.orElse(cell.text()), noted(column, cell));
    name.ifPresent(n -> shown.put(column.index(), n));
  }

  /** What is said of a cell that was taken: the sentences about it, or what it was read as. */
  String said(int column) {
    String sentences =
        marks.stream()
            .filter(m -> m.column() == column)
            .map(Mark::sentence)
            .collect(Collectors.joining(" "));
    return sentences.isEmpty() ? shown.getOrDefault(column, "") : sentences;
  }

  /** A phone that stands in the notes or the name of an owner without one. */
  Optional<String> strayPhone() {
    return texts.containsKey(ListField.PHONE)
        ? Optional.empty()
        : Stream.of(ownerNotes, boatNotes, List.of(texts.getOrDefault(ListField.OWNER, "")))
            .flatMap(List::stream)
            .map(Shape::phoneIn)
            .flatMap(Optional::stream)
            .findFirst();
  }

  /** Takes a phone that stands elsewhere in the row; out of a name it goes, in a note it stays. */
  void takePhone(String phone) {
    texts.put(ListField.PHONE, phone);
    texts.computeIfPresent(
        ListField.OWNER,
        (f, name) ->
            name.replace(phone, "")
                .replaceAll("[(\\[]\\s*[)\\]]", "")
                .replaceAll("[\\s,;:/-]+$", ""));
  }

  /** The line, with all that was taken. */
  Line line(String id) {
    String name = ownerName();
    boolean square =
        loa.isPresent()
            && beam.isPresent()
            && loa.get().millimetres() < WIDE * beam.get().millimetres();
    boolean marked =
        marks.stream().anyMatch(m -> beamColumn.map(c -> c.index() == m.column()).orElse(false));
    if (square && beamColumn.isPresent() && !marked) {
      mark(
          beamColumn.get(),
          Cell.of(shown.get(beamColumn.get().index())),
          "She would be nearly as wide as long; look at the units of both columns.",
          true);
    }
    return new Line(
        id,
        row,
        new Line.Craft(
            texts.getOrDefault(ListField.BOAT, ""),
            type,
            loa,
            beam,
            texts.getOrDefault(ListField.HULL_NUMBER, ""),
            built,
            finish,
            tone,
            Stream.concat(boatNotes.stream(), work.notes().stream()).toList()),
        new Line.Owner(
            name,
            isFirm(name) ? PartyKind.FIRM : PartyKind.PERSON,
            texts.getOrDefault(ListField.PHONE, ""),
            texts.getOrDefault(ListField.MAIL, ""),
            texts.getOrDefault(ListField.ADDRESS, ""),
            ownerNotes),
        new Line.Place(
            texts.getOrDefault(ListField.HARBOUR, ""),
            texts.getOrDefault(ListField.BERTH, ""),
            texts.getOrDefault(ListField.KEYS, ""),
            texts.getOrDefault(ListField.GATE_CODE, "")),
        work.visits(),
        shown,
        marks);
  }

  private String ownerName() {
    String parts =
        Stream.of(ListField.FIRST_NAME, ListField.LAST_NAME)
            .map(f -> texts.getOrDefault(f, ""))
            .filter(t -> !t.isEmpty())
            .collect(Collectors.joining(" "));
    String whole = texts.getOrDefault(ListField.OWNER, "");
    String firm = texts.getOrDefault(ListField.FIRM, "");
    String name = !whole.isEmpty() ? whole : !parts.isEmpty() ? parts : firm;
    Stream.of(parts, firm)
        .filter(t -> !t.isEmpty() && !t.equals(name) && !ownerNotes.contains("Also: " + t))
        .forEach(t -> ownerNotes.add("Also: " + t));
    return name;
  }

  private boolean isFirm(String name) {
    boolean onlyFirm = name.equals(texts.get(ListField.FIRM)) && !name.isEmpty();
    return onlyFirm || Folding.words(name).stream().anyMatch(FIRM_WORDS::contains);
  }
}
