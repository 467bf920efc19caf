package hullalmanac.ui.sheet;

import hullalmanac.core.record.Pixels;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Sheet;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;

/**
 * A picture of a sheet, asked for when it is first seen, and again when it is seen larger; read out
 * as a picture.
 */
abstract class SeenPicture extends JPanel {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient Sheet sheet;
  private transient BufferedImage image;
  private int asked;

  /**
   * @param file as {@link Sheet#picture} knows it
   */
  SeenPicture(LayoutManager layout, String file, Sheet sheet) {
    super(layout);
    this.file = file;
    this.sheet = sheet;
  }

  /** What came; nothing until then, and where it cannot be shown. */
  protected final Optional<BufferedImage> image() {
    return Optional.ofNullable(image);
  }

  /** Shows what there is besides the picture, which has come or cannot be shown. */
  abstract void arrived(Picture picture);

  /** Paints the picture, or the ground on which it will stand. */
  abstract void draw(Graphics2D g);

  private void take(Picture picture) {
    image = picture.pixels().map(SeenPicture::image).orElse(null);
    arrived(picture);
    revalidate();
    repaint();
  }

  private static BufferedImage image(Pixels pixels) {
    BufferedImage image =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.argb(), 0, pixels.width());
    return image;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    int wide = (int) Math.ceil(getWidth() * g.getTransform().getScaleX());
    if (wide > asked) {
      asked = wide;
      sheet.picture(file, wide, this::take);
    }
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    draw(g);
    g.dispose();
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
}
