package hullalmanac.core.work;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import java.util.ArrayList;
import java.util.List;

/**
 * A surface that a boat of some type usually has (common practice, no source): where to start from,
 * to be corrected at the first look.
 *
 * @param name words of its own; empty to go by kind and side
 * @param soot whether engine soot reaches it
 */
public record SurfaceTemplate(
    SurfaceKind kind, Side side, String name, Finish finish, Tone tone, boolean soot) {

  /** How it stands to the sky. */
  public Attitude attitude() {
    return kind.usualAttitude();
  }

  /** The surfaces of a type of boat, the hull first. */
  public static List<SurfaceTemplate> of(BoatType type) {
    List<SurfaceTemplate> surfaces = new ArrayList<>();
    if (type == BoatType.RIB) {
      surfaces.add(tube(Side.PORT));
      surfaces.add(tube(Side.STARBOARD));
    } else {
      surfaces.add(one(SurfaceKind.TOPSIDES, Side.PORT, Finish.GELCOAT));
      surfaces.add(one(SurfaceKind.TOPSIDES, Side.STARBOARD, Finish.GELCOAT));
    }
    kinds(type).forEach(kind -> surfaces.add(plain(kind, type)));
    return List.copyOf(surfaces);
  }

  private static List<SurfaceKind> kinds(BoatType type) {
    return switch (type) {
      case SLOOP, KETCH, CATAMARAN ->
          List.of(
              SurfaceKind.WATERLINE,
              SurfaceKind.TRANSOM,
              SurfaceKind.FOREDECK,
              SurfaceKind.COACHROOF,
              SurfaceKind.CABIN_SIDES,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID,
              SurfaceKind.WINDOWS,
              SurfaceKind.METALWORK);
      case MOTOR_CRUISER, TRAWLER ->
          List.of(
              SurfaceKind.WATERLINE,
              SurfaceKind.TRANSOM,
              SurfaceKind.FOREDECK,
              SurfaceKind.CABIN_SIDES,
              SurfaceKind.HARDTOP,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID,
              SurfaceKind.SWIM_PLATFORM,
              SurfaceKind.WINDOWS,
              SurfaceKind.METALWORK);
      case EXPRESS_CRUISER ->
          List.of(
              SurfaceKind.WATERLINE,
              SurfaceKind.TRANSOM,
              SurfaceKind.FOREDECK,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID,
              SurfaceKind.SWIM_PLATFORM,
              SurfaceKind.WINDOWS,
              SurfaceKind.CLEAR_VINYL,
              SurfaceKind.CANVAS,
              SurfaceKind.METALWORK);
      case CENTRE_CONSOLE ->
          List.of(
              SurfaceKind.TRANSOM,
              SurfaceKind.GUNWALES,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID,
              SurfaceKind.HARDTOP,
              SurfaceKind.WINDOWS,
              SurfaceKind.METALWORK);
      case DAY_BOAT ->
          List.of(
              SurfaceKind.TRANSOM,
              SurfaceKind.FOREDECK,
              SurfaceKind.GUNWALES,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID);
      case RIB ->
          List.of(
              SurfaceKind.TRANSOM,
              SurfaceKind.COCKPIT,
              SurfaceKind.NON_SKID,
              SurfaceKind.METALWORK);
      case OTHER -> List.of(SurfaceKind.TRANSOM, SurfaceKind.FOREDECK, SurfaceKind.COCKPIT);
    };
  }

  private static SurfaceTemplate plain(SurfaceKind kind, BoatType type) {
    boolean soot = kind == SurfaceKind.TRANSOM && motor(type);
    return new SurfaceTemplate(kind, Side.BOTH, "", finish(kind, type), Tone.LIGHT, soot);
  }

  private static Finish finish(SurfaceKind kind, BoatType type) {
    return switch (kind) {
      case WINDOWS -> glazed(type) ? Finish.GLASS : Finish.ACRYLIC;
      case METALWORK -> Finish.METAL;
      case CLEAR_VINYL -> Finish.CLEAR_VINYL;
      case CANVAS -> Finish.CANVAS;
      case TEAK -> Finish.TEAK;
      case VARNISH -> Finish.VARNISH;
      default -> Finish.GELCOAT;
    };
  }

  /** Whether windows are usually glass; acrylic otherwise, which is the one to be careful with. */
  private static boolean glazed(BoatType type) {
    return type == BoatType.MOTOR_CRUISER
        || type == BoatType.TRAWLER
        || type == BoatType.EXPRESS_CRUISER;
  }

  private static boolean motor(BoatType type) {
    return glazed(type) || type == BoatType.CENTRE_CONSOLE || type == BoatType.RIB;
  }

  private static SurfaceTemplate one(SurfaceKind kind, Side side, Finish finish) {
    return new SurfaceTemplate(kind, side, "", finish, Tone.LIGHT, false);
  }

  private static SurfaceTemplate tube(Side side) {
    return new SurfaceTemplate(
        SurfaceKind.TOPSIDES,
        side,
        "tube, " + side.words(),
        Finish.INFLATABLE_TUBE,
        Tone.LIGHT,
        false);
  }
}
