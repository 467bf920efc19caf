package hullalmanac.present.settings;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.PracticeValue;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.present.Look;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each setting changes what it says, and back. */
@Tag("slow")
class SettingsTest {
  @TempDir Path folder;
  private Bench bench;
  private final AtomicReference<SettingsState> settings = new AtomicReference<>();
  private final AtomicReference<AheadState> ahead = new AtomicReference<>();

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
    bench.presenter().go(Place.SETTINGS);
    bench.presenter().settings().onChange(settings::set);
    bench.presenter().ahead().onChange(ahead::set);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Sheet page(String name) {
    SettingsState.Page page =
        settings.get().list().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    bench.presenter().settings().choose(page);
    return settings.get().sheet().orElseThrow();
  }

  private static SheetState state(Sheet sheet) {
    AtomicReference<SheetState> state = new AtomicReference<>();
    sheet.onChange(state::set);
    return state.get();
  }

  private void set(String page, String field, String text) {
    page(page).enter(new At("business", "", field), text);
  }

  private String field(String page, String id) {
    SheetState.Form form = (SheetState.Form) state(page(page)).blocks().get(0);
    return form.fields().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow().text();
  }

  @ParameterizedTest
  @CsvSource({
    "Name and letterhead, name, Tern & Tide of the Sound",
    "Name and letterhead, letterhead.taxNumber, T 120",
    "Name and letterhead, letterhead.address, Oyster Hard 2",
    "Name and letterhead, habits.paper, Letter",
    "'Money, lengths and dates', units, metres",
    "'Money, lengths and dates', dayOrder, month first",
    "'Money, lengths and dates', habits.firstDay, Sunday",
    "Reminders, habits.leadWeeks, 6",
    "Reminders, risk, 0.25"
  })
  void whatIsSetIsKeptOverARestartAndTakenBackByOneUndo(String page, String field, String text) {
    Almanac before = bench.almanac();
    String was = field(page, field);
    assertThat(was).isNotEqualTo(text);
    set(page, field, text);
    bench.close();
    bench = Bench.open(folder);
    bench.presenter().settings().onChange(settings::set);
    assertThat(field(page, field)).isEqualTo(text);
    bench.presenter().undo();
    assertThat(field(page, field)).isEqualTo(was);
    assertThat(bench.almanac()).isEqualTo(before);
  }

  private String facts(String field) {
    SheetState.Form form = (SheetState.Form) bench.state().blocks().get(0);
    return form.fields().stream()
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow()
        .text();
  }

  @Test
  void unitsSayHowALengthStandsAndHowABareNumberIsRead() {
    Boat siskin = bench.boat("Siskin");
    bench.presenter().openBoat(siskin.id());
    bench.presenter().boats().change();
    assertThat(facts("loa")).contains(" ft ");
    set("Money, lengths and dates", "units", "metres");
    assertThat(facts("loa")).endsWith(" m");
    bench.write("facts", "loa", "9.9");
    assertThat(bench.boat("Siskin").loa().orElseThrow().millimetres()).isEqualTo(9900);
    set("Money, lengths and dates", "units", "feet");
    assertThat(facts("loa")).contains(" ft ");
  }

  @Test
  void theOrderOfDayAndMonthSaysHowAShortDateIsRead() {
    Boat siskin = bench.boat("Siskin");
    bench.presenter().openBoat(siskin.id());
    bench.presenter().boats().change();
    bench.write("facts", "knownFrom", "12/5/2024");
    assertThat(bench.boat("Siskin").knownFrom()).contains(LocalDate.of(2024, 5, 12));
    set("Money, lengths and dates", "dayOrder", "month first");
    bench.write("facts", "knownFrom", "12/5/2023");
    assertThat(bench.boat("Siskin").knownFrom()).contains(LocalDate.of(2023, 12, 5));
    set("Money, lengths and dates", "dayOrder", "day first");
    bench.write("facts", "knownFrom", "12/5/2022");
    assertThat(bench.boat("Siskin").knownFrom()).contains(LocalDate.of(2022, 5, 12));
  }

  /** The record is opened on Friday, 1 May 2026. */
  @Test
  void theFirstDayOfTheWeekSaysWhichVisitsAreOfThisWeek() {
    Visit some = bench.almanac().visits().get(0);
    Visit sunday =
        With.component(
            With.component(
                With.component(some, "status", VisitStatus.PLANNED),
                "day",
                LocalDate.of(2026, 5, 3)),
            "surfaces",
            List.of());
    bench.presenter().edit("a visit on Sunday", a -> Edit.put(sunday));
    assertThat(aside("This week")).contains("Sun");
    set("Money, lengths and dates", "habits.firstDay", "Sunday");
    assertThat(aside("This week")).doesNotContain("Sun");
    assertThat(aside("Next week")).contains("Sun");
    set("Money, lengths and dates", "habits.firstDay", "Monday");
    assertThat(aside("This week")).contains("Sun");
  }

