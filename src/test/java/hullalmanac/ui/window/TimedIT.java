package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Step;
import hullalmanac.core.work.Stopwatch;
import hullalmanac.fixture.Wall;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Time and damage of a visit, by real keys in the real window. */
@NeedsDisplay
class TimedIT {
  @TempDir Path home;
  private final Wall wall = new Wall("2026-05-01T14:02:00Z");
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home, wall);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void begin() throws Exception {
    Boat siskin =
        window.almanac().boats().stream()
            .filter(b -> b.name().equals("Siskin"))
            .findFirst()
            .orElseThrow();
    window.run(() -> window.presenter().openBoat(siskin.id()));
    window.await(() -> window.boatChosen().equals("Siskin"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
  }

  private void tabTo(String name) throws Exception {
    for (int i = 0; i < 30 && !window.focused().equals(name); i++) {
      window.tab();
    }
    assertThat(window.focused()).isEqualTo(name);
  }

  private Optional<Step> timed() {
    return Stopwatch.running(window.almanac());
  }

  @Test
  void aStepStartedByKeysRunsOnInTheNextWindowAndIsStoppedThere() throws Exception {
    begin();
    tabTo("steps");
    int keys = window.keys();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    window.await(() -> timed().isPresent());
    assertThat(window.keys() - keys).isEqualTo(1);
    Step started = timed().orElseThrow();
    window.await(() -> window.says("on Siskin: running since 14:02, 0 min so far"));
    window.close();
    wall.pass(Duration.ofMinutes(37));
    window = OpenWindow.again(home, wall);
    window.await(() -> window.says("on Siskin: running since 14:02, 37 min so far"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_M);
    window.await(() -> window.focused().startsWith("visit day"));
    tabTo("steps");
    window.press(KeyEvent.VK_LEFT);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> timed().isEmpty());
    assertThat(
            window.almanac().steps().stream()
                .filter(s -> s.id().equals(started.id()))
                .map(Step::minutes))
        .containsExactly(Optional.of(37));
    window.await(() -> !window.shows("timed"));
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void whatIsTimedIsOneTouchFromItsVisitAndOneFromItsEnd() throws Exception {
    begin();
    tabTo("steps");
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    window.await(() -> timed().isPresent());
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_1);
    window.await(() -> window.shows("place AHEAD"));
    int touches = window.clicks();
    window.click("open what is timed");
    window.await(() -> window.shows("steps"));
    assertThat(window.clicks() - touches).isEqualTo(1);
    wall.pass(Duration.ofMinutes(4));
    window.click("stop what is timed");
    window.await(() -> timed().isEmpty());
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void damageAndWhoWasToldAreWrittenByKeysAlone() throws Exception {
    begin();
    tabTo("surfaces");
    for (int i = 0; i < 12; i++) {
      window.press(KeyEvent.VK_RIGHT);
    }
    window.type("chip");
    window.press(KeyEvent.VK_ENTER);
    window.type("scrape");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> damage("chip").isPresent() && damage("scrape").isPresent());
    window.await(() -> window.shows("damage"));
    assertThat(window.focused()).as("the cursor stays where one writes").isEqualTo("surfaces");
    tabTo("damage");
    window.press(KeyEvent.VK_RIGHT);
    window.type("the yard");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> damage("chip").flatMap(Observation.Damage::told).isPresent());
    assertThat(damage("chip").flatMap(Observation.Damage::told).orElseThrow().whom())
        .isEqualTo("the yard");
    assertThat(damage("scrape").flatMap(Observation.Damage::told)).isEmpty();
    assertThat(window.filesTouched()).isEmpty();
  }

  private Optional<Observation.Damage> damage(String text) {
    return window.almanac().findings().stream()
        .filter(f -> f.seen() instanceof Observation.Damage)
        .map(f -> (Observation.Damage) f.seen())
        .filter(d -> d.text().equals(text))
        .findFirst();
  }
}
