package hullalmanac.sample;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Forty boats, their owners and their surfaces. */
final class SampleBoats {
  /** The party that wants its boats renewed early, and one that can wait. */
  private static final Map<String, Double> RISKS = Map.of("lind", 0.15, "rowe", 0.60);

  private static final List<String> NAMES =
      List.of(
          "Arctic Tern",
          "Avocet",
          "Bittern",
          "Black Guillemot",
          "Brambling",
          "Chiffchaff",
          "Corncrake",
          "Curlew",
          "Dabchick",
          "Dotterel",
          "Dunlin",
          "Eider",
          "Fieldfare",
          "Fulmar",
          "Garganey",
          "Goldcrest",
          "Goosander",
          "Greenshank",
          "Kittiwake",
          "Knot",
          "Lapwing",
          "Marrow",
          "Merganser",
          "Nightjar",
          "Nuthatch",
          "Petrel",
          "Pintail",
          "Plover",
          "Razorbill",
          "Redshank",
          "Sanderling",
          "Sandpiper",
          "Shearwater",
          "Siskin",
          "Skua",
          "Stonechat",
          "Turnstone",
          "Wagtail",
          "Whimbrel",
          "Wryneck");

  private static final List<String> OWNERS =
      List.of(
          "Lind",
          "Hartnoll",
          "Vane",
          "Osei",
          "Brand",
          "Abbot",
          "Barros",
          "Calder",
          "Duvall",
          "Eastley",
          "Farrow",
          "Gant",
          "Hale",
          "Imrie",
          "Jessop",
          "Kerr",
          "Lorne",
          "Marsh",
          "Nance",
          "Orme",
          "Pell",
          "Quist",
          "Rowe",
          "Sayle",
          "Tarn",
          "Ure",
          "Voss",
          "Wick",
          "Yeo",
          "Zeller",
          "Ames",
          "Birch",
          "Cole");

  private static final LocalDate START = LocalDate.of(2022, 3, 1);

  private SampleBoats() {}

  static void add(Draft d) {
    for (int i = 0; i < OWNERS.size(); i++) {
      String name = OWNERS.get(i);
      String key = name.toLowerCase(Locale.ROOT);
      party(
          d,
          key,
          PartyKind.PERSON,
          firstName(i) + " " + name,
          String.format(Locale.ROOT, "+1 555 01%02d", i));
    }
    party(d, "quillhaven-charters", PartyKind.FIRM, "Quillhaven Day Charters", "+1 555 0198");
    party(d, "st-brannock-yard", PartyKind.FIRM, "St Brannock Yard", "+1 555 0199");
    for (int i = 0; i < NAMES.size(); i++) {
      boat(d, i);
    }
  }

  private static String firstName(int i) {
    return List.of("Ada", "Ben", "Cora", "Dev", "Elin", "Finn", "Gwen", "Hugo", "Ines", "Jon")
        .get(i % 10);
  }

  private static void party(Draft d, String key, PartyKind kind, String name, String phone) {
    d.parties.add(
        new Party(
            d.id(),
            key,
            kind,
            name,
            phone,
            key + "@example.org",
            "",
            d.chance(0.1) ? "de" : "",
            Optional.ofNullable(RISKS.get(key)),
            ""));
  }

  private static void boat(Draft d, int i) {
    String name = NAMES.get(i);
    String key = name.toLowerCase(Locale.ROOT).replace(' ', '-');
    BoatType type = type(i);
    double feet =
        type == BoatType.CENTRE_CONSOLE ? d.between(19, 27) : d.between(24, 46) + (i % 4) * 0.25;
    int built = d.between(1986, 2021);
    BoatStatus status =
        name.equals("Dotterel")
            ? BoatStatus.RETIRED
            : name.equals("Wryneck") ? BoatStatus.SOLD : BoatStatus.ACTIVE;
    Boat boat =
        new Boat(
            d.id(),
            key,
            name,
            type,
            Optional.of(Length.ofFeet(feet, 0)),
            Optional.of(Length.ofFeet(feet * 0.33, 0)),
            Optional.of(Length.ofFeet(2.2 + feet * 0.045, 0)),
            String.format(
                Locale.ROOT,
                "ZZZ%05d%c%d%02d",
                10_000 + d.between(0, 80_000),
                'A' + d.between(0, 11),
                built % 10,
                built % 100),
            Optional.of(built),
            use(d, type),
            status,
            Optional.of(LocalDate.of(2022 + (i * 7 % 4), 3, 1)),
            name.equals("Marrow")
                ? "Repaint of the stripe planned for autumn 2026: nothing with silicone there."
                : "");
    d.boats.add(boat);
    roles(d, boat, i);
    surfaces(d, boat, i);
  }

  private static BoatType type(int i) {
    return switch (i % 8) {
      case 0, 1, 2 -> BoatType.SLOOP;
      case 3, 4 -> BoatType.MOTOR_CRUISER;
      case 5 -> BoatType.CENTRE_CONSOLE;
      case 6 -> BoatType.EXPRESS_CRUISER;
      default -> i == 7 ? BoatType.KETCH : i == 15 ? BoatType.CATAMARAN : BoatType.TRAWLER;
    };
  }

  private static Use use(Draft d, BoatType type) {
    if (type == BoatType.CENTRE_CONSOLE) {
      return Use.CHARTER_OR_FISHING;
    }
    return d.chance(0.6) ? Use.WEEKENDS : d.chance(0.5) ? Use.WEEKLY : Use.IDLE;
  }

