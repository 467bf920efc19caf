package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.fixture.EverySheet;
import hullalmanac.fixture.LargeRecord;
import hullalmanac.present.edit.CatchUpSheet;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.RecordService;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Goes through every place and every sheet on a record of 2,000 boats, reads and writes, and holds
 * that no file and no statement is touched on the event thread. How long that thread is busy is
 * printed, not judged: the times of a shared machine vary.
 */
@NeedsDisplay
class LargeRecordIT {
  private static final int BOATS = 2000;
  private static final int INVOICES = 2000;

  @TempDir Path home;
  private OpenWindow window;
  private EventThreadTimes times;

  @BeforeEach
  void open() throws Exception {
    Path record = home.resolve("large");
    LargeRecord.write(
        record,
        BOATS,
        new RecordService.Surroundings(Clock.systemUTC(), new Random(3)::nextLong, "desk", 1));
    times = new EventThreadTimes();
    // No guard at the record's door: it would refuse what shall be seen here.
    window = OpenWindow.on(record, () -> {}, Optional.empty());
  }

  @AfterEach
  void close() throws Exception {
    times.doing("closing");
    window.close();
    System.out.println(times.report());
    times.close();
  }

  /** Does something, waits until all came to rest, and holds that it came about. */
  private void step(String what, Runnable act, Callable<Boolean> done) throws Exception {
    times.doing(what);
    window.run(act);
    window.await(done);
    window.settle();
  }

  @Test
  void touchesNoFileOnTheEventThreadInAnyPlaceOrSheet() throws Exception {
    // The visits of care plans are planned after the first look.
    window.settle();
    Almanac almanac = window.almanac();
    assertThat(almanac.boats()).hasSizeGreaterThanOrEqualTo(BOATS);
    assertThat(almanac.books().invoices().stream().filter(Invoice::issued))
        .hasSizeGreaterThan(INVOICES);
    places();
    sheets(almanac);
    finds();
    writes(almanac);
    photos(almanac);
    shows(almanac);
    assertThat(window.filesTouched()).isEmpty();
  }

  private void places() throws Exception {
    for (Place place : Place.values()) {
      step(
          place.words(),
          () -> window.presenter().go(place),
          () -> window.place() == place && window.listed("found") < 0);
    }
    step(
        "more of Ahead",
        () -> {
          window.presenter().go(Place.AHEAD);
          window.presenter().ahead().showMore();
        },
        () -> window.says("160 of "));
    step("back", () -> window.presenter().back(), () -> window.place() != Place.AHEAD);
    step(
        "looking for a boat in the list",
        () -> {
          window.presenter().go(Place.BOATS);
          window.presenter().boats().find("siskin 4");
        },
        () -> window.listed("boats") > 0 && window.listed("boats") < BOATS);
    step(
        "all boats",
        () -> window.presenter().boats().find(""),
        () -> window.listed("boats") > BOATS - 1);
  }

  private void sheets(Almanac almanac) throws Exception {
    for (Sheet sheet : EverySheet.of(window.presenter(), almanac)) {
      step(
          sheet.getClass().getSimpleName(),
          () -> window.presenter().open(sheet),
          () -> window.place() == null);
      step("leaving a sheet", () -> window.presenter().leave(), () -> window.place() != null);
    }
  }

  private void finds() throws Exception {
    step("finding", () -> window.presenter().startFinding(), () -> window.shows("find anything"));
    step(
        "finding words",
        () -> window.presenter().find().type("quill sis"),
        () -> window.listed("found") > 0);
    step(
        "leaving finding",
        () -> window.presenter().find().leave(),
        () -> window.listed("found") < 0);
  }

  private void writes(Almanac almanac) throws Exception {
    Boat boat = almanac.boats().get(7);
    ShellPresenter presenter = window.presenter();
    step(
        "a boat's page",
        () -> presenter.openBoat(boat.id()),
        () -> window.boatChosen().equals(boat.name()));
    int visits = almanac.visits().size();
    step(
        "writing a wash down",
        () -> {
          presenter.boats().washed();
          presenter.boats().washed(Optional.empty());
        },
        () -> window.almanac().visits().size() == visits + 1);
    step("undo", presenter::undo, () -> window.almanac().visits().size() == visits);
    step("redo", presenter::redo, () -> window.almanac().visits().size() == visits + 1);
    step(
        "beginning a visit",
        presenter.boats()::beginVisit,
        () -> window.almanac().visits().size() == visits + 2 && window.place() == null);
    step("leaving the visit", presenter::leave, () -> window.place() == Place.BOATS);
    step("reading again", presenter::load, () -> true);
    step("looking at the clock", presenter::lookAtTheClock, () -> true);
  }

  private void photos(Almanac almanac) throws Exception {
    LocalDate day = dayOfOneVisit(almanac);
    byte[] jpeg = DrawnPhotos.jpeg(3, day.atTime(10, 5));
    Path photo = Files.write(home.resolve("p.jpg"), jpeg);
    CatchUpSheet evening = new CatchUpSheet(window.presenter());
    step(
        "photos in the evening",
        () -> {
          window.presenter().open(evening);
          evening.enter(new At("day", "", "day"), day.toString());
          evening.add("photos", List.of(photo.toString()));
        },
        () -> window.shows("put"));
    step(
        "putting photos in",
        () -> evening.press("put"),
        () -> window.almanac().photos().size() == almanac.photos().size() + 1);
    step("leaving the evening", window.presenter()::leave, () -> window.place() != null);
    step(
        "a visit with photos",
        () -> window.presenter().boats().openVisit(almanac.photos().get(0).visit().orElseThrow()),
        () -> window.place() == null);
    step("leaving its sheet", window.presenter()::leave, () -> window.place() != null);
  }

  private static LocalDate dayOfOneVisit(Almanac almanac) {
    return almanac.visits().stream()
        .filter(v -> v.status() == VisitStatus.DONE)
        .collect(Collectors.groupingBy(Visit::day, TreeMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .filter(day -> day.getValue() == 1)
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private void shows(Almanac almanac) throws Exception {
    step(
        "the owner's view",
        () -> window.presenter().showOwner(almanac.photos().get(0).boat()),
        () -> !OpenWindow.owners().isEmpty());
    step(
        "leaving the owner's view",
        () -> window.presenter().owner().leave(),
        () -> OpenWindow.owners().isEmpty());
  }
}
