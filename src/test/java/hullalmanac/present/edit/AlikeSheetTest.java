package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Cards;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two of the record who may be one are seen side by side, made one, and parted again. */
@Tag("slow")
class AlikeSheetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

  @TempDir Path folder;
  private Bench bench;
  private final Party first = party(901, "zz-sedge", "Una Sedge", "+1 555 555 0130", "");
  private final Party second = party(902, "zz-sedge-2", "Sedge, Una", "", "ada@example.org");

  private static Party party(long id, String key, String name, String phone, String email) {
    return new Party(
        new Id<>(id), key, PartyKind.PERSON, name, phone, email, "", "", Optional.empty(), "");
  }

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
    bench.presenter().people().openAlike();
    assertThat(bench.state().facts())
        .isEqualTo("No two have a name, a phone or a mail address in common.");
    bench.presenter().edit("two", a -> Edit.put(first, second));
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(called()).hasSize(2);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Role owns(Party party) {
    return new Role(
        new Id<>(903),
        "owns-901",
        bench.boat("Dunlin").id(),
        party.id(),
        RoleKind.OWNS,
        DAY,
        Optional.empty());
  }

  private String pair() {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(b -> ((SheetState.Form) b).id())
        .findFirst()
        .orElseThrow();
  }

  private List<Party> called() {
    return bench.almanac().parties().stream().filter(p -> p.name().contains("Sedge")).toList();
  }

  /** An issued invoice of the record, to somebody else. */
  private Invoice issuedTo(Party party, long id) {
    Invoice some =
        bench.almanac().books().invoices().stream()
            .filter(Invoice::issued)
            .findFirst()
            .orElseThrow();
    Invoice.Issue issue = some.issue().orElseThrow();
    Invoice.Issue next =
        new Invoice.Issue(
            issue.series(), (int) id, issue.series() + id, issue.day(), issue.due(), party.name());
    Invoice to = With.component(some, "party", party.id());
    return With.component(
        With.component(With.component(to, "id", new Id<Invoice>(id)), "key", "i-" + id),
        "issue",
        Optional.of(next));
  }

  /** Everything that can hang on a party hangs on the second. */
  private List<Row> hangingOnTheSecond() {
    List<Row> rows = new ArrayList<>();
    Role owns = owns(second);
    rows.add(owns);
    Estimate estimate = bench.almanac().books().estimates().get(0);
    rows.add(
        With.component(
            With.component(With.component(estimate, "id", new Id<Estimate>(905)), "key", "e-905"),
            "party",
            Optional.of(second.id())));
    rows.add(
        new Reminder(
            new Id<>(906),
            "r-906",
            owns.boat(),
            Optional.of(second.id()),
            List.of(),
            List.of(Reminder.Said.told(DAY, Reminder.Way.PHONE, ""))));
    return rows;
  }

  @Test
  void showsThemSideBySideWithTheirBoats() {
    bench.presenter().edit("owns", a -> Edit.put(owns(second)));
    assertThat(bench.state().facts()).startsWith("1 pair has a name");
    String all = bench.state().toString();
    assertThat(all)
        .contains("Una Sedge and Sedge, Una")
        .contains("[phone, +1 555 555 0130, , ]")
        .contains("[email, , ada@example.org, is filled in]")
        .contains("[boats, , owns Dunlin, come along]")
        .contains("Perhaps one and the same: same name.")
        .doesNotContain("[kind, ");
    assertThat(all).contains("What, The first, The second, What comes of it");
  }

  @Test
  void whatHungOnTheOtherHangsOnTheOneAndOneUndoPartsThem() {
    List<Row> rows = hangingOnTheSecond();
    bench.presenter().edit("all of hers", a -> Edit.put(rows));
    Almanac before = bench.almanac();
    bench.sheet().press(pair());
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(called()).containsExactly(With.component(first, "email", "ada@example.org"));
    assertThat(bench.almanac().roles())
        .filteredOn(r -> r.id().equals(new Id<Role>(903)))
        .extracting(Role::party)
        .containsExactly(first.id());
    assertThat(bench.almanac().books().estimates())
        .filteredOn(e -> e.id().equals(new Id<Estimate>(905)))
        .extracting(Estimate::party)
        .containsExactly(Optional.of(first.id()));
    assertThat(bench.almanac().reminders())
        .filteredOn(r -> r.id().equals(new Id<Reminder>(906)))
        .extracting(Reminder::party)
        .containsExactly(Optional.of(first.id()));
    assertThat(bench.state().facts()).startsWith("No two have");
    bench.presenter().undo();
    assertThat(bench.almanac().rows()).containsExactlyInAnyOrderElementsOf(before.rows());
    assertThat(bench.state().facts()).startsWith("1 pair has");
    bench.presenter().redo();
    assertThat(called()).hasSize(1);
  }

  @Test
  void theSecondStaysWhenThatIsChosen() {
    bench.write(pair(), "stays", "the second");
    assertThat(bench.state().toString()).contains("What, The second, The first, What comes of it");
    bench.sheet().press(pair());
    assertThat(called()).extracting(Party::id).containsExactly(second.id());
    assertThat(called().get(0).phone()).isEqualTo("+1 555 555 0130");
  }

  @Test
  void whoWasSentAnInvoiceStaysAndIsNotAskedFor() {
    bench.presenter().edit("issued", a -> Edit.put(issuedTo(second, 908)));
    SheetState.Form form =
        (SheetState.Form)
            bench.state().blocks().stream()
                .filter(SheetState.Form.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertThat(form.fields().get(0).text()).isEqualTo("whoever was sent an invoice");
    bench.sheet().press(pair());
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(called()).extracting(Party::id).containsExactly(second.id());
  }

  @Test
  void twoWhoWereBothSentInvoicesStayTwo() {
    bench.presenter().edit("issued", a -> Edit.put(issuedTo(first, 907), issuedTo(second, 908)));
    assertThat(Cards.words(bench.state()))
        .contains("Invoices were issued to both")
        .doesNotContain("Make one of the two");
    bench.sheet().press(pair());
    assertThat(called()).hasSize(2);
    assertThat(bench.shell().trouble().orElseThrow()).contains("nvoice was issued to Sedge, Una");
  }
}