  private static void roles(Draft d, Boat boat, int i) {
    Party owner = d.parties.get(i < 5 ? i : i % 35);
    LocalDate sold = LocalDate.of(2025, 9, 1);
    if (boat.status() == BoatStatus.SOLD) {
      role(d, boat, owner, RoleKind.OWNS, START, Optional.of(sold));
      role(d, boat, owner, RoleKind.PAYS, START, Optional.of(sold));
      role(d, boat, d.parties.get(12), RoleKind.OWNS, sold, Optional.empty());
      return;
    }
    role(d, boat, owner, RoleKind.OWNS, START, Optional.empty());
    if (i % 7 == 3) {
      role(d, boat, d.parties.get(34), RoleKind.OPENS_UP, START, Optional.empty());
    }
    if (i % 9 == 5) {
      role(d, boat, d.parties.get(33), RoleKind.PAYS, START, Optional.empty());
    }
  }

  private static void role(
      Draft d, Boat boat, Party party, RoleKind kind, LocalDate from, Optional<LocalDate> until) {
    String key = boat.key() + "-" + party.key() + "-" + kind.code();
    d.roles.add(new Role(d.id(), key, boat.id(), party.id(), kind, from, until));
  }

  private static void surfaces(Draft d, Boat boat, int i) {
    boolean motor =
        boat.type() != BoatType.SLOOP
            && boat.type() != BoatType.KETCH
            && boat.type() != BoatType.CATAMARAN;
    Tone tone = i % 5 == 0 ? Tone.DARK : Tone.LIGHT;
    Finish hull =
        i % 13 == 6
            ? Finish.URETHANE_PAINT
            : i % 17 == 9 ? Finish.CLEAR_OVER_METALLIC : Finish.GELCOAT;
    List<Surface> made = new ArrayList<>();
    made.add(surface(d, boat, SurfaceKind.TOPSIDES, Side.PORT, hull, tone, false));
    made.add(surface(d, boat, SurfaceKind.TOPSIDES, Side.STARBOARD, hull, tone, false));
    made.add(surface(d, boat, SurfaceKind.TRANSOM, Side.BOTH, hull, tone, motor));
    made.add(surface(d, boat, SurfaceKind.FOREDECK, Side.BOTH, Finish.GELCOAT, Tone.LIGHT, false));
    made.add(
        surface(
            d,
            boat,
            motor ? SurfaceKind.HARDTOP : SurfaceKind.COACHROOF,
            Side.BOTH,
            Finish.GELCOAT,
            Tone.LIGHT,
            false));
    made.add(
        surface(d, boat, SurfaceKind.CABIN_SIDES, Side.BOTH, Finish.GELCOAT, Tone.LIGHT, false));
    made.add(surface(d, boat, SurfaceKind.NON_SKID, Side.BOTH, Finish.GELCOAT, Tone.LIGHT, false));
    if (i % 3 == 0) {
      made.add(surface(d, boat, SurfaceKind.WATERLINE, Side.BOTH, Finish.GELCOAT, tone, false));
    }
    if (i % 4 == 1) {
      made.add(surface(d, boat, SurfaceKind.COCKPIT, Side.BOTH, Finish.GELCOAT, Tone.LIGHT, false));
    }
    made.add(
        surface(
            d,
            boat,
            SurfaceKind.WINDOWS,
            Side.BOTH,
            i % 2 == 0 ? Finish.ACRYLIC : Finish.GLASS,
            Tone.DARK,
            false));
    extras(d, boat, i, made);
    d.surfaces.addAll(made);
  }

  private static void extras(Draft d, Boat boat, int i, List<Surface> made) {
    if (i % 6 == 2) {
      made.add(surface(d, boat, SurfaceKind.TEAK, Side.BOTH, Finish.TEAK, Tone.DARK, false));
    }
    if (i % 6 == 4) {
      made.add(
          surface(
              d, boat, SurfaceKind.CLEAR_VINYL, Side.BOTH, Finish.CLEAR_VINYL, Tone.LIGHT, false));
      made.add(surface(d, boat, SurfaceKind.CANVAS, Side.BOTH, Finish.CANVAS, Tone.DARK, false));
    }
    if (i % 8 == 5) {
      made.add(surface(d, boat, SurfaceKind.METALWORK, Side.BOTH, Finish.METAL, Tone.LIGHT, false));
    }
    if (i == 21) {
      made.add(surface(d, boat, SurfaceKind.STRIPE, Side.BOTH, Finish.VINYL, Tone.DARK, false));
    }
    if (i == 8) {
      made.add(surface(d, boat, SurfaceKind.VARNISH, Side.BOTH, Finish.VARNISH, Tone.DARK, false));
    }
  }

  private static Surface surface(
      Draft d, Boat boat, SurfaceKind kind, Side side, Finish finish, Tone tone, boolean soot) {
    String key = boat.key() + "-" + kind.code() + (side == Side.BOTH ? "" : "-" + side.code());
    Attitude attitude = kind.usualAttitude();
    return new Surface(
        d.id(),
        key,
        boat.id(),
        kind,
        side,
        "",
        finish,
        tone,
        attitude,
        Optional.empty(),
        d.chance(0.3) ? Past.KNOWN : Past.UNKNOWN,
        soot,
        Optional.empty(),
        "");
  }
}
