package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does with supplies, on a record of their own. */
class SuppliesSheetTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
    bench.presenter().shelf().supplies();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private SheetState.Table table(String heading) {
    return bench.state().blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .map(SheetState.Table.class::cast)
        .filter(t -> t.heading().startsWith(heading))
        .findFirst()
        .orElseThrow();
  }

  private Bottle bottle(int row) {
    String id = bench.grid("bottles").rows().get(row).id();
    return bench.almanac().bottles().stream()
        .filter(b -> b.id().toString().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private String until() {
    return ((SheetState.Form) bench.state().blocks().get(0)).fields().get(0).text();
  }

  private String said(String typed) {
    return bench.sheet().say(new At("until", "", "day"), typed).words();
  }

  @Test
  void beginsAWeekAheadWithEveryBottleThatHoldsSomething() {
    assertThat(bench.state().title()).isEqualTo("Supplies");
    assertThat(until()).isEqualTo(TODAY.plusDays(7).toString());
    long holding =
        bench.almanac().bottles().stream()
            .filter(b -> b.leftMl().map(ml -> ml > 0).orElse(true))
            .count();
    assertThat(holding).isPositive();
    assertThat(bench.grid("bottles").rows()).hasSize((int) holding);
    assertThat(bench.cell("bottles", 0, "why")).startsWith("420 on 24 April");
    assertThat(table("Enough until").columns()).startsWith("Product", "Needed, ml");
    assertThat(table("Pads").rows()).isNotEmpty();
  }

  @Test
  void whatIsWeighedIsLeftFromTodayOnAndOneUndoTakesItBack() {
    Bottle before = bottle(0);
    bench.write("bottles", 0, "weighed", "150");
    assertThat(bottle(0).leftMl()).contains(150);
    assertThat(bottle(0).leftOn()).contains(TODAY);
    assertThat(bench.cell("bottles", 0, "now")).isEqualTo("150");
    assertThat(bench.cell("bottles", 0, "why")).startsWith("150 on 1 May");
    assertThat(bench.cell("bottles", 0, "weighed")).isEmpty();
    bench.presenter().undo();
    assertThat(bottle(0)).isEqualTo(before);
  }

  @Test
  void moreThanABottleHoldsIsRefusedWithASentence() {
    Bottle before = bottle(0);
    assertThat(before.sizeMl()).contains(500);
    bench.write("bottles", 0, "weighed", "700");
    assertThat(bottle(0)).isEqualTo(before);
    At at = new At("bottles", before.id().toString(), "weighed");
    assertThat(bench.sheet().say(at, "700").words())
        .isEqualTo("It holds 500 ml new, so no 700 ml are left.");
    assertThat(bench.sheet().say(at, "-3").refused()).isTrue();
    assertThat(bench.sheet().say(at, "much").refused()).isTrue();
  }

  @Test
  void aDayThatIsOverOrFarAheadIsRefusedWithASentence() {
    assertThat(said("2026-04-30")).isEqualTo("2026-04-30 is over; write today or a later day.");
    assertThat(said("2028-01-01")).isEqualTo("Plans are looked at for a year ahead and no more.");
    assertThat(said("someday")).isNotEmpty();
    bench.write("until", "day", "fri");
    assertThat(until()).isEqualTo("2026-05-08");
    assertThat(table("Enough until").heading()).contains("8 May");
  }

  /** On 1 May nothing of it is needed yet, a year ahead everything that is planned is. */
  @Test
  void anotherDayAsksTheRecordAnew() {
    bench.write("until", "day", TODAY.toString());
    int near = table("Enough until").rows().size();
    bench.write("until", "day", TODAY.plusDays(300).toString());
    List<List<String>> far = table("Enough until").rows();
    assertThat(far.size()).isGreaterThanOrEqualTo(near);
    long visits =
        bench.almanac().visits().stream().filter(v -> v.status() == VisitStatus.PLANNED).count();
    assertThat(visits).isPositive();
    assertThat(bench.state().blocks().toString()).contains("of " + visits + " planned visits");
  }

  @Test
  void anotherNumberOnTheProductsOwnSheetIsOfTodayAndAnEmptyOneOfNoDay() {
    Bottle bottle = bottle(0);
    FieldOf<Bottle> left = BottleFields.left(new FieldMaker(bench.almanac().business(), TODAY));
    Bottle same = read(left, bottle, "420");
    assertThat(same).isEqualTo(bottle);
    assertThat(read(left, bottle, "400").leftOn()).contains(TODAY);
    assertThat(read(left, bottle, "").leftOn()).isEqualTo(Optional.empty());
    assertThat(read(left, bottle, "").leftMl()).isEqualTo(Optional.empty());
  }

  private static Bottle read(FieldOf<Bottle> field, Bottle bottle, String typed) {
    return ((Entry.Read<Bottle>) field.enter().apply(bottle, typed)).value();
  }
}
