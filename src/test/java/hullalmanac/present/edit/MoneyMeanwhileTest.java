package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.sheet.At;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is written about money while something else is on its way into the record. */
@Tag("slow")
class MoneyMeanwhileTest extends MoneyBench {
  @Test
  void aTextThatWasNotTakenStopsTheIssueAfterItWasAsked() {
    Boat boat = drafted();
    bench.sheet().press("issue");
    bench.write("lines", 0, "price", "12x");
    assertThat(buttons()).doesNotContain("issue now");
    bench.sheet().press("issue now");
    assertThat(bench.state().trouble()).isPresent();
    assertThat(invoicesOf(boat)).noneMatch(Invoice::issued);
  }

  @Test
  void whatIsChangedAfterTheQuestionIsAskedForAgain() {
    Boat boat = drafted();
    bench.sheet().press("issue");
    bench.write("lines", 0, "price", "12");
    assertThat(buttons()).contains("issue").doesNotContain("issue now");
    bench.sheet().press("issue now");
    assertThat(invoicesOf(boat)).noneMatch(Invoice::issued);
    bench.sheet().press("issue");
    Invoice asked = invoicesOf(boat).get(0);
    bench.tasks().hold(Lane.DATABASE);
    bench
        .presenter()
        .change(
            "elsewhere",
            a ->
                InvoiceDraft.lines(
                    a,
                    asked.id(),
                    all -> {
                      all.add(InvoiceDraft.blank(a));
                      return all;
                    }));
    bench.sheet().press("issue now");
    bench.tasks().release(Lane.DATABASE);
    assertThat(bench.shell().trouble()).get().asString().contains("was changed meanwhile");
    assertThat(invoicesOf(boat)).noneMatch(Invoice::issued);
  }

  @Test
  void aTextIsNotWrittenIntoAnotherLineThatCameToItsPlace() {
    Boat boat = drafted();
    bench.sheet().press("add line");
    bench.write("lines", 1, "words", "ropes");
    List<PriceLine> all = invoicesOf(boat).get(0).lines();
    String first = bench.grid("lines").rows().get(0).id();
    String last = bench.grid("lines").rows().get(1).id();
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().remove("lines", first);
    bench.sheet().enter(new At("lines", first, "price"), "77");
    bench.sheet().enter(new At("lines", last, "price"), "88");
    bench.sheet().remove("lines", first);
    bench.tasks().release(Lane.DATABASE);
    assertThat(invoicesOf(boat).get(0).lines()).isEqualTo(all.subList(1, all.size()));
    assertThat(bench.shell().trouble())
        .get()
        .asString()
        .contains("This line was changed meanwhile");
  }

  @Test
  void textsThatFollowFastUponEachOtherAllComeIntoTheLine() {
    Boat boat = drafted();
    String row = bench.grid("lines").rows().get(0).id();
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().enter(new At("lines", row, "price"), "77");
    bench.sheet().enter(new At("lines", row, "quantity"), "3");
    bench.tasks().step(Lane.DATABASE);
    bench.sheet().enter(new At("lines", row, "words"), "hull");
    bench.tasks().release(Lane.DATABASE);
    PriceLine line = invoicesOf(boat).get(0).lines().get(0);
    assertThat(line.words()).isEqualTo("hull");
    assertThat(line.quantity()).isEqualByComparingTo("3");
    assertThat(line.price().words()).isEqualTo("77.00 USD");
  }

  @Test
  void aRefusedTextGoesAlongWithItsLine() {
    drafted();
    bench.sheet().press("add line");
    bench.write("lines", 1, "price", "12x");
    bench.sheet().remove("lines", bench.grid("lines").rows().get(0).id());
    assertThat(bench.cell("lines", 0, "price")).isEqualTo("12x");
    bench.sheet().remove("lines", bench.grid("lines").rows().get(0).id());
    assertThat(bench.grid("lines").rows()).isNotEmpty();
    assertThat(bench.grid("lines").rows().toString()).doesNotContain("12x");
  }

  @Test
  void whatBelongsToAnotherOptionOfAnEstimateIsNotWrittenInIt() {
    Boat boat = bench.boat("Curlew");
    bench.presenter().open(new BoatSheet(bench.presenter(), boat.id()));
    bench.sheet().press("estimate");
    bench.sheet().press("add option");
    bench.sheet().press("add expectation");
    int last = bench.grid("expectations").rows().size() - 1;
    bench.write("expectations", last, "words", "the mould");
    String first = bench.grid("options").rows().get(0).id();
    String line = bench.grid("lines").rows().get(0).id();
    String expectation = bench.grid("expectations").rows().get(last).id();
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().remove("options", first);
    bench.sheet().enter(new At("options", first, "note"), "wrong place");
    bench.sheet().enter(new At("lines", line, "words"), "wrong place");
    bench.sheet().press("add line " + first);
    bench.sheet().remove("expectations", expectation);
    bench.sheet().enter(new At("expectations", expectation, "words"), "wrong place");
    bench.tasks().release(Lane.DATABASE);
    Estimate estimate =
        bench.almanac().books().estimates().stream()
            .filter(e -> e.boat().equals(boat.id()) && e.state() == Estimate.State.DRAFT)
            .findFirst()
            .orElseThrow();
    assertThat(estimate.toString()).doesNotContain("wrong place").doesNotContain("the mould");
    assertThat(estimate.options().get(0).name()).isNotEqualTo("good");
    assertThat(bench.grid("lines").rows())
        .hasSize(estimate.options().stream().mapToInt(o -> o.lines().size()).sum());
  }

  @Test
  void aButtonPressedTwiceMakesOne() {
    Boat boat = drafted();
    bench.sheet().press("issue");
    bench.sheet().press("issue now");
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().press("credit");
    bench.sheet().press("credit");
    bench.tasks().release(Lane.DATABASE);
    assertThat(bench.state().title()).isEqualTo("Draft of a credit");
    assertThat(bench.shell().trouble()).isEmpty();
    bench.presenter().leave();
    Invoice issued = invoicesOf(boat).stream().filter(Invoice::issued).findFirst().orElseThrow();
    int payments = bench.almanac().books().payments().size();
    bench
        .presenter()
        .open(new PaymentSheet(bench.presenter(), Optional.of(issued.party()), Optional.empty()));
    bench.write("payment", "amount", "10");
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().press("write");
    bench.sheet().press("write");
    bench.tasks().release(Lane.DATABASE);
    assertThat(bench.almanac().books().payments()).hasSize(payments + 1);
    int estimates = bench.almanac().books().estimates().size();
    bench.presenter().open(new BoatSheet(bench.presenter(), boat.id()));
    bench.tasks().hold(Lane.DATABASE);
    bench.sheet().press("estimate");
    bench.sheet().press("estimate");
    bench.tasks().release(Lane.DATABASE);
    assertThat(bench.almanac().books().estimates()).hasSize(estimates + 1);
  }
}
