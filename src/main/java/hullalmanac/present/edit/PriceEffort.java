package hullalmanac.present.edit;

import hullalmanac.core.price.TimePrice;
import hullalmanac.core.price.UsualMinutes;
import hullalmanac.core.record.Billing;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Money;
import hullalmanac.present.sheet.Input;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * What a job takes; public so that it can be copied with one component changed. What is absent is
 * as the record knows it, or nothing.
 *
 * @param area square metres
 * @param minutes of one person for a square metre
 * @param product millilitres for a square metre
 * @param litre what a litre costs
 * @param pads what pads, cloths and other things used up cost
 * @param distance there and back, in miles or kilometres
 * @param travel minutes there and back
 * @param waiting minutes for tides, drying, keys
 */
public record PriceEffort(
    Optional<BigDecimal> area,
    Optional<BigDecimal> minutes,
    Optional<BigDecimal> product,
    Optional<Money> litre,
    Optional<Money> pads,
    Optional<BigDecimal> distance,
    Optional<BigDecimal> travel,
    Optional<BigDecimal> waiting,
    Optional<Money> hour) {
  static final PriceEffort UNSAID =
      new PriceEffort(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** The most that can be meant of each: what is more is a slip of the keys. */
  private static final long MOST_AREA = 5000;

  private static final long MOST_FOR_A_METRE = 1000;
  private static final long MOST_WAY = 5000;
  private static final long MOST_MINUTES = 100_000;
  private static final long MOST_MONEY = 1_000_000;

  public PriceEffort {
    number(area, MOST_AREA, "an area");
    number(minutes, MOST_FOR_A_METRE, "the minutes for a square metre");
    number(product, MOST_FOR_A_METRE, "the product for a square metre");
    number(litre.map(Money::amount), MOST_MONEY, "what a litre costs");
    number(pads.map(Money::amount), MOST_MONEY, "what pads cost");
    number(distance, MOST_WAY, "a way");
    number(travel, MOST_MINUTES, "the minutes on the way");
    number(waiting, MOST_MINUTES, "the minutes of waiting");
    number(hour.map(Money::amount), MOST_MONEY, "the price of an hour");
  }

  private static void number(Optional<BigDecimal> number, long most, String what) {
    number.ifPresent(
        n -> {
          if (n.signum() < 0) {
            throw new IllegalArgumentException(
                what + " is not below 0, so not " + n.toPlainString());
          }
          if (n.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new IllegalArgumentException(
                what + " is at most " + most + ", so not " + n.toPlainString());
          }
        });
  }

  static List<FieldOf<PriceEffort>> fields(FieldMaker make, PriceAsked.Read asked) {
    Business business = asked.almanac().business();
    String way = business.units() == Business.Units.FEET ? "miles" : "km";
    return List.of(
        hinted(
            make.maybeDecimal("area", "Area, m²", PriceEffort::area),
            asked.area().map(BigDecimal::toPlainString)),
        hinted(
            make.maybeDecimal("minutes", "Minutes for a m²", PriceEffort::minutes),
            asked.usual().map(u -> u.perSquareMetre().toPlainString())),
        make.maybeDecimal("product", "Product for a m², ml", PriceEffort::product),
        make.money("litre", "A litre costs", PriceEffort::litre),
        make.money("pads", "Pads and cloths", PriceEffort::pads),
        make.maybeDecimal("distance", "Way there and back, " + way, PriceEffort::distance),
        make.maybeDecimal("travel", "On the way, minutes", PriceEffort::travel),
        make.maybeDecimal("waiting", "Waiting, minutes", PriceEffort::waiting),
        hinted(
            make.money("hour", "An hour is to bring", PriceEffort::hour),
            business.billing().charges().hour().map(h -> h.amount().toPlainString())));
  }

  private static FieldOf<PriceEffort> hinted(FieldOf<PriceEffort> field, Optional<String> hint) {
    return new FieldOf<>(
        field.id(), field.label(), new Input.Line(hint.orElse("")), field.text(), field.enter());
  }

  /** What is missing for a price by time, in words. */
  Optional<String> missing(PriceAsked.Read asked) {
    Billing.Charges charges = asked.almanac().business().billing().charges();
    if (hour.or(charges::hour).isEmpty()) {
      return Optional.of("what an hour is to bring");
    }
    if (area.or(asked::area).isEmpty()) {
      return Optional.of("the area");
    }
    return minutes.or(() -> asked.usual().map(UsualMinutes::perSquareMetre)).isEmpty()
        ? Optional.of("the minutes for a square metre")
        : Optional.empty();
  }

  /** The price by time and materials, where nothing is missing for it. */
  Optional<TimePrice> byTime(PriceAsked.Read asked) {
    if (missing(asked).isPresent()) {
      return Optional.empty();
    }
    Money none = Money.zero(asked.almanac().business().currency());
    Billing.Charges charges = asked.almanac().business().billing().charges();
    TimePrice.Patch patch =
        new TimePrice.Patch(
            asked.service(),
            area.or(asked::area).orElseThrow(),
            minutes.or(() -> asked.usual().map(UsualMinutes::perSquareMetre)).orElseThrow(),
            product.flatMap(ml -> litre.map(l -> new TimePrice.Material(ml, l))));
    Money way =
        distance
            .flatMap(
                d ->
                    charges
                        .distance()
                        .map(
                            p ->
                                Money.rounded(
                                    d.multiply(p.amount()), p.currency(), RoundingMode.HALF_UP)))
            .orElse(none);
    return Optional.of(
        TimePrice.of(
            new TimePrice.Job(
                List.of(patch),
                pads.orElse(none),
                travel.orElse(BigDecimal.ZERO),
                way,
                waiting.orElse(BigDecimal.ZERO)),
            new TimePrice.Charges(hour.or(charges::hour).orElseThrow(), charges.least())));
  }
}
