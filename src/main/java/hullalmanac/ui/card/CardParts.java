package hullalmanac.ui.card;

import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Labels;
import java.awt.Font;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Texts and buttons of a card, large enough at arm's length. */
final class CardParts {
  /** Height of what one touches. */
  static final String HIGH = "hmin 48";

  private static final float BODY = 1.3f;
  private static final float HEADING = 1.6f;
  private static final float CLOCK = 4.5f;

  private static final String CHOSEN =
      "background: $Almanac.accent; foreground: $Almanac.onAccent; borderColor: $Almanac.accent;"
          + " hoverBackground: $Almanac.accent; pressedBackground: $Almanac.accent;"
          + " focusedBackground: $Almanac.accent; selectedBackground: $Almanac.accent;"
          + " selectedForeground: $Almanac.onAccent";

  private CardParts() {}

  private static Font font(float size, int style) {
    Font base = Theme.font(Theme.Size.BODY);
    return base.deriveFont(style, base.getSize2D() * size);
  }

  static JTextArea text(String text) {
    return sized(Labels.wrapped(text, false), font(BODY, Font.PLAIN));
  }

  static JTextArea quiet(String text) {
    return sized(Labels.wrapped(text, true), font(BODY, Font.PLAIN));
  }

  static JTextArea strong(String text) {
    return sized(Labels.wrapped(text, false), font(BODY, Font.BOLD));
  }

  static JTextArea heading(String text) {
    return sized(Labels.wrapped(text, false), font(HEADING, Font.BOLD));
  }

  /** Text of a dwell, to be read from afar. */
  static JTextArea clock() {
    return sized(Labels.wrapped("", false), font(CLOCK, Font.BOLD));
  }

  private static JTextArea sized(JTextArea area, Font font) {
    area.setFont(font);
    return area;
  }

  static JButton button(String name, String words, Runnable act) {
    JButton button = new JButton(words);
    button.setName(name);
    button.setFont(font(BODY, Font.PLAIN));
    button.addActionListener(e -> act.run());
    Act.on(button, "ENTER", act);
    return button;
  }

  /** A button that stands out: what one most likely does next, or what is chosen. */
  static JButton main(String name, String words, Runnable act) {
    JButton button = button(name, words, act);
    button.putClientProperty("FlatLaf.style", CHOSEN);
    return button;
  }

  /** Something to tick. */
  static JToggleButton tick(String name, String words, boolean ticked, Runnable act) {
    JToggleButton box = new JToggleButton(ticked ? "done" : "tick", ticked);
    box.setName(name);
    box.setFont(font(BODY, Font.PLAIN));
    box.getAccessibleContext().setAccessibleName(words + (ticked ? ", done" : ""));
    box.addActionListener(e -> act.run());
    Act.on(box, "ENTER", act);
    if (ticked) {
      box.putClientProperty("FlatLaf.style", CHOSEN);
    }
    return box;
  }

  static JPanel clear(String layout, String columns, String rows) {
    JPanel panel = new JPanel(new MigLayout(layout + ", novisualpadding", columns, rows));
    panel.setOpaque(false);
    return panel;
  }
}
