package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import javax.swing.JPanel;

/** A ground with rounded corners and a thin line around it. */
public class Card extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int ARC = 12;

  public Card(LayoutManager layout) {
    super(layout);
    setOpaque(false);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int arc = UIScale.scale(ARC);
    g.setColor(Theme.colour("card"));
    g.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
    g.setColor(Theme.colour("cardLine"));
    g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
    g.dispose();
  }
}
