package hullalmanac.exchange.csv;

import hullalmanac.core.record.Books;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Puts together the rows about money from the lists they are spread over. */
final class BooksReader {
  private final SetReader set;
  private final MoneyFiles files;

  BooksReader(SetReader set, MoneyFiles files) {
    this.set = set;
    this.files = files;
  }

  Books read() {
    return new Books(
        set.all(files.rates),
        estimates(),
        invoices(),
        payments(),
        set.all(files.trips),
        set.all(files.expenses));
  }

  private static <R, T, I> Map<Id<T>, List<I>> byOwner(
      List<R> rows, Function<R, Id<T>> owner, Function<R, I> item) {
    return rows.stream()
        .collect(
            Collectors.groupingBy(
                owner, LinkedHashMap::new, Collectors.mapping(item, Collectors.toList())));
  }

  private static <T, I> List<I> of(Map<Id<T>, List<I>> lists, Id<T> owner) {
    return lists.getOrDefault(owner, List.of());
  }

  private List<Estimate> estimates() {
    List<EstimateFiles.Head> heads = set.all(files.estimates.estimates);
    Map<Id<Estimate>, List<Estimate.Expectation>> expectations =
        byOwner(
            set.all(files.estimates.expectations),
            EstimateFiles.ExpectationRow::estimate,
            EstimateFiles.ExpectationRow::expectation);
    Map<Id<Estimate>, List<Estimate.Option>> options = options();
    List<Id<Estimate>> owners = heads.stream().map(EstimateFiles.Head::id).toList();
    set.requireOwners(files.estimates.expectations.file(), expectations.keySet(), owners);
    set.requireOwners(files.estimates.options.file(), options.keySet(), owners);
    return heads.stream()
        .flatMap(
            h ->
                made(
                    files.estimates.estimates.file(),
                    h.key(),
                    () -> h.with(of(expectations, h.id()), of(options, h.id())))
                    .stream())
        .toList();
  }

  private record Option(Id<Estimate> estimate, String name) {}

  private Map<Id<Estimate>, List<Estimate.Option>> options() {
    List<EstimateFiles.OptionRow> rows = set.all(files.estimates.options);
    Map<Option, List<PriceLine>> lines = new HashMap<>();
    for (EstimateFiles.LineRow line : set.all(files.estimates.lines)) {
      lines
          .computeIfAbsent(new Option(line.estimate(), line.option()), o -> new ArrayList<>())
          .add(line.line());
    }
    Set<Option> there = new HashSet<>();
    rows.forEach(r -> there.add(new Option(r.estimate(), r.option().name())));
    lines.keySet().stream()
        .filter(o -> !there.contains(o))
        .findFirst()
        .ifPresent(
            o ->
                set.problem(
                    files.estimates.lines.file(),
                    "option",
                    "there is no option \"" + o.name() + "\" of its estimate",
                    "Add it to " + files.estimates.options.file() + ", or correct the name"));
    return byOwner(
        rows.stream()
            .map(
                r ->
                    r.with(
                        lines.getOrDefault(new Option(r.estimate(), r.option().name()), List.of())))
            .toList(),
        EstimateFiles.OptionRow::estimate,
        EstimateFiles.OptionRow::option);
  }

  private List<Invoice> invoices() {
    List<InvoiceFiles.Head> heads = set.all(files.invoices.invoices);
    Map<Id<Invoice>, List<PriceLine>> lines =
        byOwner(
            set.all(files.invoices.lines),
            InvoiceFiles.LineRow::invoice,
            InvoiceFiles.LineRow::line);
    set.requireOwners(
        files.invoices.lines.file(),
        lines.keySet(),
        heads.stream().map(InvoiceFiles.Head::id).toList());
    return heads.stream()
        .flatMap(
            h ->
                made(files.invoices.invoices.file(), h.key(), () -> h.with(of(lines, h.id())))
                    .stream())
        .toList();
  }

  private List<Payment> payments() {
    List<Payment> heads = set.all(files.payments);
    Map<Id<Payment>, List<Payment.Use>> uses =
        byOwner(set.all(files.uses), PaymentFiles.UseRow::payment, PaymentFiles.UseRow::use);
    set.requireOwners(files.uses.file(), uses.keySet(), heads.stream().map(Payment::id).toList());
    return heads.stream()
        .flatMap(
            p ->
                made(
                    files.payments.file(),
                    p.key(),
                    () ->
                        new Payment(
                            p.id(),
                            p.key(),
                            p.party(),
                            p.day(),
                            p.amount(),
                            p.how(),
                            p.estimate(),
                            of(uses, p.id()),
                            p.note()))
                    .stream())
        .toList();
  }

  /** What a row refuses that shows only when it is put together. */
  private <T> Optional<T> made(String file, String key, java.util.function.Supplier<T> row) {
    if (!set.sound()) {
      return Optional.empty();
    }
    try {
      return Optional.of(row.get());
    } catch (IllegalArgumentException e) {
      set.problem(file, "", key + ": " + e.getMessage(), "Correct the row or what belongs to it");
      return Optional.empty();
    }
  }
}
