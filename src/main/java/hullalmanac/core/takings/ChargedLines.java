package hullalmanac.core.takings;

import hullalmanac.core.price.LengthPrice;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The lines that a visit is charged by, to begin with: the price of its care plan; otherwise the
 * rates that pay for its steps, the one that pays for most first; what no rate pays for by its
 * minutes. To inspect is not charged (common practice, no source).
 */
final class ChargedLines {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
  private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

  private final Almanac almanac;
  private final Visit visit;
  private final Boat boat;
  private final List<Step> steps;

  private ChargedLines(Almanac almanac, Visit visit) {
    this.almanac = almanac;
    this.visit = visit;
    boat = Accounts.row(almanac.boats(), visit.boat());
    steps =
        almanac.steps().stream()
            .filter(s -> s.visit().equals(visit.id()) && s.kind() != StepKind.INSPECT)
            .sorted(
                Comparator.comparing(Step::day).thenComparing(Step::order).thenComparing(Step::id))
            .toList();
  }

  static List<PriceLine> of(Almanac almanac, Visit visit) {
    ChargedLines lines = new ChargedLines(almanac, visit);
    return lines.plan().map(List::of).orElseGet(lines::byRates);
  }

  static String day(LocalDate day) {
    return DAY.format(day);
  }

  static String month(YearMonth month) {
    return MONTH.format(month);
  }

  private Optional<PriceLine> plan() {
    return visit
        .plan()
        .map(p -> Accounts.row(almanac.carePlans(), p))
        .filter(p -> p.price().isPresent())
        .map(this::planned);
  }

  private PriceLine planned(CarePlan plan) {
    return line(
        plan.work(), plan.work(), BigDecimal.ONE, PriceUnit.EACH, plan.price().orElseThrow());
  }

  private PriceLine line(
      String service, String words, BigDecimal quantity, PriceUnit unit, Money price) {
    List<Tax> taxes = almanac.business().billing().taxes();
    return new PriceLine(
        service,
        words + ", " + boat.name() + ", " + day(visit.day()),
        quantity,
        unit,
        price,
        taxes,
        Optional.of(visit.id()));
  }

  /** A step on a part of the boat. */
  private record Piece(StepKind kind, Extent part) {}

  private Set<Extent> parts(Step step) {
    return step.surfaces().isEmpty()
        ? Extent.WHOLE_BOAT.parts()
        : almanac.surfaces().stream()
            .filter(s -> step.surfaces().contains(s.id()))
            .map(Surface::kind)
            .map(Extent::of)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Extent.class)));
  }

  private Set<Piece> pieces() {
    Set<Piece> pieces = new HashSet<>();
    for (Step step : steps) {
      parts(step).forEach(p -> pieces.add(new Piece(step.kind(), p)));
    }
    return pieces;
  }

  private static Set<Piece> pieces(Rate rate) {
    Set<Piece> pieces = new HashSet<>();
    rate.steps().forEach(k -> rate.extent().parts().forEach(p -> pieces.add(new Piece(k, p))));
    return pieces;
  }

  private List<PriceLine> byRates() {
    List<PriceLine> lines = new ArrayList<>();
    Set<Piece> left = pieces();
    Optional<LengthPrice> next = next(left);
    while (next.isPresent()) {
      LengthPrice price = next.get();
      lines.add(
          line(
              price.rate().service(),
              price.rate().service(),
              price.quantity(),
              price.rate().unit(),
              price.unitPrice()));
      left.removeAll(pieces(price.rate()));
      next = next(left);
    }
    for (Step step : steps) {
      List<Extent> open =
          parts(step).stream().filter(p -> left.contains(new Piece(step.kind(), p))).toList();
      if (!open.isEmpty()) {
        lines.add(byMinutes(step, open));
      }
    }
    if (lines.isEmpty()) {
      lines.add(line("", "work", BigDecimal.ONE, PriceUnit.EACH, nothing()));
    }
    return lines;
  }

  /** The price of the service that pays for most of what is left, all of it left still. */
  private Optional<LengthPrice> next(Set<Piece> left) {
    if (boat.loa().isEmpty() || left.isEmpty()) {
      return Optional.empty();
    }
    return almanac.books().rates().stream()
        .filter(r -> left.containsAll(pieces(r)))
        .sorted(
            Comparator.comparing((Rate r) -> pieces(r).size()).reversed().thenComparing(Rate::key))
        .flatMap(r -> price(r, left).stream())
        .findFirst();
  }

  /**
   * The price of the service of a rate, by that of its rates which fits the boat most closely;
   * nobody has said in what condition she was.
   */
  private Optional<LengthPrice> price(Rate rate, Set<Piece> left) {
    return LengthPrice.of(
        almanac.books().rates().stream().filter(r -> left.containsAll(pieces(r))).toList(),
        new LengthPrice.Asked(
            rate.service(), boat.loa().orElseThrow(), Optional.empty(), Optional.of(boat.type())));
  }

  /**
   * A step by its minutes; where a rate pays for one part of the boat already, half of them are for
   * the other.
   */
  private PriceLine byMinutes(Step step, List<Extent> open) {
    Optional<Money> hour = almanac.business().billing().charges().hour();
    boolean part = open.size() < parts(step).size();
    int all = step.minutes().orElse(0) + step.helperMinutes().orElse(0);
    int minutes = part ? (all + 1) / 2 : all;
    String service = step.kind().words();
    String words = part ? service + " of the " + open.get(0).words() : service;
    return hour.isPresent() && minutes > 0
        ? line(
            service,
            words,
            BigDecimal.valueOf(minutes).divide(MINUTES, 2, RoundingMode.UP),
            PriceUnit.HOUR,
            hour.get())
        : line(service, words, BigDecimal.ONE, PriceUnit.EACH, nothing());
  }

  private Money nothing() {
    return Money.zero(almanac.business().currency());
  }
}
