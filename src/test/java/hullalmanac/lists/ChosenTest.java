package hullalmanac.lists;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListColumn;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.list.Question;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a person chooses of a list is done. */
class ChosenTest {
  private static final Almanac BEFORE = ListBench.beginning();

  private static ListPlan plan(Grid grid, Almanac into, ListChoices choices) {
    return ListPlan.of(grid, into, ListBench.TODAY, choices);
  }

  private static ListPlan plan(String list, ListChoices choices) {
    return plan(MadeList.called(list).grid(), BEFORE, choices);
  }

  private static Almanac into(Almanac almanac, ListPlan plan) {
    Change change = plan.change(new IdSource(new Random(7)::nextLong));
    assertThat(change).isInstanceOf(Change.Ready.class);
    return almanac.with(((Change.Ready) change).edit());
  }

  private static Almanac after(String list, ListChoices choices) {
    return into(BEFORE, plan(list, choices));
  }

  private static List<String> names(Almanac almanac) {
    return almanac.boats().stream().map(Boat::name).sorted().toList();
  }

  private static Boat boat(Almanac almanac, String name) {
    return almanac.boats().stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
  }

  private static Party owner(Almanac almanac, Boat boat) {
    Role role =
        almanac.roles().stream().filter(r -> r.boat().equals(boat.id())).findFirst().orElseThrow();
    return almanac.parties().stream()
        .filter(p -> p.id().equals(role.party()))
        .findFirst()
        .orElseThrow();
  }

