package hullalmanac.bench;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.EventQueue;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;

/** A frame with a table and nothing else, as small as a window can be that shows rows. */
final class StartedBare {
  private static final int ROWS = 40;
  private static final int COLUMNS = 6;

  private StartedBare() {}

  public static void main(String[] arguments) {
    EventQueue.invokeLater(
        () -> {
          FlatLightLaf.setup();
          JTable table = new JTable(ROWS, COLUMNS);
          for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
              table.setValueAt("row " + row + ", column " + column, row, column);
            }
          }
          table.setBorder(new FirstPaint());
          JFrame frame = new JFrame("Bare");
          frame.add(new JScrollPane(table));
          frame.setSize(1280, 800);
          frame.setLocationRelativeTo(null);
          frame.setVisible(true);
        });
  }
}
