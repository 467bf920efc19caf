package hullalmanac.present.edit;

import hullalmanac.core.list.Alike;
import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListColumn;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.list.Mark;
import hullalmanac.core.list.NewHarbour;
import hullalmanac.core.list.Question;
import hullalmanac.core.list.Same;
import hullalmanac.core.list.ShownRow;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Texts;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.ListService;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is shown of a list that is to come in, and what a text means that is entered there.
 *
 * @param found absent before a list was read
 * @param chosen place of the sheet that is looked at
 * @param plan absent while it is reckoned
 */
record ListBlocks(
    Optional<ListService.Found> found, int chosen, Optional<ListPlan> plan, ListChoices choices) {
  static final String FILE = "list file";
  static final String COLUMNS = "list columns";
  static final String ASKED = "list asked";
  static final String PREVIEW = "list rows";
  static final String SHEET = "sheet";
  static final String BRING = "bring in";
  static final String ANOTHER = "another list";
  static final String LEAVE = "leave list";

  private static final String HEADINGS = "headings";
  private static final String COMES_IN = "comes in";
  private static final String NO_HEADINGS = "no headings";
  private static final String TITLE = "Bring a list in";
  private static final Said NO_LATITUDE =
      new Said("Write degrees from -90 to 90, north positive, such as 48.4.", true);
  private static final int HEADING_ROWS = 12;
  private static final int ROWS_SHOWN = 200;
  private static final int CERTAIN_SHOWN = 20;
  private static final int LONGEST_TEXT = 90;

  /** What is shown when a list has come in. */
  static SheetState done(String words) {
    return new SheetState(
        TITLE,
        "",
        List.of(
            new SheetState.Words(
                "The list is in: "
                    + words
                    + ". Undo (Ctrl+Z) takes all of it back at once, and this page is as it was before."),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button(LEAVE, "Done", true),
                    new SheetState.Button(ANOTHER, "Another list", false)))),
        Optional.empty());
  }

  SheetState state(String doing, Optional<String> refused) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Files(
            FILE,
            "",
            words(doing),
            "Choose a file …",
            "Lists (CSV, .xlsx)",
            List.of("csv", "tsv", "txt", "xlsx", "xlsm"),
            "a copied table"));
    plan.ifPresent(p -> add(p, blocks));
    blocks.add(
        new SheetState.Buttons(
            plan.map(
                    p ->
                        List.of(
                            new SheetState.Button(BRING, "Bring in " + p.words(), true),
                            new SheetState.Button(LEAVE, "Leave", false)))
                .orElse(List.of(new SheetState.Button(LEAVE, "Leave", false)))));
    return new SheetState(TITLE, facts(), blocks, refused);
  }

  private String words(String doing) {
    if (!doing.isEmpty()) {
      return doing;
    }
    if (plan.isEmpty()) {
      return found.isPresent()
          ? "Looking at the list …"
          : "A list of your own: boats, owners, phones, lengths, berths, in whatever order. CSV and"
              + " .xlsx are read, and tables copied from a spreadsheet.";
    }
    ListPlan p = plan.get();
    return Stream.concat(
            Stream.of(
                p.name() + ": " + p.rows().size() + " rows, " + p.columns().size() + " columns."),
            p.remarks().stream())
        .collect(Collectors.joining(" "));
  }

  private String facts() {
    if (plan.isEmpty()) {
      return "Nothing comes in before you say so, and one undo takes all of it back.";
    }
    ListPlan p = plan.get();
    ListPlan.Counts c = p.counts();
    List<String> parts = new ArrayList<>();
    parts.add(count(c.boats(), "new boat"));
    if (c.filled() > 0) {
      parts.add(count(c.filled(), "boat") + " known already");
    }
    parts.add(count(c.people(), "new owner"));
    if (c.visits() > 0) {
      parts.add(count(c.visits(), "visit"));
    }
    return "This would come in: "
        + String.join(", ", parts)
        + ". "
        + doubts(p.looks().size(), p.openQuestions())
        + " What is not understood is kept as a note. Ctrl+Enter brings it in.";
  }

  private static String doubts(int looks, int questions) {
    List<String> doubts = new ArrayList<>();
    if (looks > 0) {
      doubts.add(count(looks, "cell") + (looks == 1 ? " needs" : " need") + " a look");
    }
    if (questions > 0) {
      doubts.add(count(questions, "question") + (questions == 1 ? " is" : " are") + " open");
    }
    return doubts.isEmpty() ? "Nothing of it is doubtful." : String.join(" and ", doubts) + ".";
  }

  private static String count(int count, String one) {
    return count == 1 ? "1 " + one : count + " " + one + "s";
  }

  private void add(ListPlan p, List<SheetState.Block> blocks) {
    blocks.add(new SheetState.Form(COLUMNS, "What the columns say", columnFields(p)));
    List<SheetState.Field> asked = askedFields(p);
    blocks.add(new SheetState.Form(ASKED, "What the list does not say", asked));
    blocks.add(preview(p));
    if (!p.looks().isEmpty()) {
      blocks.add(
          new SheetState.Table(
              "What needs a look",
              List.of("Where", "What stands there", "What is to be known"),
              p.looks().stream().map(m -> mark(p, m)).toList(),
              ""));
    }
    alikes(p, blocks);
    if (!p.asides().isEmpty()) {
      blocks.add(
          new SheetState.Table(
              "What does not come in",
              List.of("Where", "What stands there", "Why"),
              p.asides().stream()
                  .map(a -> List.of(a.place(), shortened(a.text()), a.why()))
                  .toList(),
              ""));
    }
  }

  private static List<String> mark(ListPlan p, Mark m) {
    return List.of(
        m.place() + ", " + p.columns().get(m.column()).label(), shortened(m.text()), m.sentence());
  }

  private static String shortened(String text) {
    String line = text.replaceAll("\\s*\\R\\s*", " / ");
    return line.length() <= LONGEST_TEXT ? line : line.substring(0, LONGEST_TEXT) + " …";
  }

  private List<SheetState.Field> columnFields(ListPlan p) {
    List<String> words = Arrays.stream(ListField.values()).map(ListField::words).toList();
    List<SheetState.Field> fields = new ArrayList<>();
    for (ListColumn column : p.columns()) {
      String samples =
          column.samples().isEmpty()
              ? ""
              : ". "
                  + column.samples().stream()
                      .map(ListBlocks::sample)
                      .collect(Collectors.joining(" · "));
      fields.add(
          new SheetState.Field(
              "c" + column.index(),
              column.label(),
              new Input.Choice(words),
              column.field().words(),
              new Said(Texts.capital(column.why()) + samples, false)));
    }
    return fields;
  }

  private static String sample(String text) {
    String line = text.replaceAll("\\s*\\R\\s*", " / ");
    return line.length() <= 24 ? line : line.substring(0, 24) + "…";
  }

  private List<SheetState.Field> askedFields(ListPlan p) {
    List<SheetState.Field> fields = new ArrayList<>();
    List<Grid> grids = found.orElseThrow().grids();
    if (grids.size() > 1) {
      List<String> names = grids.stream().map(Grid::name).toList();
      fields.add(choice(SHEET, "Sheet", names, names.get(chosen), ""));
    }
    fields.add(choice(HEADINGS, "Headings are in", headingRows(p), headingRow(p.headingRow()), ""));
    fields.add(
        choice(
            ListPlan.TYPE,
            "Type of boats where the list says none",
            Arrays.stream(BoatType.values()).map(BoatType::words).toList(),
            p.usualType().words(),
            "Their usual surfaces come from it."));
    long without =
        p.lines().stream().filter(l -> l.hasBoat() && l.place().harbour().isEmpty()).count();
    if (without > 0) {
      fields.add(
          new SheetState.Field(
              ListPlan.HARBOUR,
              "Harbour of boats without one",
              new Input.Suggest(suggested(p)),
              p.usualHarbour(),
              new Said(
                  (without == 1 ? "1 boat lies" : without + " boats lie")
                      + " in no harbour; without one there is no berth.",
                  false)));
    }
    p.newHarbours().forEach(h -> fields.add(latitude(h)));
    p.coats().ifPresent(q -> fields.add(asked(q)));
    p.questions().forEach(q -> fields.add(asked(q)));
    return fields;
  }

  private static List<String> suggested(ListPlan p) {
    return Stream.concat(Stream.of(""), p.knownHarbours().stream()).toList();
  }

  private static SheetState.Field choice(
      String id, String label, List<String> words, String text, String said) {
    return new SheetState.Field(id, label, new Input.Choice(words), text, new Said(said, false));
  }

  private static SheetState.Field asked(Question q) {
    return choice(q.id(), q.asked(), q.words(), q.chosen(), q.why());
  }

  private SheetState.Field latitude(NewHarbour h) {
    String typed = choices.answers().getOrDefault(h.id(), "");
    if (h.latitude().isEmpty() && !typed.isBlank()) {
      return new SheetState.Field(
          h.id(), "Latitude of " + h.name(), new Input.Line("48.4"), typed, NO_LATITUDE);
    }
    return new SheetState.Field(
        h.id(),
        "Latitude of " + h.name(),
        new Input.Line("48.4"),
        h.latitude().map(Numbers::plain).orElse(""),
        h.latitude().isPresent()
            ? new Said("A new harbour; north positive, " + h.why() + ".", false)
            : new Said(
                "A new harbour needs it for sun and wear; whole degrees do, north positive.",
                true));
  }

  private List<String> headingRows(ListPlan p) {
    int most = Math.max(p.headingRow(), Math.min(HEADING_ROWS, p.height()));
    return IntStream.rangeClosed(0, most).mapToObj(ListBlocks::headingRow).toList();
  }

  private static String headingRow(int row) {
    return row == 0 ? NO_HEADINGS : "row " + row;
  }

  static SheetState.Grid preview(ListPlan p) {
    List<SheetState.Column> columns = new ArrayList<>();
    columns.add(
        new SheetState.Column(
            COMES_IN, "Comes in", new Input.Choice(List.of(ShownRow.YES, ShownRow.NO))));
    p.columns()
        .forEach(
            c ->
                columns.add(new SheetState.Column("c" + c.index(), c.label(), new Input.Line(""))));
    List<ShownRow> rows = shown(p.rows());
    int more = p.rows().size() - rows.size();
    return new SheetState.Grid(
        PREVIEW,
        "What comes in, row by row"
            + (more == 0 ? "" : " (" + more + " more that need no look are not shown)"),
        "Row",
        columns,
        rows.stream().map(ListBlocks::row).toList(),
        "No row is left.");
  }

  /** All rows, or of a long list the first and all that need a look. */
  private static List<ShownRow> shown(List<ShownRow> rows) {
    return IntStream.range(0, rows.size())
        .filter(
            i ->
                i < ROWS_SHOWN
                    || !rows.get(i).marked().isEmpty()
                    || rows.get(i).comesIn().equals(ShownRow.NO))
        .mapToObj(rows::get)
        .toList();
  }

  private static SheetState.GridRow row(ShownRow row) {
    List<String> cells = new ArrayList<>();
    cells.add(row.comesIn());
    cells.addAll(row.texts());
    return new SheetState.GridRow(
        String.valueOf(row.row()),
        String.valueOf(row.row() + 1),
        cells,
        row.marked().stream().map(c -> c + 1).collect(Collectors.toSet()));
  }

  private static void alikes(ListPlan p, List<SheetState.Block> blocks) {
    int certain = 0;
    List<Alike> notShown = new ArrayList<>();
    String heading = "Who is known already";
    for (Alike alike : p.alikes()) {
      if (alike.certain() && ++certain > CERTAIN_SHOWN) {
        notShown.add(alike);
        continue;
      }
      blocks.add(
          new SheetState.Form(
              alike.id(),
              heading,
              List.of(
                  choice(
                      alike.id(),
                      alike.title(),
                      Arrays.stream(Same.values()).map(Same::words).toList(),
                      alike.choice().words(),
                      (alike.certain() ? "Surely" : "Perhaps")
                          + " one and the same: "
                          + alike.why()
                          + "."))));
      heading = "";
      blocks.add(
          new SheetState.Table(
              "",
              List.of("What", "The list", Texts.capital(alike.there()), "Compared"),
              alike.facts().stream()
                  .map(f -> List.of(f.what(), f.inList(), f.there(), compared(alike, f)))
                  .toList(),
              ""));
    }
    if (!notShown.isEmpty()) {
      blocks.add(
          new SheetState.Table(
              "As surely known already, and filled in",
              List.of("Who", "Where", "Why"),
              notShown.stream().map(a -> List.of(a.title(), a.there(), a.why())).toList(),
              ""));
    }
  }

  private static String compared(Alike alike, Alike.Fact fact) {
    boolean same = alike.choice() == Same.SAME;
    if (fact.differs()) {
      return same ? "not the same; the list’s is kept as a note" : "not the same";
    }
    return same && fact.there().isEmpty() ? "is filled in" : "";
  }

  /** What a text means in a field. */
  Said say(ListPlan p, At at, String text) {
    if (at.block().equals(PREVIEW) && at.field().startsWith("c") && !at.field().equals(COMES_IN)) {
      int row = Integer.parseInt(at.row());
      int column = Integer.parseInt(at.field().substring(1));
      return new Said(p.say(row, column, text), false);
    }
    boolean wrong = at.field().startsWith(ListPlan.LATITUDE) && NewHarbour.latitude(text).isEmpty();
    return wrong ? NO_LATITUDE : Said.NOTHING;
  }

  /** The choices with a text in a field. */
  ListChoices entered(ListPlan p, At at, String text) {
    String typed = text.strip();
    if (at.block().equals(PREVIEW)) {
      int row = Integer.parseInt(at.row());
      return at.field().equals(COMES_IN)
          ? choices.comesIn(row, typed.toLowerCase(Locale.ROOT).startsWith("y"))
          : choices.typed(row, Integer.parseInt(at.field().substring(1)), typed);
    }
    if (at.block().equals(COLUMNS)) {
      return Arrays.stream(ListField.values())
          .filter(f -> f.words().equals(typed))
          .findFirst()
          .map(f -> choices.field(Integer.parseInt(at.field().substring(1)), f))
          .orElse(choices);
    }
    if (at.field().equals(HEADINGS)) {
      return choices.headingRow(
          typed.equals(NO_HEADINGS) ? 0 : Integer.parseInt(typed.replaceAll("\\D", "")));
    }
    return choices.answer(at.field(), answer(p, at, typed));
  }

  /** The answer as the plan knows it. */
  private static String answer(ListPlan p, At at, String typed) {
    if (at.field().equals(ListPlan.TYPE)) {
      return code(BoatType.class, typed);
    }
    if (p.alikes().stream().anyMatch(a -> a.id().equals(at.field()))) {
      return code(Same.class, typed);
    }
    return typed;
  }

  private static <E extends Enum<E> & Coded> String code(Class<E> type, String words) {
    return Arrays.stream(type.getEnumConstants())
        .filter(e -> e.words().equals(words))
        .findFirst()
        .map(Coded::code)
        .orElse("");
  }
}
