package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hullalmanac.core.takings.Ledger;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Currency;
import java.util.List;
import java.util.stream.Collectors;

/** Writes the entries for an accountant as one list, as docs/formats/accounts.md describes it. */
public final class LedgerCsv {
  static final List<Column> COLUMNS =
      List.of(
          value("day"),
          value("what"),
          text("number"),
          text("party"),
          text("about"),
          value("currency"),
          value("net"),
          value("tax"),
          value("total"),
          value("money_in"),
          value("money_out"),
          text("taxes"),
          value("km"),
          text("refers_to"));

  private LedgerCsv() {}

  /** The list as text: a header and a line an entry, each ending with CR LF. */
  public static String of(List<Ledger.Entry> entries, Currency currency) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      writer.writeRecord(COLUMNS.stream().map(Column::name).toList());
      for (Ledger.Entry entry : entries) {
        writer.writeRecord(line(entry, currency));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> line(Ledger.Entry e, Currency currency) {
    return new Out(new Keys())
        .put("day", e.day())
        .put("what", e.what().words())
        .put("number", e.number())
        .put("party", e.party())
        .put("about", e.about())
        .put("currency", currency.getCurrencyCode())
        .put("net", e.net())
        .put("tax", e.tax())
        .put("total", e.total())
        .put("money_in", e.in())
        .put("money_out", e.out())
        .put("taxes", e.taxes().stream().map(LedgerCsv::tax).collect(Collectors.joining("|")))
        .put("km", e.km())
        .put("refers_to", String.join("|", e.refers()))
        .line(COLUMNS);
  }

  private static String tax(Ledger.TaxOf t) {
    return t.tax().text()
        + ":"
        + t.base().amount().toPlainString()
        + ":"
        + t.amount().amount().toPlainString();
  }
}
