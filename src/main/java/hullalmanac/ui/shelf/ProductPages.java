package hullalmanac.ui.shelf;

import hullalmanac.present.shelf.ShelfState;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.LivesBox;
import hullalmanac.ui.widget.ScrollColumn;
import hullalmanac.ui.widget.TableTabs;
import hullalmanac.ui.widget.TidyTable;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The page of a product, or of two side by side, their pictures on one scale. */
final class ProductPages {
  private ProductPages() {}

  static ScrollColumn of(List<ShelfState.Page> pages, TableMemory memory) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets 4 24 24 24, fillx, gap 32 0",
                "[grow, fill, sg p]".repeat(pages.size()),
                "[top]"));
    double months =
        pages.stream()
            .flatMap(p -> p.picture().map(s -> LivesBox.months(s, p.labelMonths())).stream())
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    pages.forEach(p -> column.add(page(p, months, memory), "wmin 0"));
    return column;
  }

  private static JPanel page(ShelfState.Page page, double months, TableMemory memory) {
    JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]", ""));
    panel.setOpaque(false);
    panel.add(Labels.title(page.name()), "wmin 0");
    panel.add(Labels.quiet(page.kind()), "wmin 0, gapbottom 12");
    panel.add(Labels.wrapped(page.sentence(), false), "wmin 100");
    if (!page.more().isEmpty()) {
      panel.add(Labels.wrapped(page.more(), true), "wmin 100, gapbottom 8");
    }
    page.picture()
        .ifPresent(
            survival -> {
              panel.add(
                  new LivesBox(
                      survival, page.labelMonths(), months, page.sentence() + " " + page.more()),
                  "wmin 100");
              panel.add(
                  Labels.wrapped(
                      "Steps with their 95 % band: "
                          + survival.lives()
                          + " coats bracketed by looks at a clean surface, those met in service left out. Smooth line:"
                          + " what the forecast uses. Dashed: the label. In numbers: at the foot of this page.",
                      true),
                  "wmin 100, gapbottom 16");
            });
    if (!page.places().isEmpty()) {
      panel.add(Labels.heading("Half last, on light topsides in salt water"), "wmin 0");
      panel.add(rows(page.places(), List.of("", "open slip", "covered slip")), "gapbottom 16");
    }
    if (!page.facts().isEmpty()) {
      panel.add(Labels.heading("How it is used"), "wmin 0");
      panel.add(rows(page.facts(), List.of()), "gapbottom 16");
    }
    panel.add(Labels.heading("Cautions"), "wmin 0");
    page.cautions().forEach(c -> panel.add(Labels.wrapped(c, false), "wmin 100, gapbottom 4"));
    if (!page.tables().isEmpty()) {
      panel.add(Labels.heading("Its picture in numbers"), "wmin 0, gaptop 16");
      panel.add(tables(page, memory), "wmin 0");
    }
    return panel;
  }

  private static TableTabs tables(ShelfState.Page page, TableMemory memory) {
    TableTabs tabs = new TableTabs("lives of " + page.name());
    page.tables().forEach(t -> tabs.add(t.name(), new TidyTable(t, memory)));
    return tabs;
  }

  private static JComponent rows(List<List<String>> rows, List<String> heads) {
    int columns = rows.get(0).size();
    JPanel card =
        new Card(
            new MigLayout(
                "insets 12 14 12 14, fillx, gap 16 6, wrap " + columns, "[grow, left]", ""));
    heads.forEach(h -> card.add(Labels.quiet(h), "wmin 0"));
    for (List<String> row : rows) {
      for (int i = 0; i < columns; i++) {
        card.add(i == 0 ? Labels.quiet(row.get(i)) : Labels.plain(row.get(i)), "wmin 0");
      }
    }
    return card;
  }
}
