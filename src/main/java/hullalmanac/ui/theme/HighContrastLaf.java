package hullalmanac.ui.theme;

import com.formdev.flatlaf.FlatDarkLaf;

/** White and yellow on black, for eyes and sun that need it; its colours are in its properties. */
final class HighContrastLaf extends FlatDarkLaf {
  private static final long serialVersionUID = 1L;

  @Override
  public String getName() {
    return "High contrast";
  }
}
