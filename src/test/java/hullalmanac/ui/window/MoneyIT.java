package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Payer;
import hullalmanac.present.shell.Place;
import hullalmanac.ui.card.CardWindow;
import java.awt.Frame;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an offer to what is still to pay, by real keys in the real window. */
@NeedsDisplay
class MoneyIT {
  private static final String BOAT = "Siskin";
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path home;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private Boat boat() {
    return window.almanac().boats().stream()
        .filter(b -> b.name().equals(BOAT))
        .findFirst()
        .orElseThrow();
  }

  private void openBoat() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_K);
    window.await(() -> window.focused().equals("find anything"));
    window.type("siskin");
    window.await(() -> window.listed("found") >= 1);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.place() == Place.BOATS && window.boatChosen().equals(BOAT));
  }

  /** Goes on with Tab until something of that name has the cursor. */
  private void tabTo(String name) throws Exception {
    for (int i = 0; i < 80 && !window.focused().equals(name); i++) {
      window.tab();
    }
    assertThat(window.focused()).isEqualTo(name);
  }

  private void main() {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
  }

  private Optional<Estimate> estimate() {
    return window.almanac().books().estimates().stream()
        .filter(e -> e.boat().equals(boat().id()))
        .findFirst();
  }

  private boolean is(Estimate.State state) {
    return estimate().filter(e -> e.state() == state).isPresent();
  }

  private Visit visit() {
    return window.almanac().visits().stream()
        .filter(v -> estimate().orElseThrow().visit().equals(Optional.of(v.id())))
        .findFirst()
        .orElseThrow();
  }

  private Optional<Invoice> invoice() {
    return Accounts.of(window.almanac()).billed(visit().id());
  }

  private Money left() {
    return Accounts.of(window.almanac()).open(invoice().orElseThrow());
  }

  private void beginByHerServices() throws Exception {
    openBoat();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_E);
    window.await(() -> window.focused().startsWith("facts "));
    tabTo("estimate");
    window.press(KeyEvent.VK_SPACE);
    window.await(() -> is(Estimate.State.DRAFT));
  }

  private void inspect() throws Exception {
    openBoat();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
    window.await(() -> window.focused().startsWith("visit day"));
    writeReadings("81 82");
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> window.place() == Place.BOATS && window.boatChosen().equals(BOAT));
  }

  private void beginByThePlanOfFewestPasses() throws Exception {
    inspect();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_G);
    window.await(() -> window.focused().startsWith("agreed surface"));
    window.await(() -> window.says("Gloss 81.5 at 60°, read on 1 May 2026"));
    window.tab();
    window.type("84");
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.says("Gloss step by step"));
    tabTo("offer");
    window.press(KeyEvent.VK_SPACE);
    window.await(() -> is(Estimate.State.DRAFT));
  }

  private void acceptAnEstimate(String option) throws Exception {
    window.await(() -> window.says("Estimate for " + BOAT));
    main();
    window.await(() -> is(Estimate.State.OFFERED));
    window.await(() -> window.rowsAhead().contains("estimate valid until 29 May"));
    tabTo("reply option");
    window.type(option);
    tabTo("reply visitDay");
    window.type("2026-05-01");
    tabTo("reply signedBy");
    window.type("nell farrow");
    main();
    window.await(() -> is(Estimate.State.ACCEPTED));
  }

  /** In the row of the last step, two cells to the right. */
  private void nameWhatWasLaid() throws Exception {
    tabTo("steps");
    long steps =
        window.almanac().steps().stream().filter(s -> s.visit().equals(visit().id())).count();
    for (int i = 1; i < steps; i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    for (int i = 0; i < 2; i++) {
      window.press(KeyEvent.VK_RIGHT);
    }
    window.type("polymer sealant b");
    window.press(KeyEvent.VK_ENTER);
    window.await(
        () ->
            window.almanac().steps().stream()
                .filter(s -> s.visit().equals(visit().id()))
                .anyMatch(s -> s.product().isPresent()));
  }

  private void openItsVisit(String option) throws Exception {
    window.await(() -> window.says("Accepted (" + option + ") on"));
    main();
    window.await(() -> window.focused().startsWith("visit day"));
  }

  private void issueTheInvoiceOfItsVisit() throws Exception {
    nameWhatWasLaid();
    main();
    window.await(() -> visit().status() == VisitStatus.DONE);
    window.await(() -> window.place() == Place.BOATS);
    window.press(KeyEvent.VK_ALT, KeyEvent.VK_LEFT);
    window.await(() -> window.shows("invoice"));
    tabTo("invoice");
    window.press(KeyEvent.VK_SPACE);
    window.await(() -> window.says("Draft of an invoice"));
    main();
    window.await(() -> window.says("It becomes"));
    assertThat(invoice().filter(Invoice::issued)).as("it asks first").isEmpty();
    main();
    window.await(() -> invoice().filter(Invoice::issued).isPresent());
  }

  @Test
  void asksForWhatWasAcceptedAndShowsHerOwnerWhatIsStillToPay() throws Exception {
    Party payer = Payer.of(window.almanac(), boat().id(), TODAY).orElseThrow();
    beginByHerServices();
    acceptAnEstimate("good");
    assertThat(estimate().orElseThrow().answer().orElseThrow().signedBy()).isEqualTo("nell farrow");
    assertThat(visit().day()).isEqualTo(TODAY);
    assertThat(visit().status()).isEqualTo(VisitStatus.PLANNED);
    openItsVisit("good");
    payAPartAndShow(payer);
  }

  private void payAPartAndShow(Party payer) throws Exception {
    issueTheInvoiceOfItsVisit();
    Invoice issued = invoice().orElseThrow();
    assertThat(issued.party()).isEqualTo(payer.id());
    Money total = Accounts.of(window.almanac()).bill(issued).total();
    assertThat(left()).isEqualTo(total);
    window.await(() -> window.focused().equals("done"));
    tabTo("pay");
    main();
    window.await(() -> window.says("Money received"));
    tabTo("payment amount");
    window.type("10.50");
    main();
    window.await(() -> !left().equals(total));
    assertThat(left()).isEqualTo(total.minus(new Money(1050, total.currency())));
    window.await(() -> window.place() == Place.BOATS && window.boatChosen().equals(BOAT));
    window.press(KeyEvent.VK_F11);
    window.await(() -> OpenWindow.owners().stream().anyMatch(JFrame::isFocused));
    assertThat(OpenWindow.texts(OpenWindow.owners().get(0)))
        .contains("Still to pay")
        .contains(
            left().words()
                + " of "
                + total.words()
                + " of invoice "
                + issued.issue().orElseThrow().number());
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> OpenWindow.owners().isEmpty());
    assertThat(window.filesTouched()).isEmpty();
  }

  /** From a look to the money: readings, plan, offer, answer, card, readings, invoice, payment. */
  @Test
  void offersThePlanOfFewestPassesDoesItAndIsPaidInPart() throws Exception {
    Party payer = Payer.of(window.almanac(), boat().id(), TODAY).orElseThrow();
    beginByThePlanOfFewestPasses();
    assertThat(estimate().orElseThrow().options().get(0).lines()).hasSize(1);
    acceptAnEstimate("f");
    openItsVisit("fewest passes");
    window.press(KeyEvent.VK_F9);
    window.await(() -> card().isPresent());
    window.press(KeyEvent.VK_ESCAPE);
    window.await(() -> card().isEmpty());
    window.await(() -> window.frame().isFocused());
    writeReadings("86.5 87");
    payAPartAndShow(payer);
    assertThat(
            window.almanac().steps().stream()
                .filter(s -> s.visit().equals(visit().id()))
                .sorted(Comparator.comparingInt(Step::order))
                .map(Step::kind))
        .containsSubsequence(
            StepKind.WASH, StepKind.DECONTAMINATE, StepKind.POLISH, StepKind.PROTECT);
  }

  private Optional<Frame> card() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            Arrays.stream(Frame.getFrames())
                .filter(f -> f.isShowing() && CardWindow.NAME.equals(f.getName()))
                .filter(Frame::isFocused)
                .findFirst());
  }

  private void writeReadings(String gloss) throws Exception {
    int before = window.almanac().findings().size();
    tabTo("surfaces");
    window.await(() -> !column().isEmpty());
    while (!column().equals("Gloss")) {
      String left = column();
      window.press(KeyEvent.VK_RIGHT);
      window.await(() -> !column().equals(left));
    }
    window.type(gloss);
    window.press(KeyEvent.VK_ENTER);
    window.await(() -> window.almanac().findings().size() > before);
  }

  /** The heading over the cell that has the cursor. */
  private String column() throws Exception {
    return OpenWindow.onEventThread(
        () ->
            window.frame().getFocusOwner() instanceof JTable table && table.getSelectedColumn() >= 0
                ? table.getColumnName(table.getSelectedColumn())
                : "");
  }
}
