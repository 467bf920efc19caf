package hullalmanac.present.reckoner;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.sheet.SheetState.Answer;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The small sums as sheets, on the sample at 09:00 on 1 May 2026. They get no way to change the
 * record: a desk that only knows the time.
 */
class ReckonerTest {
  private static final Almanac SAMPLE = OpenSample.fleet().almanac();

  private final AtomicReference<ReckonerState> state = new AtomicReference<>();
  private final ReckonerPresenter reckoner = new ReckonerPresenter(atNine());

  /** A desk of which nothing but its clock is used. */
  private static Desk atNine() {
    InvocationHandler clock =
        (desk, method, arguments) -> {
          if (method.getName().equals("now")) {
            return ZonedDateTime.parse("2026-05-01T09:00Z");
          }
          throw new UnsupportedOperationException(method.getName());
        };
    return (Desk)
        Proxy.newProxyInstance(Desk.class.getClassLoader(), new Class<?>[] {Desk.class}, clock);
  }

  @BeforeEach
  void open() {
    reckoner.show(OpenSample.fleet());
    reckoner.onChange(state::set);
  }

  private void choose(String name) {
    List<String> names = state.get().list().stream().map(ReckonerState.Item::name).toList();
    reckoner.choose(names.indexOf(name));
    assertThat(state.get().list().get(state.get().chosen()).name()).isEqualTo(name);
  }

  private void write(String field, String text) {
    state.get().sheet().enter(new At(Calculator.GIVEN, "", field), text);
  }

  private Said say(String field, String text) {
    return state.get().sheet().say(new At(Calculator.GIVEN, "", field), text);
  }

  private SheetState shown() {
    AtomicReference<SheetState> shown = new AtomicReference<>();
    state.get().sheet().onChange(shown::set);
    return shown.get();
  }

  private <B> Stream<B> blocks(Class<B> kind) {
    return shown().blocks().stream().filter(kind::isInstance).map(kind::cast);
  }

  private Answer answer(String id) {
    return blocks(Answer.class).filter(a -> a.id().equals(id)).findFirst().orElseThrow();
  }

  private String words() {
    return String.join("\n", blocks(SheetState.Words.class).map(SheetState.Words::text).toList());
  }

  @Test
  void aDilutionIsSaidInWordsWithWaterFirst() {
    choose("Dilution");
    assertThat(answer("parts").text()).isEmpty();
    write("water", "10");
    assertThat(answer("parts").text()).isEqualTo("1 part and 10 parts water, 11 in all");
    assertThat(answer("bottle").text()).isEmpty();
    write("bottle", "1 l");
    assertThat(answer("bottle").text()).isEqualTo("0.909 l water, then 0.0909 l product");
    write("bottle", "1000 ml");
    assertThat(answer("bottle").copy()).isEqualTo("909.09 ml water, then 90.91 ml product");
    assertThat(words())
        .contains("30.74 us fl oz water, 3.07 us fl oz product")
        .contains("Acid into water, never the other way")
        .contains("label")
        .doesNotContain("1:10");
    write("strength", "5");
    assertThat(answer("bottle").text()).isEmpty();
    assertThat(words()).contains("empty the other");
    write("water", "");
    assertThat(answer("parts").text()).isEqualTo("1 part and 19 parts water, 20 in all");
  }

  @Test
  void aDilutionComesFromTheLabelWithTheProductsCautions() {
    choose("Dilution");
    String product =
        SAMPLE.products().stream()
            .filter(p -> p.handling().partsWater().isPresent())
            .findFirst()
            .orElseThrow()
            .name();
    write("product", product);
    assertThat(answer("parts").text()).contains(" parts water, ");
    String acid =
        SAMPLE.products().stream()
            .filter(p -> p.hazards().contains(hullalmanac.core.record.Hazard.ACID))
            .findFirst()
            .orElseThrow()
            .name();
    write("product", acid);
    assertThat(words()).contains("Never with hypochlorite");
  }

  /** By hand: 27.5 m² twice at 10 m² a litre and a tenth more are 6.05 l, in 500 ml 13 bottles. */
  @Test
  void spreadCountsBottles() {
    choose("Spread");
    write("area", "27.5 m2");
    write("coats", "2");
    assertThat(words()).contains("Write the area and the spread rate");
    write("rate", "10 m2/l");
    assertThat(answer("volume").text()).isEqualTo("6.05 l · 1.6 us gal");
    assertThat(answer("bottles").text()).isEmpty();
    write("size", "500 ml");
    assertThat(answer("bottles").text()).isEqualTo("13 bottles of 500 ml");
    assertThat(words()).contains("Left over: 450 ml · 15.22 us fl oz.");
    write("coats", "0");
    assertThat(answer("volume").text()).isEmpty();
    assertThat(words()).contains("Coats run from 1 to 99, not 0.");
  }

