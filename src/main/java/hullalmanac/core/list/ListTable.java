package hullalmanac.core.list;

import hullalmanac.core.find.Folding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A list parted into headings, rows that say something of a boat or an owner, and what is set
 * aside: titles, totals, lines between. A text that heads the rows below it becomes a column of its
 * own at the right.
 *
 * @param grid the list, with that column
 * @param headings one a column
 * @param rows numbers of the rows of the grid that are read
 * @param asides in order of rows
 */
record ListTable(Grid grid, Headings headings, List<Integer> rows, List<Aside> asides) {
  /** Heading of the column that is made of texts between the rows. */
  static final String BETWEEN = "Heading above the rows";

  private static final Set<String> TOTALS =
      Set.of(
          "total",
          "totals",
          "sum",
          "subtotal",
          "summe",
          "gesamt",
          "gesamtsumme",
          "zwischensumme",
          "totaal",
          "totale",
          "totaux",
          "subtotale",
          "suma",
          "somma",
          "anzahl",
          "count",
          "average",
          "mean",
          "durchschnitt",
          "moyenne",
          "media",
          "gemiddelde");
  private static final Set<String> COUNTED =
      Set.of(
          "boats",
          "boat",
          "owners",
          "customers",
          "clients",
          "yachts",
          "vessels",
          "rows",
          "records",
          "boote",
          "schiffe",
          "bateaux",
          "barcos",
          "barche",
          "boten",
          "of",
          "in",
          "all");
  private static final Set<String> DITTO =
      Set.of("\"", "''", "\u201D", "\u3003", "ditto", "dto", "dto.", "dito");
  private static final Pattern FOOTER =
      Pattern.compile(
          "(?i)(printed|page \\d|as of|last updated|updated|stand:?|gedruckt|seite|imprim|stampato"
              + "|afgedrukt|legend|key:|source|\\* ?=?).*",
          Pattern.DOTALL);
  private static final Pattern SIGNS_AROUND = Pattern.compile("^[-=*_#~\\s]{2,}|[-=*_#~:\\s]+$");
  private static final int PROSE_LETTERS = 60;
  private static final int FEW = 2;

  ListTable {
    rows = List.copyOf(rows);
    asides = List.copyOf(asides);
  }

  /**
   * Parts a list.
   *
   * @param chosen number of the row of headings that a person chose, from 1; 0 for none
   * @param harbours names of harbours in their folded form: alone in a row they head those below
   */
  static ListTable of(Grid grid, Optional<Integer> chosen, Set<String> harbours) {
    return new Parting(grid, Headings.in(grid, chosen), harbours).table();
  }

  /** The same with texts that a person typed into some cells. */
  ListTable with(Map<ListChoices.Spot, String> typed) {
    List<List<Cell>> cells = new ArrayList<>();
    for (int r = 0; r < grid.rows().size(); r++) {
      List<Cell> row = new ArrayList<>(grid.row(r));
      for (int c = 0; c < row.size(); c++) {
        String text = typed.get(new ListChoices.Spot(r, c));
        if (text != null) {
          row.set(c, row.get(c).typed(text));
        }
      }
      cells.add(row);
    }
    Grid whole = grid.with(cells);
    return new ListTable(whole, headings, rows, asides);
  }

  /** Texts of the cells of a column that are read, without those that say nothing. */
  List<Cell> column(int column) {
    return rows.stream()
        .map(r -> grid.row(r).get(column))
        .filter(c -> !c.isBlank() && !c.spread() && !Shape.saysNothing(c.text()))
        .toList();
  }

  /** Parts one list. */
  private static final class Parting {
    private final Grid grid;
    private final Headings headings;
    private final Set<String> harbours;
    private final List<Integer> rows = new ArrayList<>();
    private final List<Aside> asides = new ArrayList<>();
    private final Map<Integer, String> between = new HashMap<>();
    private final double fill;

    Parting(Grid grid, Headings headings, Set<String> harbours) {
      this.grid = grid;
      this.headings = headings;
      this.harbours = harbours;
      this.fill = usualFill();
    }

    private List<Cell> own(int row) {
      return grid.row(row).stream().filter(c -> !c.isBlank() && !c.spread()).toList();
    }

    /** How many cells of a row are usually filled: the median. */
    private double usualFill() {
      List<Integer> sizes =
          IntStream.range(headings.last() + 1, grid.rows().size())
              .mapToObj(r -> own(r).size())
              .filter(n -> n > 0)
              .sorted()
              .toList();
      return sizes.isEmpty() ? 0 : sizes.get(sizes.size() / 2);
    }

    ListTable table() {
      for (int r = 0; r < headings.first(); r++) {
        aside(r, "it stands above the headings");
      }
      for (int r = headings.last() + 1; r < grid.rows().size(); r++) {
        sort(r);
      }
      Grid whole = withBetween(dittosFilled());
      return new ListTable(whole, heads(whole.width()), rows, asides);
    }

    private void aside(int row, String why) {
      if (!own(row).isEmpty()) {
        asides.add(Aside.row(row, grid.row(row), why));
      }
    }

