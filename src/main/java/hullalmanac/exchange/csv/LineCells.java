package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** The cells of one line of an estimate or an invoice. */
final class LineCells {
  static final List<Column> COLUMNS =
      List.of(
          text("service"),
          needText("words"),
          value("quantity"),
          value("unit"),
          need("price"),
          text("taxes"),
          text("visit"));

  private LineCells() {}

  static void write(PriceLine line, Out out) {
    out.put("service", line.service())
        .put("words", line.words())
        .put("quantity", line.quantity())
        .put("unit", line.unit())
        .put("price", line.price())
        .put("taxes", Tax.text(line.taxes()))
        .ref("visit", Kind.VISIT, line.visit());
  }

  static Optional<PriceLine> read(In in, Currency currency) {
    BigDecimal quantity =
        in.maybe("quantity", in::decimalOf, "Write it as 2.5").orElse(BigDecimal.ONE);
    PriceUnit unit = in.coded(PriceUnit.class, "unit", PriceUnit.EACH);
    Money price = MoneyFiles.needed(in, "price", currency);
    List<Tax> taxes = BooksFiles.taxes(in);
    Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
    return in.made(
        () ->
            new PriceLine(
                in.text("service"), in.text("words"), quantity, unit, price, taxes, visit));
  }
}
