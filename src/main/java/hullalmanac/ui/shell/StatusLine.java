package hullalmanac.ui.shell;

import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.ShellState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The line at the bottom: how the record is kept, or what went wrong. */
final class StatusLine extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JLabel text = Labels.quiet("");

  private final JButton undo = new JButton("Undo");
  private final JButton redo = new JButton("Redo");

  StatusLine(ShellPresenter presenter, Runnable toggleDark) {
    super(new MigLayout("insets 4 16 4 12, fillx, hidemode 3", "[grow][][][][][][]", "[center]"));
    text.setName("status");
    JButton finding = new JButton("Find");
    finding.setName("find in the record");
    finding.putClientProperty("JButton.buttonType", "borderless");
    finding.setToolTipText("Any boat, owner, harbour, product, number, batch or note (Ctrl+K).");
    finding.addActionListener(e -> presenter.startFinding());
    JButton dark = new JButton("Light or dark");
    dark.setName("light or dark");
    dark.putClientProperty("JButton.buttonType", "borderless");
    dark.setToolTipText("Ctrl+Shift+D. Ctrl and +, − or 0 change the size of everything.");
    dark.addActionListener(e -> toggleDark.run());
    JButton wet = new JButton("Wet hands");
    wet.setToolTipText("Ctrl+Shift+W makes all that one touches large, or as it was.");
    add(text, "growx, wmin 0");
    add(button(undo, presenter::undo), "hmin 28");
    add(button(redo, presenter::redo), "hmin 28");
    add(finding, "hmin 28");
    add(button(wet, () -> Theme.wetHands(!Theme.wetHands())), "hmin 28");
    add(dark, "hmin 28");
    JButton help = new JButton("Help");
    help.setToolTipText("F1 opens the guide at what it says of where you are.");
    add(button(help, presenter::openHelp), "hmin 28");
    line();
  }

  void show(ShellState state) {
    text.setText(state.trouble().orElse(state.status()));
    text.setToolTipText(text.getText());
    show(undo, "Ctrl+Z takes back: ", state.undo());
    show(redo, "Ctrl+Shift+Z does again: ", state.redo());
  }

  private static JButton button(JButton button, Runnable act) {
    button.setName(button.getText());
    button.putClientProperty("JButton.buttonType", "borderless");
    button.addActionListener(e -> act.run());
    return button;
  }

  private static void show(JButton button, String does, Optional<String> what) {
    button.setVisible(what.isPresent());
    button.setToolTipText(what.map(w -> does + w).orElse(null));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    line();
  }

  private void line() {
    java.awt.Color colour = Theme.colour("cardLine");
    setBorder(
        BorderFactory.createMatteBorder(1, 0, 0, 0, colour == null ? java.awt.Color.GRAY : colour));
  }
}
