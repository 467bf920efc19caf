package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Pages of a paper below each other. */
final class PagesView extends JPanel {
  private static final long serialVersionUID = 1L;

  PagesView(SheetState.Pages pages, Sheet sheet) {
    super(new MigLayout("insets 0, wrap 1, gap 0 16", "[left]", ""));
    setOpaque(false);
    pages.pages().forEach(page -> add(new PageBox(page, sheet), "wmin 0"));
  }

  /** A page; white paper, by day and by night. */
  private static final class PageBox extends SeenPicture {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 720;

    /** Of A4; a page that is shorter gets its own shape as soon as it was drawn. */
    private static final double SHAPE = Math.sqrt(2);

    PageBox(SheetState.Page page, Sheet sheet) {
      super(new BorderLayout(), page.file(), sheet);
      setName("page " + page.file());
      setFocusable(true);
      getAccessibleContext().setAccessibleName(page.words());
    }

    @Override
    public Dimension getPreferredSize() {
      int width = UIScale.scale(WIDTH);
      double shape = image().map(i -> (double) i.getHeight() / i.getWidth()).orElse(SHAPE);
      return new Dimension(width, (int) Math.round(width * shape));
    }

    @Override
    void arrived(Picture picture) {
      // A page has no other words than those on it.
    }

    @Override
    void draw(Graphics2D g) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, getWidth(), getHeight());
      image().ifPresent(i -> g.drawImage(i, 0, 0, getWidth(), getHeight(), null));
      g.setColor(Theme.colour("cardLine"));
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    }
  }
}
