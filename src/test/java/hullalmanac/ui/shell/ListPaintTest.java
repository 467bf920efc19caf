package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Contrast;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.present.edit.ListSheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.ui.theme.Theme;
import java.awt.Color;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Paints a list on its way in, from top to bottom, with all that can stand on that sheet. */
@Tag("slow")
class ListPaintTest {
  /**
   * Two boats in a cell, dates of two kinds, a phone elsewhere, one known, a total, one of no use.
   */
  private static final String LIST =
      """
      Owners 2025\t\t\t\t\t\t\t
      Boat\tOwner\tPhone\tLength\tHarbour\tBerth\tLast polished\tRemarks
      Wheatear\tNell Farrow\t555-0199\t9.9m\tQuillhaven\tA1\t14/3/2026\tbimini
      Stonechat / Whinchat\tBo Larch\t\t32' / 28'\tGull Point\tA2\tspring\tcall 555 0110
      Siskin\tSomebody Else\t555-0177\t44 ft\t\t\t3/25/2026\t
      Knot\t\t\tlong\tQuillhaven\tB 7\t5.4.2025\tkeys with the harbour office, ask for Una
      Total\t\t\t4\t\t\t\t
      """;

  @TempDir static Path folder;
  private static Bench bench;

  @BeforeAll
  static void open() {
    bench = Bench.open(folder.resolve("record"));
  }

  @AfterAll
  static void close() throws Exception {
    bench.close();
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  static Stream<Arguments> looks() {
    return Stream.of(Arguments.of(false, 1f), Arguments.of(true, 2f));
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsAListWholeFromTopToBottomAtTheSmallestWindowToo(boolean dark, float zoom)
      throws Exception {
    for (int width : new int[] {1280, 760}) {
      AtomicReference<Painted> painted = new AtomicReference<>();
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.start(dark, zoom);
            ShellPanel panel = new ShellPanel(bench.presenter(), () -> {});
            ListSheet sheet = new ListSheet(bench.presenter());
            bench.presenter().open(sheet);
            sheet.add("list file", LIST);
            new Painted(panel, width, 800);
            JComponent page = PanelsPaintTest.page(panel);
            int inside = page.getWidth();
            page.getParent().remove(page);
            new Painted(page, inside, 9000);
            painted.set(new Painted(page, inside, page.getPreferredSize().height));
            bench.presenter().leave();
          });
      assertThat(painted.get().faults()).as(zoom + " in " + width).isEmpty();
      assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
      if (width == 1280 && zoom < 2) {
        assertThat(painted.get().has(Theme.colour("look"))).as("the sign of a look").isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsBoatsWholeWhereThereIsNone(boolean dark, float zoom) throws Exception {
    Path none = Files.createTempDirectory(folder, "none");
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(Clock.systemUTC(), new Random(1)::nextLong, "desk", 1);
    RecordService.create(none.resolve("record"), surroundings);
    try (RecordService record = RecordService.open(none.resolve("record"), surroundings)) {
      ShellPresenter presenter =
          new ShellPresenter(
              FleetService.of(record), new EditService(record), new InlineTaskRunner());
      presenter.load();
      for (int width : new int[] {1280, 760}) {
        AtomicReference<Painted> painted = new AtomicReference<>();
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              ShellPanel panel = new ShellPanel(presenter, () -> {});
              presenter.go(Place.BOATS);
              painted.set(new Painted(panel, width, 800));
            });
        assertThat(painted.get().faults()).as(zoom + " in " + width).isEmpty();
        assertThat(painted.get().shown()).anyMatch(c -> "invited also".equals(c.getName()));
      }
    }
  }

  @Test
  void theSignOfALookStandsOutFromItsGround() throws Exception {
    for (boolean dark : new boolean[] {false, true}) {
      AtomicReference<Double> contrast = new AtomicReference<>();
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.start(dark, 1f);
            Color ground = javax.swing.UIManager.getColor("Table.background");
            contrast.set(Contrast.ratio(Theme.colour("look"), ground));
          });
      assertThat(contrast.get()).as("dark " + dark).isGreaterThanOrEqualTo(Contrast.OF_LINES);
    }
  }
}
