package hullalmanac.core.life;

import hullalmanac.core.life.fit.KaplanMeier;
import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.life.fit.SurvivalStep;
import hullalmanac.core.life.fit.Turnbull;
import java.util.ArrayList;
import java.util.List;

/**
 * Share of a product's coats not yet bare, by months at the reference berth.
 *
 * @param lives how many coats the steps are of: those whose life was bracketed by looks at a clean
 *     surface
 * @param steps what was seen, by Kaplan and Meier or Turnbull; times in months
 * @param curve the law that the forecast uses
 */
public record Survival(int lives, List<SurvivalStep> steps, List<Point> curve) {
  private static final double PICTURE = 1e-6;
  private static final int POINTS = 80;

  public Survival {
    steps = List.copyOf(steps);
    curve = List.copyOf(curve);
  }

  /** A point of the curve. */
  public record Point(double months, double surviving) {}

  static Survival of(List<Lifetime> doses, LifeChances law) {
    List<Lifetime> lives = doses.stream().map(Survival::inHalfWeeks).toList();
    List<Point> curve = new ArrayList<>();
    double last = law.quantile(0.98);
    for (int i = 0; i <= POINTS; i++) {
      double dose = last * i / POINTS;
      curve.add(new Point(dose / LifePractice.DAYS_A_MONTH, 1 - law.lapsed(dose)));
    }
    return new Survival(lives.size(), steps(lives), curve);
  }

  /** Months, to the half week: finer times would make as many steps as there are coats. */
  private static Lifetime inHalfWeeks(Lifetime life) {
    double unit = 3.5;
    double lower = Math.floor(life.lower() / unit) * unit;
    double upper = life.censored() ? life.upper() : Math.ceil(life.upper() / unit) * unit;
    if (lower == 0 && life.censored()) {
      lower = life.lower();
    }
    return new Lifetime(lower / LifePractice.DAYS_A_MONTH, upper / LifePractice.DAYS_A_MONTH);
  }

  private static List<SurvivalStep> steps(List<Lifetime> lives) {
    if (lives.stream().allMatch(Lifetime::censored)) {
      return List.of();
    }
    boolean between = lives.stream().anyMatch(l -> !l.exact() && !l.censored());
    return between ? Turnbull.of(lives, PICTURE).steps() : KaplanMeier.of(lives).steps();
  }
}
