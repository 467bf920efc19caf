package hullalmanac.ui.shell;

import hullalmanac.present.shell.ShellState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The line at the bottom: how the record is kept, or what went wrong. */
final class StatusLine extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JLabel text = Labels.quiet("");

  StatusLine(Runnable find, Runnable toggleDark) {
    super(new MigLayout("insets 4 16 4 12, fillx", "[grow][][]", "[center]"));
    text.setName("status");
    JButton finding = new JButton("Find");
    finding.setName("find in the record");
    finding.putClientProperty("JButton.buttonType", "borderless");
    finding.setToolTipText("Any boat, owner, harbour, product, number, batch or note (Ctrl+K).");
    finding.addActionListener(e -> find.run());
    JButton dark = new JButton("Light or dark");
    dark.setName("light or dark");
    dark.putClientProperty("JButton.buttonType", "borderless");
    dark.setToolTipText("Ctrl+Shift+D. Ctrl and +, − or 0 change the size of everything.");
    dark.addActionListener(e -> toggleDark.run());
    add(text, "growx, wmin 0");
    add(finding, "hmin 28");
    add(dark, "hmin 28");
    line();
  }

  void show(ShellState state) {
    text.setText(state.trouble().orElse(state.status()));
    text.setToolTipText(text.getText());
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
