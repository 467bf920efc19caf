package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.help.KeyList;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowKey;
import hullalmanac.ui.card.CardKeys;
import hullalmanac.ui.card.CardPanel;
import hullalmanac.ui.find.FindPanel;
import hullalmanac.ui.owner.OwnerKeys;
import hullalmanac.ui.owner.OwnerPanel;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of all keys is what the program binds, no more and no less. */
@Tag("slow")
class KeysTest {
  @TempDir Path home;
  private final Set<String> bound = new TreeSet<>();

  private static Set<String> listed() {
    Set<String> listed = new TreeSet<>();
    for (WindowKey key : WindowKey.values()) {
      key.strokes().forEach(s -> listed.add(Act.stroke(s).toString()));
    }
    KeyList.all().forEach(k -> k.strokes().forEach(s -> listed.add(Act.stroke(s).toString())));
    return listed;
  }

  /** Every key that the program itself bound to a component or to what is in it. */
  private void look(Component component) {
    if (component instanceof JComponent c) {
      for (int condition : new int[] {0, 1, 2}) {
        InputMap keys = c.getInputMap(condition);
        if (keys.keys() != null) {
          for (KeyStroke key : keys.keys()) {
            if (c.getActionMap().get(keys.get(key)) instanceof Act) {
              bound.add(key.toString());
            }
          }
        }
      }
    }
    if (component instanceof JTable table && table.getRowCount() > 0) {
      for (int column = 0; column < table.getColumnCount(); column++) {
        if (table.isCellEditable(0, column)) {
          look(table.prepareEditor(table.getCellEditor(0, column), 0, column));
        }
      }
    }
    if (component instanceof Container in) {
      for (Component inner : in.getComponents()) {
        look(inner);
      }
    }
  }

  private void lookEverywhere() {
    Theme.start(false, 1f);
    ShellPresenter presenter =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    presenter.load();
    JPanel root = new JPanel();
    new Keys(root, presenter, () -> {}, () -> {}).bind();
    CardKeys.bind(root, presenter.card(), () -> {}, direction -> {});
    OwnerKeys.bind(root, () -> {}, () -> {}, direction -> {});
    look(root);
    ShellPanel panel = new ShellPanel(presenter, () -> {});
    for (Place place : Place.values()) {
      presenter.go(place);
      look(panel);
    }
    presenter.ahead().asTable(true);
    look(panel);
    Almanac almanac = OpenSample.fleet().almanac();
    for (Sheet sheet : EverySheet.of(presenter, almanac)) {
      presenter.open(sheet);
      look(panel);
    }
    lookAtAVisitBegun();
    look(new FindPanel(presenter.find(), () -> {}));
    OwnerPanel owner = new OwnerPanel(presenter.owner()::picture, () -> {});
    presenter.owner().onChange(state -> state.ifPresent(owner::show));
    almanac.photos().stream()
        .map(p -> p.boat())
        .distinct()
        .limit(3)
        .forEach(
            boat -> {
              presenter.showOwner(boat);
              look(owner);
            });
    CardPanel card = new CardPanel(presenter.card());
    presenter.card().onChange(state -> state.ifPresent(card::show));
    presenter.showCard(almanac.steps().get(0).visit());
    look(card);
  }

  /** Only the steps of a visit that is not finished can be timed. */
  private void lookAtAVisitBegun() {
    try (Bench bench = Bench.open(home)) {
      ShellPanel panel = new ShellPanel(bench.presenter(), () -> {});
      bench.presenter().openBoat(bench.boat("Siskin").id());
      bench.presenter().boats().beginVisit();
      look(panel);
    }
  }

  @Test
  void everyKeyThatIsBoundIsListedAndEveryKeyListedIsBound() throws Exception {
    SwingUtilities.invokeAndWait(this::lookEverywhere);
    assertThat(bound).isEqualTo(listed());
  }

  @Test
  void thePageOfAllKeysIsMadeOfTheList() throws Exception {
    Files.writeString(Path.of("target/keys.md"), page());
    assertThat(Files.readString(Path.of("docs/guide/keys.md")))
        .as("target/keys.md is the page as it should be; copy it to docs/guide")
        .isEqualTo(page());
  }

  private static String page() {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (WindowKey key : WindowKey.values()) {
      row(rows, key.onBoat() ? "On a boat’s page" : "Everywhere", key.keys(), key.does());
    }
    KeyList.all().forEach(key -> row(rows, key.where(), key.keys(), key.does()));
    StringBuilder page =
        new StringBuilder(
            "# Keys\n\nOn a Mac, Command stands for Ctrl where the window, a boat’s page or help is"
                + " meant.\n");
    rows.forEach(
        (where, keys) -> {
          page.append("\n## ").append(where).append("\n\n| key | does |\n| --- | --- |\n");
          keys.forEach(page::append);
        });
    return page.toString();
  }

  private static void row(Map<String, List<String>> rows, String where, String keys, String does) {
    rows.computeIfAbsent(where, w -> new ArrayList<>()).add("| " + keys + " | " + does + " |\n");
  }
}
