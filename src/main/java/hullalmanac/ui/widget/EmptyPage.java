package hullalmanac.ui.widget;

import hullalmanac.present.Invitation;
import javax.swing.JButton;
import net.miginfocom.swing.MigLayout;

/** What stands where there is nothing to show yet. */
public final class EmptyPage {
  /** For a page that it has to itself. */
  public static final String PAGE = "20 24 24 24";

  private static final int MEASURE = 460;

  private EmptyPage() {}

  /**
   * A page with an invitation.
   *
   * @param act what its button does
   * @param insets top, left, bottom, right, as the layout takes them
   */
  public static ScrollColumn of(Invitation invitation, Runnable act, String insets) {
    return of(invitation, act, () -> {}, insets);
  }

  /**
   * A page with an invitation of two buttons.
   *
   * @param also what the second does
   */
  public static ScrollColumn of(Invitation invitation, Runnable act, Runnable also, String insets) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets " + insets + ", fillx, wrap 1, novisualpadding",
                "[0:" + MEASURE + ":" + MEASURE + ", fill]push",
                ""));
    column.setOpaque(false);
    column.add(Labels.heading(invitation.title()), "gapbottom 4");
    column.add(Labels.wrapped(invitation.words(), true), "wmin 60, gapbottom 8");
    column.add(button("invited", invitation.button(), act), "hmin 40, growx 0");
    if (!invitation.also().isEmpty()) {
      column.add(button("invited also", invitation.also(), also), "hmin 40, growx 0, gaptop 4");
    }
    return column;
  }

  private static JButton button(String name, String words, Runnable act) {
    JButton button = new JButton(words);
    button.setName(name);
    button.addActionListener(e -> act.run());
    return button;
  }
}
