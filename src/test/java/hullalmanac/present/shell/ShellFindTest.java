package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.find.Hit;
import hullalmanac.core.find.HitKind;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.present.edit.VisitSheet;
import hullalmanac.present.find.FindState;
import hullalmanac.present.shelf.ShelfState;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where the window goes with what was found, on the sample record, without a toolkit. */
class ShellFindTest {
  private static final AtomicReference<ShellState> SHELL = new AtomicReference<>();
  private static final AtomicReference<AheadState> AHEAD = new AtomicReference<>();
  private static final AtomicReference<BoatsState> BOATS = new AtomicReference<>();
  private static final AtomicReference<ShelfState> SHELF = new AtomicReference<>();
  private static final AtomicReference<FindState> FIND = new AtomicReference<>();
  private static ShellPresenter presenter;

  /** The sample with a person who has no boat yet; read once, for it is forecast whole. */
  @BeforeAll
  static void open() {
    Party party =
        new Party(
            new Id<>(7), "new", PartyKind.PERSON, "Noa Quay", "", "", "", "", Optional.empty(), "");
    Almanac almanac = OpenSample.fleet().almanac().with(Edit.put(party));
    FleetService service =
        new FleetService() {
          @Override
          public Almanac read() {
            return almanac;
          }

          @Override
          public LocalDate today() {
            return OpenSample.fleet().asOf();
          }

          @Override
          public String status() {
            return "";
          }
        };
    presenter = new ShellPresenter(service, OpenSample.edits(), new InlineTaskRunner());
    presenter.onChange(SHELL::set);
    presenter.ahead().onChange(AHEAD::set);
    presenter.boats().onChange(BOATS::set);
    presenter.shelf().onChange(SHELF::set);
    presenter.find().onChange(FIND::set);
    presenter.load();
  }

  @BeforeEach
  void goAhead() {
    presenter.go(Place.AHEAD);
  }

  /** Types, and takes the first hit of a kind. */
  private static void take(String typed, HitKind kind) {
    presenter.startFinding();
    presenter.find().type(typed);
    List<HitKind> kinds = FIND.get().hits().stream().map(Hit::kind).toList();
    assertThat(kinds).as(typed).contains(kind);
    presenter.find().choose(kinds.indexOf(kind));
    presenter.find().take();
    assertThat(FIND.get().open()).isFalse();
  }

  private static String boatShown() {
    assertThat(SHELL.get().place()).isEqualTo(Place.BOATS);
    return BOATS.get().page().orElseThrow().name();
  }

  @Test
  void opensTheBoatOfWhateverBelongsToOne() {
    take("siskin", HitKind.BOAT);
    assertThat(boatShown()).isEqualTo("Siskin");
    take("39913", HitKind.HULL_NUMBER);
    assertThat(boatShown()).isEqualTo("Arctic Tern");
    take("chip dabchick", HitKind.FINDING);
    assertThat(boatShown()).isEqualTo("Dabchick");
    take("polished corncrake", HitKind.PHOTO);
    assertThat(boatShown()).isEqualTo("Corncrake");
    take("rain noon", HitKind.VISIT);
    assertThat(SHELL.get().sheet()).get().isInstanceOf(VisitSheet.class);
    presenter.back();
    assertThat(boatShown()).isNotEqualTo("Corncrake");
    presenter.back();
    assertThat(boatShown()).isEqualTo("Corncrake");
  }

  @Test
  void opensWhatIsKnownOfAPerson() {
    take("vane", HitKind.OWNER);
    assertThat(person()).isEqualTo("Cora Vane");
    take("noa", HitKind.PERSON);
    assertThat(person()).startsWith("Noa");
  }

  private String person() {
    AtomicReference<String> title = new AtomicReference<>();
    assertThat(SHELL.get().place()).isEqualTo(Place.PEOPLE);
    presenter
        .people()
        .onChange(p -> p.sheet().orElseThrow().onChange(state -> title.set(state.title())));
    return title.get();
  }

  @Test
  void opensTheShelfAtAProductOrItsBatch() {
    take("silica coating c", HitKind.PRODUCT);
    assertThat(SHELL.get().place()).isEqualTo(Place.SHELF);
    assertThat(SHELF.get().pages().get(0).name()).isEqualTo("silica coating C");
    presenter.go(Place.AHEAD);
    take("b25753", HitKind.BATCH);
    assertThat(SHELL.get().place()).isEqualTo(Place.SHELF);
    assertThat(SHELF.get().pages().get(0).name()).isEqualTo("polymer sealant B");
  }

  @Test
  void showsAHarboursBoatsAhead() {
    presenter.go(Place.SHELF);
    take("quillhaven", HitKind.HARBOUR);
    assertThat(SHELL.get().place()).isEqualTo(Place.AHEAD);
    assertThat(AHEAD.get().harbour()).isEqualTo("Quillhaven");
  }

  @Test
  void remembersTheBoatsThatWereShownHoweverTheyWereOpened() {
    List<Boat> all = OpenSample.fleet().almanac().boats();
    AheadState.Row row = AHEAD.get().due().get(1);
    presenter.ahead().open(row.boat());
    Boat other = all.stream().filter(b -> !b.id().equals(row.boat())).findFirst().orElseThrow();
    presenter.boats().choose(other.id());
    presenter.startFinding();
    assertThat(FIND.get().hits()).extracting(Hit::title).containsExactly(other.name(), row.name());
  }

  @Test
  void leavesFindingWhenOneGoesElsewhere() {
    presenter.startFinding();
    assertThat(FIND.get().open()).isTrue();
    presenter.go(Place.SHELF);
    assertThat(FIND.get().open()).isFalse();
  }
}
