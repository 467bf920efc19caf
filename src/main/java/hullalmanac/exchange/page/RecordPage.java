package hullalmanac.exchange.page;

import hullalmanac.core.record.Kind;
import hullalmanac.exchange.csv.OneList;
import hullalmanac.exchange.csv.OneList.Cell;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The whole record as one page that needs no program to read: each boat with all that belongs to
 * her, then what belongs to no boat. Every row of every list stands on it once; what a row names is
 * a link to it, and photos are links to their files. The same record always gives the same page.
 */
public final class RecordPage {
  private static final String STYLE =
      """
      body { font: 15px/1.5 sans-serif; color: #1c2726; background: #fff; margin: 2em; }
      nav ul { columns: 14em; }
      table { border-collapse: collapse; margin: .3em 0 1.2em; }
      caption { text-align: left; font-weight: bold; }
      th, td { border: 1px solid #767f7e; padding: .15em .6em; text-align: left;
        vertical-align: top; white-space: pre-line; overflow-wrap: anywhere; }
      td { max-width: 32em; }
      a { color: #0b5c53; }
      :target { outline: 3px solid #0b5c53; }
      img { max-width: 240px; max-height: 180px; display: block; }
      section { border-top: 2px solid #767f7e; margin-top: 2em; }
      """;

  private final List<OneList> lists;

  /** Where each row that has an id stands on the page. */
  private final Map<Row, String> anchors = new HashMap<>();

  /** The boat that each row belongs to. */
  private final Map<Row, Row> boats = new HashMap<>();

  /** A row by its kind and id. */
  private record Row(Kind kind, String id) {}

  private RecordPage(List<OneList> lists) {
    this.lists = lists;
    for (OneList list : lists) {
      for (List<Cell> row : list.rows()) {
        own(list, row)
            .ifPresent(
                own -> {
                  anchors.put(own, "row" + anchors.size());
                  boat(list, row).ifPresent(boat -> boats.put(own, boat));
                });
      }
    }
  }

  /**
   * The page.
   *
   * @param name of the business
   * @param lists of its record
   * @param left what was left out, a sentence; empty when nothing was
   * @param papers addresses of files beside the page by what they are, in order
   */
  public static String of(
      String name, List<OneList> lists, String left, Map<String, String> papers) {
    return new RecordPage(lists).page(name, left, papers);
  }

  private String page(String name, String left, Map<String, String> papers) {
    String title = (name.isBlank() ? "" : name + ": ") + "the whole record";
    StringBuilder page = new StringBuilder();
    page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n")
        .append("<title>" + Markup.text(title) + "</title>\n")
        .append("<style>\n" + STYLE + "</style>\n</head>\n<body>\n")
        .append("<h1>" + Markup.text(title) + "</h1>\n")
        .append("<p>As the lists beside this page have it: lengths in metres, days year first,")
        .append(" money in the currency of the business. " + Markup.text(left) + "</p>\n");
    List<Boat> all = boats();
    page.append("<nav>\n<ul>\n");
    for (Boat boat : all) {
      page.append("<li>" + link(boat.row(), boat.name()) + "</li>\n");
    }
    page.append("</ul>\n</nav>\n");
    papers(page, papers);
    for (Boat boat : all) {
      section(page, boat.name(), Optional.of(boat.row()));
    }
    section(page, "What belongs to no boat", Optional.empty());
    return page.append("</body>\n</html>\n").toString();
  }

  private static void papers(StringBuilder page, Map<String, String> papers) {
    if (!papers.isEmpty()) {
      page.append("<section>\n<h2>Papers</h2>\n<ul>\n");
      papers.forEach(
          (words, file) ->
              page.append("<li><a href=\"" + Markup.text(file) + "\">")
                  .append(Markup.text(words) + "</a></li>\n"));
      page.append("</ul>\n</section>\n");
    }
  }

  private record Boat(Row row, String name) {}

