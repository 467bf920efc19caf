package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.present.shell.Place;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The acts of a day, done by real keys in the real window, and the keys counted: a key with others
 * held down is one.
 */
@NeedsDisplay
class DayIT {
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

  /** Opens a boat's page from anywhere. */
  private void openBoat(String typed, String name) throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    window.await(() -> window.focused().equals("find anything"));
    window.type(typed);
    window.await(() -> window.listed("found") >= 1);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.place() == Place.BOATS && window.boatChosen().equals(name));
  }

  private Boat boat(String name) throws Exception {
    return window.almanac().boats().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private boolean has(String name) throws Exception {
    return window.almanac().boats().stream().anyMatch(b -> b.name().equals(name));
  }

  @Test
  void writesABoatDownFromAPhoneCallInFiveFields() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    window.await(() -> window.focused().startsWith("call owner"));
    int keys = window.keys();
    window.type("nell farrow");
    window.tab();
    window.type("5550199");
    window.tab();
    window.type("wheatear");
    window.tab();
    window.type("9.9m");
    window.tab();
    window.type("quillhaven");
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> has("wheatear"));
    int texts = "nell farrow5550199wheatear9.9mquillhaven".length();
    assertThat(window.keys() - keys - texts).as("keys besides the five texts").isEqualTo(5);
    window.await(() -> window.boatChosen().equals("wheatear"));
    assertThat(boat("wheatear").loa().orElseThrow().millimetres()).isEqualTo(9900);
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void goesOnToTheNextFieldWhereANewHarbourAsksForItsLatitude() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    window.await(() -> window.focused().startsWith("call owner"));
    window.type("nell farrow");
    for (String next : new String[] {"phone", "boat", "length", "harbour"}) {
      window.tab();
      window.await(() -> window.focused().equals("call " + next));
    }
    window.type("grebe cove");
    window.tab();
    window.await(() -> window.focused().equals("call type"));
    window.tab();
    window.await(() -> window.focused().equals("call latitude"));
    window.type("44");
    window.tab();
    window.await(() -> !window.focused().equals("call latitude"));
    assertThat(window.says("nell farrow")).isTrue();
  }

  @Test
  void writesAWashDownInTwoTouches() throws Exception {
    openBoat("siskin", "Siskin");
    Boat siskin = boat("Siskin");
    int before = visits(siskin);
    int touches = window.clicks();
    window.click("Washed");
    window.click("Nobody looked");
    window.await(() -> visits(siskin) > before || washedToday(siskin));
    assertThat(window.clicks() - touches).isEqualTo(2);
    assertThat(washedToday(siskin)).isTrue();
    assertThat(window.filesTouched()).isEmpty();
  }

  private int visits(Boat boat) throws Exception {
    return (int) window.almanac().visits().stream().filter(v -> v.boat().equals(boat.id())).count();
  }

  private boolean washedToday(Boat boat) throws Exception {
    return window.almanac().visits().stream()
        .anyMatch(
            v ->
                v.boat().equals(boat.id())
                    && v.status() == VisitStatus.DONE
                    && v.day().equals(LocalDate.of(2026, 5, 1)));
  }

  /** A boat whose last visit laid coats, so that its copy lays them again. */
  private Boat coated() throws Exception {
    return window.almanac().boats().stream()
        .filter(b -> b.status() == hullalmanac.core.record.BoatStatus.ACTIVE)
        .filter(b -> last(b).filter(this::protects).isPresent())
        .min(Comparator.comparing(Boat::name))
        .orElseThrow();
  }

  private Optional<Visit> last(Boat boat) {
    return window.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.DONE)
        .max(Comparator.comparing(Visit::day));
  }

  private boolean protects(Visit visit) {
    return window.almanac().steps().stream()
        .anyMatch(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT);
  }

  private long laidToday() {
    return window.almanac().coats().stream()
        .map(Coat::laidOn)
        .filter(Optional.of(LocalDate.of(2026, 5, 1))::equals)
        .count();
  }

  @Test
  void finishesAVisitCopiedFromTheLastUndoesItAndDoesItAgainAfterARestart() throws Exception {
    Boat boat = coated();
    window.run(() -> window.presenter().openBoat(boat.id()));
    window.await(() -> window.boatChosen().equals(boat.name()));
    String ahead = window.rowsAhead();
    long laid = laidToday();
    int keys = window.keys();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> laidToday() > laid);
    assertThat(window.keys() - keys).as("keys besides readings").isLessThanOrEqualTo(20);
    window.await(() -> !window.rowsAhead().equals(ahead));
    String moved = window.rowsAhead();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    window.await(() -> laidToday() == laid);
    window.close();
    window = OpenWindow.again(home);
    assertThat(laidToday()).isEqualTo(laid);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_Z);
    window.await(() -> laidToday() > laid);
    window.await(() -> window.rowsAhead().equals(moved));
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void typesReadingsStraightDownAColumnAndLeavesTheGridByTab() throws Exception {
    Boat boat = coated();
    window.run(() -> window.presenter().openBoat(boat.id()));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
    for (int i = 0; i < 20 && !window.focused().equals("surfaces"); i++) {
      window.press(KeyEvent.VK_TAB);
      window.await(() -> !window.focused().isEmpty());
    }
    assertThat(window.focused()).isEqualTo("surfaces");
    for (int i = 0; i < 4; i++) {
      window.press(KeyEvent.VK_RIGHT);
    }
    long before = window.almanac().findings().size();
    int keys = window.keys();
    window.type("85.5");
    window.press(KeyEvent.VK_ENTER);
    window.type("86");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.almanac().findings().size() == before + 2);
    assertThat(window.keys() - keys - "85.586".length()).as("one Enter a reading").isEqualTo(2);
    window.press(KeyEvent.VK_TAB);
    window.await(() -> !window.focused().equals("surfaces"));
    assertThat(window.filesTouched()).isEmpty();
  }
}
