package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.importOnly;
import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Parties, boats, roles and surfaces. */
final class BoatFiles {
  private BoatFiles() {}

  static final CsvKind<Party> PARTIES =
      new CsvKind<>(
          "parties.csv",
          Kind.PARTY,
          List.of(
              needText("id"),
              value("kind"),
              needText("name"),
              text("phone"),
              text("email"),
              text("address"),
              text("language"),
              value("risk"),
              text("note"))) {
        @Override
        List<Party> rows(Almanac almanac, Keys keys) {
          return almanac.parties().stream().sorted(Comparator.comparing(Party::key)).toList();
        }

        @Override
        void write(Party p, Out out) {
          out.put("id", p.key())
              .put("kind", p.kind())
              .put("name", p.name())
              .put("phone", p.phone())
              .put("email", p.email())
              .put("address", p.address())
              .put("language", p.language())
              .put("risk", p.risk())
              .put("note", p.note());
        }

        @Override
        Optional<Party> read(In in) {
          Id<Party> id = in.ref(Kind.PARTY, "id");
          PartyKind kind = in.coded(PartyKind.class, "kind", PartyKind.PERSON);
          Optional<Double> risk = in.maybeReal("risk");
          return in.made(
              () ->
                  new Party(
                      id,
                      in.key("id"),
                      kind,
                      in.text("name"),
                      in.text("phone"),
                      in.text("email"),
                      in.text("address"),
                      in.text("language"),
                      risk,
                      in.text("note")));
        }
      };

  static final CsvKind<Boat> BOATS =
      new CsvKind<>(
          "boats.csv",
          Kind.BOAT,
          List.of(
              needText("id"),
              needText("name"),
              value("type"),
              value("loa_m"),
              importOnly("loa_ft"),
              value("beam_m"),
              importOnly("beam_ft"),
              value("freeboard_m"),
              importOnly("freeboard_ft"),
              text("hull_number"),
              value("built"),
              value("use"),
              value("status"),
              value("known_from"),
              text("note"))) {
        @Override
        List<Boat> rows(Almanac almanac, Keys keys) {
          return almanac.boats().stream().sorted(Comparator.comparing(Boat::key)).toList();
        }

        @Override
        void write(Boat b, Out out) {
          out.put("id", b.key())
              .put("name", b.name())
              .put("type", b.type())
              .put("loa_m", b.loa())
              .put("beam_m", b.beam())
              .put("freeboard_m", b.freeboard())
              .put("hull_number", b.hullNumber())
              .put("built", b.built())
              .put("use", b.use())
              .put("status", b.status())
              .put("known_from", b.knownFrom())
              .put("note", b.note());
        }

        @Override
        Optional<Boat> read(In in) {
          Id<Boat> id = in.ref(Kind.BOAT, "id");
          BoatType type = in.coded(BoatType.class, "type", BoatType.OTHER);
          Optional<Length> loa = in.maybeLength("loa");
          Optional<Length> beam = in.maybeLength("beam");
          Optional<Length> freeboard = in.maybeLength("freeboard");
          Optional<Integer> built = in.maybeWhole("built");
          Use use = in.coded(Use.class, "use", Use.WEEKENDS);
          BoatStatus status = in.coded(BoatStatus.class, "status", BoatStatus.ACTIVE);
          Optional<LocalDate> known = in.maybeDay("known_from");
          return in.made(
              () ->
                  new Boat(
                      id,
                      in.key("id"),
                      in.text("name"),
                      type,
                      loa,
                      beam,
                      freeboard,
                      in.text("hull_number"),
                      built,
                      use,
                      status,
                      known,
                      in.text("note")));
        }
      };

  static final CsvKind<Role> ROLES =
      new CsvKind<>(
          "roles.csv",
          Kind.ROLE,
          List.of(
              needText("id"),
              needText("boat"),
              needText("party"),
              value("kind"),
              need("from"),
              value("until"))) {
        @Override
        List<Role> rows(Almanac almanac, Keys keys) {
          return almanac.roles().stream().sorted(Comparator.comparing(Role::key)).toList();
        }

        @Override
        void write(Role r, Out out) {
          out.put("id", r.key())
              .ref("boat", Kind.BOAT, r.boat())
              .ref("party", Kind.PARTY, r.party())
              .put("kind", r.kind())
              .put("from", r.from())
              .put("until", r.until());
        }

        @Override
        Optional<Role> read(In in) {
          Id<Role> id = in.ref(Kind.ROLE, "id");
          Id<Boat> boat = in.ref(Kind.BOAT, "boat");
          Id<Party> party = in.ref(Kind.PARTY, "party");
          RoleKind kind = in.coded(RoleKind.class, "kind", RoleKind.OWNS);
          LocalDate from = in.day("from");
          Optional<LocalDate> until = in.maybeDay("until");
          return in.made(() -> new Role(id, in.key("id"), boat, party, kind, from, until));
        }
      };

  static final CsvKind<Surface> SURFACES =
      new CsvKind<>(
          "surfaces.csv",
          Kind.SURFACE,
          List.of(
              needText("id"),
              needText("boat"),
              need("kind"),
              value("side"),
              text("name"),
              value("finish"),
              value("colour"),
              value("attitude"),
              value("made_year"),
              value("past"),
              value("soot"),
              value("interval_months"),
              text("note"))) {
        @Override
        List<Surface> rows(Almanac almanac, Keys keys) {
          return almanac.surfaces().stream().sorted(Comparator.comparing(Surface::key)).toList();
        }

        @Override
        void write(Surface s, Out out) {
          out.put("id", s.key())
              .ref("boat", Kind.BOAT, s.boat())
              .put("kind", s.kind())
              .put("side", s.side())
              .put("name", s.name())
              .put("finish", s.finish())
              .put("colour", s.tone())
              .put("attitude", s.attitude())
              .put("made_year", s.madeYear())
              .put("past", s.past())
              .put("soot", s.soot())
              .put("interval_months", s.intervalMonths())
              .put("note", s.note());
        }

        @Override
        Optional<Surface> read(In in) {
          Id<Surface> id = in.ref(Kind.SURFACE, "id");
          Id<Boat> boat = in.ref(Kind.BOAT, "boat");
          SurfaceKind kind = in.coded(SurfaceKind.class, "kind", SurfaceKind.TOPSIDES);
          Side side = in.coded(Side.class, "side", Side.BOTH);
          Finish finish = in.coded(Finish.class, "finish", Finish.GELCOAT);
          Tone tone = in.coded(Tone.class, "colour", Tone.LIGHT);
          Attitude attitude = in.coded(Attitude.class, "attitude", kind.usualAttitude());
          Optional<Integer> made = in.maybeWhole("made_year");
          Past past = in.coded(Past.class, "past", Past.UNKNOWN);
          boolean soot = in.flag("soot");
          Optional<Double> interval = in.maybeReal("interval_months");
          return in.made(
              () ->
                  new Surface(
                      id,
                      in.key("id"),
                      boat,
                      kind,
                      side,
                      in.text("name"),
                      finish,
                      tone,
                      attitude,
                      made,
                      past,
                      soot,
                      interval,
                      in.text("note")));
        }
      };
}
