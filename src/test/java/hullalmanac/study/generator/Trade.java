package hullalmanac.study.generator;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** The business at work, from day to day. */
final class Trade {
  private static final Set<Month> ASKED_IN =
      Set.of(Month.MARCH, Month.MAY, Month.JULY, Month.SEPTEMBER);
  private static final int LONGEST_DELAY = 25;
  private static final int YOUNGEST_MET = 20;
  private static final int OLDEST_MET = 150;
  private static final int FIRST_CHECK = 7;
  private static final int LAST_CHECK = 21;
  private static final double NOT_LOOKED = 0.40;
  private static final double RENEWED_AT_ONCE = 0.5;

  private final World world;
  private final List<Vessel> vessels;
  private final int asOf;
  private final Ledger ledger;
  private final Looks looks;
  private final Map<Integer, List<Runnable>> ahead = new HashMap<>();
  private final Map<Id<Coat>, TrueCoat> coats = new LinkedHashMap<>();

  Trade(World world, List<Vessel> vessels, int asOf, boolean gloss) {
    this.world = world;
    this.vessels = List.copyOf(vessels);
    this.asOf = asOf;
    this.ledger = new Ledger(world);
    this.looks = new Looks(gloss);
  }

  /** All coats there ever were, in the order in which they came into the record. */
  Collection<TrueCoat> coats() {
    return Collections.unmodifiableCollection(coats.values());
  }

  World world() {
    return world;
  }

  SecondLaw.Fleet fleet() {
    Map<Id<Coat>, LocalDate> lapsed = new LinkedHashMap<>();
    Map<Id<Coat>, Double> lives = new LinkedHashMap<>();
    for (TrueCoat coat : coats.values()) {
      lapsed.put(coat.id(), coat.lapse() == Wear.NEVER ? LocalDate.MAX : Span.date(coat.lapse()));
      lives.put(coat.id(), coat.nature().life());
    }
    return new SecondLaw.Fleet(ledger.almanac(), Span.date(asOf), lapsed, lives);
  }

  /** Lives through all days, the last one included. */
  void live(SecondLaw.Renewals renewals) {
    for (Vessel vessel : vessels) {
      int start = vessel.start().day();
      on(start, () -> arrive(vessel));
      for (int day : vessel.routine()) {
        on(day, () -> routine(vessel, day));
      }
    }
    for (int day = world.span().first(); day <= asOf; day++) {
      LocalDate date = Span.date(day);
      if (date.getDayOfMonth() == 1 && ASKED_IN.contains(date.getMonth())) {
        ask(renewals, day);
      }
      List<Runnable> today = ahead.remove(day);
      if (today != null) {
        today.forEach(Runnable::run);
      }
    }
  }

  /** Puts a piece of work on a day, behind what is already there. */
  private void on(int day, Runnable work) {
    if (day <= asOf) {
      ahead.computeIfAbsent(day, d -> new ArrayList<>()).add(work);
    }
  }

  private void ask(SecondLaw.Renewals renewals, int day) {
    boolean any = vessels.stream().anyMatch(v -> v.start().day() < day);
    if (!any) {
      return;
    }
    Set<Id<Coat>> due = renewals.due(ledger.almanac(), Span.date(day));
    int found = 0;
    for (Vessel vessel : vessels) {
      List<TrueCoat> named =
          vessel.skins().stream()
              .flatMap(s -> s.coat().stream())
              .filter(c -> due.contains(c.id()))
              .toList();
      if (!named.isEmpty()) {
        found += named.size();
        int when = day + vessel.chance().nextInt(LONGEST_DELAY + 1);
        on(when, () -> renew(vessel, named, when));
      }
    }
    if (found != due.size()) {
      throw new IllegalArgumentException(
          "of " + due.size() + " coats said to be due only " + found + " are in service");
    }
  }

  private void arrive(Vessel vessel) {
    ledger.met(vessel);
    int day = vessel.start().day();
    Ledger.Sheet sheet = ledger.visit(vessel, day, VisitWhy.OTHER, vessel.skins());
    List<Skin> bare = new ArrayList<>(vessel.skins());
    if (vessel.start().coated()) {
      bare.removeIf(skin -> meet(vessel, skin, day));
    }
    if (bare.isEmpty()) {
      sheet.step(StepKind.INSPECT, Optional.empty(), List.of());
    } else {
      wash(sheet, bare);
      lay(vessel, sheet, bare, day);
    }
  }

