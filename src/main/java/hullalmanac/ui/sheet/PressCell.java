package hullalmanac.ui.sheet;

import hullalmanac.ui.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;

/** Paints a cell that is pressed: a button as high as its row; nothing where it has no text. */
final class PressCell extends JPanel implements TableCellRenderer {
  private static final long serialVersionUID = 1L;
  private static final int MARGIN = 2;
  private static final int GAP = 8;

  private final JButton button = new JButton();

  PressCell() {
    super(new BorderLayout());
    setBorder(BorderFactory.createEmptyBorder(MARGIN, MARGIN, MARGIN, GAP));
    button.putClientProperty(
        "FlatLaf.style", "minimumHeight: 0; minimumWidth: 0; margin: 0,8,0,8; focusWidth: 0");
    add(button);
  }

  /** How wide a button with a text is. */
  int width(JTable table, String text) {
    button.setFont(table.getFont());
    button.setText(text);
    return text.isEmpty() ? 0 : button.getPreferredSize().width + MARGIN + GAP;
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    String text = value.toString();
    boolean chosen = selected && table.isFocusOwner();
    setBackground(selected ? table.getSelectionBackground() : table.getBackground());
    button.setFont(table.getFont());
    button.setText(text);
    button.setVisible(!text.isEmpty());
    button.setForeground(Theme.colour(chosen ? "onAccent" : "accent"));
    button.setBackground(Theme.colour(chosen ? "accent" : "card"));
    return this;
  }
}
