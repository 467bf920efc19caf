package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.work.Change;
import hullalmanac.present.TaskRunner.Lane;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import hullalmanac.present.takings.TakingsState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a person does about money, on a record of their own. */
@Tag("slow")
class TakingsSheetsTest extends MoneyBench {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

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

  @Test
  void whatIsOnlyHeldIsNotCountedAsOpen() {
    bench.presenter().go(Place.TAKINGS);
    long owing = takings().list().stream().filter(i -> i.status().startsWith("owes ")).count();
    assertThat(takings().found()).startsWith(owing + " open, ");
    String before = takings().found();
    bench.presenter().takings().receive();
    bench.write("payment", "party", nobody());
    bench.write("payment", "amount", "80");
    bench.sheet().press("write");
    assertThat(takings().found()).startsWith(owing + " open, ").isNotEqualTo(before);
    assertThat(takings().found()).contains(" only held, ");
  }

  /** Somebody who owes nothing, and for whom nothing is held. */
  private String nobody() {
    List<Id<Party>> named =
        bench.almanac().books().invoices().stream().map(Invoice::party).toList();
    return bench.almanac().parties().stream()
        .filter(p -> !named.contains(p.id()))
        .findFirst()
        .orElseThrow()
        .name();
  }

  @Test
  void takingsIsReckonedWhereOneLooksAtIt() {
    bench.presenter().go(Place.BOATS);
    List<TakingsState> shown = new ArrayList<>();
    bench.presenter().takings().onChange(shown::add);
    shown.clear();
    drafted();
    assertThat(shown).as("while another place is shown").isEmpty();
    bench.presenter().go(Place.TAKINGS);
    assertThat(shown).isNotEmpty();
    assertThat(takings().list()).anyMatch(i -> i.status().startsWith("draft to issue"));
  }

  @Test
  void whatWorkBroughtIsReckonedBesidesTheWindow() {
    bench.tasks().hold(Lane.COMPUTING);
    bench.presenter().open(new StandingSheet(bench.presenter()));
    assertThat(words(bench.state())).contains("Reckoning").doesNotContain("By month");
    bench.tasks().release(Lane.COMPUTING);
    assertThat(words(bench.state())).contains("By month").contains("Received, with taxes");
  }

  @Test
  void visitsOfCarePlansForWhichNobodyPaysAreNamedAndNotDrafted() {
    Boat boat = bench.boat("Merganser");
    Visit visit = lastDone(boat);
    CarePlan plan =
        With.component(
            With.component(
                With.component(
                    bench.almanac().carePlans().get(0), "id", bench.presenter().ids().next()),
                "key",
                "of-merganser"),
            "boat",
            boat.id());
    List<Row> nobodys =
        bench.almanac().roles().stream()
            .filter(r -> r.boat().equals(boat.id()))
            .map(Row.class::cast)
            .toList();
    bench
        .presenter()
        .change(
            "of a care plan, and nobody's",
            a ->
                new Change.Ready(
                    new Edit(
                        Optional.empty(),
                        List.of(plan, With.component(visit, "plan", Optional.of(plan.id()))),
                        nobodys)));
    bench.presenter().open(new StandingSheet(bench.presenter()));
    assertThat(words(bench.state())).contains("nobody is written down who pays: Merganser, ");
    while (buttons().contains("plans")) {
      int before = bench.almanac().books().invoices().size();
      bench.sheet().press("plans");
      assertThat(bench.almanac().books().invoices()).hasSizeGreaterThan(before);
    }
  }
}
