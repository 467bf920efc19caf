package hullalmanac.present.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.Survival;
import hullalmanac.core.life.fit.SurvivalStep;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.report.MonthWords;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.table.TableState;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shelf on the sample record. */
class ShelfPresenterTest {
  private final AtomicReference<ShelfState> state = new AtomicReference<>();
  private final ShelfPresenter presenter =
      new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner()).shelf();

  @BeforeEach
  void open() {
    presenter.onChange(state::set);
    presenter.show(OpenSample.fleet());
  }

  private static Id<Product> product(String key) {
    return OpenSample.fleet().almanac().products().stream()
        .filter(p -> p.key().equals(key))
        .findFirst()
        .orElseThrow()
        .id();
  }

  @Test
  void listsWhatIsForecastBeforeTheRest() {
    assertThat(state.get().list())
        .extracting(ShelfState.Item::status)
        .first()
        .asString()
        .startsWith("half last ");
    assertThat(state.get().list())
        .extracting(ShelfState.Item::status)
        .last()
        .isEqualTo("not forecast");
    assertThat(state.get().pages()).hasSize(1);
  }

  @Test
  void saysInWordsWhatTheRecordKnows() {
    presenter.choose(product("sealant-b"));
    ShelfState.Page page = state.get().pages().get(0);
    assertThat(page.sentence())
        .matches(
            "Of \\d+ coats \\d+ have been seen bare; half last .* months in an open slip at .*;"
                + " the label says 12 months\\.");
    assertThat(page.places()).hasSize(OpenSample.fleet().almanac().harbours().size());
    assertThat(page.picture().orElseThrow().steps()).isNotEmpty();
    assertThat(page.cautions()).anyMatch(c -> c.startsWith("Solvent: never in closed covers"));
    assertThat(page.cautions()).last().asString().contains("label and data sheet");
  }

  @Test
  void cautionsAboutAcidAndDilutesInWords() {
    presenter.choose(product("decon-acid"));
    ShelfState.Page page = state.get().pages().get(0);
    assertThat(page.picture()).isEmpty();
    assertThat(page.cautions())
        .anyMatch(c -> c.contains("Acid into water, never the other way"))
        .anyMatch(c -> c.startsWith("Never with hypochlorite") && c.contains("CDC, MMWR"));
    assertThat(page.facts()).anyMatch(f -> f.get(1).equals("1 part and 4 parts water, 5 in all"));
  }

  @Test
  void laysTwoSideBySideAndNeverOneBesideItself() {
    presenter.choose(product("sealant-b"));
    presenter.layBeside(Optional.of(product("coating-c")));
    assertThat(state.get().pages())
        .extracting(ShelfState.Page::name)
        .containsExactly("polymer sealant B", "silica coating C");
    assertThat(state.get().choices())
        .extracting(ShelfState.Item::name)
        .startsWith("nothing beside it")
        .doesNotContain("polymer sealant B");
    presenter.choose(product("coating-c"));
    assertThat(state.get().pages()).hasSize(1);
  }

  @Test
  void saysItsPictureInNumbersToo() {
    for (String key : new String[] {"sealant-b", "coating-c"}) {
      presenter.choose(product(key));
      ShelfState.Page page = state.get().pages().get(0);
      Survival picture = page.picture().orElseThrow();
      TableState seen = table(page, "What was seen");
      assertThat(seen.rows().get(0)).containsExactly("0.0", "10.0", "", "");
      assertThat(seen.rows().subList(1, seen.rows().size()))
          .isEqualTo(picture.steps().stream().map(ShelfPresenterTest::step).toList());
      TableState used = table(page, "What the forecast uses");
      double last = picture.curve().get(picture.curve().size() - 1).months();
      assertThat(used.rows().get(0)).containsExactly("0", "10.0");
      assertThat(used.rows()).hasSizeGreaterThan(8);
      for (List<String> row : used.rows()) {
        double month = Double.parseDouble(row.get(0));
        double shown = Double.parseDouble(row.get(1));
        assertThat(month).isLessThanOrEqualTo(last);
        assertThat(shown)
            .as(key + " after " + month)
            .isBetween(drawn(picture, month, false) - 0.05, drawn(picture, month, true) + 0.05);
      }
    }
    presenter.choose(product("decon-acid"));
    assertThat(state.get().pages().get(0).tables()).isEmpty();
  }

  private static TableState table(ShelfState.Page page, String name) {
    return page.tables().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> step(SurvivalStep s) {
    return List.of(
        tenth(s.until()),
        tenth(10 * s.surviving()),
        s.band().map(b -> tenth(10 * b.lower())).orElse(""),
        s.band().map(b -> tenth(10 * b.upper())).orElse(""));
  }

  private static String tenth(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** Of 10, the point of the curve on the left of a month or, lower, the one on its right. */
  private static double drawn(Survival picture, double month, boolean left) {
    return 10
        * picture.curve().stream()
            .filter(p -> left ? p.months() <= month : p.months() >= month)
            .mapToDouble(Survival.Point::surviving)
            .reduce((a, b) -> left ? b : a)
            .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, under half a month",
    "0.4, half a month",
    "1.1, 1 month",
    "1.4, 1½ months",
    "7.4, 7½ months",
    "7.1, 7 months",
    "17.6, 18 months"
  })
  void roundsMonthsToWhatTheyCarry(double months, String words) {
    assertThat(MonthWords.of(months)).isEqualTo(words);
  }
}
