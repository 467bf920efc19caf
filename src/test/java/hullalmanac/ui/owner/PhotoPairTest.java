package hullalmanac.ui.owner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Pixels;
import hullalmanac.ui.theme.Theme;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PhotoPairTest {
  private static final int WIDTH = 600;
  private static final int HEIGHT = 400;
  private static final int LOW = 380;

  private PhotoPair pair;

  @BeforeEach
  void show() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          pair = new PhotoPair("Transom, 14 May 2026, before and after");
          pair.setSize(WIDTH, HEIGHT);
          pair.show(striped(300, 200, 0xffff0000), striped(300, 600, 0xff0000ff));
        });
  }

  /** One colour, with a white square in its middle. */
  private static Pixels striped(int width, int height, int colour) {
    int[] pixels = new int[width * height];
    Arrays.fill(pixels, colour);
    for (int y = height / 2 - 30; y < height / 2 + 30; y++) {
      Arrays.fill(pixels, y * width + width / 2 - 30, y * width + width / 2 + 30, 0xffffffff);
    }
    return new Pixels(width, height, pixels);
  }

  private BufferedImage painted() throws Exception {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    SwingUtilities.invokeAndWait(
        () -> {
          Graphics2D g = image.createGraphics();
          pair.paint(g);
          g.dispose();
        });
    return image;
  }

  private Color at(int x, int y) throws Exception {
    return new Color(painted().getRGB(x, y));
  }

  private void key(String key) {
    Object name = pair.getInputMap().get(KeyStroke.getKeyStroke(key));
    pair.getActionMap().get(name).actionPerformed(new ActionEvent(pair, 0, key));
  }

  private void mouse(int kind, int x) throws Exception {
    SwingUtilities.invokeAndWait(
        () ->
            pair.dispatchEvent(
                new MouseEvent(pair, kind, 0, MouseEvent.BUTTON1_DOWN_MASK, x, 200, 1, false, 1)));
  }

  @Test
  void showsTheOneAtTheLeftAndTheOtherAtTheRightOfTheDivider() throws Exception {
    assertThat(at(280, LOW)).isEqualTo(Color.RED);
    assertThat(at(320, LOW)).isEqualTo(Color.BLUE);
  }

  @Test
  void followsTheMouseFromWhereItIsPressed() throws Exception {
    mouse(MouseEvent.MOUSE_PRESSED, 150);
    assertThat(pair.divider()).isCloseTo(0.25, within(1e-9));
    assertThat(at(170, LOW)).isEqualTo(Color.BLUE);
    mouse(MouseEvent.MOUSE_DRAGGED, 480);
    assertThat(at(460, LOW)).isEqualTo(Color.RED);
    mouse(MouseEvent.MOUSE_DRAGGED, 5000);
    assertThat(pair.divider()).isEqualTo(1);
    assertThat(at(590, LOW)).isEqualTo(Color.RED);
  }

  @Test
  void followsTheKeysAndStopsAtTheEdges() throws Exception {
    key("LEFT");
    key("LEFT");
    assertThat(pair.divider()).isCloseTo(0.4, within(1e-9));
    assertThat(at(250, LOW)).isEqualTo(Color.BLUE);
    key("RIGHT");
    assertThat(pair.divider()).isCloseTo(0.45, within(1e-9));
    for (int i = 0; i < 30; i++) {
      key("LEFT");
    }
    assertThat(pair.divider()).isEqualTo(0);
    for (int i = 0; i < 30; i++) {
      key("RIGHT");
    }
    assertThat(pair.divider()).isEqualTo(1);
  }

  /** The frame is 3:2; one picture is too, the other is upright. */
  @Test
  void cropsBothAlikeAroundTheirMiddles() throws Exception {
    key("LEFT");
    key("LEFT");
    assertThat(at(350, 200)).isEqualTo(Color.WHITE);
    assertThat(at(352, 245)).isEqualTo(Color.WHITE);
    assertThat(at(375, 200)).isEqualTo(Color.BLUE);
    for (int i = 0; i < 9; i++) {
      key("RIGHT");
    }
    assertThat(at(350, 200)).isEqualTo(Color.WHITE);
    assertThat(at(352, 245)).isEqualTo(Color.WHITE);
    assertThat(at(375, 200)).isEqualTo(Color.RED);
  }

  @Test
  void hasAKnobThatAFingerCanTake() throws Exception {
    BufferedImage image = painted();
    int card = Theme.colour("card").getRGB() & 0xffffff;
    for (int y : new int[] {200 - 23, 200 + 22}) {
      assertThat(image.getRGB(306, y) & 0xffffff).isNotIn(0xff0000, 0x0000ff);
    }
    assertThat(image.getRGB(280, 200) & 0xffffff).isEqualTo(card);
    assertThat(image.getRGB(318, 200) & 0xffffff).isEqualTo(card);
    assertThat(pair.getMinimumSize().width).isGreaterThanOrEqualTo(48);
  }

  @Test
  void isReadOutAsASlider() {
    AccessibleContext read = pair.getAccessibleContext();
    assertThat(pair.isFocusable()).isTrue();
    assertThat(read.getAccessibleName()).isEqualTo("Transom, 14 May 2026, before and after");
    assertThat(read.getAccessibleRole()).isEqualTo(AccessibleRole.SLIDER);
    assertThat(read.getAccessibleValue().getCurrentAccessibleValue()).isEqualTo(50);
    read.getAccessibleValue().setCurrentAccessibleValue(30);
    assertThat(pair.divider()).isCloseTo(0.3, within(1e-9));
  }
}
