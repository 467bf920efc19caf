package hullalmanac.core.list;

import hullalmanac.core.record.ListField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All rows of a list as they were read.
 *
 * @param lines in order of rows
 * @param asides rows, columns and cells that say nothing or are left out
 * @param questions that rows raise
 */
record Lines(List<Line> lines, List<Aside> asides, List<Question> questions) {
  /** The answer that leaves a row out. */
  static final String LEFT_OUT = "left out";

  /** Reads a list. */
  static Lines of(
      ListTable table, List<ListColumn> columns, ListReaders readers, ListChoices choices) {
    Reading reading = new Reading(table, columns, readers, choices);
    table.rows().forEach(reading::row);
    reading.columnsLeftOut();
    reading.cellsThatSayNothing();
    return new Lines(
        List.copyOf(reading.lines), List.copyOf(reading.asides), List.copyOf(reading.questions));
  }

  /** The id of the answer that leaves a row out. */
  static String rowId(int row) {
    return "row " + row;
  }

  private static final class Reading {
    private final ListTable table;
    private final List<ListColumn> columns;
    private final ListReaders readers;
    private final ListChoices choices;
    private final List<Line> lines = new ArrayList<>();
    private final List<Aside> asides = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final Map<String, Set<String>> nothings = new LinkedHashMap<>();
    private Optional<String> stray = Optional.empty();
    private int newest = -1;

    Reading(ListTable table, List<ListColumn> columns, ListReaders readers, ListChoices choices) {
      this.table = table;
      this.columns = columns;
      this.readers = readers;
      this.choices = choices;
    }

    void row(int row) {
      List<Cell> cells = table.grid().row(row);
      if (choices.says(rowId(row), LEFT_OUT)) {
        asides.add(Aside.row(row, cells, "left out, as you chose"));
        return;
      }
      Splitting splitting = Splitting.of(row, cells, columns, readers.known(), choices);
      splitting.question().ifPresent(questions::add);
      for (int p = 0; p < splitting.parts().size(); p++) {
        String id = (row + 1) + (p == 0 ? "" : String.valueOf((char) ('a' + p)));
        line(id, row, splitting, p);
      }
    }

    private void line(String id, int row, Splitting splitting, int part) {
      Line line = made(id, row, splitting, part, columns);
      if (line.hasOwner() && !line.hasBoat()) {
        line = made(id, row, splitting, part, noted(false));
      } else if (line.hasBoat() && !line.hasOwner()) {
        line = made(id, row, splitting, part, noted(true));
      }
      ask(row, part, line.hasOwner());
      keep(splitting.question(), line, splitting.parts().get(part));
    }

    /**
     * The columns where a row has only a boat or only an owner: what belongs to the other is a note
     * on who is there.
     */
    private List<ListColumn> noted(boolean onBoat) {
      ListField note = onBoat ? ListField.BOAT_NOTE : ListField.OWNER_NOTE;
      return columns.stream()
          .map(
              c ->
                  c.field() == ListField.LEAVE_OUT || c.field().isOfOwner() != onBoat
                      ? c
                      : c.as(note, c.why()))
          .toList();
    }

    private Line made(String id, int row, Splitting splitting, int part, List<ListColumn> as) {
      LineMaker maker = new LineMaker(row, readers);
      List<Cell> cells = splitting.parts().get(part);
      for (ListColumn column : as) {
        Cell cell = cells.get(column.index());
        if (cell.isBlank() || column.field() == ListField.LEAVE_OUT) {
          continue;
        }
        if (Shape.saysNothing(cell.text())) {
          nothing(row, column, cell);
        } else if (splitting.undealt().contains(column.index())) {
          maker.takeUndealt(column, cell);
        } else {
          maker.take(column, cell);
        }
      }
      stray = maker.strayPhone();
      stray.filter(phone -> choices.says(phoneId(row), Question.TAKE)).ifPresent(maker::takePhone);
      return maker.line(id);
    }

    private static String phoneId(int row) {
      return "phone " + row;
    }

    private void nothing(int row, ListColumn column, Cell cell) {
      if (!cell.spread()) {
        nothings
            .computeIfAbsent(cell.text(), t -> new LinkedHashSet<>())
            .add(Grid.letter(column.index()) + (row + 1));
      }
    }

    private void ask(int row, int part, boolean owned) {
      if (part == 0 && owned && stray.isPresent()) {
        questions.add(
            Question.of(
                phoneId(row),
                "Row " + (row + 1) + ": " + stray.get(),
                "It may be the owner’s phone.",
                List.of(Question.LEAVE, Question.TAKE),
                choices));
      }
    }

