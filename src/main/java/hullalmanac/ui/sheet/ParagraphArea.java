package hullalmanac.ui.sheet;

import com.formdev.flatlaf.ui.FlatTextBorder;
import hullalmanac.ui.widget.Act;
import javax.swing.JTextArea;

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

  /** A theme has no frame for areas and takes away one it finds. */
  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(new FlatTextBorder());
    setOpaque(false);
  }
}
