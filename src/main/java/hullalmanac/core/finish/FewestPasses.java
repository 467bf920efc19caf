package hullalmanac.core.finish;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest passes for one surface of a record: how it stands, what it can spare and reach, and
 * the plans for what is agreed. A test spot is among what is said of it; made again with one, it
 * hands back the plans that the spot leads to.
 */
public final class FewestPasses {
  private final Experience experience;
  private final Surface surface;
  private final Optional<Film> film;
  private final Inspection inspection;
  private final Optional<Area> area;
  private final Said said;

  /**
   * What is said of a surface beside its record.
   *
   * @param buffable whether urethane paint is known to be an acrylic that may be buffed
   * @param measured thickness of its gelcoat
   * @param allowed the most that was agreed to come off
   * @param area measured or entered; absent: by rule of thumb
   * @param seen what was seen that no finding says, such as swirls
   * @param spots test spots on it, any number
   */
  public record Said(
      boolean buffable,
      Optional<Measured> measured,
      Allowance allowed,
      Optional<Area> area,
      Set<Defect> seen,
      List<TestSpot> spots) {
    /** Nothing more than the record says. */
    public static final Said NOTHING =
        new Said(false, Optional.empty(), Allowance.ALL, Optional.empty(), Set.of(), List.of());

    public Said {
      seen = Set.copyOf(seen);
      spots = List.copyOf(spots);
    }
  }

  private FewestPasses(
      Experience experience,
      Surface surface,
      Inspection inspection,
      Optional<Area> area,
      Said said) {
    this.experience = experience;
    this.surface = surface;
    this.film = Film.of(surface, said.buffable());
    this.inspection = inspection;
    this.area = area;
    this.said = said;
  }

  /**
   * For a surface as it stands on a day.
   *
   * @param experience what the same record teaches
   */
  public static FewestPasses on(
      Almanac almanac, Experience experience, Id<Surface> id, Said said, LocalDate today) {
    Surface surface =
        almanac.surfaces().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    Boat boat =
        almanac.boats().stream()
            .filter(b -> b.id().equals(surface.boat()))
            .findFirst()
            .orElseThrow();
    return new FewestPasses(
        experience,
        surface,
        Inspection.of(almanac, id, today),
        said.area().or(() -> Area.byRule(boat, surface)),
        said);
  }

  /** How it stands by the record. */
  public Inspection inspection() {
    return inspection;
  }

  /** Its area, measured, entered or by rule of thumb; absent where no rule speaks of it. */
  public Optional<Area> area() {
    return area;
  }

  /** All that is seen on it, by the record and as said. */
  public Set<Defect> seen() {
    Set<Defect> all = EnumSet.noneOf(Defect.class);
    all.addAll(inspection.seen());
    all.addAll(said.seen());
    return all;
  }

  /**
   * What may be taken off it, no more than was agreed; absent where nothing is corrected by stages.
   */
  public Optional<Budget> budget() {
    return spare().map(b -> b.atMost(said.allowed()));
  }

  /** What can be spared, whatever was agreed; absent where nothing is corrected by stages. */
  public Optional<Budget> spare() {
    return film.map(
        f ->
            Budget.of(
                experience.practice(),
                f,
                surface.tone(),
                inspection.history(surface, f, said.measured()),
                said.measured()));
  }

  /** The gloss that it can reach at all; absent where nothing is corrected by stages. */
  public Optional<GlossLimit> limit() {
    return film.map(f -> GlossLimit.usual(experience.practice(), f, inspection.age()))
        .map(this::seen);
  }

  private GlossLimit seen(GlossLimit usual) {
    GlossLimit limit =
        inspection.best().map(b -> usual.seen(b, GlossLimit.Why.OWN_BEST)).orElse(usual);
    for (TestSpot spot : said.spots()) {
      limit =
          limit
              .seen(spot.before().mean(), GlossLimit.Why.OWN_BEST)
              .seen(spot.after().mean(), GlossLimit.Why.TEST_SPOT);
    }
    return limit;
  }

  /** The plans that no other beats for what is agreed. */
  public Plans plans(Agreed agreed) {
    Optional<String> missing = missing();
    return missing.isPresent() ? new Plans.Refused(missing.get()) : planner(agreed).plans();
  }

  /** What becomes of stages that a person chose. */
  public Judged judge(Agreed agreed, List<Stage> stages) {
    Optional<String> missing = missing();
    return missing.isPresent() ? new Judged.Refused(missing.get()) : planner(agreed).judge(stages);
  }

  private Optional<String> missing() {
    if (film.isEmpty()) {
      return Optional.of("No stages are reckoned for " + surface.words() + ".");
    }
    if (inspection.start().isEmpty()) {
      return Optional.of(
          "Nobody looked at the gloss of this surface since it was last corrected: wash it and read"
              + " it at 60°, or say how it looks on the eye scale.");
    }
    if (area.isEmpty()) {
      return Optional.of(
          "The area is not known: write down the length of the boat, or enter the area.");
    }
    return spare().orElseThrow().against(said.allowed());
  }

  private Planner planner(Agreed agreed) {
    Tone tone = surface.tone();
    GlossLimit limit = limit().orElseThrow();
    Subject subject =
        new Subject(
            film.orElseThrow(),
            tone,
            limit,
            inspection.start().orElseThrow(),
            seen(),
            budget().orElseThrow());
    return new Planner(
        subject,
        agreed,
        SurfaceLaws.of(experience, surface.finish(), tone, limit, said.spots()),
        Effort.of(
            area.orElseThrow(),
            Condition.of(Optional.of(subject.start().gloss()), seen()),
            experience.rates()));
  }
}