    private void keep(Optional<Question> question, Line line, List<Cell> cells) {
      if (line.hasBoat() || line.hasOwner()) {
        lines.add(withRowMarks(question, line));
        newest = line.row();
        return;
      }
      boolean goesOn =
          newest >= 0
              && newest == line.row() - 1
              && columns.stream()
                  .filter(c -> !cells.get(c.index()).isBlank())
                  .allMatch(c -> goesOn(c.field()));
      if (goesOn) {
        Line above = lines.remove(lines.size() - 1);
        lines.add(joined(above, line, cells));
        newest = line.row();
      } else if (cells.stream().anyMatch(c -> !c.isBlank() && !c.spread())) {
        asides.add(
            Aside.row(line.row(), cells, "neither the name of a boat nor an owner stands in it"));
      }
    }

    /** Whether a text that stands alone in its column may go on from the row above. */
    private static boolean goesOn(ListField field) {
      return switch (field) {
        case BOAT_NOTE, OWNER_NOTE, PHONE, MAIL, ADDRESS, PRODUCT, LEAVE_OUT -> true;
        default -> false;
      };
    }

    private static Line joined(Line above, Line below, List<Cell> cells) {
      List<String> boat = new ArrayList<>(above.boat().notes());
      List<String> owner = new ArrayList<>(above.owner().notes());
      (above.hasBoat() ? boat : owner).addAll(below.boat().notes());
      List<String> ofOwner = above.hasOwner() ? owner : boat;
      ofOwner.addAll(below.owner().notes());
      Line.Owner o = below.owner();
      List.of(o.phone(), o.mail(), o.address()).stream()
          .filter(t -> !t.isEmpty())
          .forEach(t -> ofOwner.add("In the row below: " + t));
      Line.Craft b = above.boat();
      Line.Owner a = above.owner();
      List<Mark> marks = new ArrayList<>(above.marks());
      marks.addAll(below.marks());
      marks.add(
          new Mark(
              below.row(),
              0,
              Aside.text(cells),
              "The row has neither boat nor owner; it is kept as a note with the row above.",
              false));
      return new Line(
          above.id(),
          above.row(),
          new Line.Craft(
              b.name(),
              b.type(),
              b.loa(),
              b.beam(),
              b.hullNumber(),
              b.built(),
              b.finish(),
              b.tone(),
              boat),
          new Line.Owner(a.name(), a.kind(), a.phone(), a.mail(), a.address(), owner),
          above.place(),
          above.visits(),
          above.shown(),
          marks);
    }

    private Line withRowMarks(Optional<Question> question, Line line) {
      List<Mark> marks = new ArrayList<>(line.marks());
      column(ListField.BOAT)
          .ifPresent(
              boat -> {
                if (!line.hasBoat()) {
                  marks.add(new Mark(line.row(), boat.index(), "", noBoat(line), true));
                }
                question
                    .filter(q -> q.chosen().equals(Question.ONE))
                    .ifPresent(
                        q ->
                            marks.add(
                                new Mark(
                                    line.row(),
                                    boat.index(),
                                    line.boat().name(),
                                    "It may be several boats; choose among the questions.",
                                    true)));
              });
      ownerColumn()
          .filter(c -> line.hasBoat() && !line.hasOwner())
          .ifPresent(c -> marks.add(new Mark(line.row(), c.index(), "", noOwner(line), true)));
      return new Line(
          line.id(),
          line.row(),
          line.boat(),
          line.owner(),
          line.place(),
          line.visits(),
          line.shown(),
          marks);
    }

    private static String noBoat(Line line) {
      return "No boat stands in this row; " + line.owner().name() + " comes in alone.";
    }

    private static String noOwner(Line line) {
      boolean alone = line.shown().size() == 1;
      return alone
          ? "Only a name stands in this row; the boat comes in without an owner."
          : "No owner stands in this row; the boat comes in without one.";
    }

    private Optional<ListColumn> column(ListField field) {
      return columns.stream().filter(c -> c.field() == field).findFirst();
    }

    private Optional<ListColumn> ownerColumn() {
      return column(ListField.OWNER)
          .or(() -> column(ListField.LAST_NAME))
          .or(() -> column(ListField.FIRM));
    }

    void columnsLeftOut() {
      for (ListColumn column : columns) {
        String texts =
            table.rows().stream()
                .map(r -> table.grid().row(r).get(column.index()))
                .filter(c -> !c.isBlank() && !c.spread())
                .map(Cell::text)
                .collect(Collectors.joining(" · "));
        if (column.field() == ListField.LEAVE_OUT && !texts.isEmpty()) {
          asides.add(new Aside("column " + column.label(), texts, column.why()));
        }
      }
    }

    void cellsThatSayNothing() {
      nothings.forEach(
          (text, cells) ->
              asides.add(
                  new Aside(
                      (cells.size() == 1 ? "cell " : "cells ") + String.join(", ", cells),
                      text,
                      "it only says that nothing is known")));
    }
  }
}
