package hullalmanac.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.With;
import hullalmanac.core.takings.Crediting;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.Issuing;
import hullalmanac.core.takings.Receiving;
import hullalmanac.core.takings.Till;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Money in a real record, through acts, undo, redo, the bin and restarts. */
@Tag("slow")
class TakingsUndoTest {
  private static final LocalDate DAY = Till.DAY;

  @TempDir Path folder;
  private final Till till = new Till();
  private RecordService record;
  private EditService edits;

  private final RecordService.Surroundings surroundings =
      new RecordService.Surroundings(
          Clock.fixed(Instant.parse("2026-05-06T09:00:00Z"), ZoneOffset.UTC),
          new Random(6)::nextLong,
          "desk",
          1);

  @BeforeEach
  void make() {
    RecordService.create(folder, surroundings);
    open();
    for (int i = 0; i < 14; i++) {
      till.visitToWash(i);
    }
    edits.change("the record", a -> new Change.Ready(Edit.all(till.now)));
  }

  private void open() {
    record = RecordService.open(folder, surroundings);
    edits = new EditService(record);
  }

  @AfterEach
  void close() {
    record.close();
  }

  /** What the file holds, whatever was remembered. */
  private Almanac file() {
    record.close();
    open();
    return record.almanac();
  }

  private boolean does(String what, Function<Almanac, Change> change) {
    return edits.change(what, change) instanceof Change.Ready ready && !ready.edit().isEmpty();
  }

  private static <T> Optional<T> any(List<T> all, Random random) {
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
  }

  private List<Invoice> invoices(boolean issued) {
    return record.almanac().books().invoices().stream().filter(i -> i.issued() == issued).toList();
  }

  /** One act about money; empty when it was refused or there was nothing to do it to. */
  private boolean act(Random random) {
    Optional<Invoice> draft = any(invoices(false), random);
    Optional<Invoice> issued = any(invoices(true), random);
    Optional<Payment> payment = any(record.almanac().books().payments(), random);
    Money some = new Money(1 + random.nextInt(20_000), record.almanac().business().currency());
    return switch (random.nextInt(11)) {
      case 0, 9 -> {
        Id<Visit> visit = any(record.almanac().visits(), random).orElseThrow().id();
        yield does("draft", a -> InvoiceDraft.ofVisit(a, till.ids, visit));
      }
      case 1, 10 ->
          draft.isPresent() && does("issue", a -> Issuing.issue(a, draft.get().id(), DAY));
      case 2 -> issued.isPresent() && pays(issued.get(), some);
      case 3 -> {
        Id<Party> party = any(record.almanac().parties(), random).orElseThrow().id();
        yield does("hold", a -> Receiving.held(a, till.ids, received(party, some)));
      }
      case 4 ->
          issued.isPresent()
              && payment.isPresent()
              && does("apply", a -> Receiving.apply(a, payment.get().id(), issued.get().id(), DAY));
      case 5 ->
          payment.isPresent()
              && does("back", a -> Receiving.giveBack(a, payment.get().id(), some, DAY));
      case 6 ->
          random.nextInt(3) == 0
              && issued.isPresent()
              && does("credit", a -> Crediting.draft(a, till.ids, issued.get().id()));
      case 7 -> payment.isPresent() && does("gone", a -> Removal.of(a, payment.get()));
      default -> draft.isPresent() && does("gone", a -> Removal.of(a, draft.get()));
    };
  }

  private boolean pays(Invoice invoice, Money amount) {
    return does(
        "pay", a -> Receiving.paying(a, till.ids, received(invoice.party(), amount), invoice.id()));
  }

  private static Receiving.Received received(Id<Party> party, Money amount) {
    return new Receiving.Received(party, DAY, amount, Payment.How.CARD, Optional.empty(), "");
  }

