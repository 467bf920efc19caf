package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Harbours, berths and what of berths is private. */
final class PlaceFiles {
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private PlaceFiles() {}

  /** What is private of a berth. */
  record Secret(Id<Berth> berth, Berth.Private facts) {}

  static final CsvKind<Harbour> HARBOURS =
      new CsvKind<>("harbours.csv", Kind.HARBOUR, harbourColumns()) {
        @Override
        List<Harbour> rows(Almanac almanac, Keys keys) {
          return almanac.harbours().stream().sorted(Comparator.comparing(Harbour::key)).toList();
        }

        @Override
        void write(Harbour h, Out out) {
          out.put("id", h.key())
              .put("name", h.name())
              .put("latitude", h.latitude())
              .put("note", h.note());
          for (int i = 0; i < MONTHS.size(); i++) {
            out.put("sun_" + MONTHS.get(i), h.sunshine().isEmpty() ? "" : h.sunshine().get(i));
          }
        }

        @Override
        Optional<Harbour> read(In in) {
          Id<Harbour> id = in.ref(Kind.HARBOUR, "id");
          double latitude = in.real("latitude");
          List<Double> sun = new ArrayList<>();
          for (String month : MONTHS) {
            in.maybeReal("sun_" + month).ifPresent(sun::add);
          }
          return in.made(
              () -> new Harbour(id, in.key("id"), in.text("name"), latitude, sun, in.text("note")));
        }
      };

  private static List<Column> harbourColumns() {
    List<Column> columns =
        new ArrayList<>(List.of(needText("id"), needText("name"), need("latitude")));
    MONTHS.forEach(m -> columns.add(value("sun_" + m)));
    columns.add(text("note"));
    return columns;
  }

  static final CsvKind<Berth> BERTHS =
      new CsvKind<>(
          "berths.csv",
          Kind.BERTH,
          List.of(
              needText("id"),
              needText("boat"),
              needText("harbour"),
              value("cover"),
              value("water"),
              need("from"),
              value("until"),
              value("yearly"),
              value("last_year"),
              value("bow"),
              text("place"),
              text("pontoon_side"),
              text("water_supply"),
              text("power"),
              text("hours"),
              text("tide"),
              text("runoff"))) {
        @Override
        List<Berth> rows(Almanac almanac, Keys keys) {
          return almanac.berths().stream().sorted(Comparator.comparing(Berth::key)).toList();
        }

        @Override
        void write(Berth b, Out out) {
          out.put("id", b.key())
              .ref("boat", Kind.BOAT, b.boat())
              .ref("harbour", Kind.HARBOUR, b.harbour())
              .put("cover", b.cover())
              .put("water", b.water())
              .put("from", b.from())
              .put("until", b.until())
              .put("yearly", b.yearly())
              .put("last_year", b.lastYear())
              .put("bow", b.bow())
              .put("place", b.access().place())
              .put("pontoon_side", b.access().pontoonSide())
              .put("water_supply", b.access().water())
              .put("power", b.access().power())
              .put("hours", b.access().hours())
              .put("tide", b.access().tide())
              .put("runoff", b.access().runoff());
        }

        @Override
        Optional<Berth> read(In in) {
          Id<Berth> id = in.ref(Kind.BERTH, "id");
          Id<hullalmanac.core.record.Boat> boat = in.ref(Kind.BOAT, "boat");
          Id<Harbour> harbour = in.ref(Kind.HARBOUR, "harbour");
          Cover cover = in.coded(Cover.class, "cover", Cover.OPEN);
          Water water = in.coded(Water.class, "water", Water.SALT);
          LocalDate from = in.day("from");
          Optional<LocalDate> until = in.maybeDay("until");
          boolean yearly = in.flag("yearly");
          Optional<Integer> lastYear = in.maybeWhole("last_year");
          Optional<Integer> bow = in.maybeWhole("bow");
          return in.made(
              () ->
                  new Berth(
                      id,
                      in.key("id"),
                      boat,
                      harbour,
                      cover,
                      water,
                      from,
                      until,
                      yearly,
                      lastYear,
                      bow,
                      access(in),
                      Berth.Private.NOTHING));
        }
      };

  private static Berth.Access access(In in) {
    return new Berth.Access(
        in.text("place"),
        in.text("pontoon_side"),
        in.text("water_supply"),
        in.text("power"),
        in.text("hours"),
        in.text("tide"),
        in.text("runoff"));
  }

  static final CsvKind<Secret> SECRETS =
      new CsvKind<>(
          "berth-secrets.csv",
          Kind.BERTH,
          List.of(needText("berth"), text("keys"), text("gate_code"), text("absence"))) {
        @Override
        List<Secret> rows(Almanac almanac, Keys keys) {
          return almanac.berths().stream()
              .filter(b -> !b.secrets().equals(Berth.Private.NOTHING))
              .sorted(Comparator.comparing(Berth::key))
              .map(b -> new Secret(b.id(), b.secrets()))
              .toList();
        }

        @Override
        void write(Secret s, Out out) {
          out.ref("berth", Kind.BERTH, s.berth())
              .put("keys", s.facts().keys())
              .put("gate_code", s.facts().gateCode())
              .put("absence", s.facts().absence());
        }

        @Override
        Optional<Secret> read(In in) {
          Id<Berth> berth = in.ref(Kind.BERTH, "berth");
          return in.made(
              () ->
                  new Secret(
                      berth,
                      new Berth.Private(
                          in.text("keys"), in.text("gate_code"), in.text("absence"))));
        }
      };
}
