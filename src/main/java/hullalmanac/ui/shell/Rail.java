package hullalmanac.ui.shell;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.shell.Place;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Marks;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The places at the left: icon and word. */
final class Rail extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Map<Place, JToggleButton> buttons = new EnumMap<>(Place.class);

  Rail(Consumer<Place> go) {
    super(new MigLayout("insets 12 8 12 8, wrap 1, gap 0 1:6:6", "[fill]", "[shrink]"));
    for (Place place : Place.values()) {
      JToggleButton button = new PlaceButton(place);
      // No button group: Tab would go to the one chosen alone.
      button.addActionListener(
          e -> {
            show(place);
            go.accept(place);
          });
      buttons.put(place, button);
      add(button, "w 84!, h 30:58:58");
    }
  }

  void show(Place place) {
    buttons.forEach((p, button) -> button.setSelected(p == place));
  }

  @Override
  public Color getBackground() {
    Color rail = Theme.colour("rail");
    return rail == null ? super.getBackground() : rail;
  }

  private static final class PlaceButton extends JToggleButton {
    private static final long serialVersionUID = 1L;
    private final Place place;
    private final transient Icon icon;

    PlaceButton(Place place) {
      super(place.words());
      this.place = place;
      icon = Theme.icon(place.name().toLowerCase(Locale.ROOT), 24);
      setName("go " + place.name().toLowerCase(Locale.ROOT));
      setVerticalTextPosition(BOTTOM);
      setHorizontalTextPosition(CENTER);
      setContentAreaFilled(false);
      setBorder(javax.swing.BorderFactory.createEmptyBorder(4, 4, 4, 4));
      setToolTipText(place.words() + " (Ctrl+" + place.number() + ")");
      getAccessibleContext().setAccessibleName(place.words());
    }

    @Override
    public Color getForeground() {
      Color colour = Theme.colour(isSelected() ? "accent" : "quiet");
      return colour == null ? super.getForeground() : colour;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      int arc = UIScale.scale(12);
      if (isSelected() || getModel().isRollover()) {
        g.setColor(Theme.colour(isSelected() ? "railChosen" : "chosen"));
        g.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
      }
      if (isSelected()) {
        Marks.chosenWithinRing(g, getSize());
      }
      if (isFocusOwner()) {
        g.setColor(Theme.colour("accent"));
        g.setStroke(new java.awt.BasicStroke(UIScale.scale(2f)));
        g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
      }
      g.dispose();
      super.paintComponent(graphics);
    }

    /** Where the window is too low for all places, the words alone are shown. */
    @Override
    @SuppressWarnings("deprecation") // All ways of setting bounds lead through it.
    public void reshape(int x, int y, int width, int height) {
      super.reshape(x, y, width, height);
      setIcon(height < UIScale.scale(46) ? null : icon);
    }

    @Override
    public String toString() {
      return place.words();
    }
  }
}
