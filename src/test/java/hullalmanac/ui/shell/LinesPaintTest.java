package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.Look;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.ui.card.CardPanel;
import hullalmanac.ui.find.FindPanel;
import hullalmanac.ui.owner.OwnerPanel;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.ItemCell;
import java.awt.Color;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Paints every place and sheet in both themes, as the window shows it first and as high as it gets,
 * and looks at the lines that carry meaning.
 */
@Tag("slow")
class LinesPaintTest {
  private static final int[] HEIGHTS = {800, 3200};
  private static ShellPresenter presenter;

  @BeforeAll
  static void openSample() {
    presenter =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    presenter.load();
  }

  @AfterAll
  static void light() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private static PaintedLines look(Look.Tint tint, int height, Supplier<JComponent> make)
      throws Exception {
    return look(height, make(tint, make));
  }

  private static PaintedLines look(int height, JComponent made) throws Exception {
    return onEventThread(() -> new PaintedLines(made, new Painted(made, 1280, height)).look());
  }

  private static <T> T onEventThread(Supplier<T> work) throws Exception {
    AtomicReference<T> result = new AtomicReference<>();
    SwingUtilities.invokeAndWait(() -> result.set(work.get()));
    return result.get();
  }

  private static JComponent make(Look.Tint tint, Supplier<JComponent> make) throws Exception {
    return onEventThread(
        () -> {
          Theme.start(new Look(tint, 1f, false, false));
          return make.get();
        });
  }

  private static void holds(JComponent shell, String what, Runnable open) throws Exception {
    SwingUtilities.invokeAndWait(open);
    for (int height : HEIGHTS) {
      PaintedLines lines = look(height, shell);
      assertThat(lines.looked()).as(what).isGreaterThan(10);
      assertThat(lines.faults()).as(what + " at " + height).isEmpty();
    }
  }

  private static JComponent shell(Look.Tint tint) throws Exception {
    return make(tint, () -> new ShellPanel(presenter, () -> {}));
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void linesOfEveryPlaceStandOut(Look.Tint tint) throws Exception {
    JComponent shell = shell(tint);
    for (Place place : Place.values()) {
      holds(shell, place.words(), () -> presenter.go(place));
    }
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void linesOfEverySheetStandOut(Look.Tint tint) throws Exception {
    JComponent shell = shell(tint);
    for (Sheet sheet : EverySheet.of(presenter, OpenSample.fleet().almanac())) {
      holds(shell, sheet.getClass().getSimpleName(), () -> presenter.open(sheet));
      SwingUtilities.invokeAndWait(presenter::leave);
    }
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void linesOfFindingStandOut(Look.Tint tint) throws Exception {
    PaintedLines lines =
        look(
            tint,
            800,
            () -> {
              FindPanel panel = new FindPanel(presenter.find(), () -> {});
              presenter.startFinding();
              presenter.find().type("quill");
              return panel;
            });
    assertThat(lines.looked()).isGreaterThan(8);
    assertThat(lines.faults()).isEmpty();
    presenter.find().leave();
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void linesOfTheOwnersViewStandOut(Look.Tint tint) throws Exception {
    Id<Boat> boat = OpenSample.fleet().almanac().photos().get(0).boat();
    for (int height : HEIGHTS) {
      PaintedLines lines =
          look(
              tint,
              height,
              () -> {
                OwnerPanel panel = new OwnerPanel(presenter.owner()::picture, () -> {});
                presenter.owner().onChange(state -> state.ifPresent(panel::show));
                presenter.showOwner(boat);
                return panel;
              });
      assertThat(lines.looked()).isGreaterThan(4);
      assertThat(lines.faults()).isEmpty();
      presenter.owner().leave();
      presenter.owner().onChange(state -> {});
    }
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void linesOfAJobCardStandOut(Look.Tint tint) throws Exception {
    for (int height : HEIGHTS) {
      PaintedLines lines =
          look(
              tint,
              height,
              () -> {
                CardPanel panel = new CardPanel(presenter.card());
                presenter.card().onChange(state -> state.ifPresent(panel::show));
                presenter.showCard(CardPaintTest.withAcid(OpenSample.fleet().almanac()));
                return panel;
              });
      assertThat(lines.looked()).isGreaterThan(8);
      assertThat(lines.faults()).isEmpty();
      presenter.card().leave();
      presenter.card().onChange(state -> {});
    }
  }

  /** The check itself, on a panel that has each fault once, and on the same made well. */
  @Test
  void seesEachFault() throws Exception {
    List<String> faults = look(Look.Tint.LIGHT, 400, () -> panel(true)).faults();
    assertThat(String.join("\n", faults))
        .contains("the left border of JTextField \"faint\" stands out by 1.")
        .contains("the cursor on JButton \"cut\" at its left side is seen on")
        .contains("the one chosen in JList \"all the same\" is told by 0 points")
        .contains("the thumb at");
    assertThat(look(Look.Tint.LIGHT, 400, () -> panel(false)).faults()).isEmpty();
  }

  private static JPanel panel(boolean broken) {
    JPanel panel = new JPanel(null);
    JTextField field = new JTextField("faint");
    JPanel narrow = new JPanel(null);
    JButton button = new JButton("cut");
    JList<String> list = new JList<>(new String[] {"one", "two"});
    list.setName("all the same");
    JScrollBar bar = new JScrollBar(JScrollBar.VERTICAL, 0, 10, 0, 100);
    if (broken) {
      field.setBorder(BorderFactory.createLineBorder(new Color(0xdddddd)));
      list.setSelectionBackground(list.getBackground());
      list.setSelectionForeground(list.getForeground());
      bar.putClientProperty("FlatLaf.style", "thumb: #cccccc");
    } else {
      list.setCellRenderer(
          new ItemCell<>(new ItemCell.Lines<>(name -> name, name -> "", name -> "")));
    }
    list.setSelectedIndex(0);
    panel.add(at(field, 10, 10, 120, 34));
    panel.add(at(narrow, 10, 60, 140, 60));
    narrow.add(at(button, broken ? -2 : 10, 10, 100, 34));
    panel.add(at(list, 10, 130, 120, 100));
    panel.add(at(bar, 300, 10, 14, 300));
    return panel;
  }

  private static JComponent at(JComponent c, int x, int y, int width, int height) {
    c.setBounds(x, y, width, height);
    return c;
  }
}
