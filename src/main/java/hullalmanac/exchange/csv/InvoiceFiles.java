package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.TaxTerms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Invoices, credits among them, and their lines. */
final class InvoiceFiles {
  private final Currency currency;
  private final TaxTerms usual;
  final CsvKind<Head> invoices = heads();
  final CsvKind<LineRow> lines = lines();

  InvoiceFiles(Currency currency, TaxTerms usual) {
    this.currency = currency;
    this.usual = usual;
  }

  /** An invoice without its lines. */
  record Head(
      Id<Invoice> id,
      String key,
      Id<Party> party,
      Optional<Id<Boat>> boat,
      Optional<Id<Invoice>> credits,
      Share discount,
      TaxTerms terms,
      Optional<Invoice.Issue> issue,
      String note) {
    static Head of(Invoice i) {
      return new Head(
          i.id(),
          i.key(),
          i.party(),
          i.boat(),
          i.credits(),
          i.discount(),
          i.terms(),
          i.issue(),
          i.note());
    }

    Invoice with(List<PriceLine> lines) {
      return new Invoice(id, key, party, boat, credits, lines, discount, terms, issue, note);
    }
  }

  record LineRow(Id<Invoice> invoice, PriceLine line) {}

  private static List<Invoice> inOrder(Almanac almanac) {
    return almanac.books().invoices().stream().sorted(Comparator.comparing(Invoice::key)).toList();
  }

  private CsvKind<Head> heads() {
    return new CsvKind<>(
        "invoices.csv",
        Kind.INVOICE,
        List.of(
            needText("id"),
            needText("party"),
            text("boat"),
            text("credits"),
            value("discount_percent"),
            value("discount"),
            value("tax_inclusive"),
            value("tax_at"),
            value("rounding"),
            text("series"),
            value("sequence"),
            text("number"),
            value("issued_on"),
            value("due_on"),
            text("issued_to"),
            text("note"))) {
      @Override
      List<Head> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream().map(Head::of).toList();
      }

      @Override
      void write(Head i, Out out) {
        out.put("id", i.key())
            .ref("party", Kind.PARTY, i.party())
            .ref("boat", Kind.BOAT, i.boat())
            .ref("credits", Kind.INVOICE, i.credits())
            .put("series", i.issue().map(Invoice.Issue::series))
            .put("sequence", i.issue().map(Invoice.Issue::sequence))
            .put("number", i.issue().map(Invoice.Issue::number))
            .put("issued_on", i.issue().map(Invoice.Issue::day))
            .put("due_on", i.issue().map(Invoice.Issue::due))
            .put("issued_to", i.issue().map(Invoice.Issue::to))
            .put("note", i.note());
        MoneyFiles.put(out, "discount", i.discount());
        MoneyFiles.put(out, i.terms());
      }

      @Override
      Optional<Head> read(In in) {
        return head(in);
      }
    };
  }

  private Optional<Head> head(In in) {
    Id<Invoice> id = in.ref(Kind.INVOICE, "id");
    Id<Party> party = in.ref(Kind.PARTY, "party");
    Optional<Id<Boat>> boat = in.maybeRef(Kind.BOAT, "boat");
    Optional<Id<Invoice>> credits = in.maybeRef(Kind.INVOICE, "credits");
    Optional<Share> discount = MoneyFiles.share(in, "discount", currency);
    TaxTerms terms = MoneyFiles.terms(in, usual);
    Optional<Invoice.Issue> issue = issue(in);
    return discount.flatMap(
        d ->
            in.made(
                () ->
                    new Head(
                        id, in.key("id"), party, boat, credits, d, terms, issue, in.text("note"))));
  }

  private static Optional<Invoice.Issue> issue(In in) {
    String number = in.text("number");
    Optional<Integer> sequence = in.maybeWhole("sequence");
    Optional<LocalDate> day = in.maybeDay("issued_on");
    Optional<LocalDate> due = in.maybeDay("due_on");
    boolean some = sequence.isPresent() || day.isPresent() || due.isPresent();
    if (number.isEmpty() && some) {
      in.problem("number", "it is issued, but has no number", "Write its number, or none of these");
    }
    if (!number.isEmpty() && (sequence.isEmpty() || day.isEmpty())) {
      in.problem(
          "number",
          "an issued invoice needs its place in the series and its day",
          "Write sequence and issued_on too");
      return Optional.empty();
    }
    if (number.isEmpty()) {
      return Optional.empty();
    }
    Optional<Invoice.Issue> issue =
        in.made(
            () ->
                new Invoice.Issue(
                    in.text("series"),
                    sequence.orElseThrow(),
                    number,
                    day.orElseThrow(),
                    due.or(() -> day).orElseThrow(),
                    in.text("issued_to")));
    issue
        .filter(i -> !i.isCounted())
        .ifPresent(
            i ->
                in.problem(
                    "series",
                    "the number "
                        + number
                        + " is not \""
                        + i.series()
                        + "\" followed by "
                        + i.sequence(),
                    "Write how the number begins as its series, and the digits after it as its"
                        + " sequence"));
    return issue;
  }

  private CsvKind<LineRow> lines() {
    List<Column> columns = new ArrayList<>(List.of(needText("invoice")));
    columns.addAll(LineCells.COLUMNS);
    return new CsvKind<>("invoice-lines.csv", Kind.INVOICE, columns) {
      @Override
      List<LineRow> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream()
            .flatMap(i -> i.lines().stream().map(l -> new LineRow(i.id(), l)))
            .toList();
      }

      @Override
      void write(LineRow row, Out out) {
        out.ref("invoice", Kind.INVOICE, row.invoice());
        LineCells.write(row.line(), out);
      }

      @Override
      Optional<LineRow> read(In in) {
        Id<Invoice> invoice = in.ref(Kind.INVOICE, "invoice");
        return LineCells.read(in, currency).map(l -> new LineRow(invoice, l));
      }
    };
  }
}
