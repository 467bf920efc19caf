package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A small upright picture. Until it comes the box is a quiet ground. */
final class PictureBox extends SeenPicture {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 188;
  private static final int HEIGHT = 141;

  private final String name;
  private final JTextArea words = Labels.wrapped("", true);

  PictureBox(String file, String name, Sheet sheet) {
    super(new MigLayout("insets 8, fill", "[grow, fill]", "[grow, center]"), file, sheet);
    this.name = name;
    setToolTipText(name);
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
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(WIDTH), UIScale.scale(HEIGHT));
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(1, getPreferredSize().height);
  }

  @Override
  void arrived(Picture picture) {
    words.setText(image().isPresent() ? "" : name + "\n" + picture.words());
    words.setVisible(image().isEmpty());
  }

  @Override
  void draw(Graphics2D g) {
    g.setColor(Theme.colour("shade"));
    g.fillRect(0, 0, getWidth(), getHeight());
    image().ifPresent(i -> draw(g, i));
  }

  private void draw(Graphics2D g, BufferedImage image) {
    double scale =
        Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
    int width = (int) Math.round(image.getWidth() * scale);
    int height = (int) Math.round(image.getHeight() * scale);
    g.drawImage(image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
  }
}
