package hullalmanac.ui.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.extras.FlatSVGIcon;
import com.formdev.flatlaf.fonts.roboto.FlatRobotoFont;
import com.formdev.flatlaf.util.HiDPIUtils;
import com.formdev.flatlaf.util.UIScale;
import hullalmanac.chart.ChartColours;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import javax.swing.Icon;
import javax.swing.UIManager;
import javax.swing.plaf.InsetsUIResource;

/**
 * Light or dark, and how large. Colours are in the properties files beside the icons, none in code
 * but the charts' hues.
 */
public final class Theme {
  private static final float[] ZOOMS = {0.8f, 0.9f, 1f, 1.1f, 1.25f, 1.5f, 1.75f, 2f};

  /**
   * Okabe and Ito's palette without yellow, which is too pale for lines; lighter on dark ground.
   */
  private static final List<Color> HUES_LIGHT =
      List.of(
          new Color(0x0072B2),
          new Color(0x00805E),
          new Color(0xB85000),
          new Color(0xA8487F),
          new Color(0x8A6100),
          new Color(0x2A7FAF));

  private static final List<Color> HUES_DARK =
      List.of(
          new Color(0x56B4E9),
          new Color(0x2FC79A),
          new Color(0xF08A4B),
          new Color(0xE09BC4),
          new Color(0xE69F00),
          new Color(0x8CCBF2));

  private static final int WET_TARGET = 48;

  private static boolean dark;
  private static boolean wet;

  private Theme() {}

  /** Sets the look before any component is made. */
  public static void start(boolean startDark, float zoom) {
    FlatRobotoFont.install();
    FlatLaf.setPreferredFontFamily(FlatRobotoFont.FAMILY);
    FlatLaf.registerCustomDefaultsSource("hullalmanac.ui.theme");
    UIScale.setSupportedZoomFactors(ZOOMS);
    UIScale.setZoomFactor(zoom);
    HiDPIUtils.installHiDPIRepaintManager();
    enlarge();
    set(startDark);
  }

  private static void set(boolean toDark) {
    dark = toDark;
    if (dark) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
  }

  /** Changes to light or dark while the window is open. */
  public static void change(boolean toDark) {
    set(toDark);
    FlatLaf.updateUI();
  }

  /** Whether it is dark. */
  public static boolean isDark() {
    return dark;
  }

  public static float zoom() {
    return UIScale.getZoomFactor();
  }

  /** Makes everything larger, smaller (negative) or as it was (0). */
  public static void zoom(int direction) {
    boolean changed =
        direction > 0 ? UIScale.zoomIn() : direction < 0 ? UIScale.zoomOut() : UIScale.zoomReset();
    if (changed) {
      FlatLaf.updateUI();
    }
  }

  /** Whether what one touches is made large for wet hands. */
  public static boolean wetHands() {
    return wet;
  }

  /** Makes all that one touches at least 48 px high, or as it was. */
  public static void wetHands(boolean now) {
    wet = now;
    enlarge();
    FlatLaf.updateUI();
  }

  /** Heights follow from what lies around a text; nothing put here means the theme's own. */
  private static void enlarge() {
    UIManager.put("Table.rowHeight", wet ? WET_TARGET : null);
    UIManager.put("Button.minimumHeight", wet ? WET_TARGET : null);
    UIManager.put("TextField.margin", wet ? new InsetsUIResource(14, 10, 14, 10) : null);
    UIManager.put("ComboBox.padding", wet ? new InsetsUIResource(14, 8, 14, 8) : null);
    for (String item : List.of("MenuItem", "Menu", "CheckBoxMenuItem")) {
      UIManager.put(item + ".margin", wet ? new InsetsUIResource(16, 8, 16, 8) : null);
    }
    UIManager.put("Button.margin", wet ? new InsetsUIResource(14, 16, 14, 16) : null);
  }

  /** A colour of the program's own, by its name in the properties files. */
  public static Color colour(String name) {
    return UIManager.getColor("Almanac." + name);
  }

  /** The font for a page's name, for a heading, or for anything else: three sizes and no more. */
  public static Font font(Size size) {
    Font base = UIManager.getFont("defaultFont");
    return switch (size) {
      case TITLE -> base.deriveFont(Font.BOLD, base.getSize2D() * 1.6f);
      case HEADING -> base.deriveFont(Font.BOLD, base.getSize2D() * 1.15f);
      case BODY -> base;
    };
  }

  /** Sizes of text. */
  public enum Size {
    TITLE,
    HEADING,
    BODY
  }

  /** An icon drawn for this program, in the colour of text. */
  public static Icon icon(String name, int size) {
    FlatSVGIcon icon = new FlatSVGIcon("hullalmanac/ui/icons/" + name + ".svg", size, size);
    icon.setColorFilter(
        new FlatSVGIcon.ColorFilter(
            (component, colour) -> component == null ? colour : component.getForeground()));
    return icon;
  }

  /** What charts are drawn with. */
  public static ChartColours chartColours() {
    Font font = font(Size.BODY);
    return new ChartColours(
        UIManager.getColor("Panel.background"),
        UIManager.getColor("Label.foreground"),
        colour("quiet"),
        colour("cardLine"),
        colour("accent"),
        colour("shade"),
        dark ? HUES_DARK : HUES_LIGHT,
        font.deriveFont(font.getSize2D() * 0.92f));
  }
}
