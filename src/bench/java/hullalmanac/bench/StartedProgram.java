package hullalmanac.bench;

import hullalmanac.app.Main;
import java.awt.AWTEvent;
import java.awt.Toolkit;
import java.awt.event.ContainerEvent;
import javax.swing.JComponent;

/** The program itself, watched until the first row of Ahead is painted. */
final class StartedProgram {
  private static final String ROW = "hullalmanac.ui.ahead.RowCard";

  private static boolean watched;

  private StartedProgram() {}

  public static void main(String[] arguments) {
    Toolkit.getDefaultToolkit()
        .addAWTEventListener(StartedProgram::added, AWTEvent.CONTAINER_EVENT_MASK);
    Main.main(arguments);
  }

  private static void added(AWTEvent event) {
    if (event instanceof ContainerEvent in
        && event.getID() == ContainerEvent.COMPONENT_ADDED
        && !watched
        && in.getChild() instanceof JComponent child
        && child.getClass().getName().equals(ROW)) {
      watched = true;
      child.setBorder(new FirstPaint());
    }
  }
}
