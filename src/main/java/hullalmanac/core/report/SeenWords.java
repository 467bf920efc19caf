package hullalmanac.core.report;

import hullalmanac.core.record.Observation;
import hullalmanac.core.record.ObservationText;
import java.util.Locale;

/** What was seen on a surface, as people read it. */
public final class SeenWords {
  private SeenWords() {}

  /** Of what kind it is: "water", "finger rub". */
  public static String kind(Observation seen) {
    return seen.what().replace('-', ' ');
  }

  /** What it says, without who was told of it. */
  public static String value(Observation seen) {
    if (seen instanceof Observation.Damage d) {
      return d.text();
    }
    if (seen instanceof Observation.GlossRead g) {
      return String.format(Locale.ENGLISH, "%.1f at %s", g.mean(), g.geometry().words());
    }
    if (seen instanceof Observation.Chalking c) {
      return ObservationText.of(seen).value()
          + " ("
          + c.scale().code().toUpperCase(Locale.ROOT)
          + ")";
    }
    String value = ObservationText.of(seen).value();
    return seen instanceof Observation.EyeScale ? value + " of 5" : value.replace('-', ' ');
  }
}
