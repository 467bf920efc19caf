package hullalmanac.core.takings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.PartyMerge;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of money when two who pay turn out to be one. */
class OnePayerTest {
  private final Till till = new Till();
  private final Party known =
      With.component(
          With.component(till.lind, "id", till.ids.next()), "key", "lind-as-she-was-known");

  @Test
  void estimatesDraftsAndPaymentsGoWithWhoPays() {
    till.put(known);
    till.draft(till.visit(till.tern, Till.DAY, StepKind.WASH));
    till.now = till.now.with(EstimateDraft.of(till.now, till.ids, till.tern.id(), Till.DAY));
    Receiving.Received some =
        new Receiving.Received(
            till.lind.id(), Till.DAY, Till.usd("50"), Payment.How.CASH, Optional.empty(), "");
    till.done(Receiving.held(till.now, till.ids, some));
    Edit one = PartyMerge.edit(till.now, known, till.lind, Map.of());
    till.done(Change.checked(till.now, one));
    assertThat(till.now.parties()).doesNotContain(till.lind);
    assertThat(till.now.books().invoices()).allMatch(i -> i.party().equals(known.id()));
    assertThat(till.now.books().estimates())
        .allMatch(e -> e.party().equals(Optional.of(known.id())));
    assertThat(till.now.books().payments()).allMatch(p -> p.party().equals(known.id()));
    Till.assertBooksHold(till.now);
  }

  @Test
  void whoWasAskedForMoneyStaysWhoTheyAre() {
    till.put(known);
    till.issued(till.visit(till.tern, Till.DAY, StepKind.WASH), Till.DAY);
    assertThatThrownBy(() -> PartyMerge.edit(till.now, known, till.lind, Map.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("was issued to lind and stays with them");
    Edit other = PartyMerge.edit(till.now, till.lind, known, Map.of());
    till.done(Change.checked(till.now, other));
    assertThat(till.now.parties()).doesNotContain(known);
  }
}
