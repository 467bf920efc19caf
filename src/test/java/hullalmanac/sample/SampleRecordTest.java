package hullalmanac.sample;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.service.Fleet;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleRecordTest {
  private static final Path SAMPLE = Path.of("sample-db");
  private static SampleRecord sample;

  @BeforeAll
  static void make() {
    sample = SampleRecord.make();
  }

  private static RecordService.Surroundings surroundings() {
    return new RecordService.Surroundings(Clock.systemUTC(), new Random(1)::nextLong, "test", 1);
  }

  @Test
  void generatorListsAndReadyRecordAgree(@TempDir Path scratch) throws Exception {
    Map<String, String> texts = CsvSet.texts(sample.almanac(), true);
    for (Map.Entry<String, String> file : texts.entrySet()) {
      assertThat(SAMPLE.resolve("csv").resolve(file.getKey())).content().isEqualTo(file.getValue());
    }
    Path folder = scratch.resolve("sample");
    SampleService.write(folder);
    try (RecordService record = RecordService.openReadOnly(folder, surroundings())) {
      assertThat(CsvSet.texts(record.almanac(), true)).isEqualTo(texts);
    }
    for (Map.Entry<String, byte[]> photo : sample.photos().entrySet()) {
      assertThat(folder.resolve("photos").resolve(photo.getKey()))
          .hasBinaryContent(photo.getValue());
    }
  }

  @Test
  void keepsTheRulesBetweenRows() {
    assertThat(RecordRules.problems(Almanac.empty(Business.unnamed()), sample.almanac())).isEmpty();
  }

  @Test
  void isAsLargeAsItsReadmeSays() throws Exception {
    Almanac a = sample.almanac();
    String readme = Files.readString(SAMPLE.resolve("README.md"));
    assertThat(readme)
        .contains(
            a.boats().size() + " boats",
            a.parties().size() + " parties",
            a.surfaces().size() + " surfaces",
            a.visits().size() + " visits",
            a.coats().size() + " coats",
            a.findings().size() + " findings",
            a.photos().size() + " drawn pictures");
    assertThat(Files.size(SAMPLE.resolve("record/almanac.db"))).isLessThan(5_000_000);
  }

  @Test
  void showsEveryKindOfThing() {
    Almanac a = sample.almanac();
    assertThat(a.findings().stream().map(Finding::entered)).contains(Entered.values());
    assertThat(a.findings().stream().map(Finding::state))
        .contains(
            SurfaceState.DIRTY,
            SurfaceState.WASHED,
            SurfaceState.WAXY_SOAP,
            SurfaceState.DECONTAMINATED);
    assertThat(a.visits().stream().map(Visit::why)).contains(VisitWhy.values());
    assertThat(a.visits().stream().map(Visit::status)).contains(VisitStatus.values());
    assertThat(a.berths().stream().map(b -> b.cover())).contains(Cover.values());
    assertThat(a.coats().stream().flatMap(c -> c.ending().stream()).map(Coat.Ending::seen))
        .contains(EndState.values());
    Map<Object, ProductKind> kinds =
        a.products().stream().collect(Collectors.toMap(Product::id, Product::kind));
    List<ProductKind> protecting =
        Arrays.stream(ProductKind.values()).filter(ProductKind::protects).toList();
    assertThat(a.coats().stream().map(c -> kinds.get(c.product()))).containsAll(protecting);
    assertThat(a.coats()).anyMatch(c -> c.over().isPresent());
    assertThat(a.duties()).isNotEmpty();
    assertThat(a.parties()).anyMatch(p -> p.risk().isPresent());
  }

  @Test
  void showsEveryOutcome() {
    Fleet fleet = Fleet.of(sample.almanac(), Draft.AS_OF);
    List<Class<?>> outcomes =
        fleet.coats().stream()
            .map(CoatForecast::outcome)
            .<Class<?>>map(Object::getClass)
            .distinct()
            .toList();
    assertThat(outcomes)
        .contains(
            Outcome.Dated.class,
            Outcome.AlreadyLapsed.class,
            Outcome.NotForecast.class,
            Outcome.TooFarAhead.class);
    assertThat(fleet.coats().stream().anyMatch(f -> byInterval(f.outcome()))).isTrue();
    assertThat(fleet.coats().stream().filter(f -> f.outcome() instanceof Outcome.Dated))
        .hasSizeGreaterThan(100);
    assertThat(fleet.coats().stream().anyMatch(f -> moved(f.outcome()))).isTrue();
  }

  private static boolean byInterval(Outcome outcome) {
    return outcome instanceof Outcome.NotForecast n && n.byInterval().isPresent();
  }

  private static boolean moved(Outcome outcome) {
    return outcome instanceof Outcome.Dated d && d.workBy().isBefore(d.renewBy());
  }
}
