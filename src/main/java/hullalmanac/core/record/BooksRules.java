package hullalmanac.core.record;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rules that hold between the rows about money, and between them and the rest. */
final class BooksRules {
  private final Almanac existing;
  private final Almanac additions;
  private final Map<Id<Surface>, Surface> surfaces = new HashMap<>();
  private final Map<Id<Visit>, Visit> visits = new HashMap<>();
  private final Map<Id<Invoice>, Invoice> invoices = new HashMap<>();
  private final Map<Id<Estimate>, Estimate> estimates = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private BooksRules(Almanac existing, Almanac additions) {
    this.existing = existing;
    this.additions = additions;
    Stream.of(existing, additions)
        .forEach(
            a -> {
              a.surfaces().forEach(s -> surfaces.put(s.id(), s));
              a.visits().forEach(v -> visits.put(v.id(), v));
              a.books().invoices().forEach(i -> invoices.put(i.id(), i));
              a.books().estimates().forEach(e -> estimates.put(e.id(), e));
            });
  }

  /** What is wrong with additions to a record. */
  static List<Problem> problems(Almanac existing, Almanac additions) {
    BooksRules rules = new BooksRules(existing, additions);
    rules.currency();
    additions.books().estimates().forEach(rules::estimate);
    additions.books().invoices().forEach(rules::invoice);
    additions.books().payments().forEach(rules::payment);
    return rules.problems;
  }

  /** What is wrong with taking rows out of a record. */
  static List<Problem> gone(Almanac existing, List<Row> gone) {
    return existing.books().invoices().stream()
        .filter(Invoice::issued)
        .filter(i -> gone.stream().anyMatch(g -> g instanceof Invoice && g.id().equals(i.id())))
        .map(i -> issued(i, "is not taken out"))
        .toList();
  }

  private static Problem issued(Invoice invoice, String what) {
    return new Problem(
        Kind.INVOICE,
        invoice.key(),
        "number",
        "the " + invoice.words() + " was issued and " + what,
        "Write a credit for it");
  }

  private void problem(Row row, String field, String message, String advice) {
    problems.add(new Problem(Kind.of(row), row.key(), field, message, advice));
  }

  private void currency() {
    Currency now = additions.business().currency();
    if (!now.equals(existing.business().currency())) {
      Set<String> again =
          additions.rows().stream().map(BooksRules::which).collect(Collectors.toSet());
      existing.rows().stream()
          .filter(r -> money(r).findAny().isPresent() && !again.contains(which(r)))
          .findFirst()
          .ifPresent(
              r ->
                  problems.add(
                      new Problem(
                          Kind.BUSINESS,
                          "",
                          "currency",
                          "the record holds amounts in "
                              + existing.business().currency().getCurrencyCode()
                              + ", so its currency stays",
                          "Begin another record for "
                              + now.getCurrencyCode()
                              + ", or leave the currency as it is")));
    }
    for (Row row : additions.rows()) {
      money(row)
          .filter(m -> !m.currency().equals(now))
          .findFirst()
          .ifPresent(
              m ->
                  problem(
                      row,
                      "",
                      "it is in "
                          + m.currency().getCurrencyCode()
                          + ", but the business is paid in "
                          + now.getCurrencyCode(),
                      "Write all amounts in one currency"));
    }
  }

  private static String which(Row row) {
    return Kind.of(row).code() + " " + row.id().value();
  }

  /** All amounts in a row. */
  private static Stream<Money> money(Row row) {
    if (row instanceof CarePlan plan) {
      return plan.price().stream();
    }
    if (row instanceof Rate rate) {
      return Stream.of(rate.low(), rate.high());
    }
    if (row instanceof Estimate estimate) {
      return Stream.concat(
          estimate.deposit().amount().stream(),
          estimate.options().stream().flatMap(o -> money(o.lines(), o.discount())));
    }
    if (row instanceof Invoice invoice) {
      return money(invoice.lines(), invoice.discount());
    }
    if (row instanceof Payment payment) {
      return Stream.concat(
          Stream.of(payment.amount()), payment.uses().stream().map(Payment.Use::amount));
    }
    return row instanceof Expense expense
        ? Stream.concat(Stream.of(expense.amount()), expense.tax().stream())
        : Stream.of();
  }

  private static Stream<Money> money(List<PriceLine> lines, Share discount) {
    return Stream.concat(lines.stream().map(PriceLine::price), discount.amount().stream());
  }

  private void estimate(Estimate estimate) {
    estimate.options().stream()
        .flatMap(o -> o.surfaces().stream())
        .map(surfaces::get)
        .filter(s -> !s.boat().equals(estimate.boat()))
        .findFirst()
        .ifPresent(
            s ->
                problem(
                    estimate,
                    "surfaces",
                    "the surface " + s.key() + " belongs to another boat",
                    "Correct the boat of the estimate or the surface"));
    estimate
        .visit()
        .map(visits::get)
        .filter(v -> !v.boat().equals(estimate.boat()))
        .ifPresent(
            v ->
                problem(
                    estimate,
                    "visit",
                    "the visit " + v.key() + " is on another boat",
                    "Correct the boat of the estimate or the visit"));
  }

  private void invoice(Invoice invoice) {
    existing.books().invoices().stream()
        .filter(i -> i.id().equals(invoice.id()) && i.issued() && !i.equals(invoice))
        .findFirst()
        .ifPresent(i -> problems.add(issued(i, "is not changed")));
    invoice.issue().ifPresent(issue -> number(invoice, issue));
    Optional<Invoice> credited = invoice.credits().map(invoices::get).filter(Objects::nonNull);
    credited
        .filter(i -> !i.issued() || i.credits().isPresent())
        .ifPresent(
            i ->
                problem(
                    invoice,
                    "credits",
                    "a credit takes back an issued invoice, not the " + i.words(),
                    "Name an invoice that was issued"));
    credited
        .filter(i -> !i.party().equals(invoice.party()))
        .ifPresent(
            i ->
                problem(
                    invoice,
                    "credits",
                    "the " + i.words() + " went to somebody else",
                    "Write the credit to whom the invoice went"));
  }

  private void number(Invoice invoice, Invoice.Issue issue) {
    boolean taken =
        invoices.values().stream()
            .filter(i -> !i.id().equals(invoice.id()))
            .flatMap(i -> i.issue().stream())
            .anyMatch(
                i ->
                    i.number().equals(issue.number())
                        || (i.series().equals(issue.series()) && i.sequence() == issue.sequence()));
    if (taken) {
      problem(
          invoice,
          "number",
          "the number " + issue.number() + " is taken",
          "Give each invoice a number of its own");
    }
  }

  private void payment(Payment payment) {
    for (Payment.Use use : payment.uses()) {
      use.invoice().map(invoices::get).ifPresent(i -> pays(payment, i));
    }
    payment
        .estimate()
        .map(estimates::get)
        .filter(e -> e.party().filter(p -> !p.equals(payment.party())).isPresent())
        .ifPresent(
            e ->
                problem(
                    payment,
                    "estimate",
                    "the estimate " + e.key() + " was made to somebody else",
                    "Name the estimate that the deposit was asked for"));
  }

  private void pays(Payment payment, Invoice invoice) {
    if (!invoice.issued() || invoice.credits().isPresent()) {
      problem(
          payment,
          "invoice",
          "money pays an issued invoice, not the " + invoice.words(),
          "Issue the invoice first");
    } else if (!invoice.party().equals(payment.party())) {
      problem(
          payment,
          "invoice",
          "the " + invoice.words() + " went to somebody else",
          "Name an invoice of whom the money came from");
    }
  }
}
