package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.fixture.Bench;
import hullalmanac.present.Desk;
import hullalmanac.present.people.PeopleState;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.shell.Place;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person does in a day, on a record of their own. */
@Tag("slow")
class DayTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private void again() {
    bench.close();
    bench = Bench.open(folder);
  }

  @Test
  void aBoatFromAPhoneCallNeedsFiveFields() {
    Almanac before = bench.almanac();
    bench.presenter().boats().newBoat();
    bench.write("call", "owner", "Nell Farrow");
    bench.write("call", "phone", "555 0199");
    bench.write("call", "boat", "Wheatear");
    bench.write("call", "length", "32' 6\"");
    bench.write("call", "harbour", "quillhaven");
    bench.sheet().press("write");
    Boat boat = bench.boat("Wheatear");
    assertThat(boat.loa().orElseThrow().millimetres()).isEqualTo(9906);
    assertThat(bench.shell().place()).isEqualTo(Place.BOATS);
    assertThat(bench.shell().sheet()).isEmpty();
    assertThat(bench.presenter().boats().chosen()).contains(boat.id());
    assertThat(bench.almanac().surfaces().stream().filter(s -> s.boat().equals(boat.id())))
        .hasSizeGreaterThan(5);
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    again();
    bench.presenter().redo();
    assertThat(bench.boat("Wheatear")).isEqualTo(boat);
  }

  @Test
  void aBoatWithoutANameIsNotWrittenDown() {
    Almanac before = bench.almanac();
    bench.presenter().boats().newBoat();
    bench.write("call", "owner", "Nell Farrow");
    bench.sheet().press("write");
    assertThat(bench.state().trouble()).contains("Give the boat a name.");
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void aNewHarbourAsksForItsLatitude() {
    bench.presenter().boats().newBoat();
    bench.write("call", "owner", "Nell Farrow");
    bench.write("call", "boat", "Wheatear");
    bench.write("call", "harbour", "Gannet Steps");
    bench.sheet().press("write");
    assertThat(bench.state().trouble()).get().asString().startsWith("Gannet Steps is new.");
    bench.write("call", "latitude", "48,5");
    bench.sheet().press("write");
    assertThat(bench.almanac().harbours())
        .filteredOn(h -> h.name().equals("Gannet Steps"))
        .singleElement()
        .satisfies(h -> assertThat(h.latitude()).isEqualTo(48.5));
  }

  @Test
  void washedIsTwoTouchesAndNoLookUnlessWaterWasSeen() {
    Boat boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    int findings = bench.almanac().findings().size();
    bench.presenter().boats().washed();
    bench.presenter().boats().washed(Optional.empty());
    assertThat(newest(boat))
        .satisfies(
            v -> {
              assertThat(v.day()).isEqualTo(TODAY);
              assertThat(v.status()).isEqualTo(VisitStatus.DONE);
            });
    assertThat(bench.almanac().findings()).hasSize(findings);
    bench.presenter().undo();
    bench.presenter().boats().washed(Optional.of(WaterBehaviour.BEADS));
    List<Finding> seen =
        bench.almanac().findings().stream()
            .filter(f -> f.visit().equals(Optional.of(newest(boat).id())))
            .toList();
    assertThat(seen)
        .isNotEmpty()
        .allSatisfy(
            f -> assertThat(f.seen()).isEqualTo(new Observation.WaterSeen(WaterBehaviour.BEADS)));
  }

  private Visit newest(Boat boat) {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && !v.day().isAfter(TODAY))
        .max(Comparator.comparing(Visit::day))
        .orElseThrow();
  }

  /** A boat whose last visit laid coats. */
  private Boat coated() {
    return bench.almanac().boats().stream()
        .filter(b -> b.status() == hullalmanac.core.record.BoatStatus.ACTIVE)
        .filter(
            b ->
                bench.almanac().visits().stream()
                    .filter(v -> v.boat().equals(b.id()) && v.status() == VisitStatus.DONE)
                    .max(Comparator.comparing(Visit::day))
                    .filter(this::protects)
                    .isPresent())
        .findFirst()
        .orElseThrow();
  }

  private boolean protects(Visit visit) {
    return bench.almanac().steps().stream()
        .anyMatch(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT);
  }

  @Test
  void aVisitCopiedFromTheLastIsFinishedAndMovesWhatIsAhead() {
    Boat boat = coated();
    bench.presenter().openBoat(boat.id());
    Almanac before = bench.almanac();
    bench.presenter().boats().beginVisit();
    SheetState.Grid steps = bench.grid("steps");
    assertThat(steps.rows()).isNotEmpty();
    bench.write("surfaces", 0, "water", "f");
    bench.write("surfaces", 0, "gloss", "85,5 86 84");
    assertThat(bench.cell("surfaces", 0, "gloss")).isEqualTo("85.5 86 84");
    bench.sheet().press("finish");
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(bench.shell().sheet()).isEmpty();
    List<Coat> laid =
        bench.almanac().coats().stream()
            .filter(c -> c.laidOn().equals(Optional.of(TODAY)))
            .toList();
    assertThat(laid).isNotEmpty();
    assertThat(newest(boat).status()).isEqualTo(VisitStatus.DONE);
    for (int i = 0; i < 4; i++) {
      bench.presenter().undo();
    }
    assertThat(bench.almanac()).isEqualTo(before);
    again();
    for (int i = 0; i < 4; i++) {
      bench.presenter().redo();
    }
    assertThat(bench.almanac().coats()).containsAll(laid);
    assertThat(bench.shell().redo()).isEmpty();
  }

  @Test
  void aStepCorrectedAfterwardsCorrectsTheCoat() {
    Boat boat = coated();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    bench.sheet().press("finish");
    Visit visit = newest(boat);
    bench.presenter().boats().openVisit(visit.id());
    int row = row("protect");
    Coat before = coat(visit);
    String other =
        bench.cell("steps", row, "product").equals("polymer sealant B")
            ? "silica coating C"
            : "polymer sealant B";
    bench.write("steps", row, "bottle", "");
    bench.write("steps", row, "product", other);
    Coat after = coat(visit);
    assertThat(after.id()).isEqualTo(before.id());
    assertThat(bench.almanac().products())
        .filteredOn(p -> p.id().equals(after.product()))
        .singleElement()
        .satisfies(p -> assertThat(p.name()).isEqualTo(other));
  }

  /** A list that was brought in may say which coats were laid and not by which steps. */
  @Test
  void coatsThatWereNotWrittenDownFromStepsAreLeftAlone() {
    Boat boat = bench.boat("Siskin");
    Visit visit =
        bench.almanac().visits().stream()
            .filter(v -> v.boat().equals(boat.id()) && protects(v))
            .max(Comparator.comparing(Visit::day))
            .orElseThrow();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().openVisit(visit.id());
    List<Step> protecting =
        bench.almanac().steps().stream()
            .filter(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT)
            .toList();
    bench.presenter().edit("as if from a list", almanac -> Edit.remove(protecting));
    List<Coat> before = bench.almanac().coats();
    assertThat(before).anyMatch(c -> c.visit().equals(Optional.of(visit.id())));
    bench.write("steps", 0, "minutes", "17");
    assertThat(bench.cell("steps", 0, "minutes")).isEqualTo("17");
    assertThat(bench.almanac().coats()).isEqualTo(before);
  }

  private int row(String kind) {
    List<SheetState.GridRow> rows = bench.grid("steps").rows();
    for (int i = 0; i < rows.size(); i++) {
      if (bench.cell("steps", i, "kind").equals(kind)) {
        return i;
      }
    }
    throw new AssertionError("no step " + kind);
  }

  private Coat coat(Visit visit) {
    Step protect =
        bench.almanac().steps().stream()
            .filter(s -> s.visit().equals(visit.id()) && s.kind() == StepKind.PROTECT)
            .min(Comparator.comparingInt(Step::order))
            .orElseThrow();
    return bench.almanac().coats().stream()
        .filter(c -> c.visit().equals(Optional.of(visit.id())))
        .filter(c -> protect.surfaces().isEmpty() || protect.surfaces().contains(c.surface()))
        .filter(c -> c.over().isEmpty())
        .min(Comparator.comparing(Coat::id))
        .orElseThrow();
  }

  @Test
  void whatIsRefusedStaysAsItWasTypedWithTheReason() {
    Boat boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().change();
    Almanac before = bench.almanac();
    bench.write("facts", "loa", "9,900 m");
    SheetState.Form form = (SheetState.Form) bench.state().blocks().get(0);
    SheetState.Field loa =
        form.fields().stream().filter(f -> f.id().equals("loa")).findFirst().orElseThrow();
    assertThat(loa.text()).isEqualTo("9,900 m");
    assertThat(loa.said().refused()).isTrue();
    assertThat(bench.almanac()).isEqualTo(before);
    bench.write("facts", "loa", "9,9 m");
    assertThat(bench.boat("Siskin").loa().orElseThrow().millimetres()).isEqualTo(9900);
  }

  @Test
  void aBoatByPhoneIsNotWrittenDownWhileALengthIsRefused() {
    Almanac before = bench.almanac();
    bench.presenter().boats().newBoat();
    bench.write("call", "owner", "Nell Farrow");
    bench.write("call", "boat", "Wheatear");
    bench.write("call", "length", "9,900 m");
    bench.write("call", "harbour", "Quillhaven");
    bench.sheet().press("write");
    assertThat(bench.state().trouble().orElseThrow()).startsWith("Length: ");
    SheetState.Form form = (SheetState.Form) bench.state().blocks().get(0);
    assertThat(form.fields().get(3).text()).isEqualTo("9,900 m");
    assertThat(bench.almanac()).isEqualTo(before);
    bench.write("call", "length", "9,9 m");
    bench.sheet().press("write");
    assertThat(bench.boat("Wheatear").loa().orElseThrow().millimetres()).isEqualTo(9900);
  }

  @Test
  void aLengthIsSaidAsItIsKeptAndNotAsItsRoundedTextReads() {
    bench.presenter().openBoat(bench.boat("Siskin").id());
    bench.presenter().boats().change();
    bench.write("facts", "loa", "9,9 m");
    SheetState.Form form = (SheetState.Form) bench.state().blocks().get(0);
    SheetState.Field loa =
        form.fields().stream().filter(f -> f.id().equals("loa")).findFirst().orElseThrow();
    assertThat(loa.text()).isEqualTo("32 ft 6 in");
    assertThat(loa.said().words()).isEqualTo("32 ft 6 in · 9.90 m");
    bench.write("facts", "loa", loa.text());
    assertThat(bench.boat("Siskin").loa().orElseThrow().millimetres()).isEqualTo(9900);
  }

  @Test
  void aBoatThatWasBegunIsGoneOnWithUntilSheIsWrittenDownOrGivenUp() {
    bench.presenter().boats().newBoat();
    bench.write("call", "boat", "Wheatear");
    bench.presenter().leave();
    bench.presenter().undo();
    bench.presenter().boats().newBoat();
    assertThat(firstForm().fields().get(2).text()).isEqualTo("Wheatear");
    bench.sheet().press("leave");
    bench.presenter().boats().newBoat();
    assertThat(firstForm().fields().get(2).text()).isEmpty();
    bench.write("call", "owner", "Nell Farrow");
    bench.write("call", "boat", "Wheatear");
    bench.write("call", "harbour", "Quillhaven");
    bench.sheet().press("write");
    bench.presenter().boats().newBoat();
    assertThat(firstForm().fields()).allSatisfy(f -> assertThat(f.text()).isIn("", "sloop"));
  }

  private SheetState.Form firstForm() {
    return (SheetState.Form) bench.state().blocks().get(0);
  }

  @Test
  void undoAndRedoSayWhatTheyDid() {
    bench.presenter().openBoat(bench.boat("Siskin").id());
    bench.presenter().boats().change();
    bench.write("facts", "note", "Ask at the office.");
    bench.presenter().undo();
    assertThat(bench.shell().status()).isEqualTo("Taken back: Siskin, Note");
    bench.presenter().redo();
    assertThat(bench.shell().status()).isEqualTo("Done again: Siskin, Note");
    bench.presenter().redo();
    assertThat(bench.shell().status()).isEqualTo("There is nothing to do again.");
  }

  @Test
  void aVisitIsNotFinishedWhileAReadingIsRefused() {
    Boat boat = coated();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    bench.write("surfaces", 0, "gloss", "shiny");
    Almanac before = bench.almanac();
    bench.sheet().press("finish");
    assertThat(bench.state().trouble().orElseThrow()).contains("not taken");
    assertThat(bench.cell("surfaces", 0, "gloss")).isEqualTo("shiny");
    assertThat(bench.almanac()).isEqualTo(before);
    bench.write("surfaces", 0, "gloss", "");
    bench.sheet().press("finish");
    assertThat(bench.almanac()).isNotEqualTo(before);
  }

  @Test
  void readingsPastedFromASpreadsheetLandInPlaceInOneAct() {
    Boat boat = coated();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    Almanac before = bench.almanac();
    SheetState.Grid grid = bench.grid("surfaces");
    bench
        .sheet()
        .paste(
            new At("surfaces", grid.rows().get(0).id(), "water"),
            List.of(List.of("beads", "85,5 86"), List.of("flat", "71.2")));
    assertThat(bench.cell("surfaces", 0, "water")).isEqualTo("beads");
    assertThat(bench.cell("surfaces", 0, "gloss")).isEqualTo("85.5 86");
    assertThat(bench.cell("surfaces", 1, "gloss")).isEqualTo("71.2");
    assertThat(bench.state().trouble()).isEmpty();
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void ofAPasteNothingIsLostInSilence() {
    Boat boat = coated();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().beginVisit();
    List<SheetState.GridRow> rows = bench.grid("surfaces").rows();
    int last = rows.size() - 1;
    bench
        .sheet()
        .paste(
            new At("surfaces", rows.get(last).id(), "gloss"),
            List.of(List.of("1,234", "3"), List.of("70", "4")));
    assertThat(bench.state().trouble())
        .contains(
            "1 of 2 texts were not taken; they stand as they came. 2 lay outside what one"
                + " writes in and were left out.");
    assertThat(bench.cell("surfaces", last, "gloss")).isEqualTo("1,234");
    assertThat(bench.cell("surfaces", last, "eye")).isEqualTo("3");
  }

  @Test
  void aBoatThatWasRemovedLiesInTheBinUntilSheIsPutBack() {
    Boat boat = bench.boat("Merganser");
    Almanac before = bench.almanac();
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().change();
    bench.sheet().press("remove");
    assertThat(bench.almanac().boats()).doesNotContain(boat);
    assertThat(bench.state().title()).isEqualTo("This boat is not in the record");
    Party party = bench.almanac().parties().get(0);
    bench.presenter().open(new PartySheet(bench.presenter(), party.id()));
    bench.write("facts", "phone", "555 0100");
    bench.presenter().openBin();
    String putBack = "Put back: Merganser: boat removed";
    SheetState.Buttons first = (SheetState.Buttons) bench.state().blocks().get(0);
    assertThat(first.buttons().get(0).words()).isEqualTo(putBack);
    bench.sheet().press(first.buttons().get(0).id());
    assertThat(bench.almanac().rows())
        .containsAll(before.rows().stream().filter(r -> !r.id().equals(party.id())).toList());
  }

  /** A desk at which the record is slow: what is asked of it waits in a line. */
  private static final class SlowDesk implements InvocationHandler {
    private final Desk real;
    private final List<Runnable> line = new ArrayList<>();

    SlowDesk(Desk real) {
      this.real = real;
    }

    @Override
    public Object invoke(Object proxy, Method method, Object[] arguments) throws Throwable {
      if (method.getName().equals("change") && arguments.length == 3) {
        line.add(() -> call(method, arguments));
        return null;
      }
      return call(method, arguments);
    }

    void letGo(int acts) {
      assertThat(line).hasSize(acts);
      line.forEach(Runnable::run);
      line.clear();
    }

    private Object call(Method method, Object[] arguments) {
      try {
        return method.invoke(real, arguments);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  @Test
  void textsThatFollowFastUponEachOtherKeepEachOther() {
    Boat boat = bench.boat("Siskin");
    SlowDesk slow = new SlowDesk(bench.presenter());
    Desk desk =
        (Desk)
            Proxy.newProxyInstance(Desk.class.getClassLoader(), new Class<?>[] {Desk.class}, slow);
    bench.presenter().open(new BoatSheet(desk, boat.id()));
    bench.write("facts", "note", "one");
    bench.write("facts", "built", "1999");
    slow.letGo(2);
    Boat now = bench.boat("Siskin");
    assertThat(now.built()).contains(1999);
    assertThat(now.note()).isEqualTo("one");
    bench.write("facts", "note", "two");
    bench.write("facts", "note", "one");
    slow.letGo(2);
    assertThat(bench.boat("Siskin").note()).isEqualTo("one");
    bench.presenter().undo();
    assertThat(bench.boat("Siskin").note()).isEqualTo("two");
  }

  @Test
  void eachBoatShowsWhatChangedWhen() {
    Boat boat = bench.boat("Siskin");
    bench.presenter().openBoat(boat.id());
    bench.presenter().boats().change();
    bench.write("facts", "built", "1999");
    bench.sheet().press("changes");
    SheetState.Table table = (SheetState.Table) bench.state().blocks().get(0);
    assertThat(table.rows().get(0))
        .startsWith("1 May 2026, 09:00", "Siskin, Year built", "boat")
        .endsWith("built", "2012", "1999");
  }

  @Test
  void aProductIsPutOnTheShelfDescribedAndUsed() {
    bench.presenter().shelf().add();
    bench.write("product", "name", "polymer sealant K");
    bench.write("product", "kind", "polymer sealant");
    bench.write("product", "labelMonths", "7,5");
    bench.write("product", "hazards", "silicone, sol");
    bench.write("product", "handling.cureHours", "12");
    bench.sheet().press("add bottle");
    bench.write("bottles", 0, "batch", "K-17");
    Product product =
        bench.almanac().products().stream()
            .filter(p -> p.name().equals("polymer sealant K"))
            .findFirst()
            .orElseThrow();
    assertThat(product.labelMonths()).contains(7.5);
    assertThat(product.hazards()).containsExactly(Hazard.SOLVENT, Hazard.SILICONE);
    assertThat(product.handling().cureHours()).contains(12);
    assertThat(bench.almanac().bottles())
        .filteredOn(b -> b.product().equals(product.id()))
        .extracting(Bottle::batch)
        .containsExactly("K-17");
    bench.sheet().press("remove");
    assertThat(bench.almanac().products()).doesNotContain(product);
  }

  @Test
  void aPersonIsAddedAndNamedWhereOneStands() {
    bench.presenter().people().add();
    AtomicReference<PeopleState> people = new AtomicReference<>();
    bench.presenter().people().onChange(people::set);
    people.get().sheet().orElseThrow().enter(new At("facts", "", "name"), "Ida Brook");
    assertThat(people.get().list())
        .filteredOn(i -> people.get().chosen().equals(Optional.of(i.party())))
        .extracting(PeopleState.Item::name)
        .containsExactly("Ida Brook");
    bench.presenter().people().find("ida");
    assertThat(people.get().found()).isEqualTo("1 person or firm");
  }

  @Test
  void carePlansMakeTheirVisitsByThemselvesOnce() {
    List<Visit> planned =
        bench.almanac().visits().stream()
            .filter(v -> v.plan().isPresent() && v.status() == VisitStatus.PLANNED)
            .toList();
    assertThat(planned).isNotEmpty();
    again();
    assertThat(
            bench.almanac().visits().stream()
                .filter(v -> v.plan().isPresent() && v.status() == VisitStatus.PLANNED))
        .hasSameSizeAs(planned);
    assertThat(bench.shell().undo()).contains("visits of care plans planned");
  }
}
