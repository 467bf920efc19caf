package hullalmanac.store;

import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tax;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Estimates and invoices with their lines. */
final class BillStore {
  private static final Columns ESTIMATE =
      Columns.of(
          "estimate",
          """
          id
          key
          boat_id
          party_id
          day
          valid_until
          deposit_percent
          deposit_minor
          tax_inclusive
          tax_at
          rounding
          state
          answered_on
          answer_option
          answer_note
          signed_by
          signature
          visit_id
          note
          """);

  private static final Columns EXPECTATION =
      Columns.of(
          "estimate_expectation",
          """
          estimate_id
          place
          result
          words
          """);

  private static final Columns OPTION =
      Columns.of(
          "estimate_option",
          """
          estimate_id
          place
          name
          steps
          discount_percent
          discount_minor
          note
          """);

  private static final Columns OPTION_SURFACE =
      Columns.of(
          "estimate_surface",
          """
          estimate_id
          place
          option_place
          surface_id
          """);

  private static final Columns ESTIMATE_LINE =
      Columns.of(
          "estimate_line",
          """
          estimate_id
          place
          option_place
          service
          words
          quantity
          unit
          price_minor
          taxes
          visit_id
          """);

  private static final Columns INVOICE =
      Columns.of(
          "invoice",
          """
          id
          key
          party_id
          boat_id
          credits_id
          discount_percent
          discount_minor
          tax_inclusive
          tax_at
          rounding
          series
          sequence
          number
          issued_on
          due_on
          issued_to
          note
          """);

  private static final Columns INVOICE_LINE =
      Columns.of(
          "invoice_line",
          """
          invoice_id
          place
          service
          words
          quantity
          unit
          price_minor
          taxes
          visit_id
          """);

  private final Tx tx;

  BillStore(Tx tx) {
    this.tx = tx;
  }

  /**
   * An item of an option of an estimate.
   *
   * @param option place of the option, from 1
   */
  private record OfOption<T>(int option, T item) {}

  private static <T> List<T> of(List<OfOption<T>> all, int option) {
    return all.stream().filter(i -> i.option() == option).map(OfOption::item).toList();
  }

  private static PriceLine line(Cells row, Currency currency) throws SQLException {
    return new PriceLine(
        row.text("service"),
        row.text("words"),
        row.decimal("quantity"),
        row.coded(PriceUnit.class, "unit"),
        row.money("price_minor", currency),
        Tax.parse(row.text("taxes")),
        row.maybeId("visit_id"));
  }

  private static void set(Binder to, PriceLine line) throws SQLException {
    to.set("service", line.service())
        .set("words", line.words())
        .set("quantity", line.quantity())
        .set("unit", line.unit())
        .set("price_minor", line.price())
        .set("taxes", Tax.text(line.taxes()))
        .set("visit_id", line.visit());
  }

  List<Estimate> estimates(Currency currency) throws SQLException {
    Map<Long, List<Estimate.Expectation>> expectations =
        Placed.gather(
            tx.list(
                EXPECTATION.select("estimate_id, place"),
                row ->
                    new Placed<Estimate, Estimate.Expectation>(
                        row.id("estimate_id"),
                        row.whole("place"),
                        new Estimate.Expectation(
                            row.coded(Estimate.Result.class, "result"), row.text("words")))));
    Map<Long, List<Estimate.Option>> options = options(currency);
    return tx.list(
        ESTIMATE.select("id"),
        row ->
            new Estimate(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.maybeId("party_id"),
                row.day("day"),
                row.day("valid_until"),
                expectations.getOrDefault(row.number("id"), List.of()),
                options.getOrDefault(row.number("id"), List.of()),
                row.share("deposit", currency),
                row.terms(),
                row.coded(Estimate.State.class, "state"),
                answer(row),
                row.maybeId("visit_id"),
                row.text("note")));
  }

