package hullalmanac.core.exposure;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WashStrength;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Makes the exposure clocks of a record's surfaces. Sums are built once for each harbour and set of
 * factors.
 *
 * <p>Not for use by several threads at once.
 */
public final class Clocks {
  private final Map<Id<Boat>, Boat> boats;
  private final Map<Id<Harbour>, Harbour> harbours;
  private final Map<Id<Boat>, List<Berth>> berths;
  private final Map<Id<Surface>, List<Wash>> washes = new HashMap<>();
  private final Map<Id<Harbour>, HarbourSun> suns = new HashMap<>();
  private final Map<Regime, YearDose> years = new HashMap<>();
  private final LocalDate from;
  private final LocalDate until;

  private final WearPractice practice;

  /** What of a surface's wear at a harbour is the sun's, and what is constant. */
  private record Regime(Id<Harbour> harbour, double sun, double constant) {}

  /**
   * The days clocks reckon with.
   *
   * @param from first day they are to know
   * @param asOf the last day of which washings are known: later ones are left out
   * @param until first day they need not know
   */
  public record Days(LocalDate from, LocalDate asOf, LocalDate until) {}

  /** Clocks by the business's practice that know every washing of the record. */
  public Clocks(Almanac almanac, LocalDate from, LocalDate until) {
    this(
        almanac,
        WearPractice.of(almanac.business().practice()),
        new Days(from, LocalDate.MAX, until));
  }

  public Clocks(Almanac almanac, WearPractice practice, Days days) {
    this.practice = practice;
    this.from = days.from();
    this.until = days.until();
    boats = almanac.boats().stream().collect(Collectors.toMap(Boat::id, Function.identity()));
    harbours =
        almanac.harbours().stream().collect(Collectors.toMap(Harbour::id, Function.identity()));
    berths = almanac.berths().stream().collect(Collectors.groupingBy(Berth::boat));
    collectWashes(almanac, days.asOf());
  }

  /** The clock of a surface, or nothing when it is not known where its boat lies. */
  public Optional<SurfaceClock> of(Surface surface) {
    List<Berth> ofBoat = berths.getOrDefault(surface.boat(), List.of());
    List<Stay> stays = Stays.of(ofBoat, from, until);
    if (stays.isEmpty()) {
      return Optional.empty();
    }
    List<YearDose> rates = stays.stream().map(stay -> dose(surface, stay)).toList();
    LocalDate known = Stays.firstKnown(ofBoat).orElseThrow();
    List<Wash> ofSurface = washes.getOrDefault(surface.id(), List.of());
    return Optional.of(new SurfaceClock(stays, rates, ofSurface, practice, known));
  }

  private YearDose dose(Surface surface, Stay stay) {
    Harbour harbour = harbours.get(stay.berth().harbour());
    double factor =
        practice.surface(surface)
            * practice.tone(surface.tone())
            * practice.use(boats.get(surface.boat()).use());
    double sun =
        factor
            * practice.sunShare()
            * side(surface, stay.berth().bow(), harbour.latitude())
            * practice.cover(stay.berth().cover(), surface.attitude());
    double constant = factor * (1 - practice.sunShare()) * practice.wetness(stay.berth().water());
    return years.computeIfAbsent(
        new Regime(harbour.id(), sun, constant),
        key -> new YearDose(sun(harbour), sun, constant, practice.leastWear()));
  }

  /**
   * Dose of an average day of the year on light upright topsides afloat in salt water at a harbour,
   * in weekend use.
   */
  public double meanDay(Harbour harbour, Cover cover) {
    double sun = practice.sunShare() * practice.cover(cover, Attitude.UPRIGHT);
    double constant = (1 - practice.sunShare()) * practice.wetness(Water.SALT);
    YearDose year = new YearDose(sun(harbour), sun, constant, practice.leastWear());
    LocalDate newYear = LocalDate.of(from.getYear(), 1, 1);
    return year.between(newYear, newYear.plusYears(1)) / newYear.lengthOfYear();
  }

  private HarbourSun sun(Harbour harbour) {
    return suns.computeIfAbsent(harbour.id(), key -> new HarbourSun(harbour, practice.meanSky()));
  }

  /**
   * How much more or less sun an upright surface gets for the way it faces: more within 60° of the
   * noon sun, less within 60° of the other way, as practice has it.
   */
  double side(Surface surface, Optional<Integer> bow, double latitude) {
    Optional<Integer> turn = turnFromBow(surface);
    if (bow.isEmpty() || turn.isEmpty()) {
      return 1.0;
    }
    double facing = bow.get() + turn.get();
    double noonSun = latitude >= 0 ? 180 : 0;
    double off = Math.abs(Math.floorMod(Math.round(facing - noonSun) + 180, 360) - 180);
    WearPractice.Facing facings = practice.facing();
    if (off <= facings.within()) {
      return facings.sunward();
    }
    return off >= 180 - facings.within() ? facings.shaded() : 1.0;
  }

  private static Optional<Integer> turnFromBow(Surface surface) {
    if (surface.attitude() != Attitude.UPRIGHT) {
      return Optional.empty();
    }
    if (surface.kind() == SurfaceKind.TRANSOM) {
      return Optional.of(180);
    }
    if (surface.side() == Side.BOTH) {
      return Optional.empty();
    }
    return Optional.of(surface.side() == Side.PORT ? -90 : 90);
  }

  private void collectWashes(Almanac almanac, LocalDate asOf) {
    Map<Id<Product>, Product> products =
        almanac.products().stream().collect(Collectors.toMap(Product::id, Function.identity()));
    Map<Id<Visit>, Visit> visits =
        almanac.visits().stream().collect(Collectors.toMap(Visit::id, Function.identity()));
    Map<Id<Boat>, List<Surface>> ofBoat =
        almanac.surfaces().stream().collect(Collectors.groupingBy(Surface::boat));
    for (Step step : almanac.steps()) {
      boolean cleans = step.kind() == StepKind.WASH || step.kind() == StepKind.DECONTAMINATE;
      boolean known = !step.day().isAfter(asOf);
      if (!cleans || !known || visits.get(step.visit()).status() != VisitStatus.DONE) {
        continue;
      }
      Wash wash = new Wash(step.day(), strength(step, step.product().map(products::get)));
      List<Id<Surface>> touched = step.surfaces();
      if (touched.isEmpty()) {
        Id<Boat> boat = visits.get(step.visit()).boat();
        touched = ofBoat.getOrDefault(boat, List.of()).stream().map(Surface::id).toList();
      }
      touched.forEach(s -> washes.computeIfAbsent(s, key -> new ArrayList<>()).add(wash));
    }
    washes.values().forEach(list -> list.sort(Comparator.comparing(Wash::day)));
  }

  /**
   * What a step does to a coat when its product does not say: a wash is mild, a decontaminant an
   * acid (practice).
   */
  private static WashStrength strength(Step step, Optional<Product> product) {
    return product
        .flatMap(Product::wash)
        .orElse(step.kind() == StepKind.WASH ? WashStrength.MILD : WashStrength.ACID_OR_ALKALI);
  }
}
