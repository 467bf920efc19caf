package hullalmanac.ui.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.LinkedHashSet;
import java.util.Set;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Buttons beside each other, in as many rows as they need where there is no room. */
public final class ButtonRow extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int GAP = 8;
  private static final String WRAP = ", wrap";

  /** The last buttons of all rows but the last row. */
  private transient Set<Component> ends = Set.of();

  /** Without buttons yet. */
  public ButtonRow() {
    super(new MigLayout("insets 0, novisualpadding, nogrid, gapy " + GAP, "", ""));
    setOpaque(false);
  }

  @Override
  protected void addImpl(Component button, Object constraints, int index) {
    String own = constraints == null ? "" : constraints + ", ";
    super.addImpl(button, own + "gapright " + GAP, index);
  }

  /** Fills row after row. */
  private Set<Component> ends() {
    Set<Component> found = new LinkedHashSet<>();
    int taken = 0;
    Component before = null;
    for (Component button : getComponents()) {
      int width = button.getPreferredSize().width;
      if (before != null && taken + UIScale.scale(GAP) + width > getWidth()) {
        found.add(before);
        taken = 0;
      }
      taken += (taken == 0 ? 0 : UIScale.scale(GAP)) + width;
      before = button;
    }
    return found;
  }

  @Override
  public void doLayout() {
    Set<Component> now = ends();
    if (!now.equals(ends)) {
      ends = now;
      MigLayout layout = (MigLayout) getLayout();
      for (Component button : getComponents()) {
        String own = layout.getComponentConstraints(button).toString().replace(WRAP, "");
        layout.setComponentConstraints(button, now.contains(button) ? own + WRAP : own);
      }
      Relayout.of(this);
    }
    super.doLayout();
  }
}
