package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.present.shell.Place;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Reckoner by keys alone in the real window. */
@NeedsDisplay
class ReckonerIT {
  @TempDir Path home;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home);
    window.run(() -> clipboard("nothing yet"));
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private static void clipboard(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
  }

  private static String copied() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            (String)
                Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
  }

  private String chosen() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            String.valueOf(
                ((JList<?>) OpenWindow.named(window.frame(), "sums")).getSelectedValue()));
  }

  /** Letters typed within a second of each other are one word to the list. */
  private void choose(char letter, String name) throws Exception {
    Thread.sleep(1100);
    window.type(String.valueOf(letter));
    window.await(() -> chosen().equals(name));
    assertThat(window.focused()).as("the cursor stays in the list").isEqualTo("sums");
    window.press(KeyEvent.VK_TAB);
  }

  @Test
  void dilutesAndCopiesByKeysAlone() throws Exception {
    Almanac before = window.almanac();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_7);
    window.await(() -> window.place() == Place.RECKONER && window.focused().equals("sums"));
    choose('u', "Units");
    window.await(() -> window.focused().equals("given what"));
    window.type("1 us gal");
    window.await(() -> window.says("1 us gal = 3.78541 l"));
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.focused().equals("copy units"));
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> copied().equals("3.78541 l"));
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.focused().equals("sums"));
    choose('d', "Dilution");
    window.await(() -> window.focused().equals("given water"));
    window.type("10");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.focused().equals("given strength"));
    window.press(KeyEvent.VK_TAB);
    window.await(() -> window.focused().equals("given bottle"));
    window.type("1000 ml");
    window.await(() -> window.says("909.09 ml water, then 90.91 ml product"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_C);
    String both = "909.09 ml water, then 90.91 ml product\n1 part and 10 parts water, 11 in all";
    window.await(() -> copied().equals(both));
    assertThat(window.almanac()).isEqualTo(before);
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void whatIsSelectedInAFieldIsCopiedBeforeTheAnswer() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_7);
    window.await(() -> window.focused().equals("sums"));
    choose('h', "Hull number");
    window.await(() -> window.focused().equals("given number"));
    window.type("zzz12345a818");
    window.await(() -> window.says("Built January 2018, model year 2018"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_C);
    window.await(() -> copied().equals("zzz12345a818"));
    window.press(KeyEvent.VK_END);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> copied().equals("Built January 2018, model year 2018"));
  }

  @Test
  void readingsArePastedFromASpreadsheetAndTypedOn() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_7);
    window.await(() -> window.focused().equals("sums"));
    choose('c', "Coating window");
    for (int i = 0; i < 20 && !window.focused().equals("hours"); i++) {
      window.tab();
    }
    assertThat(window.focused()).isEqualTo("hours");
    window.run(() -> clipboard("10:30\t20\t50\t13\n12:00\t20\t50\t16\n13:30\t20\t50\t18"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
    window.await(() -> window.says("Open from 10:30 to 13:30"));
    for (int i = 0; i < 3; i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    for (String cell : new String[] {"15", "20", "50", "14"}) {
      window.type(cell);
      window.press(KeyEvent.VK_ENTER);
      window.press(KeyEvent.VK_UP);
      window.press(KeyEvent.VK_RIGHT);
    }
    window.await(() -> window.says("Open from 10:30 to 15:00"));
    assertThat(window.filesTouched()).isEmpty();
  }
}