  private List<Boat> boats() {
    return lists.stream()
        .filter(l -> l.kind() == Kind.BOAT && l.hasIds())
        .flatMap(
            l ->
                l.rows().stream()
                    .map(
                        row ->
                            new Boat(
                                own(l, row).orElseThrow(),
                                row.get(l.columns().indexOf("name")).text())))
        .sorted(
            Comparator.comparing((Boat b) -> b.name().toLowerCase(Locale.ROOT))
                .thenComparing(b -> b.row().id()))
        .toList();
  }

  private static Optional<Row> own(OneList list, List<Cell> row) {
    return list.hasIds() ? Optional.of(new Row(list.kind(), row.get(0).text())) : Optional.empty();
  }

  /** The boat of a row: itself, one it names, or that of a row it names or is a part of. */
  private Optional<Row> boat(OneList list, List<Cell> row) {
    if (list.kind() == Kind.BOAT && list.hasIds()) {
      return own(list, row);
    }
    return row.stream()
        .filter(cell -> list.hasIds() || cell.names().equals(Optional.of(list.kind())))
        .flatMap(cell -> named(cell).stream())
        .flatMap(r -> (r.kind() == Kind.BOAT ? Optional.of(r) : of(r)).stream())
        .findFirst();
  }

  private Optional<Row> of(Row row) {
    return Optional.ofNullable(boats.get(row));
  }

  private static List<Row> named(Cell cell) {
    return cell.names()
        .map(kind -> cell.parts().stream().map(id -> new Row(kind, id)).toList())
        .orElse(List.of());
  }

  private void section(StringBuilder page, String heading, Optional<Row> boat) {
    page.append("<section>\n<h2>" + Markup.text(heading) + "</h2>\n");
    for (OneList list : lists) {
      List<List<Cell>> rows =
          list.rows().stream().filter(row -> boat(list, row).equals(boat)).toList();
      if (!rows.isEmpty()) {
        table(page, list, rows);
      }
    }
    page.append("</section>\n");
  }

  private void table(StringBuilder page, OneList list, List<List<Cell>> rows) {
    List<Integer> filled =
        IntStream.range(0, list.columns().size())
            .filter(i -> rows.stream().anyMatch(row -> !row.get(i).text().isEmpty()))
            .boxed()
            .toList();
    page.append("<table>\n<caption>" + words(list.name()) + "</caption>\n<thead><tr>");
    for (int i : filled) {
      page.append("<th scope=\"col\">" + words(list.columns().get(i)) + "</th>");
    }
    page.append("</tr></thead>\n<tbody>\n");
    for (List<Cell> row : rows) {
      String anchor = own(list, row).map(o -> " id=\"" + anchors.get(o) + "\"").orElse("");
      page.append("<tr" + anchor + ">");
      for (int i : filled) {
        page.append("<td>" + cell(list, list.columns().get(i), row.get(i)) + "</td>");
      }
      page.append("</tr>\n");
    }
    page.append("</tbody>\n</table>\n");
  }

  private String cell(OneList list, String column, Cell cell) {
    if (list.kind() == Kind.PHOTO && column.equals("file") && !cell.text().isEmpty()) {
      return photo(cell.text());
    }
    return cell.names()
        .map(
            kind ->
                cell.parts().stream()
                    .map(id -> link(new Row(kind, id), id))
                    .collect(Collectors.joining(", ")))
        .orElseGet(() -> Markup.text(cell.text()));
  }

  /** What a browser can show is shown; any other is a link to its file. */
  private static String photo(String file) {
    String name = Markup.text("photos/" + file);
    boolean shown = file.toLowerCase(Locale.ROOT).matches(".*\\.(jpe?g|png|gif)");
    String inside =
        shown ? "<img src=\"" + name + "\" alt=\"" + name + "\" loading=\"lazy\"/>" : name;
    return "<a href=\"" + name + "\">" + inside + "</a>";
  }

  private String link(Row row, String words) {
    String anchor = anchors.get(row);
    return anchor == null
        ? Markup.text(words)
        : "<a href=\"#" + anchor + "\">" + Markup.text(words) + "</a>";
  }

  private static String words(String name) {
    String words = name.replace('_', ' ').replace('-', ' ');
    return Markup.text(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
  }
}
