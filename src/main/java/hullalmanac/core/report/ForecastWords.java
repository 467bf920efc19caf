package hullalmanac.core.report;

import hullalmanac.core.life.CoatForecast;
import hullalmanac.core.life.Outcome;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Forecasts in plain words: the best day first, then the chance as a plain frequency.
 *
 * @param today the day from which it is seen
 */
public record ForecastWords(LocalDate today) {
  private static final int MOST_NAMED = 3;

  /**
   * Surfaces by kind, both sides as one: "Topsides and transom", "Foredeck, hardtop and 3 more".
   */
  public static String surfaces(List<Surface> surfaces) {
    Set<String> names = new LinkedHashSet<>();
    for (Surface s : surfaces) {
      names.add(s.name().isBlank() ? s.kind().words() : s.name());
    }
    List<String> all = List.copyOf(names);
    String text;
    if (all.size() == 1) {
      text = all.get(0);
    } else if (all.size() <= MOST_NAMED) {
      text = String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    } else {
      text = all.get(0) + ", " + all.get(1) + " and " + (all.size() - 2) + " more";
    }
    return Texts.capital(text);
  }

  /** When a coat is best renewed, short, for a list. */
  public String status(CoatForecast f) {
    DateWords days = new DateWords(today);
    if (f.outcome() instanceof Outcome.Dated d) {
      return d.renewBy().isBefore(today) ? "look at it" : "best " + days.bestWhen(d.workBy());
    }
    if (f.outcome() instanceof Outcome.AlreadyLapsed) {
      return "seen bare";
    }
    if (f.outcome() instanceof Outcome.TooFarAhead) {
      return "not within 15 years";
    }
    return ((Outcome.NotForecast) f.outcome())
        .byInterval()
        .map(d -> "again " + days.bestWhen(d))
        .orElse("not forecast");
  }

  /** What is due, to stand after the surfaces: "best by 14 May". */
  public String due(CoatForecast f) {
    DateWords days = new DateWords(today);
    if (f.outcome() instanceof Outcome.Dated d) {
      return d.renewBy().isBefore(today)
          ? "may be bare already"
          : "best " + days.bestWhen(d.workBy());
    }
    if (f.outcome() instanceof Outcome.AlreadyLapsed a) {
      return "seen bare on " + days.exact(a.seenOn());
    }
    if (f.outcome() instanceof Outcome.TooFarAhead) {
      return "not due within 15 years";
    }
    Outcome.NotForecast n = (Outcome.NotForecast) f.outcome();
    return n.byInterval()
        .map(
            d ->
                (d.isBefore(today)
                    ? "due since " + days.exact(d)
                    : "due again " + days.bestWhen(d)))
        .orElse("not forecast: " + n.reason().words());
  }

  /** The chance in words: "probably bare by mid-June, 8 in 10", "about 6 chances in 10 now". */
  public String chance(CoatForecast f) {
    if (f.outcome() instanceof Outcome.NotForecast n) {
      return n.reason().words();
    }
    double now = f.lapsedNow().orElse(0.0);
    if (f.outcome() instanceof Outcome.AlreadyLapsed) {
      return "on a washed surface";
    }
    if (now >= 0.95) {
      return "almost surely bare by now";
    }
    if (now >= 0.15) {
      return "about " + Math.round(now * 10) + " chances in 10 now";
    }
    Optional<LocalDate> likely = f.twentieths().get(15);
    return likely
        .map(d -> "probably bare by " + new DateWords(today).rough(d) + ", 8 in 10")
        .orElse("likely to last more than 15 years");
  }

  /** The sentence over a boat's chart. */
  public String sentence(CoatForecast f) {
    DateWords days = new DateWords(today);
    if (f.outcome() instanceof Outcome.Dated d) {
      String range =
          "Likely bare between "
              + days.rough(d.early())
              + d.late()
                  .map(l -> " and " + days.rough(l))
                  .orElse(" and more than 15 years from now")
              + " (8 in 10). ";
      String then =
          d.renewBy().isBefore(today)
              ? Texts.capital(frequency(f.lapsedNow().orElse(0.0))) + " such coats are bare by now."
              : "By "
                  + days.exact(d.renewBy())
                  + ", "
                  + frequency(f.risk())
                  + " such coats are bare.";
      String moved =
          d.workBy().equals(d.renewBy())
              ? ""
              : " Moved to "
                  + days.exact(d.workBy())
                  + ", the last day on which it can be worked on.";
      return range + then + moved;
    }
    return Texts.capital(due(f))
        + (f.outcome() instanceof Outcome.AlreadyLapsed ? ", " + chance(f) : "")
        + ".";
  }

  /** A chance as a plain frequency: "6 in 10". */
  public static String frequency(double chance) {
    long tenths = Math.round(chance * 10);
    return tenths == 0
        ? "fewer than 1 in 10"
        : tenths == 10 ? "more than 9 in 10" : tenths + " in 10";
  }
}
