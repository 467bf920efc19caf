package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.ShellState;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.ui.theme.Theme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every place of an empty record says the one useful thing, and has a button that does it. */
@Tag("slow")
class EmptyPlacesTest {
  @TempDir Path home;
  private RecordService record;
  private ShellPresenter presenter;
  private final AtomicReference<ShellState> state = new AtomicReference<>();

  @BeforeEach
  void open() {
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(Clock.systemUTC(), new Random(1)::nextLong, "desk", 1);
    RecordService.create(home.resolve("empty"), surroundings);
    record = RecordService.open(home.resolve("empty"), surroundings);
    presenter =
        new ShellPresenter(
            FleetService.of(record), new EditService(record), new InlineTaskRunner());
    presenter.load();
  }

  @AfterEach
  void close() throws Exception {
    record.close();
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private static JButton invited(Painted painted) {
    List<JComponent> buttons =
        painted.shown().stream().filter(c -> "invited".equals(c.getName())).toList();
    assertThat(buttons).hasSize(1);
    return (JButton) buttons.get(0);
  }

  /** Paints a place, holds that it is whole, and does what its one button says. */
  private void accept(Place place, boolean dark, float zoom) throws Exception {
    AtomicReference<Painted> painted = new AtomicReference<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(dark, zoom);
          ShellPanel panel = new ShellPanel(presenter, () -> {});
          presenter.go(place);
          painted.set(new Painted(panel, 1280, 800));
        });
    Files.createDirectories(Path.of("target/help-pictures"));
    String name = "empty-" + place + "-" + dark + "-" + Math.round(zoom * 100) + ".png";
    ImageIO.write(
        painted.get().image(),
        "png",
        new File("target/help-pictures", name.toLowerCase(Locale.ROOT)));
    assertThat(painted.get().faults()).as(place.words()).isEmpty();
    assertThat(painted.get().textSizes()).hasSizeBetween(1, 3);
    presenter.onChange(state::set);
    SwingUtilities.invokeAndWait(() -> invited(painted.get()).doClick());
  }

  @ParameterizedTest
  @CsvSource({"false,1", "true,1", "false,2", "true,2"})
  void invitesToTheFirstBoat(boolean dark, float zoom) throws Exception {
    for (Place place : List.of(Place.AHEAD, Place.BOATS)) {
      accept(place, dark, zoom);
      assertThat(state.get().sheet().orElseThrow().getClass().getSimpleName())
          .isEqualTo("NewBoatSheet");
      presenter.leave();
    }
  }

  @ParameterizedTest
  @CsvSource({"false,1", "true,1", "false,2", "true,2"})
  void invitesToTheFirstPersonAndTheFirstProduct(boolean dark, float zoom) throws Exception {
    accept(Place.PEOPLE, dark, zoom);
    assertThat(record.almanac().parties()).hasSize(1);
    accept(Place.SHELF, dark, zoom);
    assertThat(record.almanac().products()).hasSize(1);
  }

  @Test
  void leadsFromAheadToTheBoatThatHasNoCoatYet() throws Exception {
    Made made = new Made(48.4);
    record.change("a boat", Edit.put(List.of(made.harbour(), made.boat())));
    presenter.load();
    accept(Place.AHEAD, false, 1f);
    assertThat(state.get().place()).isEqualTo(Place.BOATS);
    assertThat(presenter.boats().chosen()).contains(made.boat().id());
  }

  @Test
  void invitesNobodyWhereThereIsSomething() throws Exception {
    accept(Place.SHELF, false, 1f);
    presenter.leave();
    SwingUtilities.invokeAndWait(
        () -> {
          ShellPanel panel = new ShellPanel(presenter, () -> {});
          presenter.go(Place.SHELF);
          assertThat(new Painted(panel, 1280, 800).shown())
              .noneMatch(c -> "invited".equals(c.getName()));
        });
  }
}
