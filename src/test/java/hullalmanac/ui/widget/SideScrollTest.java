package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.table.TableMemory;
import hullalmanac.present.table.TableState;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** A table wider than its window, without a display. */
class SideScrollTest {
  private static SideScroll wide(int columns) {
    Theme.start(false, 1f);
    List<String> labels = IntStream.range(0, columns).mapToObj(n -> "Column " + n).toList();
    return new SideScroll(
        new TidyTable(TableState.of("Wide", labels, List.of(labels, labels)), new TableMemory()));
  }

  private static void layOut(SideScroll scroll) {
    scroll.setSize(300, scroll.getPreferredSize().height);
    for (int i = 0; i < 2; i++) {
      scroll.doLayout();
      scroll.getViewport().doLayout();
      scroll.setSize(300, scroll.getPreferredSize().height);
    }
  }

  private static MouseWheelEvent wheel(SideScroll on, int modifiers) {
    return new MouseWheelEvent(
        on,
        MouseEvent.MOUSE_WHEEL,
        0,
        modifiers,
        5,
        5,
        0,
        false,
        MouseWheelEvent.WHEEL_UNIT_SCROLL,
        1,
        1);
  }

  @Test
  void asksForRoomForABarOnlyWhereItHasOne() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          SideScroll narrow = wide(2);
          SideScroll wide = wide(20);
          layOut(narrow);
          layOut(wide);
          assertThat(narrow.getHorizontalScrollBar().isVisible()).isFalse();
          assertThat(wide.getHorizontalScrollBar().isVisible()).isTrue();
          assertThat(wide.getPreferredSize().height - narrow.getPreferredSize().height)
              .isEqualTo(wide.getHorizontalScrollBar().getPreferredSize().height);
        });
  }

  @Test
  void theWheelTurnsThePageAndWithShiftTheTable() throws Exception {
    List<MouseWheelEvent> page = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          SideScroll wide = wide(20);
          JPanel under = new JPanel(new BorderLayout());
          under.add(wide);
          under.addMouseWheelListener(page::add);
          layOut(wide);
          wide.dispatchEvent(wheel(wide, 0));
          assertThat(wide.getHorizontalScrollBar().getValue()).isZero();
          assertThat(page).hasSize(1);
          wide.dispatchEvent(wheel(wide, InputEvent.SHIFT_DOWN_MASK));
          assertThat(wide.getHorizontalScrollBar().getValue()).isPositive();
          assertThat(page).hasSize(1);
        });
  }
}