  /** Worked by hand from the rules: LOA 9.5, B 3.0, F 1.1, LWL 8.5, D 0.6 m, motor boat. */
  @Test
  void areasComeByRules() {
    choose("Area");
    write("loa", "9.5 m");
    write("beam", "3 m");
    assertThat(answer("deck").text()).isEqualTo("230.08 ft² · 21.38 m²");
    assertThat(words()).contains("freeboard for the topsides");
    write("freeboard", "1.1 m");
    write("waterline", "8.5 m");
    write("draught", "0.6 m");
    write("form", "motor");
    assertThat(answer("topsides").text()).endsWith("· 27.5 m²");
    assertThat(answer("bottom").text()).endsWith("· 26.01 m²");
    write("share", "0.5");
    assertThat(answer("bottom").text()).endsWith("· 15.3 m²");
  }

  @Test
  void aBoatFillsInWhatIsLeftEmpty() {
    choose("Area");
    write("boat", "Siskin");
    assertThat(SAMPLE.boats().stream().filter(b -> b.name().equals("Siskin")))
        .allSatisfy(b -> assertThat(b.beam()).isPresent());
    assertThat(answer("deck").text()).isNotEmpty();
    String hers = answer("deck").text();
    write("beam", "9 m");
    assertThat(answer("deck").text()).isNotEqualTo(hers);
  }

  /** Barrass and Derrett, chapter 10: 1207 m² for the whole waterline. */
  @Test
  void areaByStationsAgreesWithTheTextbook() {
    choose("Area by stations");
    write("spacing", "20 m");
    write("girths", "0 3.7 5.9 7.6 7.5 4.6 0.1");
    double metres = Double.parseDouble(answer("area").text().replaceAll(".*· (.*) m²", "$1"));
    double inFeet = 1206.666667 * 0.3048;
    assertThat(metres).isCloseTo(inFeet, org.assertj.core.api.Assertions.within(0.005));
    write("girths", "1 2 3 4");
    assertThat(words()).contains("odd number of stations, at least 3, not 4");
    assertThat(say("girths", "1 x 3").refused()).isTrue();
    assertThat(say("girths", "1 2 3").words()).isEqualTo("3 stations");
  }

