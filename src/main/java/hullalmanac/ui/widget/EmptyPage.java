package hullalmanac.ui.widget;

import hullalmanac.present.Invitation;
import javax.swing.JButton;
import net.miginfocom.swing.MigLayout;

/** What stands where there is nothing to show yet. */
public final class EmptyPage {
  private static final int MEASURE = 460;

  private EmptyPage() {}

  /**
   * A page with an invitation.
   *
   * @param act what its button does
   */
  public static ScrollColumn of(Invitation invitation, Runnable act) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets 20 24 24 24, fillx, wrap 1, novisualpadding",
                "[0:" + MEASURE + ":" + MEASURE + ", fill]push",
                ""));
    column.setOpaque(false);
    column.add(Labels.heading(invitation.title()), "gapbottom 4");
    column.add(Labels.wrapped(invitation.words(), true), "wmin 60, gapbottom 8");
    JButton button = new JButton(invitation.button());
    button.setName("invited");
    button.addActionListener(e -> act.run());
    column.add(button, "hmin 40, growx 0");
    return column;
  }
}
