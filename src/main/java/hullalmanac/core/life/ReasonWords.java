package hullalmanac.core.life;

import hullalmanac.core.exposure.Stay;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Tone;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The facts behind each step of a forecast, as short plain phrases. */
final class ReasonWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM", Locale.ENGLISH);

  private static final int WORTH_A_WORD = 8;

  private ReasonWords() {}

  static List<String> label(Product product, LifePractice practice) {
    if (product.labelMonths().isPresent()) {
      String cars = product.labelForCars() ? ", speaking of cars" : "";
      return List.of("The label says " + months(product.labelMonths().get()) + cars);
    }
    return List.of(
        "The label names no life; such coats last about "
            + months(practice.usualMonths(product))
            + " (practice)");
  }

  static List<String> record(Product product, CoatForecaster.Expected expected, double risk) {
    LivesSeen seen = expected.seen();
    String lives;
    if (seen.tooFew()) {
      String half = "half last about " + months(expected.practice().expectedMonths(product));
      lives =
          (seen.coats() == 0 ? "No coat on record tells yet; " : "Too few on record to say; ")
              + half;
    } else {
      lives =
          "Of "
              + seen.coats()
              + " such coats on record "
              + seen.lapsed()
              + " were seen bare; half last about "
              + months(seen.middleMonths());
    }
    return List.of(lives, frequency(risk) + " are bare by then");
  }

  /** The day a coat was laid and the day of its forecast. */
  record Span(LocalDate laid, LocalDate asOf) {}

  static List<String> berth(Surface surface, List<Stay> stays, double onThisBoat, Span span) {
    LocalDate asOf = span.asOf();
    List<String> facts = new ArrayList<>();
    Stay now =
        stays.stream()
            .filter(s -> !asOf.isBefore(s.from()) && asOf.isBefore(s.until()))
            .findFirst()
            .orElse(stays.get(stays.size() - 1));
    facts.add(Texts.capital(place(now)));
    stays.stream()
        .filter(
            s ->
                s.berth().yearly()
                    && s.until().isAfter(span.laid())
                    && !s.from().isAfter(asOf.plusYears(1)))
        .filter(s -> !s.berth().equals(now.berth()))
        .findFirst()
        .ifPresent(
            s ->
                facts.add(
                    place(s)
                        + " from "
                        + MONTH.format(s.from())
                        + " to "
                        + MONTH.format(s.until().minusDays(1))));
    if (surface.tone() == Tone.DARK) {
      facts.add("dark, so it takes more heat");
    }
    long percent = Math.round(100 * (onThisBoat - 1));
    if (Math.abs(percent) >= WORTH_A_WORD) {
      facts.add(
          "her other coats lasted about "
              + Math.abs(percent)
              + " % "
              + (percent > 0 ? "longer" : "shorter")
              + " than such coats elsewhere");
    }
    return facts;
  }

  private static String place(Stay stay) {
    String cover = stay.berth().cover().words();
    boolean ashore = stay.berth().water() == hullalmanac.core.record.Water.ASHORE;
    return ashore ? "ashore, " + cover : cover + ", " + stay.berth().water().words() + " water";
  }

  static List<String> findings(Evidence evidence, Coat coat, CoatClock clock, LocalDate asOf) {
    List<String> facts = new ArrayList<>();
    notSeenSince(evidence, clock, asOf).ifPresent(facts::add);
    List<Finding> looks =
        evidence.used().stream().filter(f -> !(f.seen() instanceof Observation.GlossRead)).toList();
    if (!looks.isEmpty()) {
      facts.add(look(looks.get(looks.size() - 1)));
    }
    List<Finding> gloss =
        evidence.used().stream().filter(f -> f.seen() instanceof Observation.GlossRead).toList();
    if (gloss.size() > 1) {
      Finding first = gloss.get(0);
      Finding last = gloss.get(gloss.size() - 1);
      long percent = Math.round(100 * (1 - mean(last) / mean(first)));
      facts.add(
          (percent >= 0 ? "gloss down " + percent : "gloss up " + -percent)
              + " % since "
              + DAY.format(first.day())
              + (evidence.firstGloss().map(FirstGloss::settled).orElse(true)
                  ? ""
                  : ", first read before the coat had settled"));
    }
    if (facts.isEmpty()) {
      facts.add(
          coat.knownFrom()
              .map(day -> "Met in service on " + DAY.format(day) + "; nobody has looked since")
              .orElse("Nobody has looked at it yet"));
    }
    facts.set(0, Texts.capital(facts.get(0)));
    return facts;
  }

  /**
   * A topper hides its base: until a look at a washed surface after it is gone, nobody knows how
   * the base is.
   */
  private static Optional<String> notSeenSince(Evidence evidence, CoatClock clock, LocalDate asOf) {
    if (clock.toppers().isEmpty()) {
      return Optional.empty();
    }
    if (clock.covered(asOf)) {
      return Optional.of("a topper lies over it");
    }
    CoatClock.Spell last = clock.toppers().get(clock.toppers().size() - 1);
    boolean seen =
        evidence.used().stream()
            .anyMatch(
                f ->
                    !f.day().isBefore(last.speaksUntil())
                        && (f.state() == SurfaceState.WASHED
                            || f.state() == SurfaceState.DECONTAMINATED));
    return seen ? Optional.empty() : Optional.of("base not seen since " + DAY.format(last.from()));
  }

  private static String look(Finding f) {
    String seen;
    if (f.seen() instanceof Observation.WaterSeen w) {
      seen =
          switch (w.behaviour()) {
            case BEADS -> "water beaded";
            case SHEETS -> "water sheeted cleanly";
            case FLAT -> "water lay flat";
          };
    } else if (f.seen() instanceof Observation.EyeScale e) {
      seen = "looked " + e.step() + " of 5 by eye";
    } else {
      seen = "a finger rub came off " + ((Observation.FingerRub) f.seen()).level().words();
    }
    String state = f.state() == SurfaceState.DIRTY ? "dirty" : f.state().words();
    String word = f.entered() == Entered.OWNER ? ", the owner says" : "";
    return seen + " on " + DAY.format(f.day()) + " (" + state + word + ")";
  }

  private static double mean(Finding f) {
    return ((Observation.GlossRead) f.seen()).mean();
  }

  static String months(double months) {
    long whole = Math.round(months);
    if (Math.abs(months - whole) < 0.05) {
      return whole == 1 ? "1 month" : whole + " months";
    }
    return String.format(Locale.ENGLISH, "%.1f months", months);
  }

  private static String frequency(double risk) {
    return Math.round(risk * 10) + " in 10";
  }
}
