package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.ui.theme.Theme;
import java.awt.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A list at the left of a place and its menu, without a display. */
class ItemListTest {
  private record Boat(String name, String due, String owner) {}

  private static final List<Boat> BOATS =
      List.of(
          new Boat("Siskin", "best by 14 May", "Mira Vale · Quillhaven"),
          new Boat("Tern & Co", "seen bare", "Dev Osei · Fallow Creek"));

  private final List<String> chosen = new ArrayList<>();

  @BeforeEach
  void theme() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private ItemList<Boat> list() {
    ItemList<Boat> list =
        new ItemList<>(
            "boats",
            new ItemCell.Lines<>(Boat::name, Boat::due, Boat::owner),
            boat -> chosen.add(boat.name()));
    list.show(BOATS, boat -> boat.name().equals("Siskin"));
    list.setFixedCellHeight(60);
    list.setSize(230, 400);
    return list;
  }

  private static List<JMenuItem> items(JPopupMenu menu) {
    return Arrays.stream(menu.getComponents()).map(JMenuItem.class::cast).toList();
  }

  @Test
  void namesTheItemInItsMenu() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          ItemList<Boat> list = list();
          assertThat(items(list.menu(Optional.empty())))
              .extracting(JMenuItem::getText)
              .containsExactly("Open Siskin", "Copy Siskin", "Copy all");
          assertThat(items(list.menu(Optional.of(new Point(20, 70)))))
              .extracting(JMenuItem::getText)
              .containsExactly("Open Tern & Co", "Copy Tern & Co", "Copy all");
          assertThat(items(list.menu(Optional.of(new Point(20, 390)))))
              .as("under the last item")
              .extracting(JMenuItem::getText)
              .containsExactly("Copy all");
          assertThat(chosen).as("a menu alone opens nothing").isEmpty();
        });
  }

  @Test
  void opensFromItsMenuOnce() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> items(list().menu(Optional.of(new Point(20, 70)))).get(0).doClick(0));
    assertThat(chosen).containsExactly("Tern & Co");
  }

  @Test
  void goingToAnItemShowsItAndShowingTheListAnewDoesNot() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          ItemList<Boat> list = list();
          list.setSelectedIndex(1);
          list.show(BOATS, boat -> boat.name().equals("Tern & Co"));
        });
    assertThat(chosen).containsExactly("Tern & Co");
  }

  @Test
  void copiesAnItemOrAllAsTheirThreeTexts() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          ItemList<Boat> list = list();
          assertThat(list.copied(1).plain())
              .isEqualTo("Tern & Co\tseen bare\tDev Osei · Fallow Creek\n");
          assertThat(list.everything().rows()).hasSize(2);
          assertThat(list.everything().html()).contains("<td>Tern &amp; Co</td>");
        });
  }
}
