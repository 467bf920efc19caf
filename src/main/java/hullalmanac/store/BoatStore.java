package hullalmanac.store;

import hullalmanac.core.record.Attitude;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Money;
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
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Parties, boats, roles, surfaces and care plans. */
final class BoatStore {
  private static final Columns PARTY =
      Columns.of(
          "party",
          """
          id
          key
          kind
          name
          phone
          email
          address
          language
          note
          risk
          """);

  private static final Columns BOAT =
      Columns.of(
          "boat",
          """
          id
          key
          name
          type
          loa_mm
          beam_mm
          freeboard_mm
          hull_number
          built
          use
          status
          known_from
          note
          """);

  private static final Columns ROLE =
      Columns.of(
          "role",
          """
          id
          key
          boat_id
          party_id
          kind
          from_day
          until_day
          """);

  private static final Columns SURFACE =
      Columns.of(
          "surface",
          """
          id
          key
          boat_id
          kind
          side
          name
          finish
          tone
          attitude
          made_year
          past
          soot
          interval_months
          note
          """);

  private static final Columns CARE_PLAN =
      Columns.of(
          "care_plan",
          """
          id
          key
          boat_id
          work
          every_weeks
          months
          price_minor
          from_day
          until_day
          skips
          """);

  private final Tx tx;

  BoatStore(Tx tx) {
    this.tx = tx;
  }

  List<Party> parties() throws SQLException {
    return tx.list(
        PARTY.select("id"),
        row ->
            new Party(
                row.id("id"),
                row.text("key"),
                row.coded(PartyKind.class, "kind"),
                row.text("name"),
                row.text("phone"),
                row.text("email"),
                row.text("address"),
                row.text("language"),
                row.maybeReal("risk"),
                row.text("note")));
  }

  void putParties(List<Party> parties) throws SQLException {
    tx.each(
        PARTY.put(),
        parties,
        (to, p) ->
            to.set("id", p.id())
                .set("key", p.key())
                .set("kind", p.kind())
                .set("name", p.name())
                .set("phone", p.phone())
                .set("email", p.email())
                .set("address", p.address())
                .set("language", p.language())
                .set("risk", p.risk())
                .set("note", p.note()));
  }

  List<Boat> boats() throws SQLException {
    return tx.list(
        BOAT.select("id"),
        row ->
            new Boat(
                row.id("id"),
                row.text("key"),
                row.text("name"),
                row.coded(BoatType.class, "type"),
                row.maybeLength("loa_mm"),
                row.maybeLength("beam_mm"),
                row.maybeLength("freeboard_mm"),
                row.text("hull_number"),
                row.maybeWhole("built"),
                row.coded(Use.class, "use"),
                row.coded(BoatStatus.class, "status"),
                row.maybeDay("known_from"),
                row.text("note")));
  }

  void putBoats(List<Boat> boats) throws SQLException {
    tx.each(
        BOAT.put(),
        boats,
        (to, b) ->
            to.set("id", b.id())
                .set("key", b.key())
                .set("name", b.name())
                .set("type", b.type())
                .set("loa_mm", b.loa())
                .set("beam_mm", b.beam())
                .set("freeboard_mm", b.freeboard())
                .set("hull_number", b.hullNumber())
                .set("built", b.built())
                .set("use", b.use())
                .set("status", b.status())
                .set("known_from", b.knownFrom())
                .set("note", b.note()));
  }

  List<Role> roles() throws SQLException {
    return tx.list(
        ROLE.select("id"),
        row ->
            new Role(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.id("party_id"),
                row.coded(RoleKind.class, "kind"),
                row.day("from_day"),
                row.maybeDay("until_day")));
  }

  void putRoles(List<Role> roles) throws SQLException {
    tx.each(
        ROLE.put(),
        roles,
        (to, r) ->
            to.set("id", r.id())
                .set("key", r.key())
                .set("boat_id", r.boat())
                .set("party_id", r.party())
                .set("kind", r.kind())
                .set("from_day", r.from())
                .set("until_day", r.until()));
  }

  List<Surface> surfaces() throws SQLException {
    return tx.list(
        SURFACE.select("id"),
        row ->
            new Surface(
                row.id("id"),
                row.text("key"),
                row.id("boat_id"),
                row.coded(SurfaceKind.class, "kind"),
                row.coded(Side.class, "side"),
                row.text("name"),
                row.coded(Finish.class, "finish"),
                row.coded(Tone.class, "tone"),
                row.coded(Attitude.class, "attitude"),
                row.maybeWhole("made_year"),
                row.coded(Past.class, "past"),
                row.flag("soot"),
                row.maybeReal("interval_months"),
                row.text("note")));
  }

  void putSurfaces(List<Surface> surfaces) throws SQLException {
    tx.each(
        SURFACE.put(),
        surfaces,
        (to, s) ->
            to.set("id", s.id())
                .set("key", s.key())
                .set("boat_id", s.boat())
                .set("kind", s.kind())
                .set("side", s.side())
                .set("name", s.name())
                .set("finish", s.finish())
                .set("tone", s.tone())
                .set("attitude", s.attitude())
                .set("made_year", s.madeYear())
                .set("past", s.past())
                .set("soot", s.soot())
                .set("interval_months", s.intervalMonths())
                .set("note", s.note()));
  }

  List<CarePlan> carePlans(Currency currency) throws SQLException {
    return tx.list(
        CARE_PLAN.select("id"),
        row -> {
          Optional<Integer> price = row.maybeWhole("price_minor");
          return new CarePlan(
              row.id("id"),
              row.text("key"),
              row.id("boat_id"),
              row.text("work"),
              row.whole("every_weeks"),
              row.list("months", m -> Month.of(Integer.parseInt(m))),
              price.isEmpty()
                  ? Optional.empty()
                  : Optional.of(new Money(row.number("price_minor"), currency)),
              row.day("from_day"),
              row.maybeDay("until_day"),
              row.list("skips", LocalDate::parse));
        });
  }

  void putCarePlans(List<CarePlan> plans) throws SQLException {
    tx.each(
        CARE_PLAN.put(),
        plans,
        (to, p) ->
            to.set("id", p.id())
                .set("key", p.key())
                .set("boat_id", p.boat())
                .set("work", p.work())
                .set("every_weeks", p.everyWeeks())
                .set(
                    "months",
                    p.months().stream()
                        .map(m -> String.valueOf(m.getValue()))
                        .collect(Collectors.joining(" ")))
                .set("price_minor", p.price())
                .set("from_day", p.from())
                .set("until_day", p.until())
                .set(
                    "skips",
                    p.skips().stream().map(LocalDate::toString).collect(Collectors.joining(" "))));
  }
}
