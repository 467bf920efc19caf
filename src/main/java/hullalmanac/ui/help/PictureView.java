package hullalmanac.ui.help;

import hullalmanac.core.record.Pixels;
import hullalmanac.ui.theme.Theme;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import javax.swing.text.Element;
import javax.swing.text.Position;
import javax.swing.text.View;

/** A picture on a page, in a thin frame. */
final class PictureView extends View {
  private final BufferedImage image;

  PictureView(Element element, Pixels pixels) {
    super(element);
    image = new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.argb(), 0, pixels.width());
  }

  @Override
  public float getPreferredSpan(int axis) {
    return axis == X_AXIS ? image.getWidth() + 2 : image.getHeight() + 2;
  }

  @Override
  public void paint(Graphics g, Shape allocation) {
    Rectangle box = allocation.getBounds();
    g.drawImage(image, box.x + 1, box.y + 1, null);
    g.setColor(Theme.colour("cardLine"));
    g.drawRect(box.x, box.y, image.getWidth() + 1, image.getHeight() + 1);
  }

  @Override
  public Shape modelToView(int at, Shape allocation, Position.Bias bias) {
    Rectangle box = allocation.getBounds();
    return new Rectangle(at == getStartOffset() ? box.x : box.x + box.width, box.y, 0, box.height);
  }

  @Override
  public int viewToModel(float x, float y, Shape allocation, Position.Bias[] bias) {
    bias[0] = Position.Bias.Forward;
    return getStartOffset();
  }
}