  /**
   * Acts, undo and redo in any order: each undo gives back the state before, each redo the state
   * after, an issue is never undone, and the sums hold throughout.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noPaymentIsLostOrCountedTwiceAndNumbersHaveNoGaps(long seed) {
    Random random = new Random(seed);
    List<Almanac> states = new ArrayList<>(List.of(record.almanac()));
    int at = 0;
    int wall = 0;
    int issues = 0;
    for (int step = 0; step < 90; step++) {
      int what = random.nextInt(10);
      if (what < 2) {
        Optional<String> undone = edits.undo();
        assertThat(undone.isPresent()).isEqualTo(at > wall || wall == 0);
        if (at == 0) {
          edits.redo();
        }
        at = Math.max(wall, at - 1);
      } else if (what == 2) {
        assertThat(edits.redo().isPresent()).isEqualTo(at < states.size() - 1);
        at = Math.min(states.size() - 1, at + 1);
      } else {
        int before = invoices(true).size();
        if (act(random)) {
          states.subList(at + 1, states.size()).clear();
          states.add(record.almanac());
          at++;
          if (invoices(true).size() > before) {
            wall = at;
            issues++;
            assertThat(edits.whyNoUndo()).get().asString().contains("Write a credit for it.");
          }
        }
      }
      assertThat(step % 8 == 0 ? file() : record.almanac()).isEqualTo(states.get(at));
      Till.assertBooksHold(record.almanac());
    }
    assertThat(issues).as("the walk issued something").isPositive();
    assertThat(invoices(true)).hasSize(issues);
  }

  /** With the bin in it as well, states cannot be foretold, but the sums still hold. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void theBinLosesAndDoublesNothingEither(long seed) {
    Random random = new Random(seed);
    int putBack = 0;
    for (int step = 0; step < 80; step++) {
      int what = random.nextInt(12);
      if (what == 0) {
        if (!edits.standing().undo().equals(Optional.of("the record"))) {
          edits.undo();
        }
      } else if (what == 1) {
        edits.redo();
      } else if (what == 2) {
        Optional<Act> act = any(edits.bin(), random);
        if (act.isPresent()) {
          edits.putBack(act.get());
          putBack++;
        }
      } else {
        act(random);
      }
      Till.assertBooksHold(record.almanac());
    }
    Almanac remembered = record.almanac();
    assertThat(file()).isEqualTo(remembered);
    assertThat(putBack).isPositive();
  }

  private Invoice issued() {
    Id<Visit> visit = record.almanac().visits().get(0).id();
    does("draft", a -> InvoiceDraft.ofVisit(a, till.ids, visit));
    Invoice draft = invoices(false).get(0);
    does("invoice issued", a -> Issuing.issue(a, draft.id(), DAY));
    return invoices(true).get(0);
  }

  @Test
  void undoStopsAtAnIssueAndSaysWhy() {
    Invoice invoice = issued();
    assertThat(edits.standing().undo()).isEmpty();
    assertThat(edits.whyNoUndo())
        .contains(
            "Undo stops at \"invoice issued\": what was issued is not taken back. Write a credit"
                + " for it.");
    assertThat(edits.undo()).isEmpty();
    assertThat(file().books().invoices()).containsExactly(invoice);
    pays(invoice, new Money(100, record.almanac().business().currency()));
    assertThat(edits.whyNoUndo()).isEmpty();
    assertThat(edits.undo()).contains("pay");
    assertThat(edits.undo()).isEmpty();
    assertThat(edits.redo()).contains("pay");
    assertThat(file().books().payments()).hasSize(1);
  }

  @Test
  void theFileItselfRefusesToChangeWhatWasIssuedAndKeepsNothingOfSuchAnAct() {
    Invoice invoice = issued();
    Payment payment = payment(invoice);
    List<Invoice> wrong =
        List.of(
            With.component(invoice, "note", "other"),
            With.component(invoice, "issue", Optional.empty()),
            With.component(
                invoice,
                "lines",
                List.of(With.component(invoice.lines().get(0), "words", "other"))),
            With.component(
                invoice, "lines", List.of(invoice.lines().get(0), invoice.lines().get(0))));
    for (Invoice changed : wrong) {
      assertThatThrownBy(() -> record.change("by the way", Edit.put(payment, changed)))
          .isInstanceOf(RecordException.class)
          .hasMessageContaining("write a credit");
    }
    assertThatThrownBy(
            () -> record.change("gone", Edit.put(payment).and(Edit.remove(List.of(invoice)))))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("write a credit");
    Almanac after = file();
    assertThat(after.books().invoices()).containsExactly(invoice);
    assertThat(after.books().payments()).isEmpty();
  }

  private Payment payment(Invoice invoice) {
    return new Payment(
        till.ids.next(),
        "by-the-way",
        invoice.party(),
        DAY,
        new Money(100, record.almanac().business().currency()),
        Payment.How.CASH,
        Optional.empty(),
        List.of(),
        "");
  }

  @Test
  void bringingInWhatWasIssuedElsewhereIsNotTakenBackEither() {
    Invoice invoice = issued();
    Row other =
        With.component(
            With.component(With.component(invoice, "id", till.ids.next()), "key", "from-elsewhere"),
            "issue",
            Optional.of(new Invoice.Issue("A", 7, "A7", DAY, DAY, "")));
    record.change("import of old", Edit.put(other));
    assertThat(edits.undo()).isEmpty();
    assertThat(edits.whyNoUndo()).get().asString().contains("import of old");
    assertThat(file().books().invoices()).hasSize(2);
  }

  @Test
  void aPaymentComesOutOfTheBinThoughItsIdWasTakenMeanwhile() {
    Invoice invoice = issued();
    Money some = new Money(100, record.almanac().business().currency());
    pays(invoice, some);
    Payment first = record.almanac().books().payments().get(0);
    does("gone", a -> Removal.of(a, first));
    pays(invoice, some);
    assertThat(record.almanac().books().payments())
        .singleElement()
        .matches(p -> p.key().equals(first.key()));
    edits.putBack(edits.bin().get(0));
    assertThat(file().books().payments())
        .hasSize(2)
        .contains(With.component(first, "key", first.key() + "-2"));
    assertThat(edits.bin()).isEmpty();
  }

  /** The line of an issued invoice lost what named the visit, and stays as it was issued. */
  @Test
  void aVisitComesBackFromTheBinAlsoWhenADraftOfItWasIssuedMeanwhile() {
    Visit visit = record.almanac().visits().get(0);
    does("draft", a -> InvoiceDraft.ofVisit(a, till.ids, visit.id()));
    Invoice draft = invoices(false).get(0);
    does("visit removed", a -> Removal.of(a, visit));
    does("invoice issued", a -> Issuing.issue(a, draft.id(), DAY));
    Invoice issued = invoices(true).get(0);
    edits.putBack(edits.bin().get(0));
    assertThat(record.almanac().visits()).extracting(Visit::id).contains(visit.id());
    assertThat(invoices(true)).containsExactly(issued);
    assertThat(file()).isEqualTo(record.almanac());
  }

  @Test
  void aDraftIsFreelyUndone() {
    Id<Visit> visit = record.almanac().visits().get(0).id();
    does("draft", a -> InvoiceDraft.ofVisit(a, till.ids, visit));
    assertThat(edits.undo()).contains("draft");
    assertThat(file().books().invoices()).isEmpty();
    assertThat(edits.redo()).contains("draft");
    assertThat(file().books().invoices())
        .singleElement()
        .matches(i -> i.lines().get(0).service().equals(StepKind.WASH.code()));
  }
}
