package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.find.FindIndex;
import hullalmanac.core.find.Hit;
import hullalmanac.core.find.HitKind;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Removal;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Contrast;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.Wall;
import hullalmanac.present.Look;
import hullalmanac.present.edit.BinSheet;
import hullalmanac.present.edit.CatchUpSheet;
import hullalmanac.present.edit.ChangesSheet;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.present.reckoner.ReckonerState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.start.StartPresenter;
import hullalmanac.present.table.TableMemory;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.ui.find.FindPanel;
import hullalmanac.ui.find.HitCell;
import hullalmanac.ui.owner.OwnerPanel;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.start.StartPanel;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Paints every place at its tightest; {@link OtherLooksPaintTest} paints the other looks. */
@Tag("slow")
class PanelsPaintTest {
  @TempDir static Path drawn;
  private static Bench timed;
  private static RecordService record;
  private static ShellPresenter presenter;

  @BeforeAll
  static void openSample() {
    record =
        RecordService.openReadOnly(
            Path.of("sample-db/record"),
            new RecordService.Surroundings(Clock.systemUTC(), new Random(1)::nextLong, "desk", 1));
    presenter =
        new ShellPresenter(
            FleetService.of(record), new EditService(record), new InlineTaskRunner());
    presenter.load();
  }

  @AfterAll
  static void close() throws Exception {
    record.close();
    if (timed != null) {
      timed.close();
      timed = null;
    }
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  static Stream<Arguments> looks() {
    return Stream.of(Arguments.of(true, 2f));
  }

  private static Look look(boolean dark, float zoom) {
    return new Look(dark ? Look.Tint.DARK : Look.Tint.LIGHT, zoom, false, false);
  }

  private static ShellPanel shell(Look look) throws Exception {
    AtomicReference<ShellPanel> panel = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(look);
          panel.set(new ShellPanel(presenter, () -> {}));
        });
    return panel.get();
  }

  private static Painted paint(ShellPanel panel, Runnable open) throws Exception {
    AtomicReference<Painted> painted = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          open.run();
          painted.set(new Painted(panel, 1280, 800));
        });
    return painted.get();
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsEveryPlaceWhole(boolean dark, float zoom) throws Exception {
    ShellPanel panel = shell(look(dark, zoom));
    for (Place place : Place.values()) {
      Painted painted = paint(panel, () -> presenter.go(place));
      assertThat(painted.faults()).as(place + " at " + zoom).isEmpty();
      assertThat(painted.textSizes()).hasSizeBetween(1, 3);
    }
  }

  @ParameterizedTest
  @ValueSource(floats = {1f, 2f})
  void paintsEveryPlaceWholeInHighContrast(float zoom) throws Exception {
    ShellPanel panel = shell(new Look(Look.Tint.HIGH_CONTRAST, zoom, false, true));
    for (Place place : Place.values()) {
      Painted painted = paint(panel, () -> presenter.go(place));
      assertThat(painted.faults()).as(place + " at " + zoom).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsEverySheetWhole(boolean dark, float zoom) throws Exception {
    ShellPanel panel = shell(look(dark, zoom));
    for (Sheet sheet : EverySheet.of(presenter, record.almanac())) {
      Painted painted = paint(panel, () -> presenter.open(sheet));
      SwingUtilities.invokeAndWait(presenter::leave);
      assertThat(painted.faults()).as(sheet.getClass().getSimpleName() + " at " + zoom).isEmpty();
      assertThat(painted.textSizes()).hasSizeBetween(1, 3);
    }
  }

  /** The bin and what changed say more once something was removed and changed. */
  @ParameterizedTest
  @MethodSource("looks")
  void paintsTheBinAndWhatChangedWholeWhenTheyHoldSomething(boolean dark, float zoom)
      throws Exception {
    try (Bench bench = Bench.open(drawn.resolve("bench-" + dark + zoom))) {
      ShellPresenter desk = bench.presenter();
      Boat kept = bench.boat("Siskin");
      Boat gone = bench.boat("Merganser");
      desk.edit(
          kept.name() + ": a note of some length about where her fenders lie",
          almanac -> Edit.put(With.component(kept, "note", "Fenders aft. ".repeat(12))));
      desk.change("Removed " + gone.name(), almanac -> Removal.of(almanac, gone), () -> {});
      for (Sheet sheet :
          List.of(new BinSheet(desk), new ChangesSheet(desk, Kind.BOAT, kept.id(), kept.name()))) {
        AtomicReference<Painted> painted = new AtomicReference<>();
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              ShellPanel panel = new ShellPanel(desk, () -> {});
              desk.open(sheet);
              painted.set(new Painted(panel, 1280, 800));
              assertThat(painted.get().shown().stream().anyMatch(PanelsPaintTest::holdsSomething))
                  .as(sheet.getClass().getSimpleName() + " holds something")
                  .isTrue();
              desk.leave();
            });
        assertThat(painted.get().faults())
            .as(sheet.getClass().getSimpleName() + " at " + zoom)
            .isEmpty();
      }
    }
  }

  /**
   * Each sum with something in every field, from top to bottom, in a wide and the smallest window.
   */
  @ParameterizedTest
  @MethodSource("looks")
  void paintsEverySumWholeFromTopToBottomAtTheSmallestWindowToo(boolean dark, float zoom)
      throws Exception {
    AtomicReference<ReckonerState> state = new AtomicReference<>();
    presenter.reckoner().onChange(state::set);
    for (int sum = 0; sum < state.get().list().size(); sum++) {
      presenter.reckoner().choose(sum);
      fill(state.get().sheet());
      for (int width : new int[] {940, 660}) {
        AtomicReference<Painted> painted = new AtomicReference<>();
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              SheetPanel panel = SheetPanel.inPlace(() -> {}, new TableMemory());
              panel.open(state.get().sheet());
              new Painted(panel, width, 800);
              JComponent page = page(panel);
              int inside = page.getWidth();
              page.getParent().remove(page);
              new Painted(page, inside, 4000);
              painted.set(new Painted(page, inside, page.getPreferredSize().height));
              panel.close();
            });
        assertThat(painted.get().faults())
            .as(state.get().list().get(sum).name() + " at " + zoom + " in " + width)
            .isEmpty();
        assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
      }
    }
  }

  /** Writes into each field of a sum the first of some texts that it takes. */
  private static void fill(Sheet sheet) {
    AtomicReference<SheetState> shown = new AtomicReference<>();
    sheet.onChange(shown::set);
    SheetState.Form form = (SheetState.Form) shown.get().blocks().get(0);
    for (SheetState.Field field : form.fields()) {
      At at = new At(form.id(), "", field.id());
      boolean other = List.of("strength", "wet", "share", "product").contains(field.id());
      Stream.of("ZZZ12345A818", "20 c", "27.5 m2", "10 m2/l", "7.5 m", "500 ml", "1000 hpa", "40")
          .filter(text -> !other && !sheet.say(at, text).refused())
          .findFirst()
          .ifPresent(text -> sheet.enter(at, text));
    }
    sheet.enter(new At(form.id(), "", "what"), "5 us gal");
    sheet.enter(new At(form.id(), "", "girths"), "0 1.5 2 1.5 0");
    List<List<String>> day = new ArrayList<>();
    for (int hour = 8; hour < 20; hour += 2) {
      day.add(List.of(hour + ":00", "20", "50", String.valueOf(8 + hour % 12)));
    }
    sheet.paste(new At("hours", "0", "at"), day);
  }

  private static boolean holdsSomething(JComponent c) {
    return c instanceof JTable || (c instanceof JButton b && b.getText().startsWith("Put back"));
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsTheWaysToBeginWhole(boolean dark, float zoom) throws Exception {
    for (boolean there : new boolean[] {false, true}) {
      AtomicReference<Painted> painted = new AtomicReference<>();
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.start(dark, zoom);
            StartPresenter start =
                new StartPresenter(
                    null,
                    new StartPresenter.Found(
                        "HullAlmanac", there, true, Optional.of("copies/almanac-2026-05-01.db")),
                    Optional.of("The record is open on another computer."));
            painted.set(new Painted(new StartPanel(start, Optional::empty), 620, 660));
          });
      assertThat(painted.get().faults()).as(there + " at " + zoom).isEmpty();
      assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
    }
  }

  /** Every control of a sheet and its grids' rows are as high as a wet thumb wants them. */
  @Test
  void makesAllThatOneTouchesLargeForWetHands() throws Exception {
    Visit visit = record.almanac().visits().get(0);
    AtomicReference<Painted> painted = new AtomicReference<>();
    List<Integer> heights = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          Theme.wetHands(true);
          SheetPanel panel = new SheetPanel(() -> {}, new TableMemory());
          VisitSheet sheet = new VisitSheet(presenter, visit.id());
          presenter.open(sheet);
          panel.open(sheet);
          painted.set(new Painted(panel, 1280, 1600));
          heights(panel, heights);
          presenter.leave();
          Theme.wetHands(false);
        });
    assertThat(painted.get().faults()).isEmpty();
    assertThat(heights).hasSizeGreaterThan(5).allMatch(h -> h >= 48);
  }

  private static void heights(Container in, List<Integer> heights) {
    for (Component c : in.getComponents()) {
      if (c instanceof JButton || c instanceof JTextField || c instanceof JComboBox<?>) {
        if (c.getHeight() > 0) {
          heights.add(c.getHeight());
        }
      } else if (c instanceof JTable table && table.isFocusable()) {
        heights.add(table.getRowHeight());
      } else if (c instanceof Container inner) {
        heights(inner, heights);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsABoatsPageWholeFromTopToBottom(boolean dark, float zoom) throws Exception {
    AtomicReference<Painted> painted = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(dark, zoom);
          ShellPanel panel = new ShellPanel(presenter, () -> {});
          presenter.go(Place.BOATS);
          new Painted(panel, 1280, 800);
          JComponent page = page(panel);
          int width = page.getWidth();
          page.getParent().remove(page);
          new Painted(page, width, 4000);
          painted.set(new Painted(page, width, page.getPreferredSize().height));
        });
    assertThat(painted.get().faults()).isEmpty();
    assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsAheadAsATableWhole(boolean dark, float zoom) throws Exception {
    presenter.ahead().asTable(true);
    Painted painted = paint(shell(look(dark, zoom)), () -> presenter.go(Place.AHEAD));
    presenter.ahead().asTable(false);
    assertThat(painted.faults()).isEmpty();
    assertThat(painted.textSizes()).hasSizeBetween(1, 3);
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsPhotosWholeFromTopToBottomAtTheSmallestWindowToo(boolean dark, float zoom)
      throws Exception {
    Sheet evening = evening();
    Sheet visit = new VisitSheet(presenter, record.almanac().photos().get(0).visit().orElseThrow());
    for (Sheet sheet : List.of(visit, evening)) {
      for (int width : new int[] {1280, 760}) {
        AtomicReference<Painted> painted = new AtomicReference<>();
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              ShellPanel panel = new ShellPanel(presenter, () -> {});
              presenter.open(sheet);
              new Painted(panel, width, 800);
              JComponent page = page(panel);
              int inside = page.getWidth();
              page.getParent().remove(page);
              new Painted(page, inside, 9000);
              painted.set(new Painted(page, inside, page.getPreferredSize().height));
              presenter.leave();
            });
        assertThat(painted.get().faults())
            .as(sheet.getClass().getSimpleName() + " at " + zoom + " in " + width)
            .isEmpty();
        assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
        assertThat(painted.get().has(new Color(0xDCE6E8))).as("the sky of a picture").isTrue();
      }
    }
  }

  /** A visit with damage in which a step has been timed for a while. */
  private static ShellPresenter timed() {
    if (timed == null) {
      Wall wall = new Wall("2026-05-01T09:00:00Z");
      timed = Bench.open(drawn.resolve("timed"), wall);
      timed.presenter().openBoat(timed.boat("Siskin").id());
      timed.presenter().boats().beginVisit();
      timed.write("surfaces", 1, "damage", "chip at the rubbing strake");
      timed.sheet().press(new At("steps", timed.grid("steps").rows().get(0).id(), "time"));
      wall.pass(Duration.ofMinutes(137));
      timed.presenter().lookAtTheClock();
    }
    return timed.presenter();
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsATimedVisitWithDamageWholeAtTheSmallestWindowToo(boolean dark, float zoom)
      throws Exception {
    ShellPresenter running = timed();
    for (int width : new int[] {1280, 760}) {
      AtomicReference<Painted> window = new AtomicReference<>();
      AtomicReference<Painted> whole = new AtomicReference<>();
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.start(dark, zoom);
            ShellPanel panel = new ShellPanel(running, () -> {});
            window.set(new Painted(panel, width, 800));
            assertThat(named(panel, "timed").isVisible()).isTrue();
            JComponent page = page(panel);
            int inside = page.getWidth();
            page.getParent().remove(page);
            new Painted(page, inside, 4000);
            whole.set(new Painted(page, inside, page.getPreferredSize().height));
          });
      assertThat(window.get().faults()).as("at " + zoom + " in " + width).isEmpty();
      assertThat(whole.get().faults()).as("page at " + zoom + " in " + width).isEmpty();
      assertThat(whole.get().textSizes()).hasSizeBetween(1, 3);
    }
  }

  private static Component named(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (name.equals(c.getName())) {
        return c;
      }
      Component deeper = c instanceof Container inner ? named(inner, name) : null;
      if (deeper != null) {
        return deeper;
      }
    }
    return null;
  }

  /** A day of the sample with photos, one that cannot be shown and one that says no time. */
  private static Sheet evening() throws Exception {
    LocalDate day = LocalDate.of(2026, 4, 20);
    CatchUpSheet sheet = new CatchUpSheet(presenter);
    presenter.open(sheet);
    sheet.enter(new At("day", "", "day"), day.toString());
    List<String> files = new ArrayList<>();
    for (int n = 0; n < 6; n++) {
      byte[] jpeg = DrawnPhotos.jpeg(n, day.atTime(8, 0).plusMinutes(40L * n * n));
      files.add(Files.write(drawn.resolve("p" + n + ".jpg"), jpeg).toString());
    }
    files.add(Files.write(drawn.resolve("no time.png"), DrawnPhotos.png(3)).toString());
    files.add(
        Files.write(drawn.resolve("far.heic"), DrawnPhotos.heic(day.atTime(17, 0))).toString());
    sheet.add("photos", files);
    presenter.leave();
    return sheet;
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsFindingWholeAtTheSmallestWindowToo(boolean dark, float zoom) throws Exception {
    AtomicReference<List<String>> faults = new AtomicReference<>();
    for (String typed :
        List.of("", "a", "seal quill", "B25753", "no such boat in all the record")) {
      for (Dimension size : List.of(new Dimension(1280, 800), new Dimension(760, 520))) {
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              FindPanel panel = new FindPanel(presenter.find(), () -> {});
              presenter.startFinding();
              presenter.find().type(typed);
              Painted painted = new Painted(panel, size.width, size.height);
              faults.set(painted.faults());
              assertThat(painted.textSizes()).hasSizeBetween(1, 3);
              presenter.find().leave();
            });
        assertThat(faults.get()).as(typed + " at " + zoom + " in " + size).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsEveryKindOfHitWholeChosenOrNot(boolean dark, float zoom) throws Exception {
    FindIndex index = FindIndex.of(record.almanac(), record.today());
    Set<HitKind> kinds = EnumSet.noneOf(HitKind.class);
    List<String> faults = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(dark, zoom);
          HitCell cell = new HitCell();
          for (String typed :
              List.of("a,quill,zzz,seal,B25753,rain,chip,as she,2026-000,estimate".split(","))) {
            for (Hit hit : index.find(typed, 20)) {
              kinds.add(hit.kind());
              for (boolean chosen : new boolean[] {false, true}) {
                cell.getListCellRendererComponent(new JList<>(), hit, 0, chosen, false);
                JPanel ground = new JPanel(new BorderLayout());
                ground.add(cell);
                faults.addAll(
                    new Painted(ground, Math.round(600 * zoom), cell.getPreferredSize().height)
                        .faults());
              }
            }
          }
        });
    assertThat(faults).isEmpty();
    assertThat(kinds)
        .as("in the sample every person and firm owns a boat")
        .isEqualTo(EnumSet.complementOf(EnumSet.of(HitKind.PERSON, HitKind.FIRM)));
  }

  @ParameterizedTest
  @MethodSource("looks")
  void paintsWhatTheOwnerSeesWholeFromTopToBottom(boolean dark, float zoom) throws Exception {
    for (String name : List.of("Black Guillemot", "Arctic Tern", "Siskin")) {
      Boat boat =
          record.almanac().boats().stream()
              .filter(b -> b.name().equals(name))
              .findFirst()
              .orElseThrow();
      for (int wide : new int[] {1280, 1920}) {
        AtomicReference<Painted> painted = new AtomicReference<>();
        SwingUtilities.invokeAndWait(
            () -> {
              Theme.start(dark, zoom);
              OwnerPanel panel = new OwnerPanel(presenter.owner()::picture, () -> {});
              presenter.owner().onChange(state -> state.ifPresent(panel::show));
              presenter.showOwner(boat.id());
              assertThat(new Painted(panel, wide, 800).faults()).as(name).isEmpty();
              JComponent page = page(panel);
              int width = page.getWidth();
              page.getParent().remove(page);
              new Painted(page, width, 1080);
              painted.set(new Painted(page, width, page.getPreferredSize().height));
              presenter.owner().leave();
              presenter.owner().onChange(state -> {});
            });
        assertThat(painted.get().faults()).as(name + " at " + zoom + " in " + wide).isEmpty();
        assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
      }
    }
  }

  /** The scrolled page of the boat that is shown. */
  static JComponent page(Container in) {
    for (Component c : in.getComponents()) {
      if (c.isVisible() && c instanceof JViewport v && v.getView() instanceof ScrollColumn column) {
        return column;
      }
      JComponent inner = c.isVisible() && c instanceof Container deeper ? page(deeper) : null;
      if (inner != null) {
        return inner;
      }
    }
    return null;
  }

  /** The check itself, on a panel that has each fault once. */
  @Test
  void seesEachFault() throws Exception {
    AtomicReference<Painted> painted = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          JPanel broken = new JPanel(null);
          broken.add(at(new JLabel("A text that is cut"), 0, 0, 30, 20));
          JLabel grey = new JLabel("Grey on grey");
          grey.setForeground(new Color(0xdddddd));
          broken.add(at(grey, 0, 30, 200, 20));
          broken.add(at(new JLabel("Out"), 280, 60, 60, 20));
          JButton small = new JButton(" ");
          small.getAccessibleContext().setAccessibleName("");
          broken.add(at(small, 0, 90, 60, 20));
          painted.set(new Painted(broken, 300, 200));
        });
    assertThat(String.join("\n", painted.get().faults()))
        .contains("\"A text that is cut\" is cut")
        .contains("\"Grey on grey\" has contrast")
        .contains("\"Out\" reaches out of its parent")
        .contains("is only 20 px high")
        .contains("has no accessible name");
  }

  /** W3C, WCAG 2.2: black on white is 21:1; #767676 on white is the lightest grey that passes. */
  @Test
  void reckonsContrastAsTheStandardDoes() {
    assertThat(Contrast.ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    assertThat(Contrast.ratio(new Color(0x767676), Color.WHITE)).isBetween(4.5, 4.55);
    assertThat(Contrast.ratio(new Color(0x777777), Color.WHITE)).isLessThan(4.5);
  }

  private static JComponent at(JComponent c, int x, int y, int width, int height) {
    c.setBounds(x, y, width, height);
    return c;
  }
}
