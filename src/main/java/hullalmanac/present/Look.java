package hullalmanac.present;

import hullalmanac.core.record.Coded;
import java.util.List;

/**
 * How the window looks on this computer.
 *
 * @param zoom 0.8 to 2.0
 * @param wetHands whether what one touches is at least 48 px high
 * @param calm whether nothing moves that need not
 */
public record Look(Tint tint, float zoom, boolean wetHands, boolean calm) {
  /** Steps of zoom, as shares. */
  public static final List<Float> ZOOMS = List.of(0.8f, 0.9f, 1f, 1.1f, 1.25f, 1.5f, 1.75f, 2f);

  /** How it looks where nobody has said. */
  public static final Look USUAL = new Look(Tint.LIGHT, 1f, false, false);

  public Look {
    zoom = Math.max(ZOOMS.get(0), Math.min(ZOOMS.get(ZOOMS.size() - 1), zoom));
  }

  /** Grounds to write on. */
  public enum Tint implements Coded {
    LIGHT("light"),
    DARK("dark"),
    SYSTEM("as-the-system"),
    HIGH_CONTRAST("high-contrast");

    private final String code;

    Tint(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** Whoever can change how the window looks. */
  public interface Looks {
    /** How it looks now. */
    Look now();

    /** Makes it look so. */
    void become(Look look);
  }
}
