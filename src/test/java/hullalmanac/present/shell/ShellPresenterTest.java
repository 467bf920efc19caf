package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.RecordException;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.service.FleetService;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a person sees and does in the window, on the sample record, without a toolkit. */
@Tag("slow")
class ShellPresenterTest {
  private final AtomicReference<ShellState> shell = new AtomicReference<>();
  private final AtomicReference<AheadState> ahead = new AtomicReference<>();
  private final AtomicReference<BoatsState> boats = new AtomicReference<>();

  private ShellPresenter open(FleetService service) {
    ShellPresenter presenter =
        new ShellPresenter(service, OpenSample.edits(), new InlineTaskRunner());
    presenter.onChange(shell::set);
    presenter.ahead().onChange(ahead::set);
    presenter.boats().onChange(boats::set);
    presenter.load();
    return presenter;
  }

  private static FleetService reading(Supplier<Almanac> almanac) {
    return new FleetService() {
      @Override
      public Almanac read() {
        return almanac.get();
      }

      @Override
      public LocalDate today() {
        return LocalDate.of(2026, 5, 1);
      }

      @Override
      public String status() {
        return "";
      }
    };
  }

  @Test
  void opensOnAheadWithTheMostPressingBoatFirst() {
    open(OpenSample.service());
    assertThat(shell.get().place()).isEqualTo(Place.AHEAD);
    assertThat(shell.get().status()).startsWith("Sample record, opened as of Friday, 1 May 2026");
    AheadState state = ahead.get();
    assertThat(state.heading()).isEqualTo("Friday, 1 May 2026");
    assertThat(state.summary())
        .startsWith(state.due().size() + " boats are due")
        .contains(state.due().get(0).name());
    assertThat(state.due().stream().map(AheadState.Row::name)).hasSizeGreaterThan(15);
    assertThat(state.due().get(0).what()).contains("bare");
    assertThat(state.due()).anyMatch(row -> row.what().contains("seen bare on"));
    assertThat(state.due()).allSatisfy(row -> assertThat(row.dots().size()).isIn(0, 20));
  }

  @Test
  void showsOneHarbourAlone() {
    ShellPresenter presenter = open(OpenSample.service());
    int all = ahead.get().due().size();
    presenter.ahead().chooseHarbour("Quillhaven");
    assertThat(ahead.get().due()).isNotEmpty().hasSizeLessThan(all);
    assertThat(ahead.get().due())
        .allSatisfy(row -> assertThat(row.harbour()).isEqualTo("Quillhaven"));
  }

  @Test
  void opensABoatAndGoesBackAndForward() {
    ShellPresenter presenter = open(OpenSample.service());
    AheadState.Row row = ahead.get().due().get(1);
    presenter.ahead().open(row.boat());
    assertThat(shell.get().place()).isEqualTo(Place.BOATS);
    BoatPage page = boats.get().page().orElseThrow();
    assertThat(page.name()).isEqualTo(row.name());
    assertThat(page.reasons())
        .extracting(BoatPage.ReasonCard::title)
        .containsExactly("The label", "Such coats", "Where it lies", "What was seen");
    assertThat(page.tables()).extracting(BoatPage.Table::title).isNotEmpty();
    presenter.back();
    assertThat(shell.get().place()).isEqualTo(Place.AHEAD);
    presenter.back();
    presenter.forward();
    assertThat(shell.get().place()).isEqualTo(Place.BOATS);
    assertThat(boats.get().chosen()).contains(row.boat());
  }

  @Test
  void goingToWhereOneIsIsNoStepToGoBackOver() {
    ShellPresenter presenter = open(OpenSample.service());
    presenter.go(Place.BOATS);
    presenter.boats().choose(ahead.get().due().get(1).boat());
    presenter.go(Place.BOATS);
    presenter.back();
    assertThat(shell.get().place()).isEqualTo(Place.AHEAD);
  }

  @Test
  void goesBackToTheBoatThatWasChosenInTheList() {
    ShellPresenter presenter = open(OpenSample.service());
    presenter.go(Place.BOATS);
    presenter.boats().choose(ahead.get().due().get(1).boat());
    presenter.go(Place.AHEAD);
    presenter.boats().choose(ahead.get().due().get(2).boat());
    presenter.back();
    assertThat(boats.get().chosen()).contains(ahead.get().due().get(1).boat());
    presenter.forward();
    presenter.ahead().open(ahead.get().due().get(2).boat());
    presenter.back();
    presenter.back();
    assertThat(boats.get().chosen()).contains(ahead.get().due().get(1).boat());
  }

  @Test
  void findsByNameOwnerHarbourAndHullNumber() {
    ShellPresenter presenter = open(OpenSample.service());
    List<Boat> all = OpenSample.fleet().almanac().boats();
    assertThat(boats.get().list()).hasSize(all.size());
    assertThat(boats.get().list().stream().map(BoatsState.Item::name))
        .isSortedAccordingTo(Comparator.naturalOrder());
    presenter.boats().find("  SISKIN ");
    assertThat(boats.get().list()).extracting(BoatsState.Item::name).containsExactly("Siskin");
    Boat numbered = all.stream().filter(b -> !b.hullNumber().isEmpty()).findFirst().orElseThrow();
    presenter.boats().find(numbered.hullNumber().toLowerCase(java.util.Locale.ROOT));
    assertThat(boats.get().list()).extracting(BoatsState.Item::boat).contains(numbered.id());
    presenter.boats().find("no such boat");
    assertThat(boats.get().list()).isEmpty();
    assertThat(boats.get().found()).isEqualTo("No boat, owner or harbour is called that.");
  }

  @Test
  void saysTheOneUsefulThingInAnEmptyRecord() {
    open(reading(() -> Almanac.empty(Business.unnamed())));
    assertThat(ahead.get().invitation().orElseThrow().also()).contains("Bring a list in");
    assertThat(boats.get().invitation().orElseThrow().also()).contains("Bring a list in");
    assertThat(boats.get().found()).isEqualTo("No boat has been written down yet.");
  }

  @Test
  void saysWhatWentWrongAndKeepsWhatItShowed() {
    AtomicReference<RecordException> trouble = new AtomicReference<>();
    ShellPresenter presenter =
        open(
            reading(
                () -> {
                  if (trouble.get() != null) {
                    throw trouble.get();
                  }
                  return OpenSample.fleet().almanac();
                }));
    int due = ahead.get().due().size();
    trouble.set(new RecordException(RecordException.Kind.MISSING, "The stick was pulled out."));
    presenter.load();
    assertThat(shell.get().trouble()).contains("The stick was pulled out.");
    assertThat(ahead.get().due()).hasSize(due);
    trouble.set(null);
    presenter.load();
    assertThat(shell.get().trouble()).isEmpty();
  }
}
