package hullalmanac.exchange.pdf;

import hullalmanac.core.paper.Paper;

/** How paper looks: one style sheet for all that is printed, readable without colour. */
final class PaperStyle {
  private static final String SHEET =
      """
      @page { size: %1$s; margin: %2$s;
        @bottom-left { content: "%3$s"; font-family: Roboto; font-size: %4$s; color: #444;
          vertical-align: top; padding-top: %5$s; width: 75%%; }
        @bottom-right { content: "page " counter(page) " of " counter(pages);
          font-family: Roboto; font-size: %4$s; color: #444; vertical-align: top;
          padding-top: %5$s; } }
      body { font-family: Roboto; font-size: 9.5pt; line-height: 1.4; color: #111; margin: 0; }
      p { margin: 0 0 2mm 0; }
      .sender { font-size: 14pt; font-weight: bold; color: #0F5C5C; margin: 0; }
      .mark { float: right; margin: 0 0 2.5mm 8mm; }
      .address { font-size: 8pt; color: #444; margin: 0; }
      .rule { clear: both; border-top: 0.8pt solid #0F5C5C; margin: 2.5mm 0 6mm 0; }
      .recipient { margin: 4mm 0 10mm 0; font-size: 10pt; }
      h1 { font-size: 19pt; line-height: 1.2; margin: 0 0 1mm 0; color: #111; }
      .about { font-size: 11pt; color: #333; margin: 0 0 5mm 0; }
      h2 { font-size: 12.5pt; margin: 7mm 0 2mm 0; color: #0F5C5C; page-break-after: avoid;
        -fs-page-break-min-height: 35mm; }
      h3 { font-size: 10pt; margin: 4mm 0 1mm 0; page-break-after: avoid; }
      .lead { font-size: 10.5pt; font-weight: bold; border: 1pt solid #111; padding: 2mm 3mm;
        margin: 0 0 5mm 0; }
      .note { font-size: 8.5pt; color: #444; margin: 2mm 0 2mm 0; }
      ul { margin: 0 0 2mm 0; padding: 0 0 0 4.5mm; }
      li { margin: 0 0 1mm 0; }
      ul.ticks { list-style-type: none; padding: 0; }
      ul.ticks li { margin: 0 0 2mm 0; }
      .box { display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.7pt solid #111;
        margin: 0 2.5mm -0.6mm 0; }
      .cautions { border-left: 2.5pt solid #111; padding: 0.5mm 0 0.5mm 3.5mm; margin: 3mm 0;
        page-break-inside: avoid; }
      .cautions .mind { font-weight: bold; margin: 0 0 1mm 0; }
      table { border-collapse: collapse; width: 100%%; margin: 0 0 4mm 0;
        -fs-table-paginate: paginate; }
      th { text-align: left; vertical-align: top; font-weight: bold; }
      td { vertical-align: top; }
      tr { page-break-inside: avoid; }
      table.whole { page-break-inside: avoid; }
      table.facts { width: auto; }
      table.facts th { font-weight: normal; color: #444; padding: 0.4mm 6mm 0.4mm 0; }
      table.facts td { padding: 0.4mm 0; }
      table.rows th { font-size: 8.5pt; color: #333; border-bottom: 0.8pt solid #111;
        padding: 1mm 3mm 1mm 0; vertical-align: bottom; }
      table.rows td { border-bottom: 0.4pt solid #BBB; padding: 1.2mm 3mm 1.2mm 0; }
      table.rows th.number, table.rows td.number { text-align: right; padding-left: 2mm;
        padding-right: 0; }
      table.rows tr.first td { border-top: 0.8pt solid #111; }
      table.rows tr.sum td { border-bottom: none; }
      table.rows tr.total td { border-bottom: none; font-weight: bold; font-size: 10.5pt; }
      .drawing { margin: 2mm 0 2mm 0; page-break-inside: avoid; }
      .signed { width: 60mm; margin: 4mm 0 2mm 0; page-break-inside: avoid; }
      .signed .caption { border-top: 0.6pt solid #666; padding-top: 1mm; }
      .photos { margin: 2mm 0 3mm 0; page-break-inside: avoid; }
      .photo { display: inline-block; width: 84mm; vertical-align: top; }
      .caption { font-size: 8.5pt; color: #333; margin: 0.5mm 0 1mm 0; }
      .gone { border: 0.6pt dashed #666; padding: 8mm 3mm; width: 74mm; color: #333; }
      .kept { page-break-inside: avoid; }
      .blanks { margin: 0 0 5mm 0; page-break-inside: avoid; }
      .blank { border-bottom: 0.6pt solid #666; margin: 6mm 0 0 0; font-size: 8.5pt; color: #444; }
      """;

  /** What is smaller on a card. */
  private static final String CARD =
      """
      body { font-size: 8.5pt; line-height: 1.3; }
      p { margin: 0 0 1mm 0; }
      .sender { font-size: 11pt; }
      .address { font-size: 7pt; }
      .mark { margin: 0 0 1mm 5mm; }
      .rule { margin: 1mm 0 2.5mm 0; }
      .recipient { margin: 2mm 0 3mm 0; font-size: 9pt; }
      h1 { font-size: 13pt; margin: 0; }
      .about { font-size: 9pt; margin: 0 0 1.5mm 0; }
      .note { font-size: 7.5pt; margin: 1mm 0; }
      table { margin: 0 0 1mm 0; }
      table.facts th { color: #111; font-weight: bold; padding: 0.2mm 5mm 0.2mm 0; }
      table.facts td { padding: 0.2mm 0; }
      .kept { margin: 2.5mm 0 0 0; }
      """;

  private PaperStyle() {}

  /**
   * The style sheet of a paper, by its size and form.
   *
   * @param foot what stands below every page, beside its number
   */
  static String of(Paper paper, String foot) {
    boolean card = paper.form() == Paper.Form.CARD;
    String page =
        switch (paper.size()) {
          case A4 -> card ? "148mm 105mm" : "A4";
          case LETTER -> card ? "6in 4in" : "8.5in 11in";
        };
    return card
        ? SHEET.formatted(page, "7mm 9mm 9mm 9mm", quoted(foot), "6.5pt", "1.5mm") + CARD
        : SHEET.formatted(page, "18mm 20mm 20mm 20mm", quoted(foot), "8pt", "4mm");
  }

  private static String quoted(String text) {
    return text.replaceAll("\\s+", " ").replace("\\", "\\\\").replace("\"", "\\\"");
  }
}
