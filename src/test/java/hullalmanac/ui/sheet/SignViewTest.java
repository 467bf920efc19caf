package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Signature;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SignViewTest {
  private static final At HERE = new At("reply", "", "signature");
  private final List<String> entered = new ArrayList<>();

  /** Notes what is entered. */
  private final class Noting implements Sheet {
    @Override
    public void onChange(Consumer<SheetState> view) {}

    @Override
    public void show(Fleet fleet) {}

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {
      assertThat(at).isEqualTo(HERE);
      entered.add(text);
    }
  }

  @BeforeEach
  void theme() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private static SheetState.Sign state(String strokes, boolean open) {
    return new SheetState.Sign(HERE, "", "Sign here.", strokes, open);
  }

  private SignView view(String strokes, boolean open) {
    SignView view = new SignView(state(strokes, open), new Noting());
    view.show(state(strokes, open));
    pad(view).setSize(301, 101);
    return view;
  }

  private static SignPad pad(SignView view) {
    return Arrays.stream(view.getComponents())
        .filter(SignPad.class::isInstance)
        .map(SignPad.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static void pointer(SignPad pad, int what, int x, int y) {
    pad.dispatchEvent(new MouseEvent(pad, what, 0, 0, x, y, 1, false, MouseEvent.BUTTON1));
  }

  private static void drag(SignPad pad, int... xy) {
    pointer(pad, MouseEvent.MOUSE_PRESSED, xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      pad.dispatchEvent(
          new MouseEvent(
              pad,
              MouseEvent.MOUSE_DRAGGED,
              0,
              MouseEvent.BUTTON1_DOWN_MASK,
              xy[i],
              xy[i + 1],
              1,
              false,
              MouseEvent.NOBUTTON));
    }
    pointer(pad, MouseEvent.MOUSE_RELEASED, xy[xy.length - 2], xy[xy.length - 1]);
  }

  @Test
  void entersWhatIsDrawnEachTimeThePointerIsLiftedAndWipesItOff() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          SignView view = view("", true);
          drag(pad(view), 10, 20, 12, 20, 900, 20, -5, 400);
          drag(pad(view), 30, 40);
          JButton wipe = (JButton) view.getComponents()[2];
          assertThat(wipe.isEnabled()).isFalse();
          view.show(state("10,20", true));
          assertThat(wipe.isEnabled()).isTrue();
          wipe.doClick();
        });
    assertThat(entered)
        .containsExactly(
            "100,200 120,200 3000,200 0,1000", "100,200 120,200 3000,200 0,1000/300,400", "");
  }

  @Test
  void showsWhatWasDrawnAndLetsNobodyDrawOverIt() throws Exception {
    BufferedImage image = new BufferedImage(301, 101, BufferedImage.TYPE_INT_RGB);
    SwingUtilities.invokeAndWait(
        () -> {
          SignView view = view("500,300 2500,300", false);
          drag(pad(view), 10, 20, 200, 60);
          assertThat(view.getComponentCount()).isEqualTo(2);
          Graphics2D g = image.createGraphics();
          pad(view).paint(g);
          g.dispose();
        });
    assertThat(entered).isEmpty();
    Color ink = UIManager.getColor("Label.foreground");
    assertThat(new Color(image.getRGB(150, 30))).isEqualTo(ink);
    assertThat(new Color(image.getRGB(150, 45))).isNotEqualTo(ink);
    assertThat(Signature.WIDTH).isEqualTo(3 * Signature.HEIGHT);
  }
}
