package hullalmanac.core.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PictureTest {
  @Test
  void keepsItsPixelsToItself() {
    int[] pixels = {1, 2, 3, 4, 5, 6};
    Picture picture = new Picture(3, 2, pixels);
    pixels[0] = 9;
    picture.pixels()[1] = 9;
    assertThat(picture.pixels()).containsExactly(1, 2, 3, 4, 5, 6);
  }

  @Test
  void refusesPixelsThatFillNoRectangle() {
    assertThatThrownBy(() -> new Picture(3, 2, new int[5]))
        .hasMessage("3 × 2 is not a picture of 5 pixels");
    assertThatThrownBy(() -> new Picture(0, 2, new int[0]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
