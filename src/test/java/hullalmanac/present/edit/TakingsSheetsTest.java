package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.Till;
import hullalmanac.fixture.Bench;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.takings.TakingsState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does about money, on a record of their own. */
class TakingsSheetsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    Till.assertSumsHold(bench.almanac());
    bench.close();
  }

  private static String words(SheetState state) {
    return state.blocks().toString();
  }

  private List<String> buttons() {
    return bench.state().blocks().stream()
        .filter(SheetState.Buttons.class::isInstance)
        .flatMap(b -> ((SheetState.Buttons) b).buttons().stream())
        .map(SheetState.Button::id)
        .toList();
  }

  private SheetState.Field field(String form, String field) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(SheetState.Form.class::cast)
        .filter(f -> f.id().equals(form))
        .flatMap(f -> f.fields().stream())
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow();
  }

  private Visit lastDone(Boat boat) {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.DONE)
        .max(Comparator.comparing(Visit::day).thenComparing(Visit::id))
        .orElseThrow();
  }

  private List<Invoice> invoicesOf(Boat boat) {
    return bench.almanac().books().invoices().stream()
        .filter(i -> i.boat().orElseThrow().equals(boat.id()))
        .toList();
  }

  /** Opens the draft for the last visit of a boat that was never asked to pay. */
  private Boat drafted() {
    Boat boat = bench.boat("Merganser");
    bench.presenter().open(new VisitSheet(bench.presenter(), lastDone(boat).id()));
    bench.sheet().press("invoice");
    assertThat(bench.sheet()).isInstanceOf(InvoiceSheet.class);
    return boat;
  }

  @Test
  void aVisitIsAskedForPaidInPartAndItsIssueIsNotUndone() {
    Boat boat = drafted();
    bench.write("lines", 0, "quantity", "2");
    bench.write("lines", 0, "price", "150.00");
    bench.write("lines", 0, "words", "hull as agreed");
    assertThat(invoicesOf(boat).get(0).lines().get(0).words()).isEqualTo("hull as agreed");
    bench.sheet().press("issue");
    assertThat(words(bench.state())).contains("neither changed nor undone").contains("2026-00");
    assertThat(invoicesOf(boat)).noneMatch(Invoice::issued);
    bench.sheet().press("not yet");
    assertThat(buttons()).contains("issue").doesNotContain("issue now");
    bench.sheet().press("issue");
    bench.sheet().press("issue now");
    Invoice issued = invoicesOf(boat).get(0);
    assertThat(issued.issue().orElseThrow().day()).isEqualTo(TODAY);
    assertThat(buttons()).contains("pay", "credit").doesNotContain("add line", "remove");
    bench.sheet().press("pay");
    assertThat(field("payment", "amount").text())
        .isEqualTo(Accounts.of(bench.almanac()).open(issued).amount().toPlainString());
    bench.write("payment", "amount", "100");
    bench.sheet().press("write");
    Payment payment =
        bench.almanac().books().payments().stream()
            .filter(p -> p.paid(issued.id()).isPositive())
            .findFirst()
            .orElseThrow();
    assertThat(payment.amount().words()).isEqualTo("100.00 USD");
    bench.presenter().undo();
    assertThat(bench.almanac().books().payments()).doesNotContain(payment);
    bench.presenter().undo();
    assertThat(bench.shell().trouble())
        .get()
        .asString()
        .startsWith("Undo stops at")
        .endsWith("Write a credit for it.");
    assertThat(invoicesOf(boat)).containsExactly(issued);
  }

  @Test
  void aLineThatCannotBeStaysAsTypedAndStopsTheIssue() {
    Boat boat = drafted();
    bench.write("lines", 0, "price", "-5");
    bench.sheet().press("issue");
    assertThat(bench.state().trouble()).isPresent();
    assertThat(buttons()).doesNotContain("issue now");
    bench.write("lines", 0, "price", "5");
    bench.write("lines", 0, "taxes", "sales tax 101");
    assertThat(bench.cell("lines", 0, "taxes")).isEqualTo("sales tax 101");
    bench.write("lines", 0, "taxes", "sales tax 6, county tax 1");
    assertThat(invoicesOf(boat).get(0).lines().get(0).taxes()).hasSize(2);
    bench.sheet().press("add line");
    bench.sheet().remove("lines", bench.grid("lines").rows().get(0).id());
    bench.presenter().undo();
    bench.sheet().press("remove");
    assertThat(invoicesOf(boat)).isEmpty();
    bench.presenter().undo();
    assertThat(invoicesOf(boat)).hasSize(1);
  }

  @Test
  void aCreditIsWrittenFromTheInvoiceItTakesBack() {
    Boat boat = drafted();
    bench.sheet().press("issue");
    bench.sheet().press("issue now");
    bench.sheet().press("credit");
    assertThat(bench.state().title()).isEqualTo("Draft of a credit");
    bench.sheet().press("issue");
    bench.sheet().press("issue now");
    assertThat(bench.state().title()).startsWith("Credit 2026-");
    Invoice whole =
        invoicesOf(boat).stream().filter(i -> i.credits().isEmpty()).findFirst().orElseThrow();
    assertThat(Accounts.of(bench.almanac()).takenBack(whole)).isTrue();
  }

  @Test
  void anEstimateIsBegunForABoatAndAcceptedAsAVisit() {
    Boat boat = bench.boat("Curlew");
    bench.presenter().open(new BoatSheet(bench.presenter(), boat.id()));
    bench.sheet().press("estimate");
    assertThat(bench.state().title()).isEqualTo("Estimate for Curlew");
    assertThat(bench.grid("options").rows()).isNotEmpty();
    bench.sheet().press("add option");
    bench.sheet().press("add expectation");
    int last = bench.grid("expectations").rows().size() - 1;
    bench.write("expectations", last, "words", "cloudiness from the mould");
    bench.write("options", 0, "name", "the usual");
    bench.write("estimate", "deposit.percent", "25");
    bench.sheet().press("offer");
    bench.sheet().press("accept");
    assertThat(bench.state().trouble()).contains("Say which option was accepted.");
    bench.write("reply", "option", "the usual");
    bench.write("reply", "visitDay", "2026-06-02");
    bench.write("reply", "note", "go ahead");
    Almanac before = bench.almanac();
    bench.sheet().press("accept");
    Estimate accepted =
        bench.almanac().books().estimates().stream()
            .filter(e -> e.boat().equals(boat.id()) && e.state() == Estimate.State.ACCEPTED)
            .findFirst()
            .orElseThrow();
    assertThat(accepted.expectations()).anyMatch(x -> x.words().startsWith("cloudiness"));
    assertThat(bench.almanac().visits())
        .anyMatch(
            v ->
                accepted.visit().orElseThrow().equals(v.id())
                    && v.day().equals(LocalDate.of(2026, 6, 2)));
    assertThat(buttons()).contains("visit").doesNotContain("accept");
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  private SheetState.Sign sign() {
    return bench.state().blocks().stream()
        .filter(SheetState.Sign.class::isInstance)
        .map(SheetState.Sign.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whoAcceptsSignsWithThePointerOrByName() {
    Boat boat = bench.boat("Curlew");
    bench.presenter().open(new BoatSheet(bench.presenter(), boat.id()));
    bench.sheet().press("estimate");
    String option = bench.cell("options", 0, "name");
    bench.write("reply", "option", option);
    assertThat(sign().open()).isTrue();
    bench.sheet().enter(sign().at(), "10,20 12,25");
    assertThat(sign().strokes()).isEqualTo("10,20 12,25");
    bench.sheet().enter(sign().at(), "");
    assertThat(sign().strokes()).isEmpty();
    bench.sheet().enter(sign().at(), "9999,20");
    bench.sheet().press("accept");
    assertThat(bench.state().trouble()).get().asString().contains("lies in its field");
    bench.sheet().enter(sign().at(), "10,20 12,25/300,40");
    bench.write("reply", "signedBy", "Ada Lind");
    bench.sheet().press("accept");
    Estimate.Answer answer =
        bench.almanac().books().estimates().stream()
            .filter(e -> e.boat().equals(boat.id()) && e.state() == Estimate.State.ACCEPTED)
            .flatMap(e -> e.answer().stream())
            .filter(a -> a.signedBy().equals("Ada Lind"))
            .findFirst()
            .orElseThrow();
    assertThat(answer.signature().orElseThrow().text()).isEqualTo("10,20 12,25/300,40");
    assertThat(sign().open()).as("a signature that stands is not drawn over").isFalse();
    assertThat(sign().strokes()).isEqualTo("10,20 12,25/300,40");
    assertThat(words(bench.state())).contains("by Ada Lind");
  }

  private TakingsState takings() {
    AtomicReference<TakingsState> state = new AtomicReference<>();
    bench.presenter().takings().onChange(state::set);
    return state.get();
  }

  @Test
  void takingsListsWhatNeedsDoingAndFindsTheRest() {
    bench.presenter().go(Place.TAKINGS);
    List<TakingsState.Item> list = takings().list();
    assertThat(list.get(0).subject()).isEqualTo(new TakingsState.Standing());
    assertThat(list).anyMatch(i -> i.status().startsWith("owes "));
    assertThat(list).anyMatch(i -> i.status().startsWith("estimate offered"));
    assertThat(list).noneMatch(i -> i.status().equals("settled"));
    bench.presenter().takings().find("2025-00");
    assertThat(takings().list())
        .isNotEmpty()
        .allMatch(i -> i.subject() instanceof TakingsState.OfInvoice);
    TakingsState.Item found = takings().list().get(0);
    bench.presenter().takings().choose(found.subject());
    assertThat(takings().sheet()).get().isInstanceOf(InvoiceSheet.class);
  }

  @Test
  void aheadNamesEstimatesWithoutAnAnswerAndWhatIsOutstanding() {
    AtomicReference<AheadState> state = new AtomicReference<>();
    bench.presenter().ahead().onChange(state::set);
    assertThat(state.get().beside())
        .extracting(AheadState.Aside::heading)
        .contains("No answer yet", "Outstanding");
    assertThat(state.get().beside().toString()).contains("estimate valid until 19 May");
    Estimate dunlin =
        bench.almanac().books().estimates().stream()
            .filter(e -> e.boat().equals(bench.boat("Dunlin").id()))
            .findFirst()
            .orElseThrow();
    bench.presenter().open(new EstimateSheet(bench.presenter(), dunlin.id()));
    bench.write("estimate", "validUntil", "2026-04-30");
    assertThat(state.get().beside().toString()).contains("estimate ran out on 30 April");
    bench.sheet().press("decline");
    assertThat(state.get().beside())
        .extracting(AheadState.Aside::heading)
        .doesNotContain("No answer yet");
  }

  @Test
  void moneyWithoutAnInvoiceIsHeldAndGivenBack() {
    bench.presenter().takings().receive();
    bench.write("payment", "amount", "80");
    bench.sheet().press("write");
    assertThat(bench.state().trouble()).contains("Say who paid.");
    String name = bench.almanac().parties().get(3).name();
    bench.write("payment", "party", name);
    bench.sheet().press("write");
    Payment held =
        bench.almanac().books().payments().stream()
            .filter(p -> p.amount().words().equals("80.00 USD"))
            .findFirst()
            .orElseThrow();
    AccountSheet account = new AccountSheet(bench.presenter(), held.party());
    bench.presenter().open(account);
    account.press("back " + held.id().value());
    assertThat(
            bench.almanac().books().payments().stream()
                .filter(p -> p.id().equals(held.id()))
                .flatMap(p -> p.uses().stream()))
        .singleElement()
        .matches(u -> u.became() == Payment.Became.GIVEN_BACK);
  }

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

  @Test
  void anInvoiceIsNotPaidWithTheMoneyOfAnother() {
    drafted();
    bench.sheet().press("issue");
    bench.sheet().press("issue now");
    bench.presenter().takings().receive();
    Invoice issued =
        bench.almanac().books().invoices().stream()
            .filter(i -> i.boat().equals(Optional.of(bench.boat("Merganser").id())))
            .findFirst()
            .orElseThrow();
    String payer =
        bench.almanac().parties().stream()
            .filter(p -> p.id().equals(issued.party()))
            .findFirst()
            .orElseThrow()
            .name();
    String other =
        bench.almanac().parties().stream()
            .filter(p -> !p.id().equals(issued.party()))
            .findFirst()
            .orElseThrow()
            .name();
    bench.write("payment", "party", payer);
    String number = issued.issue().orElseThrow().number();
    bench.write("payment", "invoice", number);
    assertThat(field("payment", "invoice").text()).startsWith(number);
    bench.write("payment", "party", other);
    bench.write("payment", "amount", "10");
    bench.sheet().press("write");
    assertThat(bench.almanac().books().payments())
        .filteredOn(p -> p.amount().words().equals("10.00 USD"))
        .singleElement()
        .matches(p -> p.uses().isEmpty(), "is held");
  }

  @Test
  void eachTaxIsReadHoweverTheyAreParted() {
    Boat boat = drafted();
    for (String typed :
        List.of(
            "sales tax 6.5,county tax 1",
            "sales tax 6,5, county tax 1 %",
            "sales tax 6.5 %; county tax 1",
            "sales tax 6,5%,county tax 1,")) {
      bench.write("lines", 0, "taxes", "");
      bench.write("lines", 0, "taxes", typed);
      assertThat(Tax.text(invoicesOf(boat).get(0).lines().get(0).taxes()))
          .as(typed)
          .isEqualTo("sales tax 6.5|county tax 1");
    }
    assertThat(bench.sheet().say(new At("lines", "0", "taxes"), "sales tax 6 county tax 1").words())
        .as("one tax, and one sees it")
        .isEqualTo("sales tax 6 county tax 1 %");
    assertThat(bench.sheet().say(new At("lines", "0", "taxes"), "sales tax 6,2nd tax 1").words())
        .isEqualTo("sales tax 6 %, 2nd tax 1 %");
  }
}