  @Test
  void dewPointFromHumidityOrAWetThermometer() {
    choose("Dew point");
    write("air", "68f");
    write("humidity", "50");
    assertThat(answer("dew").text()).isEqualTo("9.3 °C · 48.7 °F");
    write("wet", "15");
    assertThat(words()).contains("empty the other");
    write("humidity", "");
    assertThat(answer("dew").text()).startsWith("11.6 °C");
    assertThat(answer("humidity").text()).isEqualTo("58.6 %");
    write("wet", "21");
    assertThat(words()).contains("The wet thermometer shows 0 °C up to the dry one's");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ZZZ12345A818 | Built January 2018, model year 2018",
        "us-zzz12345a818 | Built January 2018, model year 2018",
        "ZZZ54321M78A | Built August 1977, model year 1978",
        "ZZZ12I45A818 | Not a hull number: character 6 is I; a serial has no I, O or Q",
        "ZZZ12345A81 | Not a hull number: it has 11 characters; a hull number has 12"
      })
  void aHullNumberIsRead(String typed, String said) {
    choose("Hull number");
    write("number", typed);
    assertThat(answer("number").text()).isEqualTo(said);
    assertThat(blocks(SheetState.Table.class).findFirst().orElseThrow().rows().isEmpty())
        .isEqualTo(said.startsWith("Not"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "32 ft 6 in | 32 ft 6 in = 9.9060 m",
        "1 us gal | 1 us gal = 3.78541 l",
        "100 f | 100 °F = 37.7778 °C",
        "5 mil | 5 mil = 127 µm",
        "400 ft2/us gal | 400 ft²/us gal = 9.81695 m²/l",
        "35 psi | 35 psi = 2.41317 bar"
      })
  void unitsAreConverted(String typed, String said) {
    choose("Units");
    write("what", typed);
    assertThat(answer("units").text()).isEqualTo(said);
    assertThat(said).endsWith(answer("units").copy());
    assertThat(shown().blocks().get(0).toString()).contains("text=" + typed);
  }

  @Test
  void unitsAreListedAndTheUnclearRefused() {
    choose("Units");
    write("what", "1 us gal");
    assertThat(blocks(SheetState.Table.class).findFirst().orElseThrow().rows())
        .contains(List.of("128 us fl oz"), List.of("0.832674 imp gal"))
        .hasSize(9);
    assertThat(say("what", "1 gal").refused()).isTrue();
    write("what", "1 gal");
    assertThat(answer("units").text()).isEqualTo("1 us gal = 3.78541 l");
  }

  /** Common practice, no source: 650 US dollars for 30 ft are 21.67 a foot. */
  @Test
  void aPriceGoesFromTheWholeToAFootAndBack() {
    choose("Price per foot");
    write("length", "30 ft");
    write("amount", "650");
    assertThat(answer("foot").text()).isEqualTo("21.67 USD");
    assertThat(answer("metre").copy()).isEqualTo("71.08");
    write("per", "a foot");
    write("amount", "21.67");
    assertThat(answer("total").text()).isEqualTo("650.10 USD");
    assertThat(answer("total").label()).isEqualTo("30 ft");
  }

  @Test
  void theWindowOpensClosesAndGoesStale() {
    choose("Coating window");
    write("air", "20");
    write("humidity", "50");
    write("surface", "13.4");
    assertThat(answer("now").text()).isEqualTo("Surface 4.1 °C above the dew point, open");
    assertThat(answer("step").copy()).isEqualTo("20 50 13.4 09:00");
    assertThat(words()).contains("The reading is good until 11:00.");
    write("at", "7:00");
    assertThat(answer("now").text()).endsWith("open");
    write("at", "6:59");
    assertThat(answer("now").text())
        .isEqualTo("Closed: the reading is older than two hours; take another");
    write("at", "");
    write("sun", "yes");
    assertThat(answer("now").text()).isEqualTo("Closed: the sun is on the surface; wait for shade");
  }

  @Test
  void theWindowKeepsALabelsLimitsAndSaysHowLongToKeepDry() {
    choose("Coating window");
    String name =
        SAMPLE.products().stream()
            .filter(p -> p.handling().maxCelsius().equals(java.util.Optional.of(30)))
            .filter(p -> p.handling().cureHours().isPresent())
            .findFirst()
            .orElseThrow()
            .name();
    write("product", name);
    write("air", "25");
    write("wet", "18");
    write("surface", "25");
    assertThat(answer("now").text()).endsWith("open");
    assertThat(words()).contains("it is to stay dry for");
    write("surface", "31");
    assertThat(answer("now").text())
        .isEqualTo("Closed: the surface has 31 °C; the label allows at most 30 °C");
    assertThat(words()).doesNotContain("it is to stay dry for");
  }

  private SheetState.Grid hours() {
    return blocks(SheetState.Grid.class).findFirst().orElseThrow();
  }

  private static List<List<String>> lines(String text) {
    return text.lines().map(l -> Arrays.asList(l.split("\t", -1))).toList();
  }

  private static final String DAY =
      """
      9:00\t16\t70\t12
      10:30\t20\t50\t13
      12:00\t20\t50\t16
      13:30\t20\t50\t18
      15:00\t20\t50\t14
      16:30\t20\t50\t12
      """;

  /** At 20 °C and 50 % the dew point is 9.26 °C; 13 °C is 3.7 °C above it, 12 °C only 2.7 °C. */
  @ParameterizedTest
  @ValueSource(strings = {"\t", " ", ";"})
  void readingsArePastedByTheHour(String parted) {
    choose("Coating window");
    state.get().sheet().paste(new At(HourTable.ID, "0", "at"), lines(DAY.replace("\t", parted)));
    assertThat(answer("day").text()).isEqualTo("Open from 10:30 to 15:00");
    assertThat(hours().rows().get(1).cells())
        .containsExactly("10:30", "20 °C", "50", "13 °C", "3.7 °C", "open");
    assertThat(hours().rows().get(5).cells().get(5))
        .startsWith("closed: the surface is 2.7 °C above the dew point");
    assertThat(hours().rows()).hasSize(8);
  }

  @Test
  void theTableGrowsKeepsWhatItRefusesAndIsEmptied() {
    choose("Coating window");
    StringBuilder many = new StringBuilder();
    for (int hour = 0; hour < 12; hour++) {
      many.append(hour + 6).append(":00\t20\t50\t").append(hour == 3 ? "wet" : "15").append('\n');
    }
    state.get().sheet().paste(new At(HourTable.ID, "0", "at"), lines(many.toString()));
    assertThat(hours().rows()).hasSize(16);
    assertThat(words()).contains("1 of the pasted texts were not taken");
    assertThat(hours().rows().get(3).cells()).contains("wet", "needs surface");
    assertThat(answer("day").text()).isEqualTo("Open from 06:00 to 17:00");
    state.get().sheet().remove(HourTable.ID, "0");
    assertThat(answer("day").text()).isEqualTo("Open from 07:00 to 17:00");
    state.get().sheet().press("empty");
    assertThat(hours().rows()).hasSize(8).allMatch(r -> r.cells().get(0).isEmpty());
    assertThat(answer("day").text()).isEmpty();
  }

  @Test
  void blankLinesKeepTheirRows() {
    choose("Coating window");
    state.get().sheet().paste(new At(HourTable.ID, "0", "at"), lines(DAY));
    List<List<String>> blank = List.of(List.of(""), List.of(""));
    state.get().sheet().paste(new At(HourTable.ID, "1", "humidity"), blank);
    assertThat(hours().rows().get(1).cells().get(5)).isEqualTo("needs humidity");
    assertThat(hours().rows().get(2).cells().get(2)).isEmpty();
    assertThat(hours().rows().get(3).cells().get(2)).isEqualTo("50");
    assertThat(answer("day").text()).isEqualTo("Open from 13:30 to 15:00");
  }

  @Test
  void dewWithinTheTimeToStayDryIsForetold() {
    choose("Coating window");
    String name =
        SAMPLE.products().stream()
            .filter(p -> p.handling().cureHours().filter(h -> h >= 6 && h <= 48).isPresent())
            .findFirst()
            .orElseThrow()
            .name();
    write("product", name);
    String day = "10:00\t20\t50\t15\n12:00\t20\t50\t15\n16:00\t20\t50\t9\n";
    state.get().sheet().paste(new At(HourTable.ID, "0", "at"), lines(day));
    assertThat(answer("day").text()).isEqualTo("Open from 10:00 to 12:00");
    assertThat(words()).contains("Dew forms at 16:00; what is to stay dry for");
  }

  @Test
  void valuesStayWhileAnotherSumIsShown() {
    choose("Dilution");
    write("water", "10");
    choose("Spread");
    write("area", "nonsense");
    choose("Dilution");
    assertThat(answer("parts").text()).startsWith("1 part and 10");
    choose("Spread");
    assertThat(((SheetState.Form) shown().blocks().get(0)).fields().get(0))
        .satisfies(
            f -> {
              assertThat(f.text()).isEqualTo("nonsense");
              assertThat(f.said().refused()).isTrue();
            });
  }

  @Test
  void resultsAreShownWhileOneTypes() {
    choose("Dilution");
    AtomicReference<SheetState> seen = new AtomicReference<>();
    state.get().sheet().onChange(seen::set);
    say("water", "4");
    assertThat(seen.get().toString()).contains("1 part and 4 parts water, 5 in all");
    assertThat(answer("parts").text()).as("only shown, not yet taken").isEmpty();
  }

  /** What a field shows must be read back as the same, for every sum as it is filled in here. */
  @Test
  void whatAFieldShowsReadsBackAsTheSame() {
    List<Calculator<?>> sums =
        List.of(
            new DilutionSheet(),
            new SpreadSheet(),
            new AreaSheet(),
            new StationsSheet(),
            new CoatingSheet(atNine()),
            new DewPointSheet(),
            new HullNumberSheet(),
            new UnitsSheet(),
            new PriceSheet());
    List<String> texts =
        List.of("7", "7.5 m", "27.5 m2", "3 l", "10 m2/l", "18.5 c", "1000 hpa", "ZZZ12345A818");
    for (Calculator<?> sum : sums) {
      AtomicReference<SheetState> seen = new AtomicReference<>();
      sum.onChange(seen::set);
      sum.show(OpenSample.fleet());
      for (String text : texts) {
        for (SheetState.Field field : ((SheetState.Form) seen.get().blocks().get(0)).fields()) {
          At at = new At(Calculator.GIVEN, "", field.id());
          if (!sum.say(at, text).refused()) {
            sum.enter(at, text);
            String now = text(seen.get(), field.id());
            sum.enter(at, now);
            assertThat(text(seen.get(), field.id())).as(sum.item() + field.id()).isEqualTo(now);
          }
        }
      }
    }
  }

  private static String text(SheetState state, String field) {
    return ((SheetState.Form) state.blocks().get(0))
        .fields().stream().filter(f -> f.id().equals(field)).findFirst().orElseThrow().text();
  }

  @Test
  void eachSumSaysItsFormulaAndSource() {
    for (ReckonerState.Item item : state.get().list()) {
      choose(item.name());
      assertThat(words()).as(item.name()).contains("Source: ");
    }
  }
}
