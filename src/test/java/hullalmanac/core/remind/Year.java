package hullalmanac.core.remind;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Forecaster;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import hullalmanac.core.record.WorkState;
import hullalmanac.core.work.Change;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/**
 * A year lived through a day at a time: owners are told what is to be told and answer in every way
 * there is, work is done or not, and somebody looks at a boat now and then.
 */
final class Year {
  private final Random random = new Random(11);
  private final IdSource ids = new IdSource(random::nextLong);
  private final TreeMap<LocalDate, List<Runnable>> later = new TreeMap<>();
  private Forecaster forecaster;
  private Almanac almanac;
  private LocalDate today;
  private List<CoatForecast> coats = List.of();
  private List<BoatDue> due = List.of();

  Year(Almanac almanac, LocalDate first) {
    this.almanac = almanac;
    today = first;
    forecaster = new Forecaster(almanac, first);
    reckon();
  }

  Almanac almanac() {
    return almanac;
  }

  LocalDate today() {
    return today;
  }

  List<BoatDue> due() {
    return due;
  }

  List<CoatForecast> coats() {
    return coats;
  }

  /** How many things were done of themselves. */
  int planned() {
    return later.values().stream().mapToInt(List::size).sum();
  }

  List<Standing> standings() {
    return Reminding.on(almanac, coats, due, today);
  }

  private void reckon() {
    coats = forecaster.inService();
    due = forecaster.byBoat(coats);
  }

  /** Goes on to the next day, on which what was agreed for it comes to pass. */
  void next() {
    today = today.plusDays(1);
    later.getOrDefault(today, List.of()).forEach(Runnable::run);
    look();
    forecaster = forecaster.next(almanac, today);
    reckon();
  }

  private void put(Row... rows) {
    almanac = almanac.with(Edit.put(rows));
  }

  private void in(int days, Runnable what) {
    later.computeIfAbsent(today.plusDays(days), d -> new ArrayList<>()).add(what);
  }

  /** Now and then somebody sees how water lies on a coat, which moves its date by weeks. */
  private void look() {
    if (random.nextInt(4) != 0) {
      return;
    }
    CoatForecast f = coats.get(random.nextInt(coats.size()));
    Id<Finding> id = ids.next();
    put(
        new Finding(
            id,
            "look-" + id.value(),
            f.surface().id(),
            Optional.empty(),
            today,
            SurfaceState.WASHED,
            Entered.GRID,
            new Observation.WaterSeen(
                random.nextInt(3) == 0 ? WaterBehaviour.FLAT : WaterBehaviour.BEADS),
            ""));
  }

  /** Writes down what was said; refused, and so a fault of the test, where it cannot be. */
  void say(Standing standing, Reminder.Said said) {
    Change change = Telling.change(almanac, ids, standing, said);
    if (!(change instanceof Change.Ready ready)) {
      throw new IllegalStateException(change.toString());
    }
    almanac = almanac.with(ready.edit());
  }

  /** Tells an owner, who answers in some days in one of the ways there are. */
  void tell(Standing standing) {
    say(standing, Reminder.Said.told(today, Reminder.Way.PHONE, ""));
    switch (random.nextInt(6)) {
      case 0 -> in(3, () -> answer(standing, ReminderEvent.DECLINED));
      case 1 -> in(2, () -> askAgain(standing));
      case 2 -> {
        in(4, () -> answer(standing, ReminderEvent.BOOKED));
        in(25, () -> work(standing, true));
      }
      case 3 -> in(30, () -> work(standing, true));
      case 4 -> in(20, () -> work(standing, false));
      default -> in(1, () -> {});
    }
  }

  private Optional<Standing> now(Standing before) {
    return standings().stream()
        .filter(s -> s.boat().equals(before.boat()) && !s.written().isEmpty())
        .filter(
            s ->
                s.about().stream().anyMatch(a -> before.about().stream().anyMatch(b -> same(a, b))))
        .findFirst();
  }

  private static boolean same(Reminder.About a, Reminder.About b) {
    return a.what().equals(b.what());
  }

  private void answer(Standing before, ReminderEvent event) {
    now(before)
        .map(s -> Optional.of(s).filter(x -> x.state().after(event).isPresent()))
        .flatMap(s -> s)
        .ifPresent(s -> say(s, Reminder.Said.of(today, event, "")));
  }

  private void askAgain(Standing before) {
    now(before)
        .filter(s -> s.state().after(ReminderEvent.ASK_AGAIN).isPresent())
        .ifPresent(
            s -> say(s, Reminder.Said.askAgain(today, today.plusDays(40), "after the races")));
  }

  /** The coats of a reminder are renewed by a visit, or come off by other hands. */
  private void work(Standing standing, boolean visit) {
    Id<Visit> id = ids.next();
    List<Visit.Part> parts = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (Reminder.About about : standing.about()) {
      about
          .coat()
          .flatMap(c -> coats.stream().filter(f -> f.coat().id().equals(c)).findFirst())
          .ifPresent(f -> rows.add(visit ? renewed(f, id, parts) : stripped(f.coat())));
    }
    if (visit && !rows.isEmpty()) {
      rows.add(0, visit(id, standing, parts));
    }
    almanac = almanac.with(Edit.put(rows));
  }

  private Coat stripped(Coat coat) {
    return With.component(
        coat,
        "ending",
        Optional.of(new Coat.Ending(today, CoatEnd.STRIPPED, EndState.NOT_LOOKED, "")));
  }

  private Coat renewed(CoatForecast f, Id<Visit> visit, List<Visit.Part> parts) {
    Surface surface = f.surface();
    if (parts.stream().noneMatch(p -> p.surface().equals(surface.id()))) {
      parts.add(new Visit.Part(surface.id(), WorkState.DONE, Optional.of(today), ""));
    }
    Id<Coat> id = ids.next();
    return new Coat(
        id,
        "again-" + id.value(),
        surface.id(),
        f.product().id(),
        Optional.of(today),
        Optional.empty(),
        Optional.of(visit),
        Optional.empty(),
        "",
        1,
        f.coat().over(),
        Optional.empty(),
        "");
  }

  private Visit visit(Id<Visit> id, Standing standing, List<Visit.Part> parts) {
    return new Visit(
        id,
        "year-" + id.value(),
        standing.boat().id(),
        today,
        VisitStatus.DONE,
        VisitWhy.DUE,
        Optional.empty(),
        Optional.empty(),
        Handover.NOT_YET,
        parts,
        List.of(),
        "");
  }
}
