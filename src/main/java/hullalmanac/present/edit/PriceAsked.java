package hullalmanac.present.edit;

import hullalmanac.core.price.LengthPrice;
import hullalmanac.core.price.PricedArea;
import hullalmanac.core.price.UsualMinutes;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Rate;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is asked of a price by length; public so that it can be copied with one component changed.
 *
 * @param boat of the record, where it is one of these; what it is known by stands for what is not
 *     said
 * @param service as the rates name it; empty: the one that pays for most
 */
public record PriceAsked(
    Optional<Id<Boat>> boat,
    String service,
    Optional<Length> length,
    Optional<BoatType> type,
    Optional<Condition> condition) {
  /** Services of some rates, the one that pays for most first. */
  static List<String> services(List<Rate> rates) {
    return rates.stream()
        .sorted(
            Comparator.comparing((Rate r) -> r.steps().size())
                .reversed()
                .thenComparing(Rate::service))
        .map(Rate::service)
        .distinct()
        .toList();
  }

  /**
   * These read in a record, with rates to go by.
   *
   * @param took how long it took so far by a rate
   */
  record Read(
      PriceAsked asked,
      Almanac almanac,
      List<Rate> rates,
      Function<Rate, Optional<UsualMinutes>> took) {
    Optional<Boat> boat() {
      return almanac.boats().stream()
          .filter(b -> asked.boat().equals(Optional.of(b.id())))
          .findFirst();
    }

    Optional<Length> length() {
      return asked.length().or(() -> boat().flatMap(Boat::loa));
    }

    Optional<BoatType> type() {
      return asked.type().or(() -> boat().map(Boat::type));
    }

    String service() {
      return asked.service().isEmpty()
          ? services(rates).stream().findFirst().orElse("")
          : asked.service();
    }

    /** The price by length, where a rate fits. */
    Optional<LengthPrice> byLength() {
      return length()
          .flatMap(
              l ->
                  LengthPrice.of(
                      rates, new LengthPrice.Asked(service(), l, asked.condition(), type())));
    }

    /** A rate of the service, whatever it is for. */
    private Optional<Rate> rate() {
      return byLength()
          .map(LengthPrice::rate)
          .or(
              () ->
                  rates.stream().filter(r -> r.service().equalsIgnoreCase(service())).findFirst());
    }

    /** Square metres by the measures of the boat. */
    Optional<BigDecimal> area() {
      return rate().flatMap(r -> boat().flatMap(b -> PricedArea.of(b, r.extent())));
    }

    /** How long it took so far. */
    Optional<UsualMinutes> usual() {
      return rate().flatMap(took);
    }
  }
}
