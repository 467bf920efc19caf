package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.Collection;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.TableColumn;

/**
 * Columns of nothing but numbers and amounts of money. They stand at the right, so that digits of
 * one worth lie under each other.
 */
public final class Figures {
  private static final Pattern FIGURE =
      Pattern.compile("[-+−]?(\\d+|\\d{1,3}(,\\d{3})+)(\\.\\d+)?( ?(%|µm|ml|°[CF])| [A-Z]{3})?");

  private Figures() {}

  /** Whether all texts that are not blank are figures, and there is one. */
  public static boolean only(Collection<String> texts) {
    return texts.stream().anyMatch(t -> !t.isBlank())
        && texts.stream().allMatch(t -> t.isBlank() || FIGURE.matcher(t).matches());
  }

  /** Puts a text on its side of a column; figures stay clear of the column after them. */
  public static void place(JLabel text, boolean figures) {
    text.setHorizontalAlignment(side(figures));
    if (figures) {
      text.setBorder(
          BorderFactory.createCompoundBorder(
              text.getBorder(), BorderFactory.createEmptyBorder(0, 0, 0, room())));
    }
  }

  /** How far figures stay clear of the column after them, in pixels. */
  public static int room() {
    return UIScale.scale(8);
  }

  /** On which side the texts of a column stand. */
  public static int side(boolean figures) {
    return figures ? SwingConstants.TRAILING : SwingConstants.LEADING;
  }

  /**
   * Sets what stands over each column on the side of its texts.
   *
   * @param figures whether a column, by its place in the model, is one of figures
   */
  public static void heads(JTable table, IntPredicate figures) {
    for (int c = 0; c < table.getColumnCount(); c++) {
      TableColumn column = table.getColumnModel().getColumn(c);
      int place = column.getModelIndex();
      column.setHeaderRenderer(
          (in, label, chosen, cursor, row, at) -> {
            Component head =
                table
                    .getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(in, label, chosen, cursor, row, at);
            if (head instanceof JLabel text) {
              place(text, figures.test(place));
            }
            return head;
          });
    }
  }
}
