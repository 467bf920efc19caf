package hullalmanac.ui.shell;

import hullalmanac.present.shell.TimedPresenter;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.awt.Color;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The line above the bottom while a step is being timed: which, where, since when. */
final class TimedLine extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JTextArea text = Labels.wrapped("", false);

  TimedLine(TimedPresenter presenter) {
    super(new MigLayout("insets 4 16 4 12, fillx", "[grow, fill][][]", "[center]"));
    setName("timed");
    setVisible(false);
    JButton open = new JButton("Open the visit");
    open.setName("open what is timed");
    open.setToolTipText("Ctrl+Shift+M");
    open.addActionListener(e -> presenter.open());
    JButton stop = new JButton("Stop");
    stop.setName("stop what is timed");
    stop.addActionListener(e -> presenter.stop());
    add(text, "wmin 100");
    add(open, "hmin 32");
    add(stop, "hmin 32");
    presenter.onChange(this::show);
    colours();
  }

  private void show(Optional<String> words) {
    text.setText(words.orElse(""));
    setVisible(words.isPresent());
    revalidate();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    colours();
  }

  private void colours() {
    Color ground = Theme.colour("chosen");
    Color line = Theme.colour("cardLine");
    setBackground(ground);
    setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, line == null ? Color.GRAY : line));
  }
}
