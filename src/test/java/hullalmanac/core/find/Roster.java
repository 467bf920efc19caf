package hullalmanac.core.find;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.Water;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A record made for finding in it: names, numbers and notes, and little else. */
public final class Roster {
  /** The day on which it is looked at. */
  public static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private static final LocalDate SINCE = LocalDate.of(2024, 3, 1);
  private static final String[] FIRST = {
    "Black", "Grey", "Little", "Northern", "Red", "Silver", "Swift", "White", "Wild", "Young"
  };
  private static final String[] SECOND = {
    "Auk", "Bunting", "Crake", "Diver", "Egret", "Finch", "Godwit", "Harrier", "Jay", "Lark"
  };

  private final List<Harbour> harbours = new ArrayList<>();
  private final List<Party> parties = new ArrayList<>();
  private final List<Boat> boats = new ArrayList<>();
  private final List<Role> roles = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();
  private final List<Berth> berths = new ArrayList<>();
  private final List<Product> products = new ArrayList<>();
  private final List<Bottle> bottles = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<Coat> coats = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Photo> photos = new ArrayList<>();
  private long last;

  /** A roster of boats with an owner each, a hull number, a phone and a note of a visit. */
  public static Roster of(int count) {
    Roster roster = new Roster();
    List<Harbour> harbours =
        List.of(
            roster.harbour("Quillhaven"), roster.harbour("Fallow Creek"), roster.harbour("Ebb"));
    for (int i = 0; i < count; i++) {
      String second = SECOND[i / 10 % 10];
      Boat boat =
          roster.boat(
              FIRST[i % 10] + " " + second + (i < 100 ? "" : " " + i / 100),
              String.format("ZZZ%05dA%03d", i, i % 1000),
              i % 12 == 0 ? BoatStatus.SOLD : BoatStatus.ACTIVE);
      Party owner = roster.party(second + "y Number" + i, String.format("+1 555 %04d", i % 10_000));
      roster.role(owner, RoleKind.OWNS, boat);
      roster.lies(boat, harbours.get(i % 3), "D" + i % 40);
      roster.visit(boat, "Fender " + i + " leaves marks on the port quarter.");
    }
    return roster;
  }

  private <T> Id<T> id() {
    return new Id<>(++last);
  }

  private String key() {
    return "row-" + last;
  }

  Harbour harbour(String name) {
    Harbour h = new Harbour(id(), key(), name, 48.4, List.of(), "");
    harbours.add(h);
    return h;
  }

  Party party(String name, String phone) {
    Party p =
        new Party(id(), key(), PartyKind.PERSON, name, phone, "", "", "", Optional.empty(), "");
    parties.add(p);
    return p;
  }

  Boat boat(String name) {
    return boat(name, "", BoatStatus.ACTIVE);
  }

  Boat boat(String name, String hullNumber, BoatStatus status) {
    return boat(name, hullNumber, status, "");
  }

  Boat boat(String name, String hullNumber, BoatStatus status, String note) {
    Boat b =
        new Boat(
            id(),
            key(),
            name,
            BoatType.SLOOP,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            hullNumber,
            Optional.empty(),
            Use.WEEKENDS,
            status,
            Optional.empty(),
            note);
    boats.add(b);
    return b;
  }

  Role role(Party party, RoleKind kind, Boat boat) {
    return role(party, kind, boat, Optional.empty());
  }

  Role role(Party party, RoleKind kind, Boat boat, Optional<LocalDate> until) {
    Role r = new Role(id(), key(), boat.id(), party.id(), kind, SINCE, until);
    roles.add(r);
    return r;
  }

  /** Where a boat lies, behind a gate whose code is 7788. */
  Berth lies(Boat boat, Harbour harbour, String place) {
    Berth b =
        new Berth(
            id(),
            key(),
            boat.id(),
            harbour.id(),
            Cover.OPEN,
            Water.SALT,
            SINCE,
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            new Berth.Access(place, "", "", "", "", "", ""),
            new Berth.Private("under the mat", "7788", "away in June"));
    berths.add(b);
    return b;
  }

  Surface transom(Boat boat) {
    Surface s =
        new Surface(
            id(),
            key(),
            boat.id(),
            SurfaceKind.TRANSOM,
            Side.BOTH,
            "",
            Finish.GELCOAT,
            Tone.LIGHT,
            SurfaceKind.TRANSOM.usualAttitude(),
            Optional.empty(),
            Past.UNKNOWN,
            false,
            Optional.empty(),
            "");
    surfaces.add(s);
    return s;
  }

  Product product(String name) {
    Product p =
        new Product(
            id(),
            key(),
            name,
            ProductKind.POLYMER_SEALANT,
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            new TreeSet<>(),
            Product.Handling.UNKNOWN,
            "");
    products.add(p);
    return p;
  }

  Bottle bottle(Product product, String batch) {
    Bottle b =
        new Bottle(
            id(),
            key(),
            product.id(),
            batch,
            Optional.of(SINCE),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    bottles.add(b);
    return b;
  }

  Coat coat(Surface surface, Bottle bottle, LocalDate day) {
    Coat c =
        new Coat(
            id(),
            key(),
            surface.id(),
            bottle.product(),
            Optional.of(day),
            Optional.empty(),
            Optional.empty(),
            Optional.of(bottle.id()),
            "",
            1,
            Optional.empty(),
            Optional.empty(),
            "");
    coats.add(c);
    return c;
  }

  Visit visit(Boat boat, String note) {
    Visit v =
        new Visit(
            id(),
            key(),
            boat.id(),
            LocalDate.of(2025, 4, 22),
            VisitStatus.DONE,
            VisitWhy.DUE,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            List.of(),
            List.of(),
            note);
    visits.add(v);
    return v;
  }

  Finding finding(Surface surface, LocalDate day, Observation seen, String note) {
    Finding f =
        new Finding(
            id(),
            key(),
            surface.id(),
            Optional.empty(),
            day,
            SurfaceState.DIRTY,
            Entered.GRID,
            seen,
            note);
    findings.add(f);
    return f;
  }

  Finding water(Surface surface, LocalDate day, String note) {
    return finding(surface, day, new Observation.WaterSeen(WaterBehaviour.FLAT), note);
  }

  Photo photo(Boat boat, String caption) {
    Photo p =
        new Photo(
            id(),
            key(),
            boat.id(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Moment.BEFORE,
            "0".repeat(64) + ".png",
            caption);
    photos.add(p);
    return p;
  }

  /** The record. */
  public Almanac almanac() {
    return new Almanac(
        Business.unnamed(),
        harbours,
        parties,
        boats,
        roles,
        surfaces,
        berths,
        List.of(),
        products,
        bottles,
        visits,
        List.of(),
        coats,
        List.of(),
        findings,
        photos);
  }

  FindIndex index() {
    return FindIndex.of(almanac(), TODAY);
  }
}
