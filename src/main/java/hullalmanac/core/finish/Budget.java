package hullalmanac.core.finish;

import hullalmanac.core.record.Past;
import hullalmanac.core.record.Tone;
import java.util.Locale;
import java.util.Optional;

/**
 * What may still be taken off a surface, in tenths of a micron.
 *
 * <p>Common practice, no source: gelcoat is 500 µm new on flats and half of that on edges and
 * corners. Where the past is unknown it is taken to be 400 at 10 years and 320 at 20, evenly in
 * between and on. 250 stay in reserve on flats, 300 on dark ones, unless the business has set it,
 * and half of that on edges. Buffable urethane and clear over metallic may lose 10 µm for life,
 * linear polyurethane and wrap nothing.
 *
 * @param flats on flats
 * @param edges on edges and corners
 */
public record Budget(int flats, int edges, Basis basis) {
  private static final int NEW = 5000;
  private static final int THIN = 100;
  private static final int OLD_AGE = 20;

  /** What it rests on. */
  public enum Basis {
    MEASURED("measured"),
    KNOWN_PAST("as new, less what the record took off"),
    BY_AGE("its past is not known: a rule of thumb by age"),
    NO_AGE("neither its past nor its age is known: as if it were 20 years old"),
    THIN_FILM("10 µm off for life, less what the record took off"),
    NO_ABRASIVES("no abrasives on this finish"),
    AGREED("as agreed");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    /** Whether it is a rule of thumb of gelcoat, so that decimals of it mean nothing. */
    public boolean isRule() {
      return this == KNOWN_PAST || this == BY_AGE || this == NO_AGE;
    }

    /** What it rests on, in words. */
    public String words() {
      return words;
    }
  }

  public Budget {
    if (flats < 0 || edges < 0) {
      throw new IllegalArgumentException("no budget is under nothing: " + flats + ", " + edges);
    }
  }

  /**
   * What was done to a surface.
   *
   * @param age in years of the finish when the record's first correction began, or today without
   *     one
   * @param taken what the record took off since, tenths of a micron
   * @param takenSinceMeasured the part of it after the measurement
   */
  public record History(Past past, Optional<Integer> age, int taken, int takenSinceMeasured) {
    public History {
      if (taken < 0 || takenSinceMeasured < 0 || takenSinceMeasured > taken) {
        throw new IllegalArgumentException("nothing is put back by polishing: " + taken);
      }
      age.ifPresent(
          a -> {
            if (a < 0) {
              throw new IllegalArgumentException("a finish is not " + a + " years old");
            }
          });
    }
  }

  /** What may still be taken off; a measurement overrides what is usual of gelcoat. */
  static Budget of(
      FinishPractice practice, Film film, Tone tone, History history, Optional<Measured> measured) {
    double reserve = practice.reserve(tone);
    if (film == Film.NO_ABRASIVES) {
      return new Budget(0, 0, Basis.NO_ABRASIVES);
    }
    if (film.thin()) {
      int left = Math.max(0, THIN - history.taken());
      return new Budget(left, left, Basis.THIN_FILM);
    }
    if (measured.isPresent()) {
      double flats = 10 * measured.get().flats();
      double edges = measured.get().edges().map(e -> 10 * e).orElse(flats / 2);
      return gelcoat(reserve, flats, edges, history.takenSinceMeasured(), Basis.MEASURED);
    }
    if (history.past() == Past.KNOWN) {
      return gelcoat(reserve, NEW, NEW / 2.0, history.taken(), Basis.KNOWN_PAST);
    }
    int age = history.age().orElse(OLD_AGE);
    double flats = age <= 10 ? NEW - 100.0 * age : 4000 - 80.0 * (age - 10);
    Basis basis = history.age().isPresent() ? Basis.BY_AGE : Basis.NO_AGE;
    return gelcoat(reserve, flats, flats / 2, history.taken(), basis);
  }

  private static Budget gelcoat(
      double reserve, double flats, double edges, int taken, Basis basis) {
    return new Budget(
        (int) Math.max(0, Math.floor(flats - taken - reserve)),
        (int) Math.max(0, Math.floor(edges - taken - reserve / 2)),
        basis);
  }

  /** This budget where less of it was agreed on. */
  Budget atMost(Allowance agreed) {
    int lessFlats = agreed.flats().map(Budget::tenths).orElse(flats);
    int lessEdges = agreed.edges().map(Budget::tenths).orElse(edges);
    return lessFlats >= flats && lessEdges >= edges
        ? this
        : new Budget(Math.min(flats, lessFlats), Math.min(edges, lessEdges), Basis.AGREED);
  }

  /** Why more was agreed on than can be spared, a sentence; nothing where it is not. */
  Optional<String> against(Allowance agreed) {
    return over(agreed.flats(), flats, "on flats")
        .or(() -> over(agreed.edges(), edges, "at edges and corners"));
  }

  private Optional<String> over(Optional<Double> agreed, int spare, String where) {
    return agreed
        .filter(microns -> tenths(microns) > spare)
        .map(
            microns ->
                String.format(
                    Locale.ROOT,
                    "No more than %.1f µm can be spared %s (%s): agree on that or less.",
                    spare / 10.0,
                    where,
                    basis.words()));
  }

  private static int tenths(double microns) {
    return (int) Math.floor(10 * microns);
  }

  /**
   * Whether so much may be taken off.
   *
   * @param tenths of a micron
   * @param edgesTaped whether edges and corners are taped and lose nothing
   */
  public boolean allows(int tenths, boolean edgesTaped) {
    return tenths <= flats && (edgesTaped || tenths <= edges);
  }

  /**
   * What is left after a plan, none of it under nothing.
   *
   * @param tenths of a micron taken off
   */
  public Budget less(int tenths, boolean edgesTaped) {
    return new Budget(
        Math.max(0, flats - tenths), edgesTaped ? edges : Math.max(0, edges - tenths), basis);
  }

  /** How much there is to spare, where it is least. */
  public Spare spare() {
    return Spare.of(Math.min(flats, edges));
  }

  /** Microns on flats. */
  public double flatsMicrons() {
    return flats / 10.0;
  }

  /** Microns on edges and corners. */
  public double edgesMicrons() {
    return edges / 10.0;
  }
}
