package hullalmanac.sample;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the sample's coats really wear: a law of its own, by month and cover alone, that the program
 * does not know. Lives are log-normal around a real life that is shorter than the label says.
 */
final class SampleWear {
  private static final double[] MONTH = {
    0.15, 0.3, 0.65, 1.0, 1.4, 1.6, 1.55, 1.3, 0.9, 0.5, 0.2, 0.12
  };

  private final Draft draft;
  private final Map<Coat, Double> lives = new HashMap<>();

  SampleWear(Draft draft) {
    this.draft = draft;
  }

  private double medianDays(String product) {
    return switch (product) {
      case "cleaner-wax-f" -> 50;
      case "carnauba-a" -> 80;
      case "sealant-b" -> 190;
      case "coating-c" -> 640;
      case "coating-g" -> 400;
      case "silica-spray-d" -> 85;
      case "spray-sealant-e" -> 45;
      default -> 150;
    };
  }

  /** Notes a coat, and draws its life. */
  void laid(Coat coat, String product) {
    lives.put(coat, medianDays(product) * Math.exp(0.28 * draft.random.nextGaussian()));
  }

  /** Carries a life over to the same coat in another state. */
  Coat renamed(Coat before, Coat after) {
    lives.put(after, lives.get(before));
    return after;
  }

  /** Share of its life that a coat has used up by a day; over 1 it is gone. */
  double used(Coat coat, Surface surface, LocalDate day) {
    double dose = 0;
    List<Berth> berths =
        draft.berths.stream().filter(b -> b.boat().equals(surface.boat())).toList();
    for (LocalDate d = coat.since(); d.isBefore(day); d = d.plusDays(1)) {
      dose += MONTH[d.getMonthValue() - 1] * cover(berths, surface, d);
    }
    return dose * kind(surface.kind()) / lives.get(coat);
  }

  private static double kind(SurfaceKind kind) {
    return switch (kind) {
      case FOREDECK, COACHROOF, HARDTOP -> 1.4;
      case WATERLINE -> 1.7;
      case TRANSOM, COCKPIT -> 1.2;
      default -> 1.0;
    };
  }

  private static double cover(List<Berth> berths, Surface surface, LocalDate day) {
    boolean upright = surface.attitude() == Attitude.UPRIGHT;
    Cover cover =
        berths.stream()
            .filter(b -> holds(b, day))
            .reduce((a, b) -> b.yearly() ? b : a)
            .map(Berth::cover)
            .orElse(Cover.OPEN);
    return switch (cover) {
      case OPEN -> 1.0;
      case COVERED_SLIP -> upright ? 0.6 : 0.2;
      case FITTED_COVER -> upright ? 0.95 : 0.15;
      case SHRINK_WRAP -> upright ? 0.45 : 0.1;
      case SHRINK_WRAP_TO_WATERLINE, SHED -> 0.1;
    };
  }

  private static boolean holds(Berth berth, LocalDate day) {
    if (!berth.yearly()) {
      return !day.isBefore(berth.from());
    }
    for (int year = day.getYear() - 1; year <= day.getYear(); year++) {
      LocalDate from = berth.from().withYear(year);
      LocalDate until = berth.until().orElseThrow().plusYears(year - berth.from().getYear());
      if (!from.isBefore(berth.from()) && !day.isBefore(from) && day.isBefore(until)) {
        return true;
      }
    }
    return false;
  }
}
