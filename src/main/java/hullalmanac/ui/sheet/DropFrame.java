package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.TooManyListenersException;
import javax.swing.JPanel;
import javax.swing.TransferHandler;
import javax.swing.UIManager;

/** A dashed frame into which something is dropped or pasted. */
class DropFrame extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final float[] DASHES = {5f, 4f};

  private boolean open;
  private boolean over;

  DropFrame(LayoutManager layout) {
    super(layout);
    setOpaque(false);
  }

  /**
   * Lets things be dropped and pasted; before that there is no frame.
   *
   * @param taken what kinds of things
   * @param says what a screen reader says of it
   */
  final void takeInto(TransferHandler transfer, List<DataFlavor> taken, String says) {
    open = true;
    setFocusable(true);
    getAccessibleContext().setAccessibleName(says);
    setTransferHandler(transfer);
    Act.within(this, "ctrl V", this::paste);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
          }
        });
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
    if (getDropTarget() != null) {
      try {
        getDropTarget().addDropTargetListener(new Hover(taken, this::over));
      } catch (TooManyListenersException e) {
        throw new IllegalStateException("a drop target of Swing takes any number", e);
      }
    }
  }

  /** Whether one begins here: where things can be pasted. */
  final boolean open() {
    return open;
  }

  private void over(boolean now) {
    over = now;
    repaint();
  }

  /** Takes what is on the clipboard. */
  final void paste() {
    TransferHandler.getPasteAction()
        .actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, "paste"));
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (!open) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int arc = UIScale.scale(12);
    float zoom = UIScale.scale(1f);
    boolean marked = over || isFocusOwner();
    if (over) {
      g.setColor(Theme.colour("chosen"));
      g.fillRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
    }
    g.setColor(marked ? Theme.colour("accent") : UIManager.getColor("Component.borderColor"));
    g.setStroke(marked ? new BasicStroke(3f * zoom) : dashed(zoom));
    g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
    g.dispose();
  }

  private static BasicStroke dashed(float zoom) {
    return new BasicStroke(
        zoom,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        1f,
        new float[] {DASHES[0] * zoom, DASHES[1] * zoom},
        0f);
  }
}
