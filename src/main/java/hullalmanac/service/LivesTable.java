package hullalmanac.service;

import hullalmanac.core.life.fit.FitOutcome;
import hullalmanac.core.life.fit.FitOutcome.Fitted;
import hullalmanac.core.life.fit.FitOutcome.NoFit;
import hullalmanac.core.life.fit.KaplanMeier;
import hullalmanac.core.life.fit.LifeLaw;
import hullalmanac.core.life.fit.Lifetime;
import hullalmanac.core.life.fit.LifetimeFit;
import hullalmanac.core.life.fit.SurvivalStep;
import hullalmanac.core.life.fit.Turnbull;
import hullalmanac.exchange.csv.CsvProblem;
import hullalmanac.exchange.csv.LivesCsv;
import hullalmanac.exchange.json.Json;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Fits and survival estimate of lives, printed in full so that anyone can check them with another
 * tool.
 *
 * @param estimate which survival estimate the steps are of
 */
public record LivesTable(
    List<Lifetime> lives, List<FitOutcome> fits, String estimate, List<SurvivalStep> steps) {
  private static final String KAPLAN_MEIER = "Kaplan-Meier";
  private static final String TURNBULL = "Turnbull";

  /** What came of reading a file. */
  public sealed interface Outcome {}

  /** The file was read. */
  public record Done(LivesTable table) implements Outcome {}

  /** The file cannot be taken; one line a problem. */
  public record Refused(List<String> lines) implements Outcome {
    public Refused {
      lines = List.copyOf(lines);
    }
  }

  /** Reads lives from a CSV file, and fits them. */
  public static Outcome read(Path file) {
    LivesCsv.Read read = LivesCsv.read(file);
    return read.problems().isEmpty()
        ? new Done(of(read.lives()))
        : new Refused(read.problems().stream().map(CsvProblem::text).toList());
  }

  /** Fits lives. */
  static LivesTable of(List<Lifetime> lives) {
    boolean between = lives.stream().anyMatch(l -> !l.exact() && !l.censored());
    return new LivesTable(
        lives,
        List.of(LifetimeFit.of(LifeLaw.LOGNORMAL, lives), LifetimeFit.of(LifeLaw.WEIBULL, lives)),
        between ? TURNBULL : KAPLAN_MEIER,
        between ? Turnbull.of(lives).steps() : KaplanMeier.of(lives).steps());
  }

  /** For people. */
  public String text() {
    StringBuilder out = new StringBuilder();
    long exact = lives.stream().filter(Lifetime::exact).count();
    long open = lives.stream().filter(Lifetime::censored).count();
    line(
        out,
        "%d lives: %d ends seen, %d between two times, %d not seen to end",
        lives.size(),
        exact,
        lives.size() - exact - open,
        open);
    for (int i = 0; i < fits.size(); i++) {
      String name = i == 0 ? "log-normal" : "Weibull";
      if (fits.get(i) instanceof Fitted f) {
        line(
            out,
            "%n%s: mu %.6f (se %.6f), sigma %.6f (se %.6f), log-likelihood %.6f",
            name,
            f.mu(),
            f.muError(),
            f.sigma(),
            f.sigmaError(),
            f.logLikelihood());
        line(out, "  median %.6g (se %.3g)", f.median(), f.medianError());
        if (f.law() == LifeLaw.WEIBULL) {
          line(out, "  shape %.6f, scale %.6g", 1 / f.sigma(), Math.exp(f.mu()));
        }
      } else {
        line(out, "%n%s: no fit: %s", name, ((NoFit) fits.get(i)).reason());
      }
    }
    line(out, "%n%s, with 95 %% band on the scale ln(-ln S)", estimate);
    line(out, "%10s %10s %10s %10s %10s %10s", "after", "by", "S", "se", "low", "high");
    steps.forEach(
        s -> line(out, "%10.6g %10.6g %10.8f %s", s.from(), s.until(), s.surviving(), band(s)));
    return out.toString();
  }

  private static String band(SurvivalStep s) {
    String error = s.error().map(e -> String.format(Locale.ROOT, "%10.8f", e)).orElse("");
    return error
        + s.band()
            .map(b -> String.format(Locale.ROOT, " %10.8f %10.8f", b.lower(), b.upper()))
            .orElse("");
  }

  private static void line(StringBuilder out, String format, Object... values) {
    out.append(String.format(Locale.ROOT, format + "%n", values));
  }

  /** For other programs. */
  public String json() {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("lives", lives.size());
    all.put("lognormal", fit(fits.get(0)));
    all.put("weibull", fit(fits.get(1)));
    all.put("estimate", estimate);
    List<Object> table = new ArrayList<>();
    for (SurvivalStep s : steps) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("after", s.from());
      row.put("by", Double.isFinite(s.until()) ? s.until() : null);
      row.put("surviving", s.surviving());
      row.put("se", s.error().orElse(null));
      row.put("low", s.band().map(SurvivalStep.Band::lower).orElse(null));
      row.put("high", s.band().map(SurvivalStep.Band::upper).orElse(null));
      table.add(row);
    }
    all.put("steps", table);
    return Json.of(all) + "\n";
  }

  private static Map<String, Object> fit(FitOutcome fit) {
    Map<String, Object> out = new LinkedHashMap<>();
    if (fit instanceof Fitted f) {
      out.put("mu", f.mu());
      out.put("mu_se", f.muError());
      out.put("sigma", f.sigma());
      out.put("sigma_se", f.sigmaError());
      out.put("log_likelihood", f.logLikelihood());
      out.put("median", f.median());
      out.put("median_se", f.medianError());
    } else {
      out.put("no_fit", ((NoFit) fit).reason());
    }
    return out;
  }
}
