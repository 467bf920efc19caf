package hullalmanac.ui.help;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.ui.theme.Theme;
import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.UIManager;
import javax.swing.text.html.StyleSheet;

/** How a page of the guide looks, in the colours and sizes of the theme. */
final class PageStyle {
  private static final String FIXED = Font.MONOSPACED;

  private PageStyle() {}

  static StyleSheet of(StyleSheet usual) {
    StyleSheet sheet = new StyleSheet();
    sheet.addStyleSheet(usual);
    Font body = Theme.font(Theme.Size.BODY);
    String text = hex(UIManager.getColor("Label.foreground"));
    String line = hex(Theme.colour("cardLine"));
    String quiet = hex(Theme.colour("quiet"));
    int gap = UIScale.scale(8);
    int cell = UIScale.scale(5);
    rule(
        sheet,
        "body { font-family: %s; font-size: %spt; color: %s; margin: 0 }",
        body.getFamily(),
        size(body),
        text);
    rule(
        sheet,
        "h1 { font-size: %spt; font-weight: bold; margin: 0 0 %d 0 }",
        size(Theme.font(Theme.Size.TITLE)),
        gap);
    for (String heading : new String[] {"h2", "h3"}) {
      rule(
          sheet,
          heading + " { font-size: %spt; font-weight: bold; margin: %d 0 %d 0 }",
          size(Theme.font(Theme.Size.HEADING)),
          2 * gap,
          gap / 2);
    }
    rule(sheet, "p { margin: 0 0 %d 0 }", gap);
    rule(sheet, "ul, ol { margin: 0 0 %d %d }", gap, 3 * gap);
    rule(sheet, "li { margin: 0 0 %d 0 }", gap / 2);
    rule(sheet, "a { color: %s; text-decoration: underline }", hex(Theme.colour("accent")));
    rule(sheet, "code { font-family: %s; font-size: %spt; color: %s }", FIXED, size(body), text);
    rule(
        sheet,
        "pre { font-family: %s; font-size: %spt; color: %s; background-color: %s; margin: 0 0 %d 0; padding: %d }",
        FIXED,
        size(body),
        text,
        hex(Theme.colour("shade")),
        gap,
        gap);
    rule(sheet, "table { margin: 0 0 %d 0; border-width: 0 }", gap);
    rule(
        sheet,
        "th { font-weight: normal; color: %s; text-align: left; padding: %d %d %d 0;"
            + " border-style: solid; border-color: %s; border-width: 0 0 1 0 }",
        quiet,
        cell,
        3 * cell,
        cell,
        line);
    rule(
        sheet,
        "td { text-align: left; vertical-align: top; padding: %d %d %d 0;"
            + " border-style: solid; border-color: %s; border-width: 0 0 1 0 }",
        cell,
        3 * cell,
        cell,
        line);
    return sheet;
  }

  private static void rule(StyleSheet sheet, String rule, Object... values) {
    sheet.addRule(String.format(Locale.ROOT, rule, values));
  }

  private static String size(Font font) {
    return String.valueOf(Math.round(font.getSize2D()));
  }

  private static String hex(Color colour) {
    return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff);
  }
}
