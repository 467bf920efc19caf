package hullalmanac.core.find;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is found by a name or number: boats, parties, harbours, products and batches. */
final class NameEntries {
  private static final int BOATS_NAMED = 2;

  private final Rows rows;
  private final List<Entry> entries = new ArrayList<>();

  private NameEntries(Rows rows) {
    this.rows = rows;
  }

  static List<Entry> of(Rows rows) {
    NameEntries all = new NameEntries(rows);
    all.boats();
    all.parties();
    all.harbours();
    all.products();
    all.bottles();
    all.coats();
    return all.entries;
  }

  private void add(Hit hit, boolean gone, long day, List<String> more, String number) {
    entries.add(new Entry(hit, true, gone, day, more, List.of(number)));
  }

  private void boats() {
    for (Boat boat : rows.almanac.boats()) {
      List<Role> roles = rows.rolesToday(boat);
      String owner =
          roles.stream()
              .filter(r -> r.kind() == RoleKind.OWNS)
              .findFirst()
              .map(r -> rows.parties.get(r.party()).name())
              .orElse("");
      String place = rows.place(boat);
      String status = Rows.gone(boat) ? boat.status().words() : "";
      Target target = new Target.ToBoat(boat.id());
      List<String> more = new ArrayList<>(List.of(owner, place, boat.note(), boat.type().words()));
      roles.forEach(r -> more.add(rows.parties.get(r.party()).name() + ", " + r.kind().words()));
      add(
          new Hit(HitKind.BOAT, boat.name(), Rows.joined(status, owner, place), target),
          Rows.gone(boat),
          0,
          more,
          "");
      if (!boat.hullNumber().isBlank()) {
        add(
            new Hit(
                HitKind.HULL_NUMBER,
                boat.hullNumber().strip(),
                Rows.joined(boat.name(), status, owner),
                target),
            Rows.gone(boat),
            0,
            List.of(),
            Folding.solid(boat.hullNumber()));
      }
    }
  }

  private void parties() {
    Map<Id<Party>, Map<RoleKind, List<Boat>>> today = new HashMap<>();
    rows.almanac.boats().stream()
        .sorted(Comparator.comparing(Rows::gone).thenComparing(Boat::name))
        .forEach(
            boat ->
                rows.rolesToday(boat)
                    .forEach(
                        r ->
                            today
                                .computeIfAbsent(r.party(), p -> new HashMap<>())
                                .computeIfAbsent(r.kind(), k -> new ArrayList<>())
                                .add(boat)));
    for (Party party : rows.almanac.parties()) {
      Map<RoleKind, List<Boat>> roles = today.getOrDefault(party.id(), Map.of());
      HitKind kind =
          roles.containsKey(RoleKind.OWNS)
              ? HitKind.OWNER
              : party.kind() == PartyKind.FIRM ? HitKind.FIRM : HitKind.PERSON;
      add(
          new Hit(
              kind,
              party.name(),
              Rows.joined(boatsOf(roles), party.phone().strip()),
              new Target.ToParty(party.id())),
          false,
          0,
          List.of(party.phone(), party.email(), party.address(), party.note()),
          Folding.digits(party.phone()));
    }
  }

  /** What a party does for boats, the chief role first: "Siskin, Knot and 2 more". */
  private static String boatsOf(Map<RoleKind, List<Boat>> roles) {
    List<String> names =
        Stream.of(RoleKind.values())
            .flatMap(k -> roles.getOrDefault(k, List.of()).stream())
            .map(Boat::name)
            .distinct()
            .toList();
    if (names.size() <= BOATS_NAMED + 1) {
      return String.join(", ", names);
    }
    return String.join(", ", names.subList(0, BOATS_NAMED))
        + " and "
        + (names.size() - BOATS_NAMED)
        + " more";
  }

  private void harbours() {
    Map<Id<Harbour>, Long> boats =
        rows.homes.values().stream()
            .filter(b -> !Rows.gone(rows.boats.get(b.boat())))
            .collect(Collectors.groupingBy(b -> b.harbour(), Collectors.counting()));
    for (Harbour harbour : rows.almanac.harbours()) {
      long count = boats.getOrDefault(harbour.id(), 0L);
      String lie = count == 0 ? "no boat" : count == 1 ? "1 boat" : count + " boats";
      add(
          new Hit(HitKind.HARBOUR, harbour.name(), lie, new Target.ToHarbour(harbour.id())),
          false,
          0,
          List.of(harbour.note()),
          "");
    }
  }

  private void products() {
    for (Product product : rows.almanac.products()) {
      add(
          new Hit(
              HitKind.PRODUCT,
              product.name(),
              product.kind().words(),
              new Target.ToProduct(product.id())),
          false,
          0,
          List.of(product.kind().words(), product.note()),
          "");
    }
  }

  private void bottles() {
    for (Bottle bottle : rows.almanac.bottles()) {
      if (!bottle.batch().isBlank()) {
        add(
            new Hit(
                HitKind.BATCH,
                bottle.batch().strip(),
                Rows.joined(
                    rows.products.get(bottle.product()).name(),
                    bottle.openedOn().map(d -> "opened " + Rows.day(d)).orElse("")),
                new Target.ToProduct(bottle.product())),
            false,
            bottle.openedOn().map(d -> d.toEpochDay()).orElse(0L),
            List.of(),
            "");
      }
    }
  }

  private record Laid(String batch, Boat boat) {}

  /** Each boat on which a batch was laid, with the last such day. */
  private void coats() {
    Map<Id<Bottle>, String> batches =
        rows.almanac.bottles().stream().collect(Collectors.toMap(Bottle::id, Bottle::batch));
    Map<Laid, Coat> last = new LinkedHashMap<>();
    for (Coat coat : rows.almanac.coats()) {
      String batch =
          Optional.of(coat.batch().strip())
              .filter(b -> !b.isEmpty())
              .or(() -> coat.bottle().map(batches::get).map(String::strip))
              .orElse("");
      if (!batch.isEmpty()) {
        Boat boat = rows.boats.get(rows.surfaces.get(coat.surface()).boat());
        last.merge(new Laid(batch, boat), coat, (a, b) -> b.since().isAfter(a.since()) ? b : a);
      }
    }
    last.forEach(
        (laid, coat) ->
            add(
                new Hit(
                    HitKind.COAT,
                    laid.batch(),
                    Rows.joined(
                        "on " + laid.boat().name(),
                        rows.products.get(coat.product()).name(),
                        Rows.day(coat.since())),
                    new Target.ToBoat(laid.boat().id())),
                Rows.gone(laid.boat()),
                coat.since().toEpochDay(),
                List.of(),
                ""));
  }
}
