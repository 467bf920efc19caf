package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.theme.Theme;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Pages of a paper below each other, each drawn when it is first seen. */
final class PagesView extends JPanel {
  private static final long serialVersionUID = 1L;

  PagesView(SheetState.Pages pages, Sheet sheet) {
    super(new MigLayout("insets 0, wrap 1, gap 0 16", "[left]", ""));
    setOpaque(false);
    pages.pages().forEach(page -> add(new PageBox(page, sheet), "wmin 0"));
  }

  /** A page; white paper, by day and by night. */
  private static final class PageBox extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 720;

    /** Of A4; a page that is shorter gets its own shape as soon as it was drawn. */
    private static final double SHAPE = Math.sqrt(2);

    private final String file;
    private final transient Sheet sheet;
    private transient BufferedImage image;
    private int asked;

    PageBox(SheetState.Page page, Sheet sheet) {
      this.file = page.file();
      this.sheet = sheet;
      setName("page " + file);
      setFocusable(true);
      getAccessibleContext().setAccessibleName(page.words());
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
      int width = UIScale.scale(WIDTH);
      double shape = image == null ? SHAPE : (double) image.getHeight() / image.getWidth();
      return new Dimension(width, (int) Math.round(width * shape));
    }

    private void arrived(Picture picture) {
      image = picture.pixels().map(PictureBox::image).orElse(null);
      revalidate();
      repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics.create();
      int wide = (int) Math.ceil(getWidth() * g.getTransform().getScaleX());
      if (wide > asked) {
        asked = wide;
        sheet.picture(file, wide, this::arrived);
      }
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, getWidth(), getHeight());
      if (image != null) {
        g.setRenderingHint(
            RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, 0, 0, getWidth(), getHeight(), null);
      }
      g.setColor(Theme.colour("cardLine"));
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
      g.dispose();
    }
  }
}
