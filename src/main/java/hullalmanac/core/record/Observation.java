package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What was seen or measured on a surface. */
public sealed interface Observation {
  /** The word for the kind of observation in tables and files. */
  String what();

  /** What water does. */
  record WaterSeen(WaterBehaviour behaviour) implements Observation {
    @Override
    public String what() {
      return "water";
    }
  }

  /**
   * Gloss readings at one angle with one meter.
   *
   * @param geometry angle of measurement
   * @param readings gloss units in the order taken, at least one, each from 0 to 2000 (ISO 2813
   *     allows over 100)
   * @param meter which instrument, where known
   */
  record GlossRead(Geometry geometry, List<Double> readings, Optional<String> meter)
      implements Observation {
    /**
     * Highest reading a mirror-bright metal gives (reference: values known of ISO 2813 instruments,
     * from memory).
     */
    public static final double HIGHEST = 2000;

    /** Highest believable reading on anything but metal, at 20° and 60°. */
    public static final double HIGHEST_NON_METAL = 120;

    public GlossRead {
      readings = List.copyOf(readings);
      if (readings.isEmpty()) {
        throw new IllegalArgumentException("a gloss finding needs at least one reading");
      }
      for (double g : readings) {
        if (!(g >= 0 && g <= HIGHEST)) {
          throw new IllegalArgumentException("gloss " + g + " is not between 0 and 2000");
        }
      }
    }

    @Override
    public String what() {
      return "gloss";
    }

    /** Mean of the readings, in gloss units. */
    public double mean() {
      return readings.stream().mapToDouble(Double::doubleValue).sum() / readings.size();
    }

    /** Standard deviation of the readings (n − 1), or nothing for a single reading. */
    public Optional<Double> spread() {
      if (readings.size() < 2) {
        return Optional.empty();
      }
      double mean = mean();
      double sum = 0;
      for (double g : readings) {
        sum += (g - mean) * (g - mean);
      }
      return Optional.of(Math.sqrt(sum / (readings.size() - 1)));
    }
  }

  /** Look of a surface by eye, 1 like new to 5 dull. */
  record EyeScale(int step) implements Observation {
    public EyeScale {
      if (step < 1 || step > 5) {
        throw new IllegalArgumentException("the eye scale runs from 1 to 5, not " + step);
      }
    }

    @Override
    public String what() {
      return "eye";
    }
  }

  /** What a rubbed finger brings off. */
  record FingerRub(RubLevel level) implements Observation {
    @Override
    public String what() {
      return "finger-rub";
    }
  }

  /** Chalking on a named scale. */
  record Chalking(ChalkingScale scale, double rating) implements Observation {
    public Chalking {
      if (!scale.allows(rating)) {
        throw new IllegalArgumentException(rating + " is not on the scale " + scale.code());
      }
    }

    @Override
    public String what() {
      return "chalking";
    }
  }

  /** Staining. */
  record Staining(Amount amount) implements Observation {
    @Override
    public String what() {
      return "staining";
    }
  }

  /** Water spots. */
  record WaterSpots(Amount amount) implements Observation {
    @Override
    public String what() {
      return "water-spots";
    }
  }

  /** Buffer trails. */
  record BufferTrails(Amount amount) implements Observation {
    @Override
    public String what() {
      return "buffer-trails";
    }
  }

  /** Scratches, by the deepest. */
  record Scratches(ScratchDepth depth) implements Observation {
    @Override
    public String what() {
      return "scratches";
    }
  }

  /**
   * Damage found, in words.
   *
   * @param told who was told of it; absent: nobody yet
   */
  record Damage(String text, Optional<Told> told) implements Observation {
    public Damage {
      Texts.require(text, "damage");
    }

    /** Damage of which nobody was told yet. */
    public Damage(String text) {
      this(text, Optional.empty());
    }

    @Override
    public String what() {
      return "damage";
    }
  }

  /**
   * Who was told of something, and when.
   *
   * @param whom name of a party, or other words
   */
  record Told(String whom, LocalDate on) {
    public Told {
      Texts.require(whom, "who was told");
    }
  }
}
