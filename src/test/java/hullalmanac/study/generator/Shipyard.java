package hullalmanac.study.generator;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Makes the boats of a fleet. */
final class Shipyard {
  private static final List<SurfaceKind> KINDS =
      List.of(
          SurfaceKind.TOPSIDES,
          SurfaceKind.TRANSOM,
          SurfaceKind.CABIN_SIDES,
          SurfaceKind.FOREDECK,
          SurfaceKind.COACHROOF);
  private static final List<Water> AFLOAT = List.of(Water.SALT, Water.BRACKISH, Water.FRESH);
  private static final List<Cover> ASHORE = List.of(Cover.SHED, Cover.SHRINK_WRAP, Cover.OPEN);
  private static final LocalDate BERTHED_SINCE = LocalDate.of(2019, 3, 1);
  private static final LocalDate ASHORE_SINCE = LocalDate.of(2019, 11, 15);
  private static final LocalDate AFLOAT_AGAIN = LocalDate.of(2020, 4, 1);
  private static final int ABOUT = 10;
  private static final int MOST_SURFACES = 3;
  private static final double DARK = 0.3;
  private static final double GLOSS_READ = 0.25;
  private static final double EFFECT_SPREAD = 0.3;

  private final World world;
  private final Arrivals arrivals;

  Shipyard(World world, Arrivals arrivals) {
    this.world = world;
    this.arrivals = arrivals;
  }

  /** A boat with all that is drawn for it once. */
  Vessel vessel(int number, SplittableRandom random) {
    SplittableRandom looks = random.split();
    SplittableRandom lives = random.split();
    Vessel.Start start = arrivals.drawn(random.split(), random.split().nextDouble() < GLOSS_READ);
    NavigableSet<Integer> routine = Routine.drawn(random.split(), start.day(), world.span());
    Use use = pick(List.of(Use.values()), looks);
    Boat boat = boat(number, use, start.day());
    Haven haven = pick(world.havens(), looks);
    List<Berth> berths = berths(boat.id(), haven, looks);
    Exposure exposure = new Exposure(world, haven, berths, use);
    double effect = Math.exp(lives.nextGaussian(0, EFFECT_SPREAD));
    int[] washes = Routine.runningCount(routine, world.span());
    List<SurfaceKind> left = new ArrayList<>(KINDS);
    List<Skin> skins = new ArrayList<>();
    int count = 1 + looks.nextInt(MOST_SURFACES);
    for (int i = 0; i < count; i++) {
      SurfaceKind kind = left.remove(looks.nextInt(left.size()));
      Surface surface = surface(boat.id(), kind, looks.nextDouble() < DARK);
      Make make = pick(world.makes(), looks);
      double perWash = world.law().wash(make.coatClass());
      Wear wear = new Wear(world.span(), exposure.running(surface), washes, perWash);
      skins.add(new Skin(surface, make, wear, effect, lives.split()));
    }
    return new Vessel(boat, berths, List.copyOf(skins), start, routine, random.split());
  }

  private static <T> T pick(List<T> from, RandomGenerator random) {
    return from.get(random.nextInt(from.size()));
  }

  private Boat boat(int number, Use use, int known) {
    return new Boat(
        world.counter().next(),
        world.counter().key(),
        "Wagtail " + number,
        BoatType.OTHER,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        Optional.empty(),
        use,
        BoatStatus.ACTIVE,
        Optional.of(Span.date(known)),
        "");
  }

  private Surface surface(Id<Boat> boat, SurfaceKind kind, boolean dark) {
    return new Surface(
        world.counter().next(),
        world.counter().key(),
        boat,
        kind,
        Side.BOTH,
        "",
        Finish.GELCOAT,
        dark ? Tone.DARK : Tone.LIGHT,
        kind.usualAttitude(),
        Optional.empty(),
        Past.KNOWN,
        false,
        Optional.empty(),
        "");
  }

  /** Where it lies: in one place, and for half of the boats ashore each winter. */
  private List<Berth> berths(Id<Boat> boat, Haven haven, RandomGenerator random) {
    Water water = pick(AFLOAT, random);
    Cover cover = cover(random.nextDouble());
    boolean laidUp = random.nextBoolean();
    Cover winter = pick(ASHORE, random);
    LocalDate from = about(ASHORE_SINCE, random);
    LocalDate until = about(AFLOAT_AGAIN, random);
    List<Berth> berths = new ArrayList<>();
    berths.add(berth(boat, haven, new Lying(cover, water), BERTHED_SINCE, Optional.empty()));
    if (laidUp) {
      berths.add(berth(boat, haven, new Lying(winter, Water.ASHORE), from, Optional.of(until)));
    }
    return List.copyOf(berths);
  }

  private static LocalDate about(LocalDate day, RandomGenerator random) {
    return day.plusDays(random.nextInt(-ABOUT, ABOUT + 1));
  }

  /** Open, covered slip and fitted cover as 60 : 15 : 10. */
  private static Cover cover(double draw) {
    if (draw < 60.0 / 85) {
      return Cover.OPEN;
    }
    return draw < 75.0 / 85 ? Cover.COVERED_SLIP : Cover.FITTED_COVER;
  }

  private record Lying(Cover cover, Water water) {}

  private Berth berth(
      Id<Boat> boat, Haven haven, Lying lying, LocalDate from, Optional<LocalDate> yearlyUntil) {
    return new Berth(
        world.counter().next(),
        world.counter().key(),
        boat,
        haven.harbour().id(),
        lying.cover(),
        lying.water(),
        from,
        yearlyUntil,
        yearlyUntil.isPresent(),
        Optional.empty(),
        Optional.empty(),
        Berth.Access.UNKNOWN,
        Berth.Private.NOTHING);
  }
}
