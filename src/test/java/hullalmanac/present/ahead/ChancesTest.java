package hullalmanac.present.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.table.TableState;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The rings of Ahead in words and as a table. */
class ChancesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 11);

  private static Chances chances(String... days) {
    return new Chances(
        Stream.of(days)
            .map(d -> d.isEmpty() ? Optional.<LocalDate>empty() : Optional.of(d(d)))
            .toList(),
        TODAY);
  }

  private static LocalDate d(String day) {
    return LocalDate.parse(day);
  }

  @Test
  void saysHowManyChancesLieInEachMonth() {
    Chances chances =
        chances(
            "2026-04-30",
            "2026-05-10",
            "2026-05-11",
            "2026-05-31",
            "2026-07-01",
            "2027-01-20",
            "2027-04-30",
            "2027-05-01",
            "");
    assertThat(chances.words())
        .isEqualTo(
            "2 in 20 before today, 2 in May, 1 in July, 1 in January 2027, 1 in April 2027,"
                + " 2 after April 2027");
  }

  @Test
  void aFixedDateHasNoChances() {
    assertThat(chances().words()).isEmpty();
  }

  @Property(tries = 300)
  void everyChanceIsCountedOnce(
      @ForAll @Size(20) List<@IntRange(min = -400, max = 900) Integer> ahead) {
    Chances chances =
        new Chances(
            ahead.stream().map(n -> Optional.of(TODAY.plusDays(n)).filter(x -> n < 800)).toList(),
            TODAY);
    long months = Chances.months(TODAY).stream().mapToLong(chances::in).sum();
    assertThat(chances.before()).isEqualTo(ahead.stream().filter(n -> n < 0).count());
    assertThat(chances.before() + months + chances.after()).isEqualTo(20);
    assertThat(
            Pattern.compile("(?:^|, )(\\d+) ")
                .matcher(chances.words())
                .results()
                .map((MatchResult m) -> Integer.parseInt(m.group(1)))
                .mapToInt(Integer::intValue)
                .sum())
        .isEqualTo(20);
  }

  @Test
  void aheadAsATableHasEveryRowAndOpensItsBoat() {
    AtomicReference<AheadState> state = new AtomicReference<>();
    AtomicReference<Id<Boat>> opened = new AtomicReference<>();
    AheadPresenter presenter =
        new AheadPresenter(
            new AheadPresenter.Ways(
                opened::set, boat -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}));
    presenter.onChange(state::set);
    presenter.asTable(true);
    presenter.show(OpenSample.fleet());
    AheadTable table = state.get().table().orElseThrow();
    List<AheadState.Row> rows =
        Stream.concat(state.get().due().stream(), state.get().later().stream()).toList();
    assertThat(table.table().columns())
        .extracting(TableState.Column::label)
        .startsWith("Boat", "Harbour", "Due", "Before today", "May", "Jun")
        .contains("Apr 2027")
        .endsWith("Later", "In words");
    assertThat(table.table().rows()).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      List<String> cells = table.table().rows().get(i);
      assertThat(cells).startsWith(rows.get(i).name(), rows.get(i).harbour(), rows.get(i).what());
      assertThat(table.boats().get(i)).isEqualTo(rows.get(i).boat());
      int sum =
          cells.subList(3, cells.size() - 1).stream()
              .filter(c -> !c.isEmpty())
              .mapToInt(c -> Integer.parseInt(c.replace(" in 20", "")))
              .sum();
      assertThat(sum).isEqualTo(rows.get(i).dots().size());
    }
    presenter.asTable(false);
    assertThat(state.get().table()).isEmpty();
  }

  /** Months are remembered by how far ahead they are, so the next month finds the same columns. */
  @Test
  void anotherMonthHasTheSameColumns() {
    List<String> may = AheadTable.of(List.of(), TODAY).table().ids();
    assertThat(AheadTable.of(List.of(), TODAY.plusMonths(1)).table().ids()).isEqualTo(may);
    assertThat(AheadTable.of(List.of(), TODAY.plusMonths(1)).table().columns())
        .extracting(TableState.Column::label)
        .contains("Jun", "May 2027");
  }

  @Test
  void everyRowOfRingsIsAlsoSaidInWords() {
    AtomicReference<AheadState> state = new AtomicReference<>();
    ShellPresenter shell =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    shell.ahead().onChange(state::set);
    shell.load();
    assertThat(state.get().due())
        .allSatisfy(row -> assertThat(row.chances().isEmpty()).isEqualTo(row.dots().isEmpty()));
    assertThat(state.get().due().stream().map(AheadState.Row::chances).collect(Collectors.toSet()))
        .anyMatch(words -> words.contains("before today"));
    assertThat(Chances.months(TODAY)).hasSize(12).startsWith(YearMonth.of(2026, 5));
  }
}
