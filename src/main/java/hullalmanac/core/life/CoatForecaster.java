package hullalmanac.core.life;

import hullalmanac.core.exposure.SurfaceClock;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Forecasts one coat in service.
 *
 * @param expected what is known of such coats before this one was looked at
 * @param evidence what was found of this one
 * @param risk chance of a bare coat at which to renew
 */
record CoatForecaster(
    Surface surface,
    Coat coat,
    Product product,
    CoatClock clock,
    Expected expected,
    Evidence evidence,
    double risk,
    LocalDate asOf) {
  /**
   * What is known of such coats.
   *
   * @param such chances of the life of one on any boat
   * @param predictive chances of the life of one on this boat
   * @param onThisBoat how much longer coats live on this boat, by her other coats: a factor
   * @param seen what the record says of them
   * @param practice what was expected before any was seen
   */
  record Expected(
      LifeChances such,
      LifeChances predictive,
      double onThisBoat,
      LivesSeen seen,
      LifePractice practice) {}

  private static final double SURELY_BARE = 0.90;
  private static final int GLOSS_STEP_DAYS = 7;

  CoatForecast forecast() {
    LifeChances chances = expected.predictive().times(evidence.logLikelihood());
    Dates dates = dates(chances);
    boolean reopened = evidence.bareOn().isEmpty();
    boolean bare = !reopened && dates.lapsedOn(evidence.bareOn().orElseThrow()) >= SURELY_BARE;
    Optional<LocalDate> renewBy = dates.reaching(risk);
    Outcome outcome =
        bare ? lapsed(dates) : renewBy.map(day -> dated(day, dates)).orElseGet(() -> far(dates));
    return new CoatForecast(
        surface,
        coat,
        product,
        outcome,
        Optional.of(dates.lapsedOn(asOf)),
        dates.twentieths(),
        reasons(renewBy),
        evidence.unused(),
        gloss(chances),
        risk);
  }

  private Dates dates(LifeChances chances) {
    Optional<LocalDate> limit = product.limitMonths().map(this::monthsOn);
    return new Dates(chances, clock, asOf.plusYears(LifePractice.YEARS_AHEAD), limit);
  }

  private LocalDate monthsOn(double months) {
    return clock.laid().plusDays(Math.round(months * LifePractice.DAYS_A_MONTH));
  }

  private Outcome lapsed(Dates dates) {
    return new Outcome.AlreadyLapsed(
        evidence.bareOn().orElseThrow(),
        dates.reaching(0.10).orElseThrow(),
        dates.reaching(0.50).orElseThrow(),
        dates.reaching(0.90));
  }

  private Outcome dated(LocalDate renewBy, Dates dates) {
    LocalDate workBy =
        renewBy.isBefore(asOf)
            ? renewBy
            : Workable.lastUpTo(surface, clock.surface().stays(), asOf, renewBy);
    return new Outcome.Dated(
        renewBy,
        workBy,
        dates.reaching(0.10).orElse(dates.last()),
        dates.reaching(0.50),
        dates.reaching(0.90));
  }

  private static Outcome far(Dates dates) {
    return new Outcome.TooFarAhead(dates.reaching(0.10));
  }

  private List<Reason> reasons(Optional<LocalDate> renewBy) {
    double labelMonths =
        product.labelMonths().orElseGet(() -> expected.practice().usualMonths(product));
    LocalDate last = asOf.plusYears(LifePractice.YEARS_AHEAD);
    LocalDate atReference = clock.laid().plusDays(Math.round(expected.such().quantile(risk)));
    LocalDate limit = product.limitMonths().map(this::monthsOn).orElse(last);
    SurfaceClock where = clock.surface();
    return List.of(
        new Reason(
            Reason.Stage.LABEL,
            ReasonWords.label(product, expected.practice()),
            Optional.of(monthsOn(labelMonths)).filter(d -> !d.isAfter(last))),
        new Reason(
            Reason.Stage.RECORD,
            ReasonWords.record(product, expected, risk),
            Optional.of(atReference.isAfter(limit) ? limit : atReference)
                .filter(d -> !d.isAfter(last))),
        new Reason(
            Reason.Stage.BERTH,
            ReasonWords.berth(
                surface,
                where.stays(),
                expected.onThisBoat(),
                new ReasonWords.Span(clock.laid(), asOf)),
            dates(expected.predictive()).reaching(risk)),
        new Reason(
            Reason.Stage.FINDINGS, ReasonWords.findings(evidence, coat, clock, asOf), renewBy));
  }

  /** The model's gloss from the first reading to a year ahead, a point a week. */
  private List<GlossPoint> gloss(LifeChances chances) {
    if (evidence.firstGloss().isEmpty()) {
      return List.of();
    }
    Finding first = evidence.firstGloss().get().finding();
    double g0 = ((Observation.GlossRead) first.seen()).mean();
    double firstDose = clock.dose(first.day());
    double[] lives = new double[] {0.5, 0.25, 0.75, 0.10, 0.90};
    for (int i = 0; i < lives.length; i++) {
      lives[i] = chances.quantile(lives[i]);
    }
    List<GlossPoint> points = new ArrayList<>();
    LocalDate until = asOf.plusYears(1);
    for (LocalDate day = first.day(); !day.isAfter(until); day = day.plusDays(GLOSS_STEP_DAYS)) {
      double dose = clock.dose(day) - firstDose;
      double[] g = new double[lives.length];
      for (int i = 0; i < lives.length; i++) {
        g[i] = g0 * Math.pow(LifePractice.GLOSS_AT_LAPSE, dose / lives[i]);
      }
      points.add(new GlossPoint(day, g[0], g[1], g[2], g[3], g[4]));
    }
    return points;
  }
}
