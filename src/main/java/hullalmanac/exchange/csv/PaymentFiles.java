package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Payments and what became of them. */
final class PaymentFiles {
  private PaymentFiles() {}

  /** What became of a part of a payment. */
  record UseRow(Id<Payment> payment, Payment.Use use) {}

  private static List<Payment> inOrder(Almanac almanac) {
    return almanac.books().payments().stream().sorted(Comparator.comparing(Payment::key)).toList();
  }

  /** Payments, read without what became of them. */
  static CsvKind<Payment> payments(Currency currency) {
    return new CsvKind<>(
        "payments.csv",
        Kind.PAYMENT,
        List.of(
            needText("id"),
            needText("party"),
            need("day"),
            need("amount"),
            value("how"),
            text("estimate"),
            text("note"))) {
      @Override
      List<Payment> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac);
      }

      @Override
      void write(Payment p, Out out) {
        out.put("id", p.key())
            .ref("party", Kind.PARTY, p.party())
            .put("day", p.day())
            .put("amount", p.amount())
            .put("how", p.how())
            .ref("estimate", Kind.ESTIMATE, p.estimate())
            .put("note", p.note());
      }

      @Override
      Optional<Payment> read(In in) {
        Id<Payment> id = in.ref(Kind.PAYMENT, "id");
        Id<Party> party = in.ref(Kind.PARTY, "party");
        LocalDate day = in.day("day");
        Money amount = MoneyFiles.needed(in, "amount", currency);
        Payment.How how = in.coded(Payment.How.class, "how", Payment.How.OTHER);
        Optional<Id<Estimate>> estimate = in.maybeRef(Kind.ESTIMATE, "estimate");
        return in.made(
            () ->
                new Payment(
                    id,
                    in.key("id"),
                    party,
                    day,
                    amount,
                    how,
                    estimate,
                    List.of(),
                    in.text("note")));
      }
    };
  }

  static CsvKind<UseRow> uses(Currency currency) {
    return new CsvKind<>(
        "payment-uses.csv",
        Kind.PAYMENT,
        List.of(
            needText("payment"), value("became"), text("invoice"), need("amount"), need("day"))) {
      @Override
      List<UseRow> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream()
            .flatMap(p -> p.uses().stream().map(u -> new UseRow(p.id(), u)))
            .toList();
      }

      @Override
      void write(UseRow row, Out out) {
        out.ref("payment", Kind.PAYMENT, row.payment())
            .put("became", row.use().became())
            .ref("invoice", Kind.INVOICE, row.use().invoice())
            .put("amount", row.use().amount())
            .put("day", row.use().day());
      }

      @Override
      Optional<UseRow> read(In in) {
        Id<Payment> payment = in.ref(Kind.PAYMENT, "payment");
        Payment.Became became = in.coded(Payment.Became.class, "became", Payment.Became.PAID);
        Optional<Id<Invoice>> invoice = in.maybeRef(Kind.INVOICE, "invoice");
        Money amount = MoneyFiles.needed(in, "amount", currency);
        LocalDate day = in.day("day");
        return in.made(() -> new UseRow(payment, new Payment.Use(became, invoice, amount, day)));
      }
    };
  }
}
