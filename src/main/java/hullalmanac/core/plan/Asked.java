package hullalmanac.core.plan;

import hullalmanac.core.finish.Agreed;
import hullalmanac.core.finish.Allowance;
import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Defect;
import hullalmanac.core.finish.FewestPasses;
import hullalmanac.core.finish.GlossLimit;
import hullalmanac.core.finish.Measured;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.finish.TestSpot;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is asked of one surface: the finish agreed with its owner, and what is known beside the
 * record. What is absent is as usual.
 *
 * @param gloss to be reached at 60°
 * @param edgesTaped whether edges and corners are taped and lose nothing
 * @param area as entered
 * @param thickFlats thinnest reading of a gauge on flats today, µm
 * @param thickEdges the same at edges and corners; only together with flats
 * @param offFlats the most that may come off flats, µm
 * @param offEdges the same at edges and corners
 * @param paper where trained hands may sand: the finest paper that takes the deepest scratch down
 * @param buffable whether urethane paint is known to be an acrylic that may be buffed
 * @param also what is seen beside what the record says
 * @param gone what is agreed to be gone; absent: all that is seen and can be
 * @param own stages of one's own, to be judged; empty for none
 * @param spots tried on this very surface
 */
public record Asked(
    Id<Surface> surface,
    Optional<Double> gloss,
    boolean edgesTaped,
    Optional<Quantity> area,
    Optional<Double> thickFlats,
    Optional<Double> thickEdges,
    Optional<Double> offFlats,
    Optional<Double> offEdges,
    Optional<Stage> paper,
    boolean buffable,
    List<Defect> also,
    Optional<List<Defect>> gone,
    List<Stage> own,
    List<TestSpot> spots) {
  /**
   * Gloss units under what a surface can reach on which people usually agree (common practice, no
   * source): the last units cost most and are not promised.
   */
  public static final double USUALLY_BELOW = 5;

  private static final double THICKEST = 3000;
  private static final double HIGHEST = 120;

  public Asked {
    also = List.copyOf(also);
    gone = gone.map(List::copyOf);
    own = List.copyOf(own);
    spots = List.copyOf(spots);
    gloss.ifPresent(
        g -> {
          if (!(g > 0 && g <= HIGHEST)) {
            throw new IllegalArgumentException(
                "a gloss to agree on is over 0 and at most 120, not " + g);
          }
        });
    area.ifPresent(Asked::entered);
    thickFlats.ifPresent(Asked::requireThickness);
    thickEdges.ifPresent(Asked::requireThickness);
    new Allowance(offFlats, offEdges);
  }

  private static void requireThickness(double microns) {
    if (!(microns >= 0 && microns <= THICKEST)) {
      throw new IllegalArgumentException(
          "gelcoat is 0 to 3000 µm thick, not " + microns + "; read the gauge again");
    }
  }

  private static Area entered(Quantity area) {
    return new Area(area.in(Unit.SQUARE_METRE).doubleValue(), Area.How.ENTERED);
  }

  /** All as usual. */
  public static Asked of(Id<Surface> surface) {
    return new Asked(
        surface,
        Optional.empty(),
        true,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        List.of(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** What the planner hears beside the record. */
  FewestPasses.Said said(LocalDate today) {
    return new FewestPasses.Said(
        buffable,
        thickFlats.map(flats -> new Measured(flats, thickEdges, today)),
        new Allowance(offFlats, offEdges),
        area.map(Asked::entered),
        Set.copyOf(also),
        spots);
  }

  /** What is agreed on, with what is usual where nothing was said. */
  Agreed agreed(Set<Defect> seen, Optional<GlossLimit> limit) {
    double usual = limit.map(l -> Math.floor(l.gloss() - USUALLY_BELOW)).orElse(1.0);
    return new Agreed(
        gloss.orElse(Math.max(1, usual)),
        gone.map(Set::copyOf).orElseGet(() -> usuallyGone(seen)),
        edgesTaped,
        paper);
  }

  private Set<Defect> usuallyGone(Set<Defect> seen) {
    return seen.stream()
        .filter(d -> !d.stays())
        .filter(d -> d != Defect.SCRATCHES_FELT || paper.isPresent())
        .collect(Collectors.toSet());
  }
}
