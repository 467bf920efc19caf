package hullalmanac.exchange.pdf;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The one font of paper, the same as on screen; each PDF carries what it uses of it. */
final class PaperFont {
  /** Its family, as style sheets and charts ask for it. */
  static final String FAMILY = "Roboto";

  private static final String PLACE = "/com/formdev/flatlaf/fonts/roboto/";
  private static final float CHART_SIZE = 9;

  /** Ways in which it is set. */
  enum Face {
    REGULAR("Roboto-Regular.ttf", 400),
    BOLD("Roboto-Bold.ttf", 700);

    private final String file;
    private final int weight;

    Face(String file, int weight) {
      this.file = file;
      this.weight = weight;
    }

    int weight() {
      return weight;
    }

    /** Its TrueType file. */
    InputStream open() {
      InputStream in = PaperFont.class.getResourceAsStream(PLACE + file);
      if (in == null) {
        throw new IllegalStateException("the font " + file + " is not among the libraries");
      }
      return in;
    }
  }

  private static final Font PLAIN = read(Face.REGULAR);

  static {
    // What draws a chart asks for a font by its family and measures it.
    GraphicsEnvironment known = GraphicsEnvironment.getLocalGraphicsEnvironment();
    known.registerFont(PLAIN);
    known.registerFont(read(Face.BOLD));
  }

  private PaperFont() {}

  private static Font read(Face face) {
    try (InputStream in = face.open()) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the font " + face + " cannot be read", e);
    }
  }

  /** For the small words of a chart. */
  static Font ofCharts() {
    return PLAIN.deriveFont(CHART_SIZE);
  }

  /** Whether it has a letter for a code point of Unicode. */
  static boolean has(int codePoint) {
    return PLAIN.canDisplay(codePoint);
  }
}
