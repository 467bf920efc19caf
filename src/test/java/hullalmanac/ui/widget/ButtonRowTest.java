package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.ui.theme.Theme;
import java.awt.Rectangle;
import javax.swing.JButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where buttons stand that find no room beside each other. */
class ButtonRowTest {
  @ParameterizedTest
  @ValueSource(floats = {1f, 2f})
  void rowsAreFilledOneAfterTheOtherWithoutGapsBetweenButtons(float zoom) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, zoom);
          ButtonRow row = new ButtonRow();
          JButton first = new JButton("Pay");
          JButton second = new JButton("List");
          JButton wide = new JButton("Draft the care plans of last month, all of them");
          row.add(first);
          row.add(second);
          row.add(wide);
          row.setSize(wide.getPreferredSize().width + 2, 1000);
          row.doLayout();
          row.doLayout();
          int gap = Math.round(8 * zoom);
          Rectangle one = first.getBounds();
          assertThat(second.getX()).isEqualTo(one.x + one.width + gap);
          assertThat(second.getY()).isEqualTo(one.y);
          assertThat(wide.getX()).isEqualTo(one.x);
          assertThat(wide.getY()).isEqualTo(one.y + one.height + gap);
          assertThat(row.getPreferredSize().height).isEqualTo(wide.getY() + wide.getHeight());
          row.setSize(2000, 1000);
          row.doLayout();
          row.doLayout();
          assertThat(wide.getY()).isEqualTo(one.y);
          assertThat(wide.getX()).isEqualTo(second.getX() + second.getWidth() + gap);
          Theme.start(false, 1f);
        });
  }
}