  /** Finds a coat in service on a surface, or that there was one which is gone. */
  private boolean meet(Vessel vessel, Skin skin, int day) {
    int age = vessel.chance().nextInt(YOUNGEST_MET, OLDEST_MET + 1);
    TrueCoat coat = skin.draw(world.counter().next(), day - age, Wear.NEVER);
    boolean alive = coat.lapse() > day;
    if (alive) {
      serve(vessel, coat);
      ledger.met(coat, day);
    }
    return alive;
  }

  private void wash(Ledger.Sheet sheet, List<Skin> skins) {
    sheet.step(StepKind.WASH, Optional.of(world.soap()), skins);
  }

  private void lay(Vessel vessel, Ledger.Sheet sheet, List<Skin> skins, int day) {
    int check = checkDay(vessel, day);
    List<TrueCoat> laid = new ArrayList<>();
    for (Skin skin : skins) {
      TrueCoat coat = skin.draw(world.counter().next(), day, check);
      sheet.step(StepKind.PROTECT, Optional.of(skin.make().product()), List.of(skin));
      ledger.laid(coat, sheet);
      serve(vessel, coat);
      laid.add(coat);
    }
    on(check, () -> check(vessel, laid, check));
  }

  /** When the gloss of new coats is read: on a day without a regular visit, or never. */
  private static int checkDay(Vessel vessel, int laid) {
    SplittableRandom random = vessel.chance().split();
    if (!vessel.start().glossRead()) {
      return Wear.NEVER;
    }
    int day;
    do {
      day = laid + random.nextInt(FIRST_CHECK, LAST_CHECK + 1);
    } while (vessel.routine().contains(day));
    return day;
  }

  private void serve(Vessel vessel, TrueCoat coat) {
    coat.skin().wears(coat);
    coats.put(coat.id(), coat);
    int day = coat.complaint();
    on(day, () -> complain(vessel, coat, day));
  }

  private static List<TrueCoat> stillServing(List<TrueCoat> coats) {
    return coats.stream().filter(c -> c.skin().bears(c)).toList();
  }

  private static List<Skin> skins(List<TrueCoat> coats) {
    return coats.stream().map(TrueCoat::skin).toList();
  }

  private void routine(Vessel vessel, int day) {
    Ledger.Sheet sheet = ledger.visit(vessel, day, VisitWhy.PLAN, vessel.skins());
    wash(sheet, List.of());
    looks.regular(vessel, sheet, day);
  }

  /** The wash some days after laying, made whether gloss is read or not: coats wear the same. */
  private void check(Vessel vessel, List<TrueCoat> laid, int day) {
    List<TrueCoat> still = stillServing(laid);
    if (!still.isEmpty()) {
      Ledger.Sheet sheet = ledger.visit(vessel, day, VisitWhy.OTHER, skins(still));
      wash(sheet, skins(still));
      looks.afterLaying(vessel, sheet, still, day);
    }
  }

  private void complain(Vessel vessel, TrueCoat coat, int day) {
    boolean atOnce = vessel.chance().nextDouble() < RENEWED_AT_ONCE;
    if (!coat.skin().bears(coat)) {
      return;
    }
    List<Skin> where = List.of(coat.skin());
    Ledger.Sheet sheet = ledger.visit(vessel, day, VisitWhy.COMPLAINT, where);
    wash(sheet, where);
    Observation flat = new Observation.WaterSeen(WaterBehaviour.FLAT);
    sheet.found(coat.skin(), SurfaceState.WASHED, Entered.GRID, flat);
    if (atOnce) {
      end(coat, EndState.FLAT, day);
      lay(vessel, sheet, where, day);
    }
  }

  private void renew(Vessel vessel, List<TrueCoat> named, int day) {
    List<TrueCoat> still = stillServing(named);
    if (still.isEmpty()) {
      return;
    }
    Ledger.Sheet sheet = ledger.visit(vessel, day, VisitWhy.DUE, skins(still));
    wash(sheet, skins(still));
    for (TrueCoat coat : still) {
      boolean looked = vessel.chance().nextDouble() >= NOT_LOOKED;
      EndState seen = looked ? Looks.atTheEnd(vessel, coat, day) : EndState.NOT_LOOKED;
      end(coat, seen, day);
    }
    lay(vessel, sheet, skins(still), day);
  }

  private void end(TrueCoat coat, EndState seen, int day) {
    ledger.ended(coat, new Coat.Ending(Span.date(day), CoatEnd.RENEWED, seen, ""));
  }
}
