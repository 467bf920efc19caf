package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Takes a boat in from a phone call: its owner, where it lies, and the surfaces such a boat usually
 * has. What was not said stays unknown; weekend use, no cover and salt water are taken until told
 * otherwise (common practice, no source).
 */
public final class NewBoat {
  private final Almanac almanac;
  private final IdSource ids;
  private final NewKeys keys;
  private final PhoneCall call;
  private final List<Row> put = new ArrayList<>();

  private NewBoat(Almanac almanac, IdSource ids, PhoneCall call) {
    this.almanac = almanac;
    this.ids = ids;
    this.keys = new NewKeys(almanac);
    this.call = call;
  }

  /**
   * The boat with all that goes with it. An owner of the same name with the same phone, or where
   * one of the two phones is not known, is the same owner.
   */
  public static Change from(Almanac almanac, IdSource ids, PhoneCall call) {
    List<Problem> problems = problems(call);
    return problems.isEmpty()
        ? Change.checked(almanac, new NewBoat(almanac, ids, call).edit())
        : new Change.Refused(problems);
  }

  private static List<Problem> problems(PhoneCall call) {
    List<Problem> problems = new ArrayList<>();
    if (call.owner().isBlank()) {
      problems.add(missing(Kind.PARTY, "the owner has no name"));
    }
    if (call.boat().isBlank()) {
      problems.add(missing(Kind.BOAT, "the boat has no name"));
    }
    if (call.harbour() instanceof PhoneCall.AtNew at) {
      if (at.name().isBlank()) {
        problems.add(missing(Kind.HARBOUR, "the harbour has no name"));
      }
      if (!(Math.abs(at.latitude()) <= 90)) {
        problems.add(
            new Problem(
                Kind.HARBOUR,
                "",
                "latitude",
                "the latitude " + at.latitude() + " is not between -90 and 90 degrees",
                "Write it in degrees, north positive"));
      }
    }
    return problems;
  }

  private static Problem missing(Kind kind, String message) {
    return new Problem(kind, "", "name", message, "Write the name, or a word to know it by");
  }

  private Edit edit() {
    Party owner = owner();
    Harbour harbour = harbour();
    Boat boat =
        new Boat(
            ids.next(),
            keys.next(Kind.BOAT, call.boat()),
            call.boat().strip(),
            call.type(),
            call.length(),
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.empty(),
            Use.WEEKENDS,
            BoatStatus.ACTIVE,
            Optional.of(call.day()),
            "");
    put.add(boat);
    put.add(owns(boat, owner, call.day(), ids, keys));
    SurfaceTemplate.of(call.type()).forEach(t -> put.add(t.on(boat, ids, keys)));
    put.add(berth(boat, harbour, call.day(), ids, keys));
    return Edit.put(put);
  }

  private Party owner() {
    List<Party> namesakes =
        almanac.parties().stream()
            .filter(p -> plain(p.name()).equals(plain(call.owner())))
            .sorted(Comparator.comparing(Party::key))
            .toList();
    String phone = call.phone().strip();
    Optional<Party> same =
        namesakes.stream().filter(p -> digits(p.phone()).equals(digits(phone))).findFirst();
    Optional<Party> open =
        namesakes.stream().filter(p -> p.phone().isBlank() || phone.isEmpty()).findFirst();
    Optional<Party> found = same.or(() -> open);
    if (found.isEmpty()) {
      Party party =
          new Party(
              ids.next(),
              keys.next(Kind.PARTY, call.owner()),
              PartyKind.PERSON,
              call.owner().strip(),
              phone,
              "",
              "",
              "",
              Optional.empty(),
              "");
      put.add(party);
      return party;
    }
    if (found.get().phone().isBlank() && !phone.isEmpty()) {
      put.add(Altered.phone(found.get(), phone));
    }
    return found.get();
  }

  private Harbour harbour() {
    if (call.harbour() instanceof PhoneCall.At at) {
      return InRecord.row(almanac.harbours(), at.harbour());
    }
    PhoneCall.AtNew at = (PhoneCall.AtNew) call.harbour();
    return almanac.harbours().stream()
        .filter(h -> plain(h.name()).equals(plain(at.name())))
        .min(Comparator.comparing(Harbour::key))
        .orElseGet(() -> newHarbour(at));
  }

  private Harbour newHarbour(PhoneCall.AtNew at) {
    Harbour harbour =
        new Harbour(
            ids.next(),
            keys.next(Kind.HARBOUR, at.name()),
            at.name().strip(),
            at.latitude(),
            List.of(),
            "");
    put.add(harbour);
    return harbour;
  }

  /** A new role of an owner from a day. */
  public static Role owns(Boat boat, Party owner, LocalDate from, IdSource ids, NewKeys keys) {
    return new Role(
        ids.next(),
        keys.next(Kind.ROLE, boat.key(), owner.key(), RoleKind.OWNS.code()),
        boat.id(),
        owner.id(),
        RoleKind.OWNS,
        from,
        Optional.empty());
  }

  /** A new berth from a day, of which only the harbour is known. */
  public static Berth berth(
      Boat boat, Harbour harbour, LocalDate from, IdSource ids, NewKeys keys) {
    return new Berth(
        ids.next(),
        keys.next(Kind.BERTH, boat.key(), harbour.key()),
        boat.id(),
        harbour.id(),
        Cover.OPEN,
        Water.SALT,
        from,
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Berth.Access.UNKNOWN,
        Berth.Private.NOTHING);
  }

  /** A name without regard to case and to blanks in and around it. */
  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** A phone number without what is written between its digits. */
  private static String digits(String phone) {
    return phone.replaceAll("[^0-9+]", "");
  }
}