  private static Optional<Estimate.Answer> answer(Cells row) throws SQLException {
    Optional<LocalDate> day = row.maybeDay("answered_on");
    return day.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Estimate.Answer(
                day.get(),
                row.text("answer_option"),
                row.text("answer_note"),
                row.text("signed_by"),
                row.maybeText("signature").map(Signature::parse)));
  }

  private Map<Long, List<Estimate.Option>> options(Currency currency) throws SQLException {
    Map<Long, List<OfOption<Id<Surface>>>> surfaces =
        Placed.gather(
            tx.list(
                OPTION_SURFACE.select("estimate_id, place"),
                row ->
                    new Placed<Estimate, OfOption<Id<Surface>>>(
                        row.id("estimate_id"),
                        row.whole("place"),
                        new OfOption<>(row.whole("option_place"), row.id("surface_id")))));
    Map<Long, List<OfOption<PriceLine>>> lines =
        Placed.gather(
            tx.list(
                ESTIMATE_LINE.select("estimate_id, place"),
                row ->
                    new Placed<Estimate, OfOption<PriceLine>>(
                        row.id("estimate_id"),
                        row.whole("place"),
                        new OfOption<>(row.whole("option_place"), line(row, currency)))));
    return Placed.gather(
        tx.list(
            OPTION.select("estimate_id, place"),
            row -> {
              long estimate = row.number("estimate_id");
              int place = row.whole("place");
              return new Placed<Estimate, Estimate.Option>(
                  row.id("estimate_id"),
                  place,
                  new Estimate.Option(
                      row.text("name"),
                      row.list("steps", BooksStore::step),
                      of(surfaces.getOrDefault(estimate, List.of()), place),
                      of(lines.getOrDefault(estimate, List.of()), place),
                      row.share("discount", currency),
                      row.text("note")));
            }));
  }

  void putEstimates(List<Estimate> estimates) throws SQLException {
    tx.each(
        ESTIMATE.put(),
        estimates,
        (to, e) ->
            to.set("id", e.id())
                .set("key", e.key())
                .set("boat_id", e.boat())
                .set("party_id", e.party())
                .set("day", e.day())
                .set("valid_until", e.validUntil())
                .share("deposit", e.deposit())
                .terms(e.terms())
                .set("state", e.state())
                .set("answered_on", e.answer().map(Estimate.Answer::day))
                .set("answer_option", e.answer().map(Estimate.Answer::option))
                .set("answer_note", e.answer().map(Estimate.Answer::note))
                .set("signed_by", e.answer().map(Estimate.Answer::signedBy))
                .set(
                    "signature",
                    e.answer().flatMap(Estimate.Answer::signature).map(Signature::text))
                .set("visit_id", e.visit())
                .set("note", e.note()));
    cut(EXPECTATION, estimates, Estimate::expectations);
    tx.each(
        EXPECTATION.put(),
        estimates.stream().flatMap(e -> Placed.place(e.id(), e.expectations()).stream()).toList(),
        (to, x) ->
            to.set("estimate_id", x.owner())
                .set("place", x.place())
                .set("result", x.item().result())
                .set("words", x.item().words()));
    putOptions(estimates);
  }

  private void putOptions(List<Estimate> estimates) throws SQLException {
    cut(OPTION, estimates, Estimate::options);
    tx.each(
        OPTION.put(),
        estimates.stream().flatMap(e -> Placed.place(e.id(), e.options()).stream()).toList(),
        (to, o) ->
            to.set("estimate_id", o.owner())
                .set("place", o.place())
                .set("name", o.item().name())
                .set("steps", BooksStore.text(o.item().steps()))
                .share("discount", o.item().discount())
                .set("note", o.item().note()));
    cut(OPTION_SURFACE, estimates, BillStore::surfaces);
    tx.each(
        OPTION_SURFACE.put(),
        estimates.stream().flatMap(e -> Placed.place(e.id(), surfaces(e)).stream()).toList(),
        (to, s) ->
            to.set("estimate_id", s.owner())
                .set("place", s.place())
                .set("option_place", s.item().option())
                .set("surface_id", s.item().item()));
    cut(ESTIMATE_LINE, estimates, BillStore::lines);
    tx.each(
        ESTIMATE_LINE.put(),
        estimates.stream().flatMap(e -> Placed.place(e.id(), lines(e)).stream()).toList(),
        (to, l) -> {
          to.set("estimate_id", l.owner())
              .set("place", l.place())
              .set("option_place", l.item().option());
          set(to, l.item().item());
        });
  }

  private interface Items {
    List<?> of(Estimate estimate);
  }

  private void cut(Columns table, List<Estimate> estimates, Items items) throws SQLException {
    tx.each(
        table.cut(),
        estimates,
        (to, e) -> to.set("estimate_id", e.id()).set("place", items.of(e).size()));
  }

  private static List<OfOption<Id<Surface>>> surfaces(Estimate estimate) {
    List<OfOption<Id<Surface>>> all = new ArrayList<>();
    for (int i = 0; i < estimate.options().size(); i++) {
      int option = i + 1;
      estimate.options().get(i).surfaces().forEach(s -> all.add(new OfOption<>(option, s)));
    }
    return all;
  }

  private static List<OfOption<PriceLine>> lines(Estimate estimate) {
    List<OfOption<PriceLine>> all = new ArrayList<>();
    for (int i = 0; i < estimate.options().size(); i++) {
      int option = i + 1;
      estimate.options().get(i).lines().forEach(l -> all.add(new OfOption<>(option, l)));
    }
    return all;
  }

  List<Invoice> invoices(Currency currency) throws SQLException {
    Map<Long, List<PriceLine>> lines =
        Placed.gather(
            tx.list(
                INVOICE_LINE.select("invoice_id, place"),
                row ->
                    new Placed<Invoice, PriceLine>(
                        row.id("invoice_id"), row.whole("place"), line(row, currency))));
    return tx.list(
        INVOICE.select("id"),
        row ->
            new Invoice(
                row.id("id"),
                row.text("key"),
                row.id("party_id"),
                row.maybeId("boat_id"),
                row.maybeId("credits_id"),
                lines.getOrDefault(row.number("id"), List.of()),
                row.share("discount", currency),
                row.terms(),
                issue(row),
                row.text("note")));
  }

  private static Optional<Invoice.Issue> issue(Cells row) throws SQLException {
    return row.maybeText("number").isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Invoice.Issue(
                row.text("series"),
                row.whole("sequence"),
                row.text("number"),
                row.day("issued_on"),
                row.day("due_on"),
                row.text("issued_to")));
  }

  /** Puts in invoices, the lines first: those of an issued invoice stay from then on. */
  void putInvoices(List<Invoice> invoices) throws SQLException {
    tx.each(
        INVOICE_LINE.cut(),
        invoices,
        (to, i) -> to.set("invoice_id", i.id()).set("place", i.lines().size()));
    tx.each(
        INVOICE_LINE.put(),
        invoices.stream().flatMap(i -> Placed.place(i.id(), i.lines()).stream()).toList(),
        (to, l) -> {
          to.set("invoice_id", l.owner()).set("place", l.place());
          set(to, l.item());
        });
    tx.each(
        INVOICE.put(),
        invoices,
        (to, i) ->
            to.set("id", i.id())
                .set("key", i.key())
                .set("party_id", i.party())
                .set("boat_id", i.boat())
                .set("credits_id", i.credits())
                .share("discount", i.discount())
                .terms(i.terms())
                .set("series", i.issue().map(Invoice.Issue::series))
                .set("sequence", i.issue().map(Invoice.Issue::sequence))
                .set("number", i.issue().map(Invoice.Issue::number))
                .set("issued_on", i.issue().map(Invoice.Issue::day))
                .set("due_on", i.issue().map(Invoice.Issue::due))
                .set("issued_to", i.issue().map(Invoice.Issue::to))
                .set("note", i.note()));
  }
}
