package hullalmanac.core.exposure;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.List;

/**
 * The exposure clock written a second time, day by day and as plainly as it can be, to hold the
 * sums of the first against. The practice values are typed off the model's table again.
 */
final class DailyDose {
  private DailyDose() {}

  static double between(
      LocalDate a, LocalDate b, List<Berth> berths, Surface surface, Use use, double latitude) {
    double dose = 0;
    for (LocalDate d = a; d.isBefore(b); d = d.plusDays(1)) {
      dose += wear(d, berthOn(berths, d), surface, use, latitude);
    }
    return dose;
  }

  /** A lay-up that holds on the day, or else the plain berth that began last. */
  static Berth berthOn(List<Berth> berths, LocalDate day) {
    Berth plain = null;
    Berth layUp = null;
    for (Berth b : berths) {
      if (b.yearly()) {
        layUp = inLayUp(b, day) ? b : layUp;
      } else if (!day.isBefore(b.from()) && (plain == null || b.from().isAfter(plain.from()))) {
        plain = b;
      }
    }
    return layUp != null ? layUp : plain;
  }

  private static boolean inLayUp(Berth b, LocalDate day) {
    for (int year = b.from().getYear(); year <= day.getYear(); year++) {
      int later = year - b.from().getYear();
      boolean begun = !day.isBefore(b.from().plusYears(later));
      boolean over = !day.isBefore(b.until().orElseThrow().plusYears(later));
      if (begun && !over && year <= b.lastYear().orElse(9999)) {
        return true;
      }
    }
    return false;
  }

  private static double wear(LocalDate day, Berth berth, Surface s, Use use, double latitude) {
    double phi = latitude * Math.PI / 180;
    double j = 2 * Math.PI * day.getDayOfYear() / 365;
    double declination = 0.409 * Math.sin(j - 1.39);
    double ws = Math.acos(-Math.tan(phi) * Math.tan(declination));
    double ra =
        24
            * 60
            / Math.PI
            * 0.0820
            * (1 + 0.033 * Math.cos(j))
            * (ws * Math.sin(phi) * Math.sin(declination)
                + Math.cos(phi) * Math.cos(declination) * Math.sin(ws));
    double sun = 0.55 * ra / 17.31248;
    double wet = berth.water() == Water.ASHORE ? 0.25 : 1.0;
    double factor = kind(s.kind()) * (s.tone() == Tone.DARK ? 1.2 : 1) * use(use);
    double e = factor * (0.85 * sun * cover(berth.cover(), s.attitude()) + 0.15 * wet);
    return Math.max(0.03, e);
  }

  private static double kind(SurfaceKind kind) {
    return kind == SurfaceKind.FOREDECK ? 1.5 : kind == SurfaceKind.WATERLINE ? 1.8 : 1.0;
  }

  private static double use(Use use) {
    return use == Use.IDLE ? 0.9 : use == Use.WEEKLY ? 1.15 : use == Use.WEEKENDS ? 1.0 : 1.4;
  }

  private static double cover(Cover cover, Attitude attitude) {
    boolean upright = attitude == Attitude.UPRIGHT;
    return switch (cover) {
      case OPEN -> 1.00;
      case COVERED_SLIP -> upright ? 0.55 : 0.12;
      case FITTED_COVER -> upright ? 0.95 : 0.10;
      case SHRINK_WRAP -> upright ? 0.50 : 0.08;
      case SHRINK_WRAP_TO_WATERLINE -> upright ? 0.10 : 0.08;
      case SHED -> 0.05;
    };
  }
}
