package hullalmanac.ui.ahead;

import hullalmanac.present.ahead.AheadState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.DotStrip;
import hullalmanac.ui.widget.Labels;
import java.awt.Font;
import java.time.LocalDate;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import net.miginfocom.swing.MigLayout;

/** One boat in Ahead: the words lead, the rings support them. */
final class RowCard extends Card {
  private static final long serialVersionUID = 1L;

  /** Columns of a row where there is room, which the heading over the rows shares. */
  static MigLayout wide() {
    return new MigLayout(
        "insets 12 16 12 16, fillx, gap 4 2",
        "[130!]16[180:300,grow]16[150:220:260]16[90!]",
        "[][][grow, top]");
  }

  private static MigLayout narrow() {
    return new MigLayout("insets 12 16 12 16, fillx, gap 8 2, wrap 1", "[grow, fill]", "");
  }

  RowCard(AheadState.Row row, LocalDate today, boolean narrow, Runnable open, Runnable remind) {
    super(narrow ? narrow() : wide());
    JTextArea what = new What(row.what());
    JTextArea detail = Labels.wrapped(row.detail(), true);
    JComponent chances =
        row.dots().isEmpty()
            ? Labels.quiet("fixed date")
            : new DotStrip(row.dots(), today, row.chances());
    JButton button = new JButton("Open boat");
    button.setName("open " + row.name());
    button.getAccessibleContext().setAccessibleName("Open boat " + row.name());
    button.addActionListener(e -> open.run());
    boolean nothing = row.told().isEmpty();
    JButton tell = new JButton("Tell owner");
    tell.setName("tell " + row.name());
    tell.getAccessibleContext().setAccessibleName("Tell the owner of " + row.name());
    tell.addActionListener(e -> remind.run());
    JTextArea told = Labels.wrapped(row.told(), true);
    told.setVisible(!nothing);
    if (narrow) {
      add(Labels.strong(row.name()));
      add(Labels.quiet(row.harbour()));
      add(what, "wmin 60");
      add(detail, "wmin 60");
      add(chances, "wmin 60");
      add(told, "wmin 60, hidemode 3");
      add(button, "split 2, hmin 32, growx 0, alignx left");
      add(tell, "hmin 32, growx 0");
    } else {
      add(Labels.strong(row.name()), "aligny top");
      add(what, "growx, wmin 60");
      add(chances, "spany 3, growx, aligny center");
      add(button, "spany 3, split 2, flowy, aligny center, growx, hmin 32");
      add(tell, "growx, hmin 32, wrap");
      add(Labels.quiet(row.harbour()), "aligny top");
      add(detail, "growx, wmin 60, aligny top, wrap");
      add(told, "skip 1, growx, wmin 60, aligny top, hidemode 3");
    }
  }

  /** What is due, in bold; it stays so when the theme changes. */
  private static final class What extends JTextArea {
    private static final long serialVersionUID = 1L;

    What(String text) {
      super(text);
      setLineWrap(true);
      setWrapStyleWord(true);
      setEditable(false);
      setFocusable(false);
      updateUI();
    }

    @Override
    public void updateUI() {
      super.updateUI();
      ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
      setOpaque(false);
      setBorder(null);
      setFont(Theme.font(Theme.Size.BODY).deriveFont(Font.BOLD));
    }
  }
}
