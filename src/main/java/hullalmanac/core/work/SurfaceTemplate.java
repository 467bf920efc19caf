package hullalmanac.core.work;

import static hullalmanac.core.record.SurfaceKind.CABIN_SIDES;
import static hullalmanac.core.record.SurfaceKind.CANVAS;
import static hullalmanac.core.record.SurfaceKind.CLEAR_VINYL;
import static hullalmanac.core.record.SurfaceKind.COACHROOF;
import static hullalmanac.core.record.SurfaceKind.COCKPIT;
import static hullalmanac.core.record.SurfaceKind.FOREDECK;
import static hullalmanac.core.record.SurfaceKind.GUNWALES;
import static hullalmanac.core.record.SurfaceKind.HARDTOP;
import static hullalmanac.core.record.SurfaceKind.METALWORK;
import static hullalmanac.core.record.SurfaceKind.NON_SKID;
import static hullalmanac.core.record.SurfaceKind.SWIM_PLATFORM;
import static hullalmanac.core.record.SurfaceKind.TOPSIDES;
import static hullalmanac.core.record.SurfaceKind.TRANSOM;
import static hullalmanac.core.record.SurfaceKind.WATERLINE;
import static hullalmanac.core.record.SurfaceKind.WINDOWS;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A surface that a boat of some type usually has (common practice, no source): where to start from,
 * to be corrected at the first look.
 *
 * @param name words of its own; empty to go by kind and side
 * @param soot whether engine soot reaches it
 */
public record SurfaceTemplate(
    SurfaceKind kind, Side side, String name, Finish finish, Tone tone, boolean soot) {
  private static final List<SurfaceKind> ALL = List.of(TRANSOM, COCKPIT);
  private static final List<SurfaceKind> CRUISING =
      List.of(WATERLINE, FOREDECK, NON_SKID, WINDOWS, METALWORK);

  /** How it stands to the sky. */
  public Attitude attitude() {
    return kind.usualAttitude();
  }

  /** The surface of a boat who is new in the record; nothing is known of its past. */
  public Surface on(Boat boat, IdSource ids, NewKeys keys) {
    String sideWord = side == Side.BOTH ? "" : side.code();
    return new Surface(
        ids.next(),
        keys.next(Kind.SURFACE, boat.key(), kind.code(), sideWord),
        boat.id(),
        kind,
        side,
        name,
        finish,
        tone,
        attitude(),
        Optional.empty(),
        Past.UNKNOWN,
        soot,
        Optional.empty(),
        "");
  }

  /** The surfaces of a type of boat, the hull first. */
  public static List<SurfaceTemplate> of(BoatType type) {
    List<SurfaceTemplate> surfaces = new ArrayList<>();
    if (type == BoatType.RIB) {
      surfaces.add(tube(Side.PORT));
      surfaces.add(tube(Side.STARBOARD));
    } else {
      surfaces.add(one(TOPSIDES, Side.PORT, Finish.GELCOAT));
      surfaces.add(one(TOPSIDES, Side.STARBOARD, Finish.GELCOAT));
    }
    kinds(type).forEach(kind -> surfaces.add(plain(kind, type)));
    return List.copyOf(surfaces);
  }

  /** Besides the topsides, in the order of the kinds. */
  private static List<SurfaceKind> kinds(BoatType type) {
    List<SurfaceKind> more =
        switch (type) {
          case SLOOP, KETCH, CATAMARAN -> List.of(COACHROOF, CABIN_SIDES);
          case MOTOR_CRUISER, TRAWLER -> List.of(CABIN_SIDES, HARDTOP, SWIM_PLATFORM);
          case EXPRESS_CRUISER -> List.of(SWIM_PLATFORM, CLEAR_VINYL, CANVAS);
          case CENTRE_CONSOLE -> List.of(GUNWALES, NON_SKID, HARDTOP, WINDOWS, METALWORK);
          case DAY_BOAT -> List.of(FOREDECK, GUNWALES, NON_SKID);
          case RIB -> List.of(NON_SKID, METALWORK);
          case OTHER -> List.of(FOREDECK);
        };
    return Stream.of(ALL, cruises(type) ? CRUISING : List.<SurfaceKind>of(), more)
        .flatMap(List::stream)
        .sorted()
        .toList();
  }

  private static boolean cruises(BoatType type) {
    return switch (type) {
      case SLOOP, KETCH, CATAMARAN, MOTOR_CRUISER, TRAWLER, EXPRESS_CRUISER -> true;
      case CENTRE_CONSOLE, DAY_BOAT, RIB, OTHER -> false;
    };
  }

  private static SurfaceTemplate plain(SurfaceKind kind, BoatType type) {
    boolean soot = kind == TRANSOM && motor(type);
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
        TOPSIDES, side, "tube, " + side.words(), Finish.INFLATABLE_TUBE, Tone.LIGHT, false);
  }
}
