package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.record.Signature;
import hullalmanac.ui.theme.Theme;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** The ground on which one signs: three times as wide as it is high. */
final class SignPad extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int HEIGHT = 130;
  private static final int SHAPE = Signature.WIDTH / Signature.HEIGHT;

  /** Points nearer to the one before are left out; in points of the field. */
  private static final int NEAR = 6;

  /** Where the line lies on which one signs, from above. */
  private static final double LINE = 0.75;

  private final transient Consumer<String> drawn;
  private final transient List<List<Signature.Dot>> strokes = new ArrayList<>();
  private boolean open;
  private boolean drawing;

  /**
   * @param says what a screen reader says of it
   * @param drawn gets all strokes, as {@link Signature#text}, each time the pointer is lifted
   */
  SignPad(String says, Consumer<String> drawn) {
    super(null);
    this.drawn = drawn;
    setOpaque(false);
    setFocusable(false);
    getAccessibleContext().setAccessibleName(says);
    MouseAdapter pen =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            begin(e);
          }

          @Override
          public void mouseDragged(MouseEvent e) {
            go(e);
          }

          @Override
          public void mouseReleased(MouseEvent e) {
            lift();
          }
        };
    addMouseListener(pen);
    addMouseMotionListener(pen);
  }

  /** Lets one draw. */
  void setOpen(boolean now) {
    open = now;
    setCursor(Cursor.getPredefinedCursor(now ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR));
  }

  /** Shows what was drawn, unless one draws just now. */
  void show(Optional<Signature> signature) {
    if (!drawing) {
      strokes.clear();
      signature.ifPresent(s -> s.strokes().forEach(x -> strokes.add(new ArrayList<>(x.dots()))));
      repaint();
    }
  }

  private void begin(MouseEvent e) {
    if (open && SwingUtilities.isLeftMouseButton(e) && hasRoom()) {
      drawing = true;
      strokes.add(new ArrayList<>(List.of(dot(e.getPoint()))));
      repaint();
    }
  }

  private void go(MouseEvent e) {
    if (!drawing || !hasRoom()) {
      return;
    }
    List<Signature.Dot> stroke = strokes.get(strokes.size() - 1);
    Signature.Dot last = stroke.get(stroke.size() - 1);
    Signature.Dot next = dot(e.getPoint());
    if (Math.hypot(next.x() - last.x(), next.y() - last.y()) >= NEAR) {
      stroke.add(next);
      repaint();
    }
  }

  private void lift() {
    if (drawing) {
      drawing = false;
      drawn.accept(new Signature(strokes.stream().map(Signature.Stroke::new).toList()).text());
    }
  }

  private boolean hasRoom() {
    return strokes.stream().mapToInt(List::size).sum() < Signature.MOST_DOTS;
  }

  /** How many points of the field one pixel is, so that all of it is seen. */
  private double pixel() {
    return Math.max(
        (double) Signature.HEIGHT / Math.max(1, getHeight() - 1),
        (double) Signature.WIDTH / Math.max(1, getWidth() - 1));
  }

  private Signature.Dot dot(Point at) {
    return new Signature.Dot(
        within(at.x * pixel(), Signature.WIDTH), within(at.y * pixel(), Signature.HEIGHT));
  }

  private static int within(double value, int most) {
    return (int) Math.max(0, Math.min(most, Math.round(value)));
  }

  @Override
  public Dimension getPreferredSize() {
    int height = UIScale.scale(HEIGHT);
    return new Dimension(height * SHAPE, height);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    float zoom = UIScale.scale(1f);
    int arc = UIScale.scale(8);
    g.setColor(Theme.colour("card"));
    g.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
    g.setColor(UIManager.getColor("Component.borderColor"));
    g.setStroke(new BasicStroke(zoom));
    g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, arc, arc);
    int line = (int) (getHeight() * LINE);
    int inset = UIScale.scale(16);
    g.drawLine(inset, line, getWidth() - inset, line);
    g.setColor(UIManager.getColor("Label.foreground"));
    g.setStroke(new BasicStroke(2f * zoom, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    strokes.forEach(stroke -> paint(g, stroke));
    g.dispose();
  }

  private void paint(Graphics2D g, List<Signature.Dot> stroke) {
    Signature.Dot from = stroke.get(0);
    for (Signature.Dot to : stroke) {
      g.drawLine(at(from.x()), at(from.y()), at(to.x()), at(to.y()));
      from = to;
    }
  }

  private int at(int field) {
    return (int) Math.round(field / pixel());
  }
}
