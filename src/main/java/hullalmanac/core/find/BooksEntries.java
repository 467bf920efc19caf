package hullalmanac.core.find;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.PriceLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is found of the rows about money: invoices by their number, estimates by their day, both by
 * the services on them and, with one of these, by boat and party. Amounts and payments are not
 * found.
 */
final class BooksEntries {
  private final Rows rows;
  private final List<Entry> entries = new ArrayList<>();

  private BooksEntries(Rows rows) {
    this.rows = rows;
  }

  static List<Entry> of(Rows rows) {
    BooksEntries all = new BooksEntries(rows);
    rows.almanac.books().invoices().forEach(all::invoice);
    rows.almanac.books().estimates().forEach(all::estimate);
    return all.entries;
  }

  private void invoice(Invoice invoice) {
    String boat = invoice.boat().map(rows.boats::get).map(Boat::name).orElse("");
    String party = rows.parties.get(invoice.party()).name();
    String day = invoice.issue().map(i -> Rows.day(i.day())).orElse("");
    List<String> more = new ArrayList<>(words(invoice.lines()));
    more.add(invoice.note());
    String title = invoice.issue().map(Invoice.Issue::number).orElse(invoice.words());
    add(
        new Hit(
            HitKind.INVOICE,
            title,
            Rows.joined(invoice.issued() ? kind(invoice) : "", party, boat, day),
            new Target.ToInvoice(invoice.id())),
        invoice.issue().map(i -> i.day().toEpochDay()).orElse(0L),
        more);
  }

  private static String kind(Invoice invoice) {
    return invoice.credits().isPresent() ? "credit" : "invoice";
  }

  private void estimate(Estimate estimate) {
    List<String> more = new ArrayList<>(List.of(estimate.note()));
    estimate.expectations().forEach(x -> more.add(x.words()));
    estimate.options().stream()
        .flatMap(o -> Stream.concat(Stream.of(o.name(), o.note()), words(o.lines()).stream()))
        .forEach(more::add);
    LocalDate day = estimate.day();
    add(
        new Hit(
            HitKind.ESTIMATE,
            "estimate of " + Rows.day(day),
            Rows.joined(
                rows.boats.get(estimate.boat()).name(),
                estimate.state().words(),
                estimate.party().map(p -> rows.parties.get(p).name()).orElse("")),
            new Target.ToEstimate(estimate.id())),
        day.toEpochDay(),
        more);
  }

  private static List<String> words(List<PriceLine> lines) {
    return lines.stream().map(PriceLine::service).toList();
  }

  private void add(Hit hit, long day, List<String> more) {
    entries.add(new Entry(hit, true, false, day, more, List.of()));
  }
}
