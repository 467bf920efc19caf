package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.SystemFileChooser;
import hullalmanac.present.sheet.Input;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A line for the name of a file, and beside it a button that chooses one. */
final class FileChoice extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Input.FileName asked;
  private final transient Consumer<String> chosen;

  /**
   * @param line in which the name is typed
   */
  FileChoice(JComponent line, Input.FileName asked, Consumer<String> chosen) {
    super(new MigLayout("insets 0, fillx, gap 8 0, novisualpadding", "[grow, fill][]", "[center]"));
    this.asked = asked;
    this.chosen = chosen;
    setOpaque(false);
    add(line, "hmin 32, wmin 60");
    JButton choose = new JButton("Choose …");
    choose.setName("choose " + line.getName());
    choose
        .getAccessibleContext()
        .setAccessibleName("Choose: " + line.getAccessibleContext().getAccessibleName());
    choose.addActionListener(e -> choose());
    add(choose, "hmin 32");
  }

  private void choose() {
    SystemFileChooser chooser = new SystemFileChooser();
    chooser.setDialogTitle(asked.kinds());
    chooser.setFileFilter(
        new SystemFileChooser.FileNameExtensionFilter(
            asked.kinds(), asked.endings().toArray(String[]::new)));
    int answer = asked.toWrite() ? chooser.showSaveDialog(this) : chooser.showOpenDialog(this);
    if (answer == SystemFileChooser.APPROVE_OPTION) {
      Object file = chooser.getSelectedFile();
      chosen.accept(named(file.toString()));
    }
  }

  /** A name without an ending gets the usual one. */
  private String named(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    boolean ended =
        name.indexOf('.') >= 0
            || asked.endings().stream().anyMatch(file.toLowerCase(Locale.ROOT)::endsWith);
    return ended || !asked.toWrite() ? file : file + "." + asked.endings().get(0);
  }
}
