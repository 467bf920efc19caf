package hullalmanac.ui.widget;

import java.awt.Container;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/**
 * A plain window without a frame that covers the screen on which the main window is: the
 * full-screen mode of Java is not to be relied on everywhere.
 */
public final class Cover {
  private Cover() {}

  /**
   * Makes it; the main window stays as it is.
   *
   * @param name for those who look at it from outside
   * @param leave what happens when it is closed by the system
   */
  public static JFrame over(JFrame main, String name, Container content, Runnable leave) {
    JFrame made = new JFrame(main.getGraphicsConfiguration());
    made.setName(name);
    made.setUndecorated(true);
    made.setIconImages(main.getIconImages());
    made.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    made.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            leave.run();
          }
        });
    made.setContentPane(content);
    made.setBounds(main.getGraphicsConfiguration().getBounds());
    return made;
  }

  /** Takes it away; the main window has the cursor again. */
  public static void close(JFrame cover, JFrame main) {
    cover.dispose();
    if (main.isDisplayable()) {
      main.toFront();
      main.requestFocus();
    }
  }
}
