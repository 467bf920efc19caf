package hullalmanac.ui.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.extras.FlatSVGIcon;
import com.formdev.flatlaf.fonts.roboto.FlatRobotoFont;
import com.formdev.flatlaf.util.HiDPIUtils;
import com.formdev.flatlaf.util.UIScale;
import hullalmanac.chart.ChartColours;
import hullalmanac.core.record.With;
import hullalmanac.present.Look;
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
  /** Okabe and Ito's palette without yellow; lighter on dark ground. */
  private static final List<Color> HUES_DARK =
      List.of(
          new Color(0x56B4E9),
          new Color(0x2FC79A),
          new Color(0xF08A4B),
          new Color(0xE09BC4),
          new Color(0xE69F00),
          new Color(0x8CCBF2));

  private static final int WET_TARGET = 48;

  private static Look look = Look.USUAL;
  private static boolean systemDark;

  private Theme() {}

  /** Sets the look before any component is made. */
  public static void start(boolean startDark, float zoom) {
    start(new Look(startDark ? Look.Tint.DARK : Look.Tint.LIGHT, zoom, false, false));
  }

  /** Sets the look before any component is made. */
  public static void start(Look first) {
    FlatRobotoFont.install();
    FlatLaf.setPreferredFontFamily(FlatRobotoFont.FAMILY);
    FlatLaf.registerCustomDefaultsSource("hullalmanac.ui.theme");
    float[] zooms = new float[Look.ZOOMS.size()];
    for (int i = 0; i < zooms.length; i++) {
      zooms[i] = Look.ZOOMS.get(i);
    }
    UIScale.setSupportedZoomFactors(zooms);
    HiDPIUtils.installHiDPIRepaintManager();
    set(first);
  }

  private static void set(Look now) {
    look = now;
    UIScale.setZoomFactor(now.zoom());
    enlarge();
    UIManager.put("ScrollPane.smoothScrolling", !now.calm());
    if (now.tint() == Look.Tint.HIGH_CONTRAST) {
      FlatLaf.setup(new HighContrastLaf());
    } else if (isDark()) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
  }

  /** How it looks now. */
  public static Look look() {
    return With.component(look, "zoom", UIScale.getZoomFactor());
  }

  /** Changes the look while the window is open. */
  public static void become(Look now) {
    set(now);
    FlatLaf.updateUI();
  }

  /** Says whether the system is dark, for those who want it as the system. */
  public static void systemIs(boolean nowDark) {
    boolean changes = look.tint() == Look.Tint.SYSTEM && nowDark != systemDark;
    systemDark = nowDark;
    if (changes) {
      become(look());
    }
  }

  /** Changes between light and dark. */
  public static void toggleDark() {
    become(With.component(look(), "tint", isDark() ? Look.Tint.LIGHT : Look.Tint.DARK));
  }

  /** Whether it is dark. */
  public static boolean isDark() {
    return switch (look.tint()) {
      case LIGHT -> false;
      case DARK, HIGH_CONTRAST -> true;
      case SYSTEM -> systemDark;
    };
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
    return look.wetHands();
  }

  /** Makes all that one touches at least 48 px high, or as it was. */
  public static void wetHands(boolean now) {
    become(With.component(look(), "wetHands", now));
  }

  /** Heights follow from what lies around a text; nothing put here means the theme's own. */
  private static void enlarge() {
    boolean wet = look.wetHands();
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
        isDark() ? HUES_DARK : ChartColours.HUES_ON_WHITE,
        font.deriveFont(font.getSize2D() * 0.92f));
  }
}
