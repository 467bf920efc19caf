package hullalmanac.ui.boats;

import hullalmanac.core.record.Texts;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.DateSteps;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.ButtonRow;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.CardRow;
import hullalmanac.ui.widget.ChartBox;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ScrollColumn;
import hullalmanac.ui.widget.StepsBox;
import hullalmanac.ui.widget.TableTabs;
import hullalmanac.ui.widget.TidyTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A boat's page: the picture first, then how its date came about, then what the record holds. */
final class BoatPagePanel {
  private static final String HIGH = "hmin 32";

  private final BoatsPresenter presenter;
  private final BoatPage page;
  private final boolean washing;
  private final TableMemory memory;

  BoatPagePanel(BoatsPresenter presenter, BoatPage page, boolean washing, TableMemory memory) {
    this.memory = memory;
    this.presenter = presenter;
    this.page = page;
    this.washing = washing;
  }

  ScrollColumn column() {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3", "[grow, fill]", ""));
    column.add(Labels.title(page.name()));
    column.add(Labels.wrapped(page.facts(), true), "wmin 100");
    column.add(acts(), "wmin 0, gapbottom 12");
    JTextArea heading = Labels.wrapped(page.heading(), false);
    heading.setFont(Theme.font(Theme.Size.HEADING));
    column.add(heading, "wmin 100");
    column.add(Labels.wrapped(page.sentence(), true), "wmin 100, gapbottom 8");
    if (!page.timeline().lanes().isEmpty()) {
      ChartBox chart = new ChartBox();
      chart.show(page.timeline(), page.heading() + ". " + page.sentence());
      column.add(chart, "wmin 100");
      column.add(key(), "wmin 0, gapbottom 20");
    }
    if (!page.reasons().isEmpty()) {
      column.add(Labels.heading("How this date came about"), "gapbottom 4");
      column.add(reasons(), "wmin 0");
    }
    page.steps().ifPresent(steps -> column.add(picture(steps), "wmin 0, gaptop 8"));
    for (String unused : page.unused()) {
      column.add(Labels.wrapped("Not used: " + unused + ".", true), "wmin 100");
    }
    column.add(tables(), "gaptop 20, wmin 0");
    column.add(
        Labels.wrapped(
            "A forecast, not a guarantee. Labels and data sheets of the products come first.",
            true),
        "gaptop 12, wmin 100");
    return column;
  }

  private JPanel acts() {
    JPanel acts =
        new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, novisualpadding", "", ""));
    acts.setOpaque(false);
    ButtonRow row = new ButtonRow();
    row.add(button("Begin a visit", "Ctrl+T", presenter::beginVisit), HIGH);
    row.add(button("Washed", "Ctrl+L", presenter::washed), HIGH);
    row.add(button("Her facts", "Ctrl+E", presenter::change), HIGH);
    row.add(button("Fewest passes", "Ctrl+G", presenter::fewestPasses), HIGH);
    row.add(button("Job card", "F9", presenter::showCard), HIGH);
    row.add(button("Show the owner", "F11", presenter::showOwner), HIGH);
    row.add(button("Tell her owner", "", presenter::remind), HIGH);
    row.add(button("Papers", "", presenter::papers), HIGH);
    acts.add(row, "growx, wmin 0");
    if (washing) {
      JPanel look = new JPanel(new MigLayout("insets 0, gap 8 8, novisualpadding", "", "[center]"));
      look.setOpaque(false);
      look.add(Labels.plain("Washed today. What did water do?"));
      look.add(button("Nobody looked", "", () -> presenter.washed(Optional.empty())), HIGH);
      for (WaterBehaviour water : WaterBehaviour.values()) {
        look.add(
            button(
                water == WaterBehaviour.FLAT ? "Lies flat" : Texts.capital(water.words()),
                "",
                () -> presenter.washed(Optional.of(water))),
            HIGH);
      }
      acts.add(look, "wmin 0");
    }
    return acts;
  }

  private static JButton button(String words, String key, Runnable act) {
    JButton button = new JButton(words);
    button.setName(words);
    button.setToolTipText(key.isEmpty() ? null : key);
    button.addActionListener(e -> act.run());
    return button;
  }

  private static JTextArea key() {
    return Labels.wrapped(ChartBox.KEY + ". The same in numbers: the tables below.", true);
  }

  private StepsBox picture(DateSteps steps) {
    List<String> names = new ArrayList<>();
    List<String> told = new ArrayList<>();
    for (BoatPage.ReasonCard reason : page.reasons()) {
      names.add((names.size() + 1) + "  " + reason.title());
      told.add(reason.title() + ": " + reason.date());
    }
    return new StepsBox(steps, names, String.join(", ", told));
  }

  private JPanel reasons() {
    CardRow cards = new CardRow();
    int n = 1;
    for (BoatPage.ReasonCard reason : page.reasons()) {
      Card card =
          new Card(
              new MigLayout("insets 12 14 12 14, fill, wrap 1", "[grow, fill]", "[][grow, top][]"));
      card.add(Labels.quiet(n++ + "  " + reason.title()));
      card.add(Labels.wrapped(String.join("; ", reason.facts()), false), "wmin 60");
      JLabel date = Labels.strong(reason.date());
      date.setHorizontalAlignment(JLabel.RIGHT);
      card.add(date);
      cards.addCard(card);
    }
    return cards;
  }

  private TableTabs tables() {
    TableTabs tabs = new TableTabs("record of the boat");
    for (BoatPage.Table table : page.tables()) {
      if (table.rows().isEmpty()) {
        tabs.addWords(table.title(), table.empty());
      } else {
        TidyTable view =
            new TidyTable(TableState.of(table.title(), table.columns(), table.rows()), memory);
        if (!table.opens().isEmpty()) {
          view.onOpen(row -> presenter.openVisit(table.opens().get(row)));
        }
        tabs.add(table.title(), view);
      }
    }
    return tabs;
  }
}
