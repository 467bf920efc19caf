package hullalmanac.core.life.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Share of lives not yet ended, from lives known only between two times. The likelihood Π Σ s_j
 * over the innermost intervals j inside each life's (lower, upper] is made greatest by repeating
 *
 * <pre>
 *   s_j ← (1/n) Σ_i  s_j [j inside i] / Σ_k s_k [k inside i]
 * </pre>
 *
 * <p>Errors are those of the masses that are not 0, from the observed information, as if their
 * number were fixed. That is the usual practice and only roughly right: where ends are seen at few
 * times the band is too narrow at the edges.
 *
 * <p>References: Turnbull, J. R. Stat. Soc. B 38 (1976) 290; Peto, Appl. Stat. 22 (1973) 86.
 *
 * @param steps in order of time; within a step the estimate says nothing
 * @param logLikelihood the greatest there is
 */
public record Turnbull(List<SurvivalStep> steps, double logLikelihood) {
  private static final int MOST_ROUNDS = 200_000;
  private static final double EXACTLY = 1e-13;
  private static final double NOTHING = 1e-9;

  public Turnbull {
    steps = List.copyOf(steps);
  }

  /** An innermost interval, open at the left unless it is a single time. */
  private record Cell(double from, double until) {
    boolean inside(Lifetime life) {
      if (life.exact()) {
        return from == life.lower() && until == life.upper();
      }
      boolean begun = from == until ? from > life.lower() : from >= life.lower();
      return begun && until <= life.upper();
    }
  }

  /** An end of an interval; at one time, single times begin before others end, and others after. */
  private record Edge(double time, int order, boolean begins) {}

  /**
   * Estimates from lives.
   *
   * @throws IllegalArgumentException when there are none
   */
  public static Turnbull of(List<Lifetime> lives) {
    return of(lives, EXACTLY);
  }

  /**
   * Estimates from lives, until no mass moves by more than {@code settled} in a round: 1e-13 for
   * tables, 1e-6 for pictures.
   */
  public static Turnbull of(List<Lifetime> lives, double settled) {
    if (lives.isEmpty()) {
      throw new IllegalArgumentException("there are no lives");
    }
    List<Cell> cells = innermost(lives);
    boolean[][] inside = new boolean[lives.size()][cells.size()];
    for (int i = 0; i < lives.size(); i++) {
      for (int j = 0; j < cells.size(); j++) {
        inside[i][j] = cells.get(j).inside(lives.get(i));
      }
    }
    return steps(cells, inside, masses(inside, cells.size(), settled));
  }

  private static List<Cell> innermost(List<Lifetime> lives) {
    List<Edge> edges = new ArrayList<>();
    for (Lifetime life : lives) {
      edges.add(new Edge(life.lower(), life.exact() ? -1 : 1, true));
      edges.add(new Edge(life.upper(), 0, false));
    }
    edges.sort(Comparator.comparingDouble(Edge::time).thenComparingInt(Edge::order));
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i + 1 < edges.size(); i++) {
      if (edges.get(i).begins() && !edges.get(i + 1).begins()) {
        cells.add(new Cell(edges.get(i).time(), edges.get(i + 1).time()));
      }
    }
    return cells;
  }

  private static double[] masses(boolean[][] inside, int cells, double settled) {
    double[] mass = new double[cells];
    Arrays.fill(mass, 1.0 / cells);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = new double[cells];
      for (boolean[] row : inside) {
        double all = chance(row, mass);
        for (int j = 0; j < cells; j++) {
          next[j] += row[j] ? mass[j] / all / inside.length : 0;
        }
      }
      double change = 0;
      for (int j = 0; j < cells; j++) {
        change = Math.max(change, Math.abs(next[j] - mass[j]));
      }
      mass = next;
      if (change < settled) {
        break;
      }
    }
    return mass;
  }

  private static double chance(boolean[] row, double[] mass) {
    double sum = 0;
    for (int j = 0; j < mass.length; j++) {
      sum += row[j] ? mass[j] : 0;
    }
    return sum;
  }

  private static Turnbull steps(List<Cell> cells, boolean[][] inside, double[] mass) {
    double log = 0;
    for (boolean[] row : inside) {
      log += Math.log(chance(row, mass));
    }
    int[] live =
        java.util.stream.IntStream.range(0, mass.length).filter(j -> mass[j] > NOTHING).toArray();
    Optional<double[][]> covariance = covariance(inside, mass, live);
    List<SurvivalStep> steps = new ArrayList<>();
    double surviving = 1;
    for (int k = 0; k < live.length; k++) {
      surviving -= mass[live[k]];
      Cell cell = cells.get(live[k]);
      boolean last = k == live.length - 1;
      double share = last ? 0 : Math.max(0, surviving);
      int upTo = k;
      double error = last ? 0 : covariance.map(c -> error(c, upTo)).orElse(Double.NaN);
      steps.add(SurvivalStep.of(cell.from(), cell.until(), share, error));
    }
    return new Turnbull(steps, log);
  }

  private static double error(double[][] covariance, int upTo) {
    double sum = 0;
    for (int a = 0; a <= upTo; a++) {
      for (int b = 0; b <= upTo; b++) {
        sum += covariance[a][b];
      }
    }
    return sum >= 0 ? Math.sqrt(sum) : Double.NaN;
  }

  /** Of all masses but the last, which is 1 less the others. */
  private static Optional<double[][]> covariance(boolean[][] inside, double[] mass, int[] live) {
    int m = live.length - 1;
    double[][] information = new double[m][m];
    for (boolean[] row : inside) {
      double p = chance(row, mass);
      int last = row[live[m]] ? 1 : 0;
      for (int a = 0; a < m; a++) {
        double da = (row[live[a]] ? 1 : 0) - last;
        for (int b = 0; b < m; b++) {
          double db = (row[live[b]] ? 1 : 0) - last;
          information[a][b] += da * db / (p * p);
        }
      }
    }
    return Inverse.of(information);
  }

  /** The first time by which at least half have surely ended, where there is one. */
  public Optional<Double> median() {
    return steps.stream()
        .filter(s -> s.surviving() <= 0.5 && Double.isFinite(s.until()))
        .findFirst()
        .map(SurvivalStep::until);
  }
}
