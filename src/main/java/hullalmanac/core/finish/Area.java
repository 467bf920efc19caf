package hullalmanac.core.finish;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import java.util.List;
import java.util.Optional;

/**
 * The area of a surface.
 *
 * @param squareMetres over 0 and at most 5000
 */
public record Area(double squareMetres, How how) {
  private static final double LARGEST = 5000;
  private static final double BEAM_OF_LOA = 0.32;
  private static final double FREEBOARD_OF_LOA = 0.11;
  private static final double DECK = 0.75;
  private static final double WATERLINE_BAND = 0.15;
  private static final double STRIPE = 0.10;

  /** Where it comes from. */
  public enum How {
    RULE("by rule of thumb"),
    RULE_AND_USUAL("by rule of thumb, with a usual beam or freeboard"),
    STATIONS("measured at stations"),
    ENTERED("as entered");

    private final String words;

    How(String words) {
      this.words = words;
    }

    /** Whether it is a rule of thumb, so that decimals of it mean nothing. */
    public boolean isRule() {
      return this == RULE || this == RULE_AND_USUAL;
    }

    /** Where it comes from, in words. */
    public String words() {
      return words;
    }
  }

  public Area {
    if (!(squareMetres > 0 && squareMetres <= LARGEST)) {
      throw new IllegalArgumentException(
          "an area is over 0 and at most 5000 m², not " + squareMetres);
    }
  }

  /**
   * The area of one side measured at stations, by Simpson's first rule.
   *
   * @param interval between stations, m
   * @param girths from deck edge to waterline at each, m, an odd number of them
   */
  public static Area ofStations(double interval, List<Double> girths) {
    return new Area(Simpson.area(interval, girths), How.STATIONS);
  }

  /**
   * The area by rules of thumb (common practice, no source): topsides with transom 2 F (LOA + B),
   * the transom B F of it; the whole deck 0.75 LOA B and its parts by usual shares. A freeboard
   * that is not known is 0.11 of the length over all, a beam 0.32 of it.
   *
   * @return nothing when the length is not known, or no rule speaks of such a surface
   */
  public static Optional<Area> byRule(Boat boat, Surface surface) {
    if (boat.loa().isEmpty()) {
      return Optional.empty();
    }
    double loa = boat.loa().get().metres();
    double beam = boat.beam().map(Length::metres).orElse(BEAM_OF_LOA * loa);
    double freeboard = boat.freeboard().map(Length::metres).orElse(FREEBOARD_OF_LOA * loa);
    double whole = whole(surface, loa, beam, freeboard);
    if (whole == 0) {
      return Optional.empty();
    }
    boolean usual = boat.beam().isEmpty() || boat.freeboard().isEmpty();
    boolean half = surface.side() != Side.BOTH;
    return Optional.of(new Area(half ? whole / 2 : whole, usual ? How.RULE_AND_USUAL : How.RULE));
  }

  /** Topsides with transom, m², from lengths in metres. */
  static double topsidesAndTransom(double loa, double beam, double freeboard) {
    return 2 * freeboard * (loa + beam);
  }

  /** The whole deck, m², from lengths in metres. */
  static double deck(double loa, double beam) {
    return DECK * loa * beam;
  }

  /** Both sides of a surface; 0 where no rule speaks of it. Shares of the deck may overlap. */
  private static double whole(Surface surface, double loa, double beam, double freeboard) {
    double deck = deck(loa, beam);
    return switch (surface.kind()) {
      case TOPSIDES -> topsidesAndTransom(loa, beam, freeboard) - beam * freeboard;
      case TRANSOM -> beam * freeboard;
      case WATERLINE -> WATERLINE_BAND * 2 * loa;
      case STRIPE -> STRIPE * 2 * loa;
      case FOREDECK -> 0.30 * deck;
      case COACHROOF, COCKPIT -> 0.25 * deck;
      case HARDTOP -> 0.20 * deck;
      case CABIN_SIDES -> 0.15 * deck;
      case GUNWALES -> 0.10 * deck;
      case SWIM_PLATFORM -> 0.05 * deck;
      default -> 0;
    };
  }
}
