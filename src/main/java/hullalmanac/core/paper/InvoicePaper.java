package hullalmanac.core.paper;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Accounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** An invoice or a credit; a draft says that it is one. */
public final class InvoicePaper {
  private final Almanac almanac;
  private final Accounts accounts;
  private final Invoice invoice;
  private final boolean credit;

  private InvoicePaper(Almanac almanac, Accounts accounts, Invoice invoice) {
    this.almanac = almanac;
    this.accounts = accounts;
    this.invoice = invoice;
    credit = invoice.credits().isPresent();
  }

  /**
   * Puts an invoice on paper, with what of it is paid by now.
   *
   * @param accounts of the record
   */
  public static Paper of(Almanac almanac, Accounts accounts, Invoice invoice) {
    return new InvoicePaper(almanac, accounts, invoice).paper();
  }

  private Paper paper() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Recipient(recipient()));
    if (!invoice.issued()) {
      blocks.add(
          new Block.Lead(
              "Draft: not yet "
                  + (credit ? "a credit" : "an invoice")
                  + ", and nothing is to be paid by it."));
    }
    invoice
        .credits()
        .map(id -> row(almanac.books().invoices(), Invoice::id, id))
        .ifPresent(corrected -> blocks.add(new Block.Lead(corrects(corrected))));
    blocks.add(new Block.Facts(facts()));
    Bill bill = accounts.bill(invoice);
    if (bill.items().isEmpty()) {
      blocks.add(new Block.Words("No line is written yet."));
    } else {
      blocks.add(
          BillTable.of(
              "lines, and what they come to", bill, invoice.terms().inclusive(), standing()));
    }
    invoice
        .issue()
        .filter(i -> !credit && accounts.open(invoice).isPositive())
        .ifPresent(
            i ->
                blocks.add(
                    new Block.Words(
                        "Please pay "
                            + accounts.open(invoice).words()
                            + " by "
                            + DateWords.dated(i.due())
                            + " and name "
                            + i.number()
                            + ".")));
    return Paper.of(almanac.business(), Texts.capital(invoice.words()), boat(), blocks);
  }

  private String boat() {
    return invoice
        .boat()
        .map(id -> row(almanac.boats(), Boat::id, id).name())
        .map(name -> "For " + name)
        .orElse("");
  }

  /** As printed when it was issued, else as the party is written down now. */
  private List<String> recipient() {
    if (invoice.issue().isPresent()) {
      return invoice.issue().get().to().lines().filter(l -> !l.isBlank()).toList();
    }
    Party party = row(almanac.parties(), Party::id, invoice.party());
    List<String> lines = new ArrayList<>();
    lines.add(party.name());
    party.address().lines().filter(l -> !l.isBlank()).forEach(lines::add);
    return lines;
  }

  private static String corrects(Invoice corrected) {
    return "This credit corrects "
        + corrected.words()
        + corrected.issue().map(i -> " of " + DateWords.dated(i.day())).orElse("")
        + ".";
  }

  private List<Block.Fact> facts() {
    List<Block.Fact> facts = new ArrayList<>();
    invoice
        .issue()
        .ifPresent(
            i -> {
              facts.add(new Block.Fact(credit ? "Credit number" : "Invoice number", i.number()));
              facts.add(new Block.Fact("Date", DateWords.dated(i.day())));
              if (!credit) {
                facts.add(new Block.Fact("To be paid by", DateWords.dated(i.due())));
              }
            });
    List<LocalDate> days =
        invoice.lines().stream()
            .flatMap(l -> l.visit().stream())
            .distinct()
            .flatMap(id -> almanac.visits().stream().filter(v -> v.id().equals(id)))
            .map(v -> v.day())
            .sorted()
            .toList();
    if (!days.isEmpty()) {
      facts.add(
          new Block.Fact("Work done", DateWords.span(days.get(0), days.get(days.size() - 1))));
    }
    if (facts.isEmpty()) {
      facts.add(new Block.Fact("Number", "none yet"));
    }
    return facts;
  }

  private List<BillTable.Sum> standing() {
    List<BillTable.Sum> sums = new ArrayList<>();
    if (credit || !invoice.issued()) {
      return sums;
    }
    if (accounts.credited(invoice).isPositive()) {
      sums.add(BillTable.Sum.of("Taken back by credits", accounts.credited(invoice)));
    }
    if (accounts.paid(invoice).isPositive()) {
      sums.add(BillTable.Sum.of("Paid", accounts.paid(invoice)));
    }
    if (!sums.isEmpty()) {
      sums.add(BillTable.Sum.strong("Still to pay", accounts.open(invoice)));
    }
    return sums;
  }

  private static <R extends Row> R row(List<R> rows, Function<R, Id<R>> id, Id<R> wanted) {
    return rows.stream()
        .filter(r -> id.apply(r).equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no row has the id " + wanted.value()));
  }
}
