package hullalmanac.ui.sheet;

import com.formdev.flatlaf.ui.FlatTextBorder;
import com.formdev.flatlaf.ui.FlatUIUtils;
import hullalmanac.ui.widget.Act;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** A few lines to write in, with the frame of a field in whichever theme is on; Tab leaves it. */
final class ParagraphArea extends JTextArea {
  private static final long serialVersionUID = 1L;

  ParagraphArea() {
    super(2, 10);
    setLineWrap(true);
    setWrapStyleWord(true);
    Act.on(this, "TAB", this::transferFocus);
    Act.on(this, "shift TAB", this::transferFocusBackward);
  }

  /** Filled as a field is, within its round corners. */
  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D ground = (Graphics2D) g.create();
    try {
      FlatUIUtils.setRenderingHints(ground);
      ground.setColor(UIManager.getColor("TextField.background"));
      FlatUIUtils.paintComponentBackground(
          ground,
          0,
          0,
          getWidth(),
          getHeight(),
          FlatUIUtils.getBorderFocusWidth(this),
          FlatUIUtils.getBorderArc(this));
    } finally {
      ground.dispose();
    }
    super.paintComponent(g);
  }

  /** A theme has no frame for areas and takes away one it finds. */
  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(new FlatTextBorder());
    setOpaque(false);
  }
}
