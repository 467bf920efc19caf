package hullalmanac.core.takings;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What work brought in a span of days, without taxes. An invoice counts on the day it was issued, a
 * credit against it on its own; a payment on the day it came.
 *
 * @param months each month of the span
 * @param services by service, what brought most first
 * @param harbours by the harbour where the boat lay on the day of the visit, what brought most
 *     first
 * @param all together
 * @param metres driven
 */
public record Earnings(
    List<Month> months, List<Part> services, List<Part> harbours, Part all, long metres) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  public Earnings {
    months = List.copyOf(months);
    services = List.copyOf(services);
    harbours = List.copyOf(harbours);
  }

  /**
   * One month.
   *
   * @param invoiced without taxes, less credits
   * @param received with taxes, less what was given back
   * @param spent with taxes
   */
  public record Month(YearMonth month, Money invoiced, Money received, Money spent) {}

  /**
   * A part of what was invoiced.
   *
   * @param net without taxes, less credits
   * @param timed what of it is for visits whose minutes are written down
   * @param minutes one's own in these visits; where a visit stands on several lines they are shared
   *     out as the money is
   */
  public record Part(String name, Money net, Money timed, BigDecimal minutes) {
    /** What an hour of work brought; nothing where no minutes are written down. */
    public Optional<Money> perHour() {
      return minutes.signum() == 0
          ? Optional.empty()
          : Optional.of(
              Money.rounded(
                  timed.amount().multiply(SIXTY).divide(minutes, 20, RoundingMode.HALF_UP),
                  net.currency(),
                  RoundingMode.HALF_UP));
    }
  }

  /**
   * Reads a record.
   *
   * @param accounts of the record
   * @param from first day
   * @param until first day that does not count any more
   */
  public static Earnings of(Almanac almanac, Accounts accounts, LocalDate from, LocalDate until) {
    return new Reading(almanac, accounts, from, until).earnings();
  }

  /**
   * One line of what was issued, and what it brought.
   *
   * @param place among all of them, from 0
   */
  private record Brought(
      int place, Invoice invoice, PriceLine line, Money net, String service, String harbour) {}

  /** The reading of a record. */
  private static final class Reading {
    private final Almanac almanac;
    private final LocalDate from;
    private final LocalDate until;
    private final Money nothing;
    private final Map<Id<Visit>, Visit> visits;
    private final List<Brought> brought = new ArrayList<>();
    private final Accounts accounts;
    private final Lying lying;
    private final Map<Id<Visit>, Long> worked;

    /** Minutes of the lines, by their place. */
    private final Map<Integer, BigDecimal> minutes = new HashMap<>();

    Reading(Almanac almanac, Accounts accounts, LocalDate from, LocalDate until) {
      this.almanac = almanac;
      this.accounts = accounts;
      this.from = from;
      this.until = until;
      nothing = Money.zero(almanac.business().currency());
      lying = new Lying(almanac);
      worked =
          almanac.steps().stream()
              .collect(
                  Collectors.groupingBy(
                      Step::visit, Collectors.summingLong(s -> s.minutes().orElse(0))));
      visits = almanac.visits().stream().collect(Collectors.toMap(Visit::id, v -> v));
      for (Invoice invoice : almanac.books().invoices()) {
        invoice.issue().filter(i -> within(i.day())).ifPresent(i -> read(invoice));
      }
      shareMinutes();
    }

    private boolean within(LocalDate day) {
      return !day.isBefore(from) && day.isBefore(until);
    }

    private void read(Invoice invoice) {
      for (Bill.Item item : Bill.of(invoice, nothing.currency()).items()) {
        Money net = invoice.credits().isPresent() ? item.net().negated() : item.net();
        String service = item.line().service();
        brought.add(
            new Brought(
                brought.size(),
                invoice,
                item.line(),
                net,
                service.isBlank() ? "other" : service,
                harbour(invoice, item.line())));
      }
    }

    private String harbour(Invoice invoice, PriceLine line) {
      Optional<Harbour> harbour =
          line.visit()
              .map(visits::get)
              .flatMap(v -> lying.at(v.boat(), v.day()))
              .or(
                  () ->
                      invoice
                          .boat()
                          .flatMap(b -> lying.at(b, invoice.issue().orElseThrow().day())));
      return harbour.map(Harbour::name).orElse("no harbour");
    }

    /** Shares the minutes of each visit out over the lines on which it stands. */
    private void shareMinutes() {
      Map<Id<Visit>, List<Brought>> lines = new LinkedHashMap<>();
      brought.stream()
          .filter(b -> b.invoice().credits().isEmpty())
          .forEach(
              b ->
                  b.line()
                      .visit()
                      .ifPresent(v -> lines.computeIfAbsent(v, x -> new ArrayList<>()).add(b)));
      lines.forEach(
          (visit, all) -> {
            List<Brought> standing =
                all.stream().filter(b -> !accounts.takenBack(b.invoice())).toList();
            share(worked.getOrDefault(visit, 0L), standing.isEmpty() ? all : standing);
          });
    }

    private void share(long worked, List<Brought> lines) {
      BigDecimal sum =
          lines.stream().map(b -> b.net().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
      for (Brought b : lines) {
        BigDecimal part =
            sum.signum() == 0
                ? BigDecimal.valueOf(worked)
                    .divide(BigDecimal.valueOf(lines.size()), 10, RoundingMode.HALF_UP)
                : BigDecimal.valueOf(worked)
                    .multiply(b.net().amount())
                    .divide(sum, 10, RoundingMode.HALF_UP);
        minutes.merge(b.place(), part, BigDecimal::add);
      }
    }

    Earnings earnings() {
      List<Month> months = new ArrayList<>();
      YearMonth last = YearMonth.from(until.minusDays(1));
      for (YearMonth m = YearMonth.from(from); !m.isAfter(last); m = m.plusMonths(1)) {
        months.add(month(m));
      }
      long metres =
          almanac.books().trips().stream()
              .filter(t -> within(t.day()))
              .mapToLong(t -> t.metres())
              .sum();
      return new Earnings(
          months, parts(Brought::service), parts(Brought::harbour), part("all", brought), metres);
    }

    private Month month(YearMonth month) {
      Money invoiced =
          sum(
              brought.stream()
                  .filter(b -> of(month, b.invoice().issue().orElseThrow().day()))
                  .map(Brought::net)
                  .toList());
      Money came =
          sum(
              almanac.books().payments().stream()
                  .filter(p -> of(month, p.day()))
                  .map(Payment::amount)
                  .toList());
      Money back =
          sum(
              almanac.books().payments().stream()
                  .flatMap(p -> p.uses().stream())
                  .filter(u -> u.became() == Payment.Became.GIVEN_BACK && of(month, u.day()))
                  .map(Payment.Use::amount)
                  .toList());
      Money spent =
          sum(
              almanac.books().expenses().stream()
                  .filter(e -> of(month, e.day()))
                  .map(e -> e.amount())
                  .toList());
      return new Month(month, invoiced, came.minus(back), spent);
    }

    private boolean of(YearMonth month, LocalDate day) {
      return within(day) && YearMonth.from(day).equals(month);
    }

    private Money sum(List<Money> amounts) {
      return amounts.stream().reduce(nothing, Money::plus);
    }

    private List<Part> parts(Function<Brought, String> name) {
      return brought.stream()
          .collect(Collectors.groupingBy(name, LinkedHashMap::new, Collectors.toList()))
          .entrySet()
          .stream()
          .map(e -> part(e.getKey(), e.getValue()))
          .sorted(
              Comparator.comparing(Part::net, Comparator.reverseOrder()).thenComparing(Part::name))
          .toList();
    }

    private Part part(String name, List<Brought> lines) {
      return new Part(
          name,
          sum(lines.stream().map(Brought::net).toList()),
          sum(lines.stream().filter(this::timed).map(Brought::net).toList()),
          lines.stream()
              .map(b -> minutes.getOrDefault(b.place(), BigDecimal.ZERO))
              .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private boolean timed(Brought line) {
      return line.line().visit().filter(v -> worked.getOrDefault(v, 0L) > 0).isPresent();
    }
  }
}