  private static Berth berth(Almanac almanac, Boat boat) {
    return almanac.berths().stream()
        .filter(b -> b.boat().equals(boat.id()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void twoBoatsInACellArePartedWhereAPersonSaysSo() {
    ListChoices choices = ListChoices.NONE.answer("split 4", "2 boats");
    Almanac after = after("08-two-boats-in-a-cell", choices);
    assertThat(names(after)).contains("Redshank", "Greenshank", "Salt & Pepper");
    assertThat(boat(after, "Redshank").note()).endsWith("Berth: A16");
    assertThat(boat(after, "Greenshank").note()).endsWith("Berth: A17");
    assertThat(owner(after, boat(after, "Greenshank")).name()).isEqualTo("Ben Marsh");
    assertThat(plan("08-two-boats-in-a-cell", choices).words()).isEqualTo("8 boats");
  }

  @Test
  void openDatesAreReadInTheOrderChosen() {
    Almanac after = after("10-open-dates", ListChoices.NONE.answer("days 2", "month first"));
    assertThat(after.visits().stream().map(Visit::day))
        .containsExactlyInAnyOrder(
            LocalDate.of(2025, 4, 5), LocalDate.of(2025, 6, 7), LocalDate.of(2026, 3, 9));
  }

  @Test
  void aPhoneInANoteOrANameIsTakenWhereAPersonSaysSo() {
    Almanac after =
        after(
            "12-phones-elsewhere",
            ListChoices.NONE.answer("phone 1", Question.TAKE).answer("phone 2", Question.TAKE));
    Party ada = owner(after, boat(after, "Whimbrel"));
    assertThat(ada.phone()).isEqualTo("555 0110");
    assertThat(boat(after, "Whimbrel").note()).contains("ring her on 555 0110 after six");
    Party ben = owner(after, boat(after, "Turnstone"));
    assertThat(ben.name()).isEqualTo("Ben Marsh");
    assertThat(ben.phone()).isEqualTo("555-0111");
  }

  @Test
  void anotherOneBecomesTheSameAndIsNeverWrittenOver() {
    Almanac after =
        after(
            "18-known-already",
            ListChoices.NONE.answer("boat 4", "same").answer("owner 5", "same"));
    assertThat(names(after).stream().filter("Black Guillemot"::equals)).hasSize(1);
    Boat guillemot = boat(after, "Black Guillemot");
    assertThat(guillemot.loa().orElseThrow().feetAndInches()).isEqualTo("28 ft");
    assertThat(guillemot.note())
        .isEqualTo(
            """
            From the list 18-known-already.csv, row 4:
            Length: 44 ft (13.41 m)
            Owner: Somebody Else""");
    assertThat(owner(after, guillemot).name()).isEqualTo("Rhea Sands");
    List<Party> unas = after.parties().stream().filter(p -> p.name().equals("Una Quill")).toList();
    assertThat(unas).hasSize(1);
    assertThat(unas.get(0).phone()).isEqualTo("555-0101");
    assertThat(unas.get(0).note())
        .isEqualTo("From the list 18-known-already.csv, row 5:\nPhone: 555-0177");
  }

  @Test
  void whoIsLeftOutStaysOutAndIsSaid() {
    ListChoices choices =
        ListChoices.NONE.answer("boat 2", "leave-out").answer("owner 5", "leave-out");
    ListPlan plan = plan("18-known-already", choices);
    assertThat(plan.asides())
        .anySatisfy(
            a -> {
              assertThat(a.place()).isEqualTo("row 2");
              assertThat(a.text()).contains("Arctic Tern", "una@quill.example", "B3");
              assertThat(a.why()).isEqualTo("it is left out as known already, as you chose");
            })
        .anySatisfy(
            a -> {
              assertThat(a.place()).isEqualTo("row 5");
              assertThat(a.text()).isEqualTo("Una Quill · 555-0177");
            });
    assertThat(plan.alikes()).anyMatch(a -> a.id().equals("boat 2"));
    Almanac after = into(BEFORE, plan);
    Berth home = berth(after, boat(after, "Arctic Tern"));
    assertThat(home.access().place()).isEmpty();
    assertThat(after.roles().stream().filter(r -> r.boat().equals(boat(after, "Avocet").id())))
        .as("the old Avocet keeps her owner, the new one has none")
        .hasSizeLessThanOrEqualTo(1);
  }

  @Test
  void productsOfTheShelfBecomeCoatsWhereAPersonSaysOnWhat() {
    Almanac after =
        after(
            "23-last-visit-and-product",
            ListChoices.NONE.answer(ListPlan.COATS, "topsides and transom"));
    assertThat(after.coats()).hasSize(3);
    assertThat(after.coats())
        .allSatisfy(
            c -> {
              assertThat(c.laidOn()).contains(LocalDate.of(2025, 4, 14));
              assertThat(c.ending()).isEmpty();
            });
    List<SurfaceKind> on =
        after.coats().stream()
            .map(Coat::surface)
            .map(
                id ->
                    after.surfaces().stream()
                        .filter(s -> s.id().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .kind())
            .toList();
    assertThat(on)
        .containsExactlyInAnyOrder(SurfaceKind.TOPSIDES, SurfaceKind.TOPSIDES, SurfaceKind.TRANSOM);
    assertThat(after.steps()).singleElement().extracting(s -> s.surfaces().size()).isEqualTo(3);
  }

  @Test
  void boatsWithoutAHarbourLieWhereAPersonSaysAndKeepTheirGateCode() {
    ListChoices choices = ListChoices.NONE.answer(ListPlan.HARBOUR, "Oyster Hard");
    ListPlan plan = plan("26-keys-and-codes", choices);
    assertThat(plan.asides()).isEmpty();
    Berth berth = berth(into(BEFORE, plan), boat(into(BEFORE, plan), "Turnstone"));
    assertThat(berth.access().place()).isEqualTo("B1");
    assertThat(berth.secrets().gateCode()).isEqualTo("9901");
  }

  @Test
  void aNewHarbourNeedsALatitudeInARecordWithoutHarbours() {
    Almanac empty = Almanac.empty(Business.unnamed());
    Grid grid = MadeList.called("01-plain").grid();
    assertThat(plan(grid, empty, ListChoices.NONE).missing())
        .contains(
            "Latitude is needed for sun and wear of Quillhaven, Oyster Hard; whole degrees do, north positive.");
    assertThat(plan(grid, empty, ListChoices.NONE).change(new IdSource(() -> 3)))
        .isInstanceOf(Change.Refused.class);
    ListPlan plan = plan(grid, empty, ListChoices.NONE.answer("latitude quillhaven", "48.4"));
    assertThat(plan.missing()).isEmpty();
    assertThat(into(empty, plan).harbours()).allMatch(h -> h.latitude() == 48.4).hasSize(2);
  }

  @Test
  void aColumnIsWhatAPersonSaysItIs() {
    Almanac after =
        after(
            "05-titles-and-totals",
            ListChoices.NONE.field(3, ListField.LENGTH_METRES).field(4, ListField.LEAVE_OUT));
    assertThat(boat(after, "Whimbrel").loa().orElseThrow().metresText()).isEqualTo("31.00 m");
    assertThat(boat(after, "Whimbrel").note()).isEmpty();
  }

  @Test
  void aListOfWhichNoColumnIsAskedForComesInOnceOneIsChosen() {
    Grid grid =
        Grid.of("x", List.of(List.of("Zug", "Zog"), List.of("12", "34"), List.of("56", "78")));
    assertThat(plan(grid, BEFORE, ListChoices.NONE).missing())
        .contains("No column is the boats or the owners. Choose which one is, among the columns.");
    ListPlan plan = plan(grid, BEFORE, ListChoices.NONE.field(0, ListField.BOAT));
    assertThat(plan.missing()).isEmpty();
    assertThat(names(into(BEFORE, plan))).contains("12", "56");
  }

  @Test
  void aTextTypedOverACellCounts() {
    ListChoices choices = ListChoices.NONE.typed(5, 2, "31 ft 10 in").typed(8, 2, "");
    ListPlan plan = plan("11-lengths", choices);
    assertThat(plan.marks()).noneMatch(m -> m.row() == 5 && m.column() == 2);
    assertThat(boat(into(BEFORE, plan), "Smew").loa().orElseThrow().feetAndInches())
        .isEqualTo("31 ft 10 in");
    assertThat(boat(into(BEFORE, plan), "Teal").loa()).isEmpty();
  }

  @Test
  void headingsCanBeInAnotherRowOrNone() {
    ListPlan none = plan("01-plain", ListChoices.NONE.headingRow(0));
    assertThat(none.headingRow()).isZero();
    assertThat(none.columns()).extracting(ListColumn::heading).containsOnly("");
    ListPlan second = plan("01-plain", ListChoices.NONE.headingRow(2));
    assertThat(second.columns().get(0).heading()).isEqualTo("Kittiwake");
    assertThat(second.asides().get(0).text()).startsWith("Boat name · Owner");
  }

  @Test
  void aRowCanBeLeftOut() {
    ListPlan plan = plan("01-plain", ListChoices.NONE.answer("row 2", "left out"));
    assertThat(names(into(BEFORE, plan))).contains("Kittiwake").doesNotContain("Sanderling");
    assertThat(plan.asides())
        .singleElement()
        .satisfies(a -> assertThat(a.place()).isEqualTo("row 3"));
  }

  @Test
  void typeWhereTheListSaysNoneIsTheOneChosen() {
    Almanac after = after("01-plain", ListChoices.NONE.answer(ListPlan.TYPE, "ketch"));
    assertThat(boat(after, "Kittiwake").type()).isEqualTo(BoatType.KETCH);
  }

  @Test
  void theSameListIsUnderstoodTheSameWayTheNextTime() {
    Grid grid = MadeList.called("05-titles-and-totals").grid();
    ListChoices choices =
        ListChoices.NONE.field(4, ListField.OWNER_NOTE).field(3, ListField.LENGTH_METRES);
    Almanac once = into(BEFORE, plan(grid, BEFORE, choices));
    assertThat(once.listReadings()).hasSize(1);
    ListPlan again = plan(grid, once, ListChoices.NONE);
    assertThat(again.columns().get(4).field()).isEqualTo(ListField.OWNER_NOTE);
    assertThat(again.columns().get(4).why()).isEqualTo("as the last time");
    assertThat(again.columns().get(3).field()).isEqualTo(ListField.LENGTH_METRES);
    Almanac twice = into(once, plan(grid, once, ListChoices.NONE.field(4, ListField.LEAVE_OUT)));
    assertThat(twice.listReadings()).hasSize(1);
    assertThat(plan(grid, twice, ListChoices.NONE).columns().get(4).field())
        .isEqualTo(ListField.LEAVE_OUT);
  }

  @Test
  void theSameListBroughtInTwiceAddsNothing() {
    for (String list :
        List.of(
            "01-plain",
            "02-german-1252",
            "06-two-row-headings",
            "07-merged",
            "12-phones-elsewhere",
            "19-people-only",
            "24-colours-and-materials",
            "26-keys-and-codes")) {
      Grid grid = MadeList.called(list).grid();
      Almanac once = into(BEFORE, plan(grid, BEFORE, ListChoices.NONE));
      Almanac twice = into(once, plan(grid, once, ListChoices.NONE));
      assertThat(twice).as(list).isEqualTo(once);
    }
  }
}
