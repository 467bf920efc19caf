package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Wall;
import hullalmanac.ui.card.CardWindow;
import java.awt.Component;
import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job card of a visit that was begun, by real keys in the real window. */
@NeedsDisplay
class JobCardIT {
  @TempDir Path home;
  private final Wall wall = new Wall("2026-05-01T14:02:00Z");
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home, wall);
    Boat siskin =
        window.almanac().boats().stream()
            .filter(b -> b.name().equals("Siskin"))
            .findFirst()
            .orElseThrow();
    window.run(() -> window.presenter().openBoat(siskin.id()));
    window.await(() -> window.boatChosen().equals("Siskin"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
    Visit visit =
        window.almanac().visits().stream()
            .filter(v -> v.boat().equals(siskin.id()) && v.status() == VisitStatus.PLANNED)
            .filter(v -> v.plan().isEmpty())
            .max(Comparator.comparing(Visit::day))
            .orElseThrow();
    acidFirst(visit);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private void acidFirst(Visit visit) throws Exception {
    Step first =
        window.almanac().steps().stream()
            .filter(s -> s.visit().equals(visit.id()))
            .min(Comparator.comparingInt(Step::order))
            .orElseThrow();
    Product acid =
        window.almanac().products().stream()
            .filter(p -> p.hazards().contains(Hazard.ACID))
            .findFirst()
            .orElseThrow();
    Step with =
        With.component(
            With.component(first, "kind", StepKind.DECONTAMINATE),
            "product",
            Optional.of(acid.id()));
    Step second =
        With.component(
            With.component(
                With.component(first, "id", window.presenter().ids().<Step>next()),
                "key",
                "a-second-step"),
            "order",
            2);
    window.run(
        () ->
            window
                .presenter()
                .edit(
                    "acid",
                    almanac -> Edit.put(With.component(with, "bottle", Optional.empty()), second)));
    window.settle();
  }

  private static List<JFrame> cards() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            Arrays.stream(Frame.getFrames())
                .filter(f -> f.isShowing() && CardWindow.NAME.equals(f.getName()))
                .map(JFrame.class::cast)
                .toList());
  }

  private static Optional<Component> part(String name) throws Exception {
    List<JFrame> cards = cards();
    return OpenWindow.onEventThread(
        () -> cards.stream().findFirst().map(c -> OpenWindow.named(c, name)));
  }

  private static String large() throws Exception {
    return part("dwell left").map(c -> ((JTextComponent) c).getText()).orElse("");
  }

  private static boolean says(String text) throws Exception {
    return part("heading").map(c -> ((JTextComponent) c).getText().equals(text)).orElse(false);
  }

  private static boolean enabled(String name) throws Exception {
    return part(name).map(Component::isEnabled).orElse(false);
  }

  /** The name of what has the cursor on the card. */
  private static String focused() throws Exception {
    return OpenWindow.onEventThread(
        () -> {
          Component c = OpenWindow.focusOwner();
          return c == null || c.getName() == null ? "" : c.getName();
        });
  }

  private void tabTo(String name) throws Exception {
    for (int i = 0; i < 60 && !focused().equals(name); i++) {
      window.tab();
    }
    assertThat(focused()).isEqualTo(name);
  }

  @Test
  void aStopIsReadADwellTimedAndAStepTickedByKeysAlone() throws Exception {
    window.press(KeyEvent.VK_F9);
    window.await(() -> cards().stream().anyMatch(JFrame::isFocused));
    JFrame card = cards().get(0);
    assertThat(card.getTitle()).isEqualTo("Siskin");
    assertThat(card.getBounds()).isEqualTo(window.frame().getGraphicsConfiguration().getBounds());
    assertThat(enabled("time")).isFalse();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    window.settle();
    assertThat(large()).isEmpty();
    for (int stop = 1; part("read " + stop).isPresent(); stop++) {
      String name = "read " + stop;
      tabTo(name);
      window.press(KeyEvent.VK_ENTER);
      window.await(() -> part(name).isEmpty());
    }
    assertThat(enabled("time")).isTrue();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    window.await(() -> large().equals("3:00"));
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.await(() -> large().isEmpty());
    wall.pass(Duration.ofSeconds(200));
    window.press(KeyEvent.VK_PAGE_UP);
    window.await(() -> large().equals("1:40"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_M);
    window.await(() -> large().isEmpty());
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> says("1 of 2: decontaminate, done"));
    tabTo("back by");
    window.type("16");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_F9);
    window.await(() -> cards().isEmpty());
    window.press(KeyEvent.VK_F9);
    window.await(() -> part("back by").map(c -> ((JTextComponent) c).getText()).isPresent());
    assertThat(((JTextComponent) part("back by").orElseThrow()).getText()).isEqualTo("16");
    tabTo("back by");
    window.type("17");
    window.tab();
    window.settle();
    assertThat(focused()).as("the cursor goes on from there").isEqualTo("leave");
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> cards().isEmpty());
    assertThat(window.filesTouched()).isEmpty();
  }
}
