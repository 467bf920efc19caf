package hullalmanac.ui.widget;

import hullalmanac.ui.theme.Theme;
import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JTextArea;

/** Texts in the program's three sizes, which follow a change of theme or zoom. */
public final class Labels {
  private Labels() {}

  /** A page's name. */
  public static JLabel title(String text) {
    return new Sized(text, Theme.Size.TITLE, false, false);
  }

  /** A heading. */
  public static JLabel heading(String text) {
    return new Sized(text, Theme.Size.HEADING, false, false);
  }

  /** Plain text. */
  public static JLabel plain(String text) {
    return new Sized(text, Theme.Size.BODY, false, false);
  }

  /** Plain text, bold. */
  public static JLabel strong(String text) {
    return new Sized(text, Theme.Size.BODY, true, false);
  }

  /** Text that stands back. */
  public static JLabel quiet(String text) {
    return new Sized(text, Theme.Size.BODY, false, true);
  }

  /** Large text that breaks into lines, as {@link #wrapped}. */
  public static JTextArea large(String text) {
    return new Wrapped(text, Theme.Size.TITLE, false, false);
  }

  /** Bold text that breaks into lines, as {@link #wrapped}. */
  public static JTextArea wrappedStrong(String text) {
    return new Wrapped(text, Theme.Size.BODY, true, false);
  }

  /** Text that breaks into lines; it cannot be edited and is no stop for Tab. */
  public static JTextArea wrapped(String text, boolean quiet) {
    return new Wrapped(text, Theme.Size.BODY, false, quiet);
  }

  private static final class Sized extends JLabel {
    private static final long serialVersionUID = 1L;
    private final Theme.Size size;
    private final boolean strong;
    private final boolean quiet;

    Sized(String text, Theme.Size size, boolean strong, boolean quiet) {
      super(text);
      this.size = size;
      this.strong = strong;
      this.quiet = quiet;
      style();
    }

    @Override
    public void updateUI() {
      super.updateUI();
      if (size != null) {
        style();
      }
    }

    private void style() {
      Font font = Theme.font(size);
      setFont(strong ? font.deriveFont(Font.BOLD) : font);
      setForeground(
          quiet ? Theme.colour("quiet") : javax.swing.UIManager.getColor("Label.foreground"));
    }
  }

  private static final class Wrapped extends JTextArea {
    private static final long serialVersionUID = 1L;
    private final Theme.Size size;
    private final boolean strong;
    private final boolean quiet;

    Wrapped(String text, Theme.Size size, boolean strong, boolean quiet) {
      super(text);
      this.size = size;
      this.strong = strong;
      this.quiet = quiet;
      setLineWrap(true);
      // Setting a text must not scroll the page to it.
      ((javax.swing.text.DefaultCaret) getCaret())
          .setUpdatePolicy(javax.swing.text.DefaultCaret.NEVER_UPDATE);
      setWrapStyleWord(true);
      setEditable(false);
      setFocusable(false);
      setOpaque(false);
      setBorder(null);
      style();
    }

    @Override
    public void updateUI() {
      super.updateUI();
      ((javax.swing.text.DefaultCaret) getCaret())
          .setUpdatePolicy(javax.swing.text.DefaultCaret.NEVER_UPDATE);
      setOpaque(false);
      setBorder(null);
      if (size != null) {
        style();
      }
    }

    private void style() {
      Font font = Theme.font(size);
      setFont(strong ? font.deriveFont(Font.BOLD) : font);
      setForeground(
          quiet ? Theme.colour("quiet") : javax.swing.UIManager.getColor("Label.foreground"));
    }
  }
}
