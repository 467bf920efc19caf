package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.supply.Supplies;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does with supplies, on a record of their own. */
@Tag("slow")
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
    Set<String> pads =
        bench.almanac().steps().stream()
            .map(Step::pad)
            .filter(pad -> !pad.isBlank())
            .collect(Collectors.toSet());
    assertThat(pads).isNotEmpty();
    assertThat(table("Pads").rows()).extracting(r -> r.get(0)).containsOnlyOnceElementsOf(pads);
    assertThat(table("Pads").rows()).hasSameSizeAs(pads);
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
    assertThat(said("today")).startsWith("Friday, 1 May 2026");
    Said someday = bench.sheet().say(new At("until", "", "day"), "someday");
    assertThat(someday.refused()).isTrue();
    assertThat(someday.words()).contains("someday");
    bench.write("until", "day", "fri");
    assertThat(until()).isEqualTo("2026-05-08");
    assertThat(table("Enough until").heading()).contains("8 May");
  }

  /** A visit to be that polishes all of Siskin. */
  private void planned(Product product, LocalDate day) {
    IdSource ids = bench.presenter().ids();
    Id<Visit> visit = ids.next();
    bench
        .presenter()
        .edit(
            "a visit planned",
            almanac ->
                Edit.put(
                    new Visit(
                        visit,
                        "siskin-far-ahead",
                        bench.boat("Siskin").id(),
                        day,
                        VisitStatus.PLANNED,
                        VisitWhy.OTHER,
                        Optional.empty(),
                        Optional.empty(),
                        Handover.NOT_YET,
                        List.of(),
                        List.of(),
                        ""),
                    new Step(
                        ids.next(),
                        "siskin-far-ahead-1",
                        visit,
                        1,
                        StepKind.POLISH,
                        day,
                        List.of(),
                        Optional.of(product.id()),
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        "",
                        Optional.of(1),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        "")));
    assertThat(bench.shell().trouble()).isEmpty();
  }

  private List<String> needed() {
    return table("Enough until").rows().stream().map(r -> r.get(0)).toList();
  }

  @Test
  void anotherDayAsksTheRecordAnew() {
    Product polish =
        bench.almanac().products().stream()
            .filter(p -> p.kind() == ProductKind.POLISH)
            .findFirst()
            .orElseThrow();
    planned(polish, TODAY.plusDays(100));
    bench.write("until", "day", TODAY.toString());
    assertThat(needed()).doesNotContain(polish.name());
    bench.write("until", "day", TODAY.plusDays(99).toString());
    assertThat(needed()).doesNotContain(polish.name());
    bench.write("until", "day", TODAY.plusDays(100).toString());
    assertThat(needed()).contains(polish.name());
    bench.write("until", "day", TODAY.plusDays(300).toString());
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

  private static Supplies of(int visits, int unknown) {
    return new Supplies(TODAY, List.of(), List.of(), List.of(), visits, 0, unknown, 0);
  }

  /** That a visit does not say what it needs is not that it needs nothing. */
  @Test
  void anEmptyTableSaysWhetherNothingIsNeededOrNothingIsKnown() {
    SuppliesWords words = new SuppliesWords(TODAY);
    assertThat(words.enough(Optional.of(of(4, 4))).empty())
        .isEqualTo("No planned visit says yet what it needs.");
    assertThat(words.enough(Optional.of(of(4, 1))).empty())
        .isEqualTo("What the planned visits say until now needs no product.");
    assertThat(words.enough(Optional.of(of(4, 0))).empty())
        .isEqualTo("Nothing that is planned until then needs a product.");
    assertThat(words.gaps(of(4, 4)))
        .isEqualTo(
            "4 of 4 planned visits do not say yet all that they need; what is missing is not in"
                + " it.");
    assertThat(words.gaps(of(4, 1))).startsWith("1 of 4 planned visits does not say yet all that");
    assertThat(words.gaps(of(4, 0))).isEmpty();
  }

  private static Bottle read(FieldOf<Bottle> field, Bottle bottle, String typed) {
    return ((Entry.Read<Bottle>) field.enter().apply(bottle, typed)).value();
  }
}
