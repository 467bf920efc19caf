package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.guide.Topic;
import hullalmanac.present.shell.Place;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Help by real keys in the real window: it opens at the right page, and nothing is lost by it. */
@NeedsDisplay
class HelpIT {
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

  private void openVisit() throws Exception {
    window.run(() -> window.presenter().openBoat(window.almanac().boats().get(0).id()));
    window.await(() -> window.place() == Place.BOATS);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
  }

  private boolean isFurtherDown() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            window.frame().getFocusOwner() instanceof JTextComponent page
                && page.getVisibleRect().y > page.getHeight() / 10);
  }

  private String text() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            window.frame().getFocusOwner() instanceof JTextComponent field ? field.getText() : "");
  }

  @Test
  void aTextThatWasBegunIsGoneOnWithAfterF1AndEsc() throws Exception {
    openVisit();
    String field = window.focused();
    // Half a day, which cannot be taken as it stands.
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    window.type("12/");
    assertThat(text()).isEqualTo("12/");
    window.press(KeyEvent.VK_F1);
    window.await(() -> window.focused().equals("guide page"));
    window.await(() -> window.says("surfaces down"));
    // The first page that is opened has no height yet when it is asked where its places are.
    window.await(this::isFurtherDown);
    assertThat(window.shows("sheet")).isFalse();
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.focused().equals(field));
    assertThat(window.shows("help")).isFalse();
    assertThat(text()).isEqualTo("12/");
    window.type("5");
    window.await(() -> text().equals("12/5"));
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void aCellThatWasBegunIsGoneOnWithAfterF1AndEsc() throws Exception {
    openVisit();
    for (int i = 0; i < 20 && !window.focused().equals("surfaces"); i++) {
      window.tab();
    }
    for (int i = 0; i < 3; i++) {
      window.press(KeyEvent.VK_RIGHT);
    }
    window.type("85.");
    window.await(() -> text().equals("85."));
    window.press(KeyEvent.VK_F1);
    window.await(() -> window.focused().equals("guide page"));
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> text().equals("85."));
    window.type("5");
    window.await(() -> text().equals("85.5"));
  }

  @Test
  void wordsAreFoundLinksAreFollowedAndBackLeadsBack() throws Exception {
    window.press(KeyEvent.VK_F1);
    window.await(() -> window.focused().equals("guide page"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
    window.await(() -> window.focused().equals("find guide"));
    window.type("lay-up");
    window.await(() -> window.listed("guide") > 0 && window.listed("guide") < 10);
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.listed("guide") > 10);
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.place() == Place.AHEAD);
    window.run(() -> window.presenter().help().open(Topic.START));
    window.await(() -> window.says("leads through"));
    window.await(() -> window.focused().equals("guide page"));
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.says("Look around"));
    window.press(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
    window.await(() -> window.says("leads through"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_5);
    window.await(() -> window.place() == Place.SHELF && !window.shows("help"));
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void whatIsTypedWhileFindingIsThereAgain() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    window.await(() -> window.focused().equals("find anything"));
    window.type("quill");
    window.press(KeyEvent.VK_F1);
    window.await(() -> window.focused().equals("guide page"));
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.focused().equals("find anything") && text().equals("quill"));
  }
}
