package hullalmanac.ui.start;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import com.formdev.flatlaf.util.SystemFileChooser;
import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.guide.Topic;
import hullalmanac.present.help.HelpPresenter;
import hullalmanac.present.start.StartPresenter;
import hullalmanac.ui.help.HelpPanel;
import hullalmanac.ui.widget.Act;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** The first window. To be made on the event thread. */
public final class StartWindow {
  private final JFrame frame = new JFrame("Hull Almanac");

  /**
   * @param help comes with F1
   * @param closed called when it was closed without a choice
   */
  public StartWindow(StartPresenter presenter, HelpPresenter help, Runnable closed) {
    JComponent content = HelpPanel.over(new StartPanel(presenter, this::folder), help);
    frame.setContentPane(content);
    Act.inWindow(content, "F1", () -> help.open(Topic.FIRST_DAY));
    frame.setIconImages(FlatSVGUtils.createWindowIconImages("/hullalmanac/ui/icons/program.svg"));
    frame.setSize(UIScale.scale(620), UIScale.scale(660));
    frame.setLocationRelativeTo(null);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new java.awt.event.WindowAdapter() {
          @Override
          public void windowClosing(java.awt.event.WindowEvent e) {
            frame.dispose();
            closed.run();
          }
        });
  }

  private Optional<String> folder() {
    SystemFileChooser chooser = new SystemFileChooser();
    chooser.setFileSelectionMode(SystemFileChooser.DIRECTORIES_ONLY);
    chooser.setDialogTitle("The folder that holds almanac.db");
    boolean chosen = chooser.showOpenDialog(frame) == SystemFileChooser.APPROVE_OPTION;
    Object folder = chosen ? chooser.getSelectedFile() : null;
    return Optional.ofNullable(folder).map(Object::toString);
  }

  /** Shows it. */
  public void open() {
    frame.setVisible(true);
  }

  /** Takes it away, when a way was gone. */
  public void close() {
    frame.dispose();
  }

  /** The frame, for those who look at it from outside. */
  public JFrame frame() {
    return frame;
  }
}
