package hullalmanac.core.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Condition;
import hullalmanac.core.record.Extent;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.PriceUnit;
import hullalmanac.core.record.Rate;
import hullalmanac.core.record.StepKind;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The price by length, the price by time and materials, and what lies between. */
class TwoPricesTest {
  private static final Currency USD = Currency.getInstance("USD");
  private static final Length THIRTY_FEET = Length.ofFeet(30, 0);
  private final IdSource ids = new IdSource(new Random(3)::nextLong);

  private static Money usd(String amount) {
    return Money.of(new BigDecimal(amount), USD);
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  private static LengthPrice.Asked asked(Condition condition, BoatType type, Length length) {
    return new LengthPrice.Asked(
        "Polish", length, Optional.ofNullable(condition), Optional.ofNullable(type));
  }

  private Rate rate(
      String key, Condition condition, BoatType type, Length from, String low, String high) {
    return new Rate(
        ids.next(),
        key,
        "polish",
        new TreeSet<>(EnumSet.of(StepKind.POLISH)),
        Extent.HULL,
        PriceUnit.FOOT,
        Optional.ofNullable(condition),
        Optional.ofNullable(type),
        Optional.ofNullable(from),
        Optional.empty(),
        usd(low),
        usd(high),
        "");
  }

  /** Common practice, no source: a 30 ft hull costs 600 to 650 dollars, 20.00 to 21.67 a foot. */
  @Test
  void theStarterRateGivesTheCommonPriceOfAThirtyFootHull() {
    List<Rate> rates = StarterRates.of(USD, ids);
    LengthPrice price =
        LengthPrice.of(
                rates,
                new LengthPrice.Asked(
                    StarterRates.SERVICE,
                    THIRTY_FEET,
                    Optional.of(Condition.FAIR),
                    Optional.of(BoatType.SLOOP)))
            .orElseThrow();
    assertThat(price.quantity()).isEqualByComparingTo("30");
    assertThat(price.rate().low()).isEqualTo(usd("20.00"));
    assertThat(price.rate().high()).isEqualTo(usd("21.67"));
    assertThat(price.low()).isEqualTo(usd("600.00"));
    assertThat(price.high()).isEqualTo(usd("650.10"));
    assertThat(rates).allMatch(r -> r.note().equals("common practice, no source"));
    assertThat(PhonePrice.of(rates, StarterRates.SERVICE, THIRTY_FEET, Optional.empty()))
        .get()
        .extracting(PhonePrice::words)
        .isEqualTo("600 to 650 USD");
    assertThat(StarterRates.of(Currency.getInstance("EUR"), ids)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    ", , 30, wide",
    "FAIR, , 30, fair",
    "FAIR, TRAWLER, 30, fair",
    "GOOD, TRAWLER, 30, trawler",
    "GOOD, SLOOP, 45, long",
    "GOOD, SLOOP, 39, wide"
  })
  void theRateThatFitsMostCloselyIsTaken(Condition condition, BoatType type, int feet, String key) {
    List<Rate> rates =
        List.of(
            rate("wide", null, null, null, "10", "12"),
            rate("fair", Condition.FAIR, null, null, "20", "22"),
            rate("trawler", null, BoatType.TRAWLER, null, "14", "15"),
            rate("long", null, null, Length.ofFeet(40, 0), "16", "18"));
    assertThat(LengthPrice.of(rates, asked(condition, type, Length.ofFeet(feet, 0))))
        .get()
        .extracting(p -> p.rate().key())
        .isEqualTo(key);
  }

  @Test
  void whereNobodyHasSaidTheConditionTheRateForFairStandsIn() {
    List<Rate> rates =
        List.of(
            rate("a-poor", Condition.POOR, BoatType.SLOOP, null, "30", "33"),
            rate("b-good", Condition.GOOD, null, null, "10", "12"),
            rate("fair", Condition.FAIR, null, null, "20", "22"));
    assertThat(LengthPrice.of(rates, asked(null, BoatType.SLOOP, THIRTY_FEET)))
        .get()
        .extracting(p -> p.rate().key())
        .isEqualTo("fair");
    assertThat(
            LengthPrice.of(
                StarterRates.of(USD, ids),
                new LengthPrice.Asked(
                    StarterRates.SERVICE, THIRTY_FEET, Optional.empty(), Optional.empty())))
        .isPresent();
  }

  @Test
  void noRateNoPrice() {
    List<Rate> fair = List.of(rate("fair", Condition.FAIR, null, null, "20", "22"));
    assertThat(LengthPrice.of(fair, asked(Condition.POOR, null, THIRTY_FEET))).isEmpty();
    assertThat(PhonePrice.of(fair, "varnish", THIRTY_FEET, Optional.empty())).isEmpty();
  }

  @Test
  void onThePhoneTheRangeRunsOverAllConditions() {
    List<Rate> rates =
        List.of(
            rate("good", Condition.GOOD, null, null, "18", "20"),
            rate("poor", Condition.POOR, null, null, "24", "29"),
            rate("trawler", null, BoatType.TRAWLER, null, "1", "99"));
    PhonePrice price = PhonePrice.of(rates, "polish", THIRTY_FEET, Optional.empty()).orElseThrow();
    assertThat(price.low()).isEqualTo(usd("540"));
    assertThat(price.high()).isEqualTo(usd("870"));
    assertThat(price.rates()).extracting(Rate::key).containsExactly("good", "poor");
  }

  @ParameterizedTest
  @CsvSource({
    "600.00, 650.10, 600 to 650 USD",
    "41.10, 52.90, 41 to 53 USD",
    "1234.00, 1761.00, 1240 to 1760 USD",
    "700.00, 701.00, about 700 USD",
    "0.00, 0.40, about 0 USD"
  })
  void pricesSaidOnThePhoneAreRound(String low, String high, String words) {
    assertThat(new PhonePrice("polish", THIRTY_FEET, usd(low), usd(high), List.of()).words())
        .isEqualTo(words);
  }

  /** 1 ft = 304.8 mm exactly (international yard and pound agreement, 1959). */
  @Test
  void aLengthCountsInFeetAndMetres() {
    assertThat(PriceUnit.FOOT.in(Length.ofFeet(31, 2))).isEqualByComparingTo("31.17");
    assertThat(PriceUnit.METRE.in(Length.ofMetres(9.5))).isEqualByComparingTo("9.5");
    assertThatThrownBy(() -> PriceUnit.HOUR.in(THIRTY_FEET)).hasMessageContaining("hour");
  }

  private static TimePrice.Job job(String minutes, String travel, String waiting, String pads) {
    return new TimePrice.Job(
        List.of(
            new TimePrice.Patch(
                "topsides",
                number("30"),
                number(minutes),
                Optional.of(new TimePrice.Material(number("25"), usd("40.00"))))),
        usd(pads),
        number(travel),
        usd("14.00"),
        number(waiting));
  }

  private static TimePrice.Charges charges(String hour, String least) {
    return new TimePrice.Charges(usd(hour), Optional.ofNullable(least).map(l -> usd(l)));
  }

  /** By hand: 30 m² at 12 min are 6 h; 30 m² at 25 ml are 0.75 l; 45 min way, 15 min waiting. */
  @Test
  void timeAndMaterialsAddUp() {
    TimePrice price = TimePrice.of(job("12", "45", "15", "18.00"), charges("60.00", null));
    assertThat(price.work()).isEqualTo(usd("360.00"));
    assertThat(price.products()).isEqualTo(usd("30.00"));
    assertThat(price.travel()).isEqualTo(usd("59.00"));
    assertThat(price.waiting()).isEqualTo(usd("15.00"));
    assertThat(price.total()).isEqualTo(usd("482.00"));
    assertThat(price.hours()).isEqualByComparingTo("7");
    assertThat(price.outlay()).isEqualTo(usd("62.00"));
    assertThat(price.hourEarned(price.total())).contains(usd("60.00"));
    assertThat(price.hourEarned(usd("622.00"))).contains(usd("80.00"));
    assertThat(price.hourEarned(usd("55.00"))).contains(usd("-1.00"));
  }

  @Test
  void aVisitCostsTheLeastAtLeast() {
    TimePrice.Job small =
        new TimePrice.Job(List.of(), usd("0"), number("20"), usd("0"), number("0"));
    assertThat(TimePrice.of(small, charges("60.00", "90.00")).total()).isEqualTo(usd("90.00"));
    assertThat(TimePrice.of(small, charges("60.00", "10.00")).total()).isEqualTo(usd("20.00"));
    TimePrice none =
        TimePrice.of(
            new TimePrice.Job(List.of(), usd("0"), number("0"), usd("0"), number("0")),
            charges("60.00", null));
    assertThat(none.hourEarned(usd("10.00"))).isEmpty();
    assertThatThrownBy(() -> job("-1", "0", "0", "0")).hasMessageContaining("not below 0");
  }

  private LengthPrice byLength(String low, String high) {
    return LengthPrice.of(
            List.of(rate("wide", null, null, null, low, high)),
            asked(Condition.POOR, BoatType.TRAWLER, THIRTY_FEET))
        .orElseThrow();
  }

  @Test
  void whereTheTwoAgreeNothingIsSaid() {
    TimePrice time = TimePrice.of(job("12", "45", "15", "18.00"), charges("60.00", null));
    PriceGap gap = PriceGap.of(byLength("15", "16"), time);
    assertThat(gap.byLength()).isEqualTo(usd("465.00"));
    assertThat(gap.percent()).get().isEqualTo(number("3.7"));
    assertThat(gap.reasons()).isEmpty();
  }

  /** 482 is 20 % more than 401.67 and 20 % less than 602.50. */
  @ParameterizedTest
  @CsvSource({"13.40, false", "13.38, true", "20.08, false", "20.09, true"})
  void overTwentyPercentEitherWayItSaysWhy(String foot, boolean wide) {
    TimePrice time = TimePrice.of(job("12", "45", "15", "18.00"), charges("60.00", null));
    PriceGap gap = PriceGap.of(byLength(foot, foot), time);
    assertThat(gap.reasons().isEmpty()).isEqualTo(!wide);
  }

  @Test
  void theReasonsAreTheLargePartsOfTheGapAndWhatTheRateDoesNotTellApart() {
    TimePrice time = TimePrice.of(job("12", "120", "60", "2.00"), charges("60.00", null));
    PriceGap gap = PriceGap.of(byLength("12", "12"), time);
    assertThat(gap.reasons())
        .containsExactly(
            "The price by length pays for 5.2 hours at 60.00 USD; time and waiting come to 9.0"
                + " hours.",
            "Travel and waiting are 194.00 USD of it; a length does not see them.",
            "The rate holds in any condition; this boat is in poor condition.",
            "The rate holds for any type of boat; this one is a trawler.",
            "The rate holds for any length, but longer boats have more hull to the foot.");
  }

  @Test
  void aLeastPriceIsNamedWhereItMakesTheGap() {
    TimePrice time = TimePrice.of(job("1", "0", "0", "0"), charges("60.00", "300.00"));
    PriceGap gap = PriceGap.of(byLength("5", "5"), time);
    assertThat(gap.reasons())
        .contains(
            "The least price of a visit, 300.00 USD, stands in the place of 74.00 USD that time and"
                + " materials come to.");
  }

  @Test
  void ratesRefuseWhatCannotBe() {
    assertThatThrownBy(() -> rate("x", null, null, null, "10", "9"))
        .hasMessageContaining("is under the lowest");
    assertThatThrownBy(() -> rate("x", null, null, null, "-1", "9"))
        .hasMessageContaining("below nothing");
    assertThat(
            PriceGap.of(
                    byLength("0", "0"), TimePrice.of(job("1", "0", "0", "0"), charges("60", null)))
                .percent())
        .isEmpty();
  }
}
