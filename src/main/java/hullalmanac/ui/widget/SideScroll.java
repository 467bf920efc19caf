package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.MouseWheelEvent;
import java.awt.event.MouseWheelListener;
import javax.swing.BorderFactory;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/**
 * Scrolls a table sideways where it is wider than the window, as high as all of its rows; the wheel
 * turns the page it lies on, with Shift the table.
 */
public final class SideScroll extends JScrollPane {
  private static final long serialVersionUID = 1L;

  private static final int STEP = 60;

  private boolean bar;

  public SideScroll(JTable table) {
    super(table, VERTICAL_SCROLLBAR_NEVER, HORIZONTAL_SCROLLBAR_AS_NEEDED);
    setColumnHeaderView(table.getTableHeader());
    setBorder(BorderFactory.createEmptyBorder());
    for (MouseWheelListener wheel : getMouseWheelListeners()) {
      removeMouseWheelListener(wheel);
    }
    addMouseWheelListener(this::wheel);
  }

  private void wheel(MouseWheelEvent e) {
    if (e.isShiftDown()) {
      JScrollBar across = getHorizontalScrollBar();
      across.setValue(
          across.getValue() + (int) Math.round(UIScale.scale(STEP) * e.getPreciseWheelRotation()));
    } else if (getParent() != null) {
      getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, e, getParent()));
    }
  }

  /** Room for the bar is asked for only while there is one. */
  @Override
  public void doLayout() {
    super.doLayout();
    if (getHorizontalScrollBar().isVisible() != bar) {
      bar = !bar;
      Relayout.of(this);
    }
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension size = super.getPreferredSize();
    int height =
        getViewport().getView().getPreferredSize().height
            + getColumnHeader().getPreferredSize().height
            + (bar ? getHorizontalScrollBar().getPreferredSize().height : 0);
    return new Dimension(size.width, height);
  }
}
