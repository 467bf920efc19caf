package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.guide.GuidePage;
import hullalmanac.core.guide.Topic;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.Look;
import hullalmanac.present.help.HelpState;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.GuideService;
import hullalmanac.ui.help.HelpPanel;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Container;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JEditorPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Paints help, and looks at what was painted. */
@Tag("slow")
class HelpPaintTest {
  /** Where the pictures go, to be looked at. */
  private static final Path PICTURES = Path.of("target/help-pictures");

  private static ShellPresenter presenter;

  @BeforeAll
  static void load() {
    presenter =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    presenter.load();
  }

  @AfterEach
  void leave() {
    presenter.help().onChange(state -> {});
    presenter.help().leave();
  }

  @AfterAll
  static void usual() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  static Stream<Arguments> looks() {
    return Stream.of(Look.Tint.LIGHT, Look.Tint.DARK, Look.Tint.HIGH_CONTRAST)
        .flatMap(tint -> Stream.of(1f, 1.5f, 2f).map(zoom -> Arguments.of(tint, zoom)));
  }

  private static <T> T in(Container container, Class<T> kind) {
    for (Component c : container.getComponents()) {
      T found = kind.isInstance(c) ? kind.cast(c) : null;
      if (found == null && c instanceof Container inner) {
        found = in(inner, kind);
      }
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Opens help, paints it, and holds that nothing on it is cut. */
  private static void holds(Look.Tint tint, float zoom, Topic topic, String find) throws Exception {
    AtomicReference<Painted> painted = new AtomicReference<>();
    AtomicReference<int[]> widths = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(new Look(tint, zoom, false, true));
          HelpPanel panel = new HelpPanel(presenter.help(), new JPanel());
          presenter.help().open(topic);
          presenter.help().find(find);
          if (!find.isEmpty()) {
            presenter.help().choose(new HelpState.Item("guide/README.md#boats", "", ""));
          }
          painted.set(new Painted(panel, 1180, 764));
          JEditorPane page = in(panel, JEditorPane.class);
          widths.set(new int[] {page.getWidth(), page.getMinimumSize().width});
        });
    write(painted.get(), topic + "-" + tint + "-" + Math.round(zoom * 100) + find);
    assertThat(painted.get().faults()).as(topic + " at " + zoom).isEmpty();
    assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
    assertThat(widths.get()[1]).as("width the page wants").isLessThanOrEqualTo(widths.get()[0]);
  }

  private static void write(Painted painted, String name) throws Exception {
    Files.createDirectories(PICTURES);
    File file = PICTURES.resolve(name.toLowerCase(java.util.Locale.ROOT) + ".png").toFile();
    ImageIO.write(painted.image(), "png", file);
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsHelpWhole(Look.Tint tint, float zoom) throws Exception {
    for (Topic topic : List.of(Topic.AHEAD, Topic.RECORD, Topic.KEYS, Topic.ABOUT)) {
      holds(tint, zoom, topic, "");
    }
    holds(tint, zoom, Topic.START, "gloss");
  }

  /** No page is wider than its column: what stands beside it would never be read. */
  @Test
  void setsEveryPageInItsColumn() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          HelpPanel panel = new HelpPanel(presenter.help(), new JPanel());
          presenter.help().open(Topic.START);
          JEditorPane page = in(panel, JEditorPane.class);
          JScrollPane scroll =
              (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, page);
          for (String id : pages()) {
            presenter.help().choose(new HelpState.Item(id, "", ""));
            new Painted(panel, 1180, 764);
            assertThat(page.getMinimumSize().width)
                .as(id)
                .isPositive()
                .isLessThanOrEqualTo(page.getWidth());
            assertThat(page.getWidth()).isLessThan(scroll.getViewport().getExtentSize().width);
          }
        });
  }

  private static List<String> pages() {
    return GuideService.read().pages().stream().map(GuidePage::id).toList();
  }
}
