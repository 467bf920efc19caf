package hullalmanac.present.card;

import java.util.List;
import java.util.stream.Collectors;

/** A card on paper: each step in full, what to see to, what to bring, what always comes first. */
final class CardPaper {
  private CardPaper() {}

  /**
   * As a page of HTML without colours or pictures.
   *
   * @param all the card once with each of its steps shown; once where it has none
   */
  static String html(List<CardState> all) {
    CardState card = all.get(0);
    StringBuilder page = new StringBuilder("<html><body>");
    page.append("<h1>").append(plain(card.title())).append("</h1>");
    paragraph(page, card.facts());
    paragraph(page, card.backSaid());
    paragraph(page, card.runoff());
    all.forEach(c -> c.now().ifPresent(step -> step(page, step)));
    list(page, "See to", card.checks().stream().map(CardState.Check::words).toList());
    list(page, "Bring", card.tools());
    page.append("<p><b>").append(plain(card.standing())).append("</b></p>");
    return page.append("</body></html>").toString();
  }

  private static void step(StringBuilder page, CardState.Now step) {
    page.append("<h2>").append(plain(step.heading())).append("</h2>");
    step.stops()
        .forEach(s -> page.append("<p><b>").append(plain("Read: " + s.text())).append("</b></p>"));
    paragraph(
        page,
        step.facts().stream()
            .map(f -> f.label() + ": " + f.text())
            .collect(Collectors.joining(" \u00B7 ")));
    step.mix().forEach(m -> paragraph(page, m));
    paragraph(page, step.dwell());
    step.cautions().forEach(c -> paragraph(page, c));
  }

  private static void paragraph(StringBuilder page, String text) {
    if (!text.isBlank()) {
      page.append("<p>").append(plain(text)).append("</p>");
    }
  }

  private static void list(StringBuilder page, String heading, List<String> texts) {
    if (!texts.isEmpty()) {
      page.append("<h2>").append(heading).append("</h2><ul>");
      texts.forEach(t -> page.append("<li>").append(plain(t)).append("</li>"));
      page.append("</ul>");
    }
  }

  private static String plain(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
