package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.record.Pixels;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/**
 * A small upright picture, asked for when it is first seen, and again when it is seen larger. Until
 * it comes the box is a quiet ground.
 */
final class PictureBox extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 188;
  private static final int HEIGHT = 141;

  private final String file;
  private final String name;
  private final transient Sheet sheet;
  private final JTextArea words = Labels.wrapped("", true);
  private transient BufferedImage image;
  private int asked;

  PictureBox(String file, String name, Sheet sheet) {
    super(new MigLayout("insets 8, fill", "[grow, fill]", "[grow, center]"));
    this.file = file;
    this.name = name;
    setToolTipText(name);
    this.sheet = sheet;
    setOpaque(false);
    // What is dropped on the words falls into what lies behind them.
    words.setDropTarget(null);
    words.setVisible(false);
    add(words, "wmin 0");
  }

  /** Says for screen readers which photo it is. */
  void called(String facts) {
    getAccessibleContext().setAccessibleName("Photo, " + facts);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            private static final long serialVersionUID = 1L;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.ICON;
            }
          };
    }
    return accessibleContext;
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(WIDTH), UIScale.scale(HEIGHT));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(1, getPreferredSize().height);
  }

  private void arrived(Picture picture) {
    image = picture.pixels().map(PictureBox::image).orElse(null);
    words.setText(image == null ? name + "\n" + picture.words() : "");
    words.setVisible(image == null);
    revalidate();
    repaint();
  }

  static BufferedImage image(Pixels pixels) {
    BufferedImage image =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.argb(), 0, pixels.width());
    return image;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    int side = (int) Math.ceil(getWidth() * g.getTransform().getScaleX());
    if (side > asked) {
      asked = side;
      sheet.picture(file, side, this::arrived);
    }
    g.setColor(Theme.colour("shade"));
    g.fillRect(0, 0, getWidth(), getHeight());
    if (image != null) {
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
      double scale =
          Math.min(
              (double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
      int width = (int) Math.round(image.getWidth() * scale);
      int height = (int) Math.round(image.getHeight() * scale);
      g.drawImage(image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
    }
    g.dispose();
  }
}
