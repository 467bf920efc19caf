package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Rate;
import hullalmanac.core.work.Removal;
import hullalmanac.fixture.Bench;
import hullalmanac.present.settings.SettingsState;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.takings.TakingsState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices, rates, trips, expenses and the list for the accountant, as a person meets them. */
@Tag("slow")
class PriceSheetTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private SheetState.Table table(String heading) {
    return bench.state().blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .map(SheetState.Table.class::cast)
        .filter(t -> t.heading().equals(heading))
        .findFirst()
        .orElseThrow();
  }

  private String words() {
    StringBuilder all = new StringBuilder();
    for (SheetState.Block block : bench.state().blocks()) {
      if (block instanceof SheetState.Words w) {
        all.append(w.text()).append('\n');
      }
    }
    return all.toString();
  }

  private SheetState.Field field(String form, String id) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(SheetState.Form.class::cast)
        .filter(f -> f.id().equals(form))
        .flatMap(f -> f.fields().stream())
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private void withoutRates() {
    for (Rate rate : bench.almanac().books().rates()) {
      bench.presenter().change("gone", a -> Removal.of(a, rate), () -> {});
    }
    assertThat(bench.almanac().books().rates()).isEmpty();
  }

  private void price() {
    bench.presenter().open(new PriceSheet(bench.presenter(), Optional.empty(), false));
  }

  /** Common practice, no source: a 30 ft hull costs 600 to 650 dollars. */
  @Test
  void onThePhoneALengthIsEnough() {
    withoutRates();
    price();
    assertThat(bench.state().facts()).contains("Write a length");
    bench.write("asked", "length", "30 ft");
    assertThat(bench.state().facts())
        .isEqualTo("On the phone: 600 to 650 USD for 30 ft, without taxes.");
    assertThat(words()).contains("starter value: common practice, no source");
  }

  /**
   * By hand: 24 m² at 25 minutes are 10 hours, at 60 an hour 600; 24 × 20 ml at 50 a litre 24; pads
   * 16; together 640. A 30 ft hull by length lies halfway between 600 and 650.10 at 625.05. 650.10
   * less 40 over 10 hours is 61.01 an hour.
   */
  @Test
  void bothPricesStandSideBySideWithWhatAnHourEarns() {
    withoutRates();
    price();
    bench.write("asked", "length", "30 ft");
    bench.write("asked", "condition", "fair");
    bench.write("effort", "area", "24");
    bench.write("effort", "minutes", "25");
    bench.write("effort", "hour", "60");
    bench.write("effort", "product", "20");
    bench.write("effort", "litre", "50");
    bench.write("effort", "pads", "16");
    assertThat(table("Both prices").rows())
        .containsExactly(
            List.of("By length, lowest", "600.00 USD", "56.00 USD"),
            List.of("By length, halfway", "625.05 USD", "58.51 USD"),
            List.of("By length, highest", "650.10 USD", "61.01 USD"),
            List.of("By time and materials", "640.00 USD", "60.00 USD"));
    assertThat(words()).contains("By time it is 14.95 USD (2.4 %) more than by length.");
    assertThat(words()).doesNotContain("Over 20 %");
    bench.write("effort", "waiting", "180");
    assertThat(words()).contains("Over 20 % apart, because:").contains("Travel and waiting");
  }

  @Test
  void whatCannotBeIsRefusedWithASentence() {
    price();
    bench.write("effort", "area", "-24");
    assertThat(field("effort", "area").text()).isEqualTo("-24");
    assertThat(field("effort", "area").said().words())
        .contains("An area is not below 0, so not -24");
    assertThat(field("effort", "area").said()).isNotEqualTo(Said.NOTHING);
    bench.write("effort", "area", "24");
    assertThat(field("effort", "area").said().words()).doesNotContain("below");
  }

  @Test
  void noNumberIsTooMuchToBeAnswered() {
    price();
    bench.write("asked", "length", "30 ft");
    List<String> fields =
        List.of(
            "area", "minutes", "product", "litre", "pads", "distance", "travel", "waiting", "hour");
    for (String id : fields) {
      bench.write("effort", id, "999999999999");
      assertThat(field("effort", id).said().words()).as(id).contains("is at most");
    }
    for (String id : fields) {
      String most = field("effort", id).said().words().replaceAll(".*is at most (\\d+),.*", "$1");
      bench.write("effort", id, most);
      assertThat(field("effort", id).text()).as(id).startsWith(most);
    }
    assertThat(table("Both prices").rows()).hasSize(4);
    for (String id : List.of("area", "minutes", "travel", "waiting")) {
      bench.write("effort", id, "0.000000000001");
    }
    assertThat(table("Both prices").rows()).allMatch(r -> r.get(2).isEmpty());
  }

  @Test
  void theRecordKnowsTheMeasuresOfABoatAndHowLongItTook() {
    bench
        .presenter()
        .open(new PriceSheet(bench.presenter(), Optional.of(bench.boat("Avocet").id()), false));
    assertThat(bench.state().facts()).startsWith("On the phone: ");
    assertThat(words()).contains("by rule of thumb").contains("visits with these steps");
    assertThat(table("Both prices").rows()).hasSize(4);
    Almanac before = bench.almanac();
    bench.sheet().press("estimate");
    assertThat(bench.sheet()).isInstanceOf(EstimateSheet.class);
    List<Estimate> now = bench.almanac().books().estimates();
    assertThat(now).hasSize(before.books().estimates().size() + 1);
  }

  @Test
  void ratesAreWrittenInSettingsAndTheHighestIsNeverUnderTheLowest() {
    withoutRates();
    bench.presenter().open(new RatesSheet(bench.presenter()));
    bench.sheet().press("starters");
    assertThat(bench.cell("rates", 0, "low")).isEqualTo("20.00");
    bench.write("rates", 0, "high", "19");
    assertThat(bench.almanac().books().rates().get(0).high().words()).isEqualTo("21.67 USD");
    bench.write("rates", 0, "high", "25");
    bench.write("rates", 0, "steps", "wash, polish");
    assertThat(bench.almanac().books().rates().get(0).steps()).hasSize(2);
    bench.write("rates", 0, "steps", "");
    assertThat(bench.almanac().books().rates().get(0).steps()).hasSize(2);
    assertThat(bench.almanac().books().rates().get(0).high().words()).isEqualTo("25.00 USD");
    bench.sheet().remove("rates", bench.grid("rates").rows().get(0).id());
    assertThat(bench.almanac().books().rates()).isEmpty();
  }

  @Test
  void taxesAndNumbersAreSetOnAPageOfSettings() {
    AtomicReference<SettingsState> settings = new AtomicReference<>();
    bench.presenter().go(Place.SETTINGS);
    bench.presenter().settings().onChange(settings::set);
    assertThat(settings.get().list())
        .extracting(SettingsState.Page::name)
        .contains("Prices, taxes and numbers", "Rates by length");
    bench.presenter().open(new BusinessSheet(bench.presenter(), BusinessSheet.Page.BILLING));
    bench.write("business", "billing.taxes", "sales tax 7.25, county tax 1");
    assertThat(bench.almanac().business().billing().taxes()).hasSize(2);
    bench.write("business", "billing.taxes", "sales tax 101");
    assertThat(field("business", "billing.taxes").said().words()).contains("0 to 100");
    bench.write("business", "billing.taxes", "sales tax 60, county tax 41");
    assertThat(field("business", "billing.taxes").said().words()).contains("101 %");
    assertThat(bench.almanac().business().billing().taxes()).hasSize(2);
    bench.write("business", "billing.terms.at", "each line");
    bench.write("business", "billing.numbering.invoices", "no blanks");
    assertThat(field("business", "billing.numbering.invoices").said().words())
        .contains("begins with up to 12 letters");
    assertThat(bench.almanac().business().billing().terms().at().code()).isEqualTo("line");
  }

  /** A mile is 1609.344 m exactly (international yard and pound agreement, 1959). */
  @Test
  void tripsAndExpensesAreWrittenWhereTheMoneyIs() {
    bench.presenter().go(Place.TAKINGS);
    bench.presenter().takings().choose(new TakingsState.Spending());
    bench.presenter().open(new SpendingSheet(bench.presenter()));
    Almanac before = bench.almanac();
    bench.sheet().press("trip");
    bench.sheet().press("trip");
    bench.sheet().press("expense");
    assertThat(bench.almanac()).as("nothing is invented").isEqualTo(before);
    bench.write("trips", 0, "note", "to the harbour");
    bench.write("trips", 0, "metres", "-3");
    assertThat(bench.cell("trips", 0, "metres")).isEqualTo("-3");
    assertThat(bench.almanac()).isEqualTo(before);
    String row = bench.grid("trips").rows().get(0).id();
    bench.write("trips", 0, "metres", "10");
    assertThat(bench.almanac().books().trips()).hasSize(before.books().trips().size() + 1);
    assertThat(bench.almanac().books().trips())
        .anyMatch(t -> t.metres() == 16093 && t.note().equals("to the harbour"));
    assertThat(bench.grid("trips").rows().get(0).id()).as("one stays in it").isEqualTo(row);
    assertThat(bench.cell("trips", 0, "metres")).isEqualTo("10");
    bench.write("trips", 0, "metres", "10.04");
    assertThat(bench.cell("trips", 0, "metres")).isEqualTo("10");
    bench.write("trips", 0, "metres", "10");
    assertThat(bench.almanac().books().trips())
        .as("the text is rounded, the way is not")
        .anyMatch(t -> t.metres() == 16158);
    bench.write("expenses", 0, "what", "foam pads");
    assertThat(bench.almanac().books().expenses()).isEqualTo(before.books().expenses());
    bench.write("expenses", 0, "amount", "30");
    bench.write("expenses", 0, "tax", "31");
    assertThat(bench.almanac().books().expenses())
        .anyMatch(
            e ->
                e.what().equals("foam pads")
                    && e.amount().words().equals("30.00 USD")
                    && e.tax().isEmpty());
    bench.sheet().remove("expenses", bench.grid("expenses").rows().get(0).id());
    assertThat(bench.almanac().books().expenses()).noneMatch(e -> e.what().equals("foam pads"));
  }

  @Test
  void theListForTheAccountantIsWrittenBesideTheRecord() throws IOException {
    bench.presenter().open(new AccountantSheet(bench.presenter()));
    bench.write("span", "from", "2026-03-01");
    bench.write("span", "to", "2026-02-01");
    bench.sheet().press("write");
    assertThat(bench.state().trouble()).get().asString().contains("is before the first");
    bench.write("span", "to", "2026-04-30");
    bench.sheet().press("write");
    Path file;
    try (var files = Files.walk(folder)) {
      file =
          files
              .filter(f -> f.toString().endsWith("accounts-2026-03-01-to-2026-04-30.csv"))
              .findFirst()
              .orElseThrow();
    }
    assertThat(words()).contains(file.toString());
    assertThat(Files.readString(file))
        .contains("35.000")
        .contains("186.00")
        .doesNotContain("2025-");
    try (var files = Files.list(file.getParent())) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void aRateThatHoldsForAnyBoatStillNeedsAService() {
    Almanac before = bench.almanac();
    bench.presenter().open(new RatesSheet(bench.presenter()));
    bench.write("rates", 0, "service", "");
    assertThat(bench.almanac()).isEqualTo(before);
  }
}
