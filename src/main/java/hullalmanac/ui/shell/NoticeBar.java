package hullalmanac.ui.shell;

import hullalmanac.present.shell.Notice;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.awt.Color;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is to be known as long as it stands, above the places; nothing nearly always. */
final class NoticeBar extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Consumer<Notice> press;
  private transient List<Notice> shown = List.of();

  NoticeBar(Consumer<Notice> press) {
    super(new MigLayout("insets 0, gap 0, fillx, wrap 1", "[grow, fill]", ""));
    this.press = press;
    setName("notices");
    setVisible(false);
  }

  void show(List<Notice> notices) {
    if (!notices.equals(shown)) {
      shown = notices;
      removeAll();
      notices.forEach(n -> add(row(n)));
      setVisible(!notices.isEmpty());
      revalidate();
    }
  }

  private JPanel row(Notice notice) {
    JPanel row = new Row();
    row.add(Labels.wrapped(notice.words(), false), "wmin 100, growx");
    JButton button = new JButton(notice.button());
    button.setName(notice.button());
    button.addActionListener(e -> press.accept(notice));
    row.add(button, "hmin 28");
    return row;
  }

  /** A notice on a ground of its own. */
  private static final class Row extends JPanel {
    private static final long serialVersionUID = 1L;

    Row() {
      super(new MigLayout("insets 6 16 6 12, fillx", "[grow, fill][]", "[center]"));
      line();
    }

    @Override
    public Color getBackground() {
      Color ground = Theme.colour("chosen");
      return ground == null ? super.getBackground() : ground;
    }

    @Override
    public void updateUI() {
      super.updateUI();
      line();
    }

    private void line() {
      Color colour = Theme.colour("cardLine");
      setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, colour == null ? Color.GRAY : colour));
    }
  }
}
