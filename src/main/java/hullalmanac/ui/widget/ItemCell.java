package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Function;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;

/** An item of a list in three lines: its name, what is to be known of it first, and a detail. */
public final class ItemCell<T> extends JPanel implements ListCellRenderer<T> {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 230;

  private final JLabel name = Labels.strong("");
  private final JLabel status = Labels.quiet("");
  private final JLabel detail = Labels.quiet("");
  private final transient Lines<T> lines;
  private boolean chosen;
  private boolean cursor;

  /** The three lines of an item. */
  public record Lines<T>(
      Function<T, String> name, Function<T, String> status, Function<T, String> detail) {}

  public ItemCell(Lines<T> lines) {
    super(new MigLayout("insets 6 10 6 8, fillx, gap 4 0, wrap 1", "[grow, fill]", ""));
    this.lines = lines;
    add(name, "wmin 0");
    add(status, "wmin 0");
    add(detail, "wmin 0");
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends T> in, T item, int index, boolean selected, boolean focus) {
    chosen = selected;
    cursor = focus;
    name.setText(lines.name().apply(item));
    status.setText(lines.status().apply(item));
    detail.setText(lines.detail().apply(item));
    status.setForeground(Theme.colour("accent"));
    setBackground(selected ? in.getSelectionBackground() : in.getBackground());
    getAccessibleContext()
        .setAccessibleName(name.getText() + ", " + status.getText() + ", " + detail.getText());
    // It is never valid here, so that what changes in it would not be measured anew by itself.
    invalidate();
    return this;
  }

  /** The height of an item with all three lines. */
  int fullHeight() {
    for (JLabel line : List.of(name, status, detail)) {
      line.setText("X");
    }
    invalidate();
    return getPreferredSize().height;
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    if (chosen) {
      Marks.chosenWithinRing(g, getSize());
    }
    if (cursor) {
      Marks.cursor(g, new Rectangle(getSize()));
    }
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(WIDTH), super.getPreferredSize().height);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (name != null) {
      name.updateUI();
      status.updateUI();
      detail.updateUI();
    }
  }
}
