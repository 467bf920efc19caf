package hullalmanac.ui.owner;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.record.Pixels;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleValue;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * A picture before and one after in one frame, cropped alike; a divider that is dragged, or moved
 * by Left and Right, says how much is seen of each.
 */
final class PhotoPair extends JComponent {
  private static final long serialVersionUID = 1L;
  private static final int KNOB = 48;
  private static final int WIDTH = 480;
  private static final double STEP = 0.05;

  private transient Optional<BufferedImage> before = Optional.empty();
  private transient Optional<BufferedImage> after = Optional.empty();
  private double divider = 0.5;

  /**
   * @param name read out for it
   */
  PhotoPair(String name) {
    setName("pair");
    setFocusable(true);
    setCursor(Cursor.getPredefinedCursor(Cursor.W_RESIZE_CURSOR));
    getAccessibleContext().setAccessibleName(name);
    getAccessibleContext()
        .setAccessibleDescription("Left and Right move the divider between before and after");
    Act.on(this, "LEFT", () -> move(divider - STEP));
    Act.on(this, "RIGHT", () -> move(divider + STEP));
    Dragged dragged = new Dragged();
    addMouseListener(dragged);
    addMouseMotionListener(dragged);
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            scrollRectToVisible(new Rectangle(0, 0, getWidth(), getHeight()));
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /** Shows two pictures. */
  void show(Pixels before, Pixels after) {
    this.before = Optional.of(image(before));
    this.after = Optional.of(image(after));
    repaint();
  }

  /** How much is seen of the picture before, 0 to 1. */
  double divider() {
    return divider;
  }

  private void move(double wanted) {
    int old = percent();
    divider = Math.max(0, Math.min(1, wanted));
    getAccessibleContext()
        .firePropertyChange(AccessibleContext.ACCESSIBLE_VALUE_PROPERTY, old, percent());
    repaint();
  }

  private int percent() {
    return (int) Math.round(divider * 100);
  }

  private final class Dragged extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
      mouseDragged(e);
    }

    @Override
    public void mouseDragged(MouseEvent e) {
      move((double) e.getX() / Math.max(1, getWidth()));
    }
  }

  private static BufferedImage image(Pixels picture) {
    BufferedImage image =
        new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, picture.width(), picture.height(), picture.argb(), 0, picture.width());
    return image;
  }

  @Override
  public Dimension getPreferredSize() {
    int width = getWidth() > 0 ? getWidth() : UIScale.scale(WIDTH);
    return new Dimension(UIScale.scale(WIDTH), width * 2 / 3);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(UIScale.scale(2 * KNOB), getPreferredSize().height);
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean wider = width != getWidth();
    super.setBounds(x, y, width, height);
    if (wider) {
      revalidate();
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.setColor(Theme.colour("shade"));
    g.fillRect(0, 0, getWidth(), getHeight());
    if (before.isPresent() && after.isPresent()) {
      int x = (int) Math.round(divider * getWidth());
      side(g, before.get(), 0, x);
      side(g, after.get(), x, getWidth());
      words(g, x);
      knob(g, x);
    }
    if (isFocusOwner()) {
      // The lightest and the darkest: whatever the picture's colour is, one stands out from it.
      ring(g, Theme.colour("card"), UIScale.scale(4));
      ring(g, UIManager.getColor("Label.foreground"), UIScale.scale(2));
    }
    g.dispose();
  }

  private void ring(Graphics2D g, Color colour, int wide) {
    g.setColor(colour);
    g.setStroke(new BasicStroke(wide));
    g.drawRect(wide / 2, wide / 2, getWidth() - wide, getHeight() - wide);
  }

  /** The part of a picture from one place to another, the picture filling the whole frame. */
  private void side(Graphics2D g, BufferedImage image, int from, int until) {
    double scale =
        Math.max((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
    int width = (int) Math.ceil(image.getWidth() * scale);
    int height = (int) Math.ceil(image.getHeight() * scale);
    Graphics2D part = (Graphics2D) g.create();
    part.clipRect(from, 0, until - from, getHeight());
    part.drawImage(
        image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
    part.dispose();
  }

  private void words(Graphics2D g, int x) {
    g.setFont(Theme.font(Theme.Size.BODY));
    FontMetrics metrics = g.getFontMetrics();
    int margin = UIScale.scale(12);
    int pad = UIScale.scale(8);
    int left = metrics.stringWidth("Before") + 2 * pad;
    int right = metrics.stringWidth("After") + 2 * pad;
    if (margin + left < x) {
      word(g, "Before", margin, left);
    }
    if (getWidth() - margin - right > x) {
      word(g, "After", getWidth() - margin - right, right);
    }
  }

  private void word(Graphics2D g, String text, int x, int width) {
    FontMetrics metrics = g.getFontMetrics();
    int height = metrics.getHeight() + UIScale.scale(6);
    int y = UIScale.scale(12);
    int arc = UIScale.scale(8);
    g.setColor(Theme.colour("card"));
    g.fillRoundRect(x, y, width, height, arc, arc);
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString(
        text,
        x + (width - metrics.stringWidth(text)) / 2,
        y + UIScale.scale(3) + metrics.getAscent());
  }

  private void knob(Graphics2D g, int x) {
    int size = UIScale.scale(KNOB);
    int middle = Math.max(size / 2, Math.min(getWidth() - size / 2, x));
    int y = getHeight() / 2;
    Color ground = Theme.colour("card");
    Color line = Theme.colour("accent");
    g.setColor(ground);
    g.setStroke(new BasicStroke(UIScale.scale(4f)));
    g.drawLine(x, 0, x, getHeight());
    g.setColor(line);
    g.setStroke(new BasicStroke(UIScale.scale(2f)));
    g.drawLine(x, 0, x, getHeight());
    g.setColor(ground);
    g.fillOval(middle - size / 2, y - size / 2, size, size);
    g.setColor(line);
    g.drawOval(middle - size / 2 + 1, y - size / 2 + 1, size - 2, size - 2);
    for (int direction : new int[] {-1, 1}) {
      Path2D arrow = new Path2D.Double();
      arrow.moveTo(middle + direction * size * 0.13, y - size * 0.15);
      arrow.lineTo(middle + direction * size * 0.28, y);
      arrow.lineTo(middle + direction * size * 0.13, y + size * 0.15);
      g.draw(arrow);
    }
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Slider();
    }
    return accessibleContext;
  }

  /** Read out as a slider: per cent seen of the picture before. */
  private final class Slider extends AccessibleJComponent implements AccessibleValue {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.SLIDER;
    }

    @Override
    public AccessibleValue getAccessibleValue() {
      return this;
    }

    @Override
    public Number getCurrentAccessibleValue() {
      return percent();
    }

    @Override
    public boolean setCurrentAccessibleValue(Number value) {
      move(value.doubleValue() / 100);
      return true;
    }

    @Override
    public Number getMinimumAccessibleValue() {
      return 0;
    }

    @Override
    public Number getMaximumAccessibleValue() {
      return 100;
    }
  }
}
