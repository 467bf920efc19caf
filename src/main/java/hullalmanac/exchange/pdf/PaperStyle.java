package hullalmanac.exchange.pdf;

import hullalmanac.core.record.Business;

/** How paper looks: one style sheet for all that is printed, readable without colour. */
final class PaperStyle {
  private static final String SHEET =
      """
      @page { size: %s; margin: 18mm 20mm 20mm 20mm;
        @bottom-left { content: "%s"; font-family: Roboto; font-size: 8pt; color: #444;
          vertical-align: top; padding-top: 4mm; width: 75%%; }
        @bottom-right { content: "page " counter(page) " of " counter(pages);
          font-family: Roboto; font-size: 8pt; color: #444; vertical-align: top;
          padding-top: 4mm; } }
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

  private PaperStyle() {}

  /**
   * The style sheet of a size of paper.
   *
   * @param foot what stands below every page, beside its number
   */
  static String of(Business.Paper size, String foot) {
    String page =
        switch (size) {
          case A4 -> "A4";
          case LETTER -> "8.5in 11in";
        };
    return SHEET.formatted(page, quoted(foot));
  }

  private static String quoted(String text) {
    return text.replaceAll("\\s+", " ").replace("\\", "\\\\").replace("\"", "\\\"");
  }
}
