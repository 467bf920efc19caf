package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.WindowLook;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Menus of tables and lists, by real keys and clicks, and what is remembered of them. */
@NeedsDisplay
class ListsIT {
  private static final int MOST_KEYS = 60;

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

  private void openBoat(String name) throws Exception {
    Boat boat =
        window.almanac().boats().stream()
            .filter(b -> b.name().equals(name))
            .findFirst()
            .orElseThrow();
    window.run(() -> window.presenter().openBoat(boat.id()));
    window.await(() -> window.place() == Place.BOATS && window.boatChosen().equals(name));
  }

  private List<String> columns(String table) throws Exception {
    return OpenWindow.onEventThread(
        () -> {
          JTable found = (JTable) OpenWindow.named(window.frame(), table);
          return IntStream.range(0, found.getColumnCount()).mapToObj(found::getColumnName).toList();
        });
  }

  /** Goes on by Tab until something has the cursor. */
  private void tabTo(String name) throws Exception {
    for (int i = 0; i < MOST_KEYS && !window.focused().equals(name); i++) {
      window.tab();
    }
    assertThat(window.focused()).isEqualTo(name);
  }

  /** Goes down in the menu that is open to what has these words, and does it. */
  private void choose(String words) throws Exception {
    window.await(() -> !window.menu().isEmpty());
    for (int i = 0; i < MOST_KEYS && !window.chosenInMenu().equals(words); i++) {
      String before = window.chosenInMenu();
      window.press(KeyEvent.VK_DOWN);
      window.await(() -> !window.chosenInMenu().equals(before));
    }
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.menu().isEmpty());
  }

  @Test
  void aColumnHiddenByKeysIsHiddenWhenTheWindowIsOpenedAgain() throws Exception {
    openBoat("Siskin");
    tabTo("record of the boat");
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_RIGHT);
    tabTo("Visits");
    assertThat(columns("Visits")).containsExactly("Day", "State", "Why", "Steps", "Hours");
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_F10);
    choose("Hide Day");
    window.await(() -> columns("Visits").equals(List.of("State", "Why", "Steps", "Hours")));
    window.await(() -> window.focused().equals("Visits"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
    window.await(() -> columns("Visits").equals(List.of("Why", "State", "Steps", "Hours")));
    assertThat(window.filesTouched()).isEmpty();

    WindowLook left = window.leave();
    window = OpenWindow.again(home, Optional.of(left));
    openBoat("Siskin");
    assertThat(columns("Visits")).containsExactly("Why", "State", "Steps", "Hours");
    openBoat("Sandpiper");
    assertThat(columns("Visits")).as("of every boat").startsWith("Why").doesNotContain("Day");

    tabTo("record of the boat");
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_RIGHT);
    tabTo("Visits");
    window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_F10);
    choose("Show all columns again");
    window.await(() -> columns("Visits").get(0).equals("Day") && columns("Visits").size() == 5);
  }

  @Test
  void tabLeavesEveryTableOfABoatsPageForwardsAndBackwards() throws Exception {
    openBoat("Black Guillemot");
    List<String> tables =
        List.of("Surfaces", "Coats", "Visits", "Findings", "Berths", "Forecast", "Gloss by month");
    for (String table : tables) {
      tabTo("record of the boat");
      if (!table.equals("Surfaces")) {
        window.press(KeyEvent.VK_RIGHT);
      }
      tabTo(table);
      window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
      window.await(() -> window.focused().equals("record of the boat"));
      window.tab();
      assertThat(window.focused()).isEqualTo(table);
      window.tab();
      assertThat(window.focused()).isNotEqualTo(table);
    }
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void aheadIsATableThatOpensBoatsByKeys() throws Exception {
    window.click("as a table");
    window.await(() -> window.shows("Ahead"));
    tabTo("Ahead");
    window.tab();
    assertThat(window.focused()).as("Tab leaves it").isNotEqualTo("Ahead");
    window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
    window.await(() -> window.focused().equals("Ahead"));
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_F10);
    window.await(() -> window.menu().contains("Hide Boat"));
    choose("Open");
    window.await(() -> window.place() == Place.BOATS);
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void aRightClickNamesTheBoatUnderThePointerAndCopyingNeedsNoOpening() throws Exception {
    openBoat("Arctic Tern");
    Point third =
        OpenWindow.onEventThread(
            () -> {
              JList<?> boats = (JList<?>) OpenWindow.named(window.frame(), "boats");
              Rectangle cell = boats.getCellBounds(2, 2);
              Point corner = boats.getLocationOnScreen();
              return new Point(corner.x + cell.x + 40, corner.y + cell.y + cell.height / 2);
            });
    Robot robot = new Robot();
    robot.setAutoDelay(20);
    robot.mouseMove(third.x, third.y);
    robot.mousePress(InputEvent.BUTTON3_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON3_DOWN_MASK);
    window.await(() -> window.menu().equals(List.of("Open Bittern", "Copy Bittern", "Copy all")));
    point(robot, "Copy Bittern");
    assertThat(window.boatChosen()).isEqualTo("Arctic Tern");
    assertThat(copied(DataFlavor.stringFlavor)).startsWith("Bittern\t");
    assertThat(copied(DataFlavor.allHtmlFlavor)).contains("<td>Bittern</td>");
  }

  /** Clicks on what has these words in the menu that is open, as the pointer opened it. */
  private void point(Robot robot, String words) throws Exception {
    Point at =
        OpenWindow.onEventThread(
            () -> {
              for (MenuElement e :
                  MenuSelectionManager.defaultManager().getSelectedPath()[0].getSubElements()) {
                if (e instanceof JMenuItem item && item.getText().equals(words)) {
                  Point corner = item.getLocationOnScreen();
                  return new Point(corner.x + 20, corner.y + item.getHeight() / 2);
                }
              }
              throw new AssertionError("the menu has no " + words);
            });
    robot.mouseMove(at.x, at.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    window.await(() -> window.menu().isEmpty());
  }

  private static String copied(DataFlavor flavour) throws Exception {
    return OpenWindow.onEventThread(
        () -> (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(flavour));
  }
}