    private void sort(int row) {
      List<Cell> cells = own(row);
      if (cells.isEmpty()) {
        return;
      }
      if (cells.stream().noneMatch(c -> Shape.hasLetterOrDigit(c.text()))) {
        aside(row, "it is a line of signs");
      } else if (isHeadingsAgain(row)) {
        aside(row, "it is the headings again");
      } else if (isTotal(row, cells)) {
        aside(row, "it is a total");
      } else if (cells.size() == 1 && fill >= FEW && isSection(row, cells.get(0))) {
        aside(row, "it heads the rows below; it stands with each of them");
        between.put(row, SIGNS_AROUND.matcher(cells.get(0).text()).replaceAll("").strip());
      } else if (cells.size() == 1 && fill >= FEW && isRemark(cells.get(0).text())) {
        aside(row, "it is a line about the list, not a boat or an owner");
      } else {
        rows.add(row);
      }
    }

    private boolean isHeadingsAgain(int row) {
      if (headings.last() < 0) {
        return false;
      }
      int same = 0;
      int all = 0;
      for (int c = 0; c < grid.width(); c++) {
        String text = Folding.name(grid.row(row).get(c).text());
        if (!text.isEmpty()) {
          all++;
          String heading = Folding.name(headings.texts().get(c));
          same += heading.equals(text) || heading.endsWith(" " + text) ? 1 : 0;
        }
      }
      return all >= FEW && same == all;
    }

    private boolean isTotal(int row, List<Cell> cells) {
      List<String> words = Folding.words(cells.get(0).text());
      boolean says =
          words.stream().anyMatch(TOTALS::contains)
              && words.stream()
                  .allMatch(w -> TOTALS.contains(w) || COUNTED.contains(w) || w.matches("\\d+"));
      boolean counts =
          cells.size() == 1
              && words.size() == FEW
              && words.stream().anyMatch(w -> w.matches("\\d+"))
              && words.stream().anyMatch(COUNTED::contains);
      boolean othersAreNumbers = cells.stream().skip(1).allMatch(c -> isNumberOrCount(c.text()));
      return (says && othersAreNumbers) || counts || isSum(row, cells);
    }

    private static boolean isNumberOrCount(String text) {
      return Shape.isNumber(text)
          || Shape.isLength(text)
          || Folding.words(text).stream().allMatch(w -> COUNTED.contains(w) || w.matches("\\d+"));
    }

    /** Whether a row holds nothing but numbers, one of which is the sum of those above it. */
    private boolean isSum(int row, List<Cell> cells) {
      if (rows.size() < FEW || !cells.stream().allMatch(c -> Shape.isNumber(c.text()))) {
        return false;
      }
      for (int c = 0; c < grid.width(); c++) {
        Cell cell = grid.row(row).get(c);
        int column = c;
        List<Double> above =
            rows.stream()
                .map(r -> grid.row(r).get(column))
                .filter(x -> !x.isBlank() && Shape.isNumber(x.text()))
                .map(x -> number(x.text()))
                .toList();
        if (!cell.isBlank() && above.size() >= FEW) {
          double sum = above.stream().mapToDouble(Double::doubleValue).sum();
          if (Math.abs(sum - number(cell.text())) < 0.01) {
            return true;
          }
        }
      }
      return false;
    }

    private static double number(String text) {
      return Double.parseDouble(text.replace(',', '.'));
    }

    /** Whether the only text of a row heads those below it. */
    private boolean isSection(int row, Cell cell) {
      List<Cell> cells = grid.row(row);
      int column = cells.indexOf(cell);
      boolean merged = cells.stream().anyMatch(c -> c.spread() && c.text().equals(cell.text()));
      boolean alone =
          IntStream.range(headings.last() + 1, grid.rows().size())
              .filter(r -> own(r).size() > 1)
              .allMatch(r -> grid.row(r).get(column).isBlank());
      String text = cell.text();
      return !Shape.isData(cell)
          && text.length() <= PROSE_LETTERS
          && !FOOTER.matcher(text).matches()
          && (merged
              || alone
              || text.endsWith(":")
              || text.matches("[-=*_#~]{2,}.*")
              || harbours.contains(Folding.name(text)));
    }

    private static boolean isRemark(String text) {
      return text.length() > PROSE_LETTERS || FOOTER.matcher(text).matches();
    }

    private Headings heads(int width) {
      if (width == headings.texts().size()) {
        return headings;
      }
      List<String> texts = new ArrayList<>(headings.texts());
      texts.add(BETWEEN);
      return new Headings(headings.first(), headings.last(), texts);
    }

    /** A sign of repetition is the text above it. */
    private List<List<Cell>> dittosFilled() {
      List<List<Cell>> filled = new ArrayList<>();
      for (int r = 0; r < grid.rows().size(); r++) {
        List<Cell> cells = new ArrayList<>(grid.row(r));
        for (int c = 0; c < cells.size(); c++) {
          String text = cells.get(c).text().toLowerCase(java.util.Locale.ROOT);
          if (DITTO.contains(text)
              && r > headings.last() + 1
              && !filled.get(r - 1).get(c).isBlank()) {
            cells.set(c, filled.get(r - 1).get(c).spreading());
          }
        }
        filled.add(cells);
      }
      return filled;
    }

    private Grid withBetween(List<List<Cell>> cells) {
      boolean heads = rows.stream().anyMatch(r -> between.keySet().stream().anyMatch(b -> b < r));
      if (!heads) {
        return grid.with(cells);
      }
      String now = "";
      Set<Integer> read = Set.copyOf(rows);
      for (int r = 0; r < cells.size(); r++) {
        now = between.getOrDefault(r, now);
        cells
            .get(r)
            .add(read.contains(r) && !now.isEmpty() ? Cell.of(now).spreading() : Cell.BLANK);
      }
      return grid.with(cells);
    }
  }
}
