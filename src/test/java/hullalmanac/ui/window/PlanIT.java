package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fewest passes, from a boat's page to a planned visit, by real keys in the real window. */
@NeedsDisplay
class PlanIT {
  @TempDir Path home;
  private OpenWindow window;
  private Boat siskin;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home);
    siskin =
        window.almanac().boats().stream()
            .filter(b -> b.name().equals("Siskin"))
            .findFirst()
            .orElseThrow();
    window.run(() -> window.presenter().openBoat(siskin.id()));
    window.await(() -> window.boatChosen().equals("Siskin"));
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void tabTo(String name) throws Exception {
    for (int i = 0; i < 40 && !window.focused().equals(name); i++) {
      window.tab();
    }
    assertThat(window.focused()).isEqualTo(name);
  }

  private List<Visit> planned() {
    return window.almanac().visits().stream()
        .filter(v -> v.boat().equals(siskin.id()) && v.status() == VisitStatus.PLANNED)
        .filter(v -> v.note().contains("to a gloss of 84 agreed"))
        .toList();
  }

  @Test
  void aVisitIsPlannedByKeysAlone() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_G);
    window.await(() -> window.focused().startsWith("agreed surface"));
    assertThat(window.says("Plans that no other beats on passes, minutes and microns")).isTrue();
    window.tab();
    window.type("84");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.says("Gloss step by step"));
    tabTo("agreed area");
    window.type("-5");
    window.tab();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> window.says("Area: "));
    assertThat(planned()).isEmpty();
    window.press(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    window.press(KeyEvent.VK_DELETE);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> !window.says("Area: "));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> !planned().isEmpty());
    Visit visit = planned().get(0);
    assertThat(
            window.almanac().steps().stream()
                .filter(s -> s.visit().equals(visit.id()))
                .map(Step::kind))
        .contains(StepKind.WASH, StepKind.POLISH, StepKind.PROTECT);
    window.await(() -> window.shows("steps"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    window.await(() -> planned().isEmpty());
    assertThat(window.filesTouched()).isEmpty();
  }
}
