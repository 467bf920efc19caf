package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.fixture.EverySheet;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tab reaches every control of every place and sheet, and no table keeps it. */
@NeedsDisplay
class TabIT {
  private static final int MOST_TABS = 120;

  @TempDir Path home;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private static boolean isControl(Component c) {
    boolean kind =
        c instanceof AbstractButton
            || c instanceof JComboBox<?>
            || c instanceof JTable
            || c instanceof JList<?>
            || c instanceof JTabbedPane
            || (c instanceof JTextComponent t && t.isEditable());
    return kind
        && c.isFocusable()
        && c.isEnabled()
        && c.isShowing()
        && SwingUtilities.getAncestorOfClass(JComboBox.class, c) == null
        && SwingUtilities.getAncestorOfClass(JTabbedPane.class, c) == null
        && SwingUtilities.getAncestorOfClass(JScrollBar.class, c) == null;
  }

  private static void collect(Container in, List<Component> controls) {
    for (Component c : in.getComponents()) {
      if (isControl(c)) {
        controls.add(c);
      }
      if (c instanceof Container inner) {
        collect(inner, controls);
      }
    }
  }

  private void reachesAll(String where) throws Exception {
    reachesAll(where, window.frame(), 6);
  }

  /**
   * @param in what holds the controls
   * @param least how many there are at least
   */
  private void reachesAll(String where, Container in, int least) throws Exception {
    List<Component> controls =
        OpenWindow.onEventThread(
            () -> {
              List<Component> all = new ArrayList<>();
              collect(in, all);
              return all;
            });
    assertThat(controls).as(where).hasSizeGreaterThanOrEqualTo(least);
    assertThat(controls)
        .as(where)
        .allSatisfy(
            c ->
                assertThat(c.getAccessibleContext().getAccessibleName())
                    .as("name of " + say(c))
                    .isNotBlank());
    Set<Component> reached = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int i = 0; i < MOST_TABS && !reached.containsAll(controls); i++) {
      window.tab();
      OpenWindow.onEventThread(() -> reached.addAll(focusOwners()));
    }
    List<String> missed =
        controls.stream().filter(c -> !reached.contains(c)).map(TabIT::say).toList();
    assertThat(missed).as(where).isEmpty();
  }

  /** What has the cursor, and what it lies in: the editor of a box is the box. */
  private static List<Component> focusOwners() {
    List<Component> owners = new ArrayList<>();
    for (Component c = OpenWindow.focusOwner(); c != null; c = c.getParent()) {
      owners.add(c);
    }
    return owners;
  }

  private static String say(Component c) {
    String text = c instanceof AbstractButton b ? b.getText() : c.getName();
    return c.getClass().getSimpleName() + " " + text;
  }

  @Test
  void throughEveryPlace() throws Exception {
    for (Place place : Place.values()) {
      window.run(() -> window.presenter().go(place));
      window.await(() -> window.place() == place);
      reachesAll(place.words());
    }
  }

  @Test
  void throughEverySheet() throws Exception {
    for (Sheet sheet : EverySheet.of(window.presenter(), window.almanac())) {
      window.run(() -> window.presenter().open(sheet));
      window.await(() -> window.place() == null);
      window.settle();
      reachesAll(sheet.getClass().getSimpleName());
      window.run(() -> window.presenter().leave());
      window.await(() -> window.place() != null);
    }
  }

  @Test
  void throughFindingAndNotBehindIt() throws Exception {
    window.run(() -> window.presenter().startFinding());
    window.await(() -> window.focused().equals("find anything"));
    reachesAll("finding", (Container) window.frame().getGlassPane(), 1);
    window.tab();
    assertThat(window.focused()).isEqualTo("find anything");
  }

  @Test
  void throughTheOwnersView() throws Exception {
    Id<Boat> boat = window.almanac().photos().get(0).boat();
    window.run(() -> window.presenter().showOwner(boat));
    window.await(() -> OpenWindow.owners().stream().anyMatch(JFrame::isFocused));
    JFrame owner = OpenWindow.owners().get(0);
    window.await(() -> OpenWindow.named(owner, "pair") != null);
    reachesAll("the owner's view", owner, 1);
    Set<Component> reached = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int i = 0; i < 10; i++) {
      window.tab();
      OpenWindow.onEventThread(() -> reached.addAll(focusOwners()));
    }
    assertThat(reached).contains(OpenWindow.named(owner, "pair"));
    window.run(() -> window.presenter().owner().leave());
  }
}
