package hullalmanac.ui.shell;

import hullalmanac.ui.widget.Labels;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Says that something went wrong that should not, and gives the report to copy. */
public final class CrashDialog {
  private static boolean showing;

  private CrashDialog() {}

  /**
   * Shows a report, from any thread; one at a time, so that a fault that repeats does not bury the
   * window.
   */
  public static void show(String report) {
    SwingUtilities.invokeLater(
        () -> {
          if (!showing) {
            showing = true;
            dialog(report).setVisible(true);
          }
        });
  }

  private static JDialog dialog(String report) {
    JDialog dialog = new JDialog((java.awt.Frame) null, "Something went wrong", false);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.addWindowListener(
        new java.awt.event.WindowAdapter() {
          @Override
          public void windowClosed(java.awt.event.WindowEvent e) {
            showing = false;
          }
        });
    dialog.setLayout(new MigLayout("insets 20, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
    dialog.add(
        Labels.wrapped(
            "Something went wrong that should not. The record on the disk is whole. The report below names no owner and no"
                + " boat; copy it to whoever looks after the program.",
            false),
        "wmin 100");
    JTextArea text = new JTextArea(report);
    text.setEditable(false);
    text.getAccessibleContext().setAccessibleName("Report");
    dialog.add(new JScrollPane(text), "h 220::");
    JButton copy = new JButton("Copy text");
    copy.addActionListener(
        e ->
            Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(report), null));
    JButton close = new JButton("Close");
    close.addActionListener(e -> dialog.dispose());
    dialog.add(copy, "split 2, growx 0, hmin 32, tag other");
    dialog.add(close, "growx 0, hmin 32, tag ok");
    dialog.setSize(new Dimension(640, 460));
    dialog.setLocationRelativeTo(null);
    return dialog;
  }
}