  private List<String> due() {
    return ahead.get().due().stream().map(AheadState.Row::name).toList();
  }

  private String aside(String title) {
    return ahead.get().beside().stream()
        .filter(a -> a.heading().equals(title))
        .map(a -> a.lines().toString())
        .findFirst()
        .orElse("");
  }

  @Test
  void theCurrencyStaysOnceAnInvoiceWasIssuedInIt() {
    Almanac before = bench.almanac();
    set("Money, lengths and dates", "currency", "EUR");
    assertThat(bench.almanac()).isEqualTo(before);
    assertThat(bench.shell().trouble().orElseThrow())
        .contains("Invoices were issued in USD, so the currency stays");
  }

  @Test
  void theWeeksAheadSayWhichBoatsAreDue() {
    assertThat(due()).contains("Curlew");
    assertThat(ahead.get().summary()).contains("within ten weeks");
    set("Reminders", "habits.leadWeeks", "1");
    assertThat(due()).isNotEmpty().doesNotContain("Curlew");
    assertThat(ahead.get().summary()).contains("within a week");
    set("Reminders", "habits.leadWeeks", "10");
    assertThat(due()).contains("Curlew");
    set("Reminders", "habits.leadWeeks", "53");
    assertThat(bench.almanac().business().habits().leadWeeks()).isEqualTo(10);
  }

  @Test
  void aPracticeValueShowsWhatItDoesToTheDatesAndGoesBackToItsStandard() {
    Sheet sheet = page("When to renew");
    List<AheadState.Row> before = ahead.get().due();
    sheet.enter(new At("renewal", "risk-light", "own"), "0.1");
    SheetState.Table effect = effect(sheet);
    assertThat(effect.rows()).isNotEmpty().allMatch(row -> row.get(3).endsWith("earlier"));
    assertThat(ahead.get().due()).isNotEqualTo(before);
    sheet.press("reset");
    assertThat(effect(sheet).rows()).isEmpty();
    assertThat(ahead.get().due()).isEqualTo(before);
    assertThat(bench.almanac().business().practice().own()).isEmpty();
  }

  @Test
  void aPracticeValueOutOfItsRangeIsRefusedAndStaysAsTyped() {
    Sheet sheet = page("Covers");
    sheet.enter(new At("covers", "shed", "own"), "1.5");
    SheetState.Grid grid = (SheetState.Grid) state(sheet).blocks().get(0);
    List<String> cells =
        grid.rows().stream().filter(r -> r.id().equals("shed")).findFirst().orElseThrow().cells();
    assertThat(cells.get(0)).isEqualTo("1.5");
    assertThat(sheet.say(new At("covers", "shed", "own"), "1.5").words())
        .isEqualTo("This runs from 0 to 1, not 1.5.");
    assertThat(bench.almanac().business().practice().own()).isEmpty();
    sheet.enter(new At("covers", "shed", "own"), "");
  }

  @Test
  void everyPracticeValueShowsWhereItsStandardIsFrom() {
    for (PracticeValue.Topic topic : PracticeValue.Topic.values()) {
      SheetState.Grid grid = (SheetState.Grid) state(page(topic.words())).blocks().get(0);
      assertThat(grid.rows()).hasSize(topic.all().size()).isNotEmpty();
      assertThat(grid.rows())
          .allMatch(row -> row.cells().get(4).equals("common practice, no source"));
    }
  }

  private static SheetState.Table effect(Sheet sheet) {
    return state(sheet).blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .map(SheetState.Table.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "tint, high contrast, light",
    "zoom, 150 %, 100 %",
    "wetHands, yes, no",
    "calm, yes, no"
  })
  void theLookChangesAndBackWithoutTouchingTheRecord(String field, String text, String was) {
    Almanac before = bench.almanac();
    AtomicReference<Look> look = new AtomicReference<>(Look.USUAL);
    bench
        .presenter()
        .settings()
        .seenBy(
            new Look.Looks() {
              @Override
              public Look now() {
                return look.get();
              }

              @Override
              public void become(Look other) {
                look.set(other);
              }
            });
    Sheet sheet = page("How it looks");
    sheet.enter(new At("look", "", field), text);
    assertThat(look.get()).isNotEqualTo(Look.USUAL);
    sheet.enter(new At("look", "", field), was);
    assertThat(look.get()).isEqualTo(Look.USUAL);
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void aPageIsFoundByWhatItIsAbout() {
    bench.presenter().settings().find("sun");
    assertThat(settings.get().list())
        .extracting(SettingsState.Page::name)
        .containsExactly("Covers");
    bench.presenter().settings().find("nothing such");
    assertThat(settings.get().found()).isEqualTo("Nothing is called that.");
  }
}
