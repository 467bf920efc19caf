package hullalmanac.study.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SecondLawTest {
  private static final double SHARE_OF_LABEL = 0.5;

  private static SecondLaw.Plan plan(long seed, int boats, int seasons) {
    return new SecondLaw.Plan(seed, boats, seasons, false, true);
  }

  private static SecondLaw.Fleet fleet(SecondLaw.Plan plan) {
    return new SecondLaw(plan).run(SecondLawTest::halfWay);
  }

  /** Renews at half of what the label says. */
  private static Set<Id<Coat>> halfWay(Almanac soFar, LocalDate day) {
    Map<Id<Product>, Product> products =
        soFar.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    return soFar.coats().stream()
        .filter(c -> c.ending().isEmpty())
        .filter(
            c -> {
              double label = products.get(c.product()).labelMonths().orElseThrow();
              long age = ChronoUnit.DAYS.between(c.since(), day);
              return age > SHARE_OF_LABEL * label * Make.DAYS_A_MONTH;
            })
        .map(Coat::id)
        .collect(Collectors.toSet());
  }

  @Test
  void radiationIsThatOfThePublishedExample() {
    // FAO Irrigation and Drainage Paper 56, example 8: 3 September at 20° S
    assertThat(Sun.extraterrestrial(-20, 246)).isCloseTo(32.2, within(0.05));
  }

  @Test
  void oneSeedGivesOneFleet() {
    assertThat(fleet(plan(5, 40, 4))).isEqualTo(fleet(plan(5, 40, 4)));
    assertThat(fleet(plan(5, 40, 4))).isNotEqualTo(fleet(plan(6, 40, 4)));
  }

  @Test
  void rowsReferToRowsThatAreThere() {
    SecondLaw.Fleet fleet = fleet(plan(7, 120, 5));
    assertRefers(fleet.almanac());
    assertThat(fleet.lapsed().keySet())
        .isEqualTo(ids(fleet.almanac().coats(), Coat::id))
        .isEqualTo(fleet.lives().keySet());
  }

  private static void assertRefers(Almanac a) {
    var boats = ids(a.boats(), b -> b.id());
    var surfaces = ids(a.surfaces(), s -> s.id());
    var visits = ids(a.visits(), v -> v.id());
    var products = ids(a.products(), p -> p.id());
    var harbours = ids(a.harbours(), h -> h.id());
    assertThat(boats).containsAll(ids(a.surfaces(), s -> s.boat()));
    assertThat(boats).containsAll(ids(a.berths(), b -> b.boat()));
    assertThat(harbours).containsAll(ids(a.berths(), b -> b.harbour()));
    assertThat(boats).containsAll(ids(a.visits(), v -> v.boat()));
    assertThat(visits).containsAll(ids(a.steps(), s -> s.visit()));
    assertThat(surfaces).containsAll(ids(a.coats(), c -> c.surface()));
    assertThat(surfaces).containsAll(ids(a.findings(), f -> f.surface()));
    assertThat(products).containsAll(ids(a.coats(), c -> c.product()));
    a.visits().forEach(v -> v.surfaces().forEach(p -> assertThat(surfaces).contains(p.surface())));
    a.steps().forEach(s -> assertThat(surfaces).containsAll(s.surfaces()));
    a.steps().forEach(s -> s.product().ifPresent(p -> assertThat(products).contains(p)));
    a.coats().forEach(c -> c.visit().ifPresent(v -> assertThat(visits).contains(v)));
    a.findings().forEach(f -> assertThat(visits).contains(f.visit().orElseThrow()));
    assertThat(RecordRules.problems(Almanac.empty(Business.unnamed()), a)).isEmpty();
  }

  private static <T, R> Set<R> ids(List<T> rows, Function<T, R> id) {
    return rows.stream().map(id).collect(Collectors.toSet());
  }

  @Test
  void eachSurfaceHasOneCoatInServiceAndFindingsOfItsOwn() {
    Almanac almanac = fleet(plan(8, 100, 4)).almanac();
    List<Coat> serving = almanac.coats().stream().filter(c -> c.ending().isEmpty()).toList();
    assertThat(serving).hasSameSizeAs(almanac.surfaces());
    assertThat(ids(serving, Coat::surface)).isEqualTo(ids(almanac.surfaces(), s -> s.id()));
    Set<String> keys = new HashSet<>(ids(almanac.visits(), v -> v.key()));
    assertThat(keys).hasSameSizeAs(almanac.visits());
    assertThat(almanac.visits()).anyMatch(v -> v.why() == VisitWhy.COMPLAINT);
    assertThat(almanac.coats()).anyMatch(c -> c.knownFrom().isPresent());
    assertThat(almanac.findings()).anyMatch(f -> f.seen() instanceof Observation.GlossRead);
    assertThat(almanac.findings()).anyMatch(f -> f.state() == SurfaceState.DIRTY);
  }

  @Test
  void aQueryKnowsNothingOfItsDayAndLater() {
    List<LocalDate> asked = new ArrayList<>();
    SecondLaw.Fleet fleet =
        new SecondLaw(plan(9, 60, 3))
            .run(
                (soFar, day) -> {
                  asked.add(day);
                  assertThat(soFar.visits()).allMatch(v -> v.day().isBefore(day));
                  assertThat(soFar.findings()).allMatch(f -> f.day().isBefore(day));
                  assertThat(soFar.coats()).allMatch(c -> c.since().isBefore(day));
                  assertThat(soFar.boats()).allMatch(b -> b.knownFrom().get().isBefore(day));
                  return halfWay(soFar, day);
                });
    assertThat(asked).startsWith(LocalDate.of(2020, 5, 1), LocalDate.of(2020, 7, 1));
    assertThat(asked).allMatch(d -> !d.isAfter(fleet.asOf()));
    assertThat(fleet.asOf()).isBetween(LocalDate.of(2022, 3, 1), LocalDate.of(2023, 2, 28));
  }

  @Test
  void halfOfTheLivesAreLongerThanTheMedian() {
    Trade trade = new SecondLaw(plan(10, 500, 6)).lived(SecondLawTest::halfWay);
    for (Make make : trade.world().makes()) {
      double[] lives =
          trade.coats().stream()
              .filter(c -> c.skin().make().equals(make))
              .mapToDouble(c -> c.nature().life() / c.skin().boatEffect())
              .sorted()
              .toArray();
      assertThat(lives).hasSizeGreaterThan(300);
      double median = lives[lives.length / 2];
      assertThat(median / make.medianDays()).isCloseTo(1, within(0.10));
    }
  }

  @Test
  void aCoatLapsesWhenItsDoseReachesItsLife() {
    Trade trade = new SecondLaw(plan(11, 80, 4)).lived(SecondLawTest::halfWay);
    List<TrueCoat> lapsing = trade.coats().stream().filter(c -> c.lapse() != Wear.NEVER).toList();
    assertThat(lapsing).hasSizeGreaterThan(trade.coats().size() / 2);
    assertThat(lapsing).allMatch(c -> c.spent(c.lapse()) >= 1 && c.spent(c.lapse() - 1) < 1);
  }

  @Test
  void coatsMetInServiceWereAlive() {
    SecondLaw.Fleet fleet = fleet(plan(12, 400, 4));
    List<Coat> met =
        fleet.almanac().coats().stream().filter(c -> c.knownFrom().isPresent()).toList();
    assertThat(met).hasSizeGreaterThan(20);
    assertThat(met).allMatch(c -> fleet.lapsed().get(c.id()).isAfter(c.knownFrom().get()));
    assertThat(met)
        .allMatch(
            c -> {
              long age = ChronoUnit.DAYS.between(c.laidOn().get(), c.knownFrom().get());
              return age >= 20 && age <= 150;
            });
  }

  @Test
  void aFleetWithoutGlossIsTheSameButForGloss() {
    SecondLaw.Fleet with = fleet(new SecondLaw.Plan(13, 80, 3, true, true));
    SecondLaw.Fleet without = fleet(new SecondLaw.Plan(13, 80, 3, true, false));
    assertThat(without.almanac().findings())
        .allMatch(f -> f.seen() instanceof Observation.WaterSeen);
    assertThat(without.almanac().visits()).hasSameSizeAs(with.almanac().visits());
    assertThat(without.lives().values()).containsExactlyElementsOf(with.lives().values());
  }

  @Test
  void honestLabelsClaimTheTrueMedian() {
    Trade trade =
        new SecondLaw(new SecondLaw.Plan(14, 1, 1, true, true)).lived((soFar, day) -> Set.of());
    for (Make make : trade.world().makes()) {
      double label = make.product().labelMonths().orElseThrow();
      assertThat(label * Make.DAYS_A_MONTH).isCloseTo(make.medianDays(), within(1e-9));
    }
  }

  @Test
  void waterTellsTheTruthAsOftenAsItShould() {
    assertThat(Eye.chanceOfFlat(0.5, 0.88)).isCloseTo(0.12, within(1e-12));
    assertThat(Eye.chanceOfFlat(1, 0.88)).isCloseTo(0.5, within(1e-12));
    assertThat(Eye.chanceOfFlat(1.5, 0.88)).isCloseTo(0.88, within(1e-12));
    assertThat(Eye.chanceOfFlat(0, 0.95)).isCloseTo(0.05, within(1e-12));
    List<Finding> easy =
        fleet(plan(15, 60, 3)).almanac().findings().stream()
            .filter(f -> f.entered() == Entered.TWO_TOUCH)
            .toList();
    assertThat(easy)
        .isNotEmpty()
        .allMatch(f -> f.seen().equals(new Observation.WaterSeen(WaterBehaviour.BEADS)));
  }

  @Test
  void practiceWearsAReferenceDayInTheReferenceSun() {
    Law law = Law.ofPractice();
    double sun = law.sunWeight(Cover.OPEN, Attitude.UPRIGHT);
    double wet = law.wetness(Water.SALT);
    assertThat(Law.daily(1, sun, wet)).isCloseTo(1, within(1e-12));
    assertThat(Law.daily(1, 0, 0)).isCloseTo(0.03, within(1e-12));
  }
}
