package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PixelsTest {
  @Test
  void keepsItsPixelsToItself() {
    int[] pixels = {1, 2, 3, 4, 5, 6};
    Pixels picture = new Pixels(3, 2, pixels);
    pixels[0] = 9;
    picture.argb()[1] = 9;
    assertThat(picture.argb()).containsExactly(1, 2, 3, 4, 5, 6);
  }

  @Test
  void refusesPixelsThatFillNoRectangle() {
    assertThatThrownBy(() -> new Pixels(3, 2, new int[5]))
        .hasMessage("5 pixels make no picture of 3 by 2");
    assertThatThrownBy(() -> new Pixels(0, 2, new int[0]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
