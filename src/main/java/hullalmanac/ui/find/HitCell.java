package hullalmanac.ui.find;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.find.Hit;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.Marks;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;

/** A hit in two lines: its title with its kind at the right, and a detail. */
public final class HitCell extends JPanel implements ListCellRenderer<Hit> {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 200;
  private static final int HEIGHT = 48;
  private static final int LEFT = 14;
  private static final int RIGHT = 12;
  private static final int GAP = 16;
  private static final int ARC = 8;

  private final JLabel title = Labels.strong("");
  private final JLabel kind = Labels.quiet("");
  private final JLabel detail = Labels.quiet("");
  private boolean chosen;

  public HitCell() {
    super(
        new MigLayout(
            "insets 0 " + LEFT + " 0 " + RIGHT + ", fill, hidemode 3, gap " + GAP + " 2",
            "[grow, fill][]",
            "[]"));
    setOpaque(false);
    add(title, "wmin 0, bottom");
    add(kind, "bottom, wrap");
    add(detail, "span 2, wmin 0, growx, top");
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends Hit> in, Hit hit, int index, boolean selected, boolean focus) {
    chosen = selected;
    title.setText(hit.title());
    kind.setText(hit.kind().words());
    detail.setText(hit.detail());
    detail.setVisible(!hit.detail().isBlank());
    getAccessibleContext().setAccessibleName(words(hit));
    setToolTipText(isCut(in.getWidth()) ? words(hit) : null);
    return this;
  }

  private boolean isCut(int width) {
    int room = width - UIScale.scale(LEFT + RIGHT);
    int first = title.getPreferredSize().width + kind.getPreferredSize().width + UIScale.scale(GAP);
    return Math.max(first, detail.getPreferredSize().width) > room;
  }

  /** A hit in one line, to be read out. */
  static String words(Hit hit) {
    String detail = hit.detail().isBlank() ? "" : ", " + hit.detail();
    return hit.kind().words() + ", " + hit.title() + detail;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    if (chosen) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      int arc = UIScale.scale(ARC);
      g.setColor(Theme.colour("railChosen"));
      g.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
      g.dispose();
      Marks.chosenWithinRing(graphics, getSize());
    }
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(WIDTH), UIScale.scale(HEIGHT));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (title != null) {
      title.updateUI();
      kind.updateUI();
      detail.updateUI();
    }
  }
}
