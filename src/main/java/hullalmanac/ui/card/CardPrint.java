package hullalmanac.ui.card;

import hullalmanac.present.card.CardPresenter;
import java.awt.Color;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.text.MessageFormat;
import javax.swing.JEditorPane;

/** Prints the card that is shown by the system's own dialog, black on white. */
final class CardPrint {
  private CardPrint() {}

  static void print(CardPresenter presenter) {
    presenter
        .paper()
        .ifPresent(
            html -> {
              try {
                page(html).print(null, new MessageFormat("{0}"), true, null, null, true);
              } catch (PrinterException e) {
                presenter.say("The card was not printed: " + e.getLocalizedMessage());
              }
            });
  }

  /** What is printed, page after page. */
  static Printable printable(String html) {
    return page(html).getPrintable(null, new MessageFormat("{0}"));
  }

  private static JEditorPane page(String html) {
    JEditorPane page = new JEditorPane("text/html", html);
    page.putClientProperty(JEditorPane.W3C_LENGTH_UNITS, true);
    page.setForeground(Color.BLACK);
    page.setBackground(Color.WHITE);
    return page;
  }
}
