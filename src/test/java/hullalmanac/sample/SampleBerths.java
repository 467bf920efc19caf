package hullalmanac.sample;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import java.time.Month;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Where the boats lie, in summer and in winter, and their care plans. */
final class SampleBerths {
  private static final String PUT_AWAY = "merganser";

  private SampleBerths() {}

  static void add(Draft d) {
    for (int i = 0; i < d.boats.size(); i++) {
      Boat boat = d.boats.get(i);
      Harbour harbour = d.harbours.get(i % 4);
      LocalDate from = boat.knownFrom().orElseThrow();
      Cover cover = i % 9 == 4 ? Cover.COVERED_SLIP : i % 11 == 7 ? Cover.FITTED_COVER : Cover.OPEN;
      Water water = harbour.key().equals("fallow-creek") ? Water.BRACKISH : Water.SALT;
      Optional<Integer> bow =
          i % 5 == 4 ? Optional.empty() : Optional.of(d.pick(List.of(70, 90, 180, 250, 270, 350)));
      berth(d, boat, harbour, cover, water, from, Optional.empty(), false, bow, "summer");
      if (i % 3 != 2) {
        boolean shed = i % 6 == 3;
        Harbour yard = shed ? d.harbours.get(2) : harbour;
        Cover winter =
            shed ? Cover.SHED : i % 7 == 1 ? Cover.SHRINK_WRAP_TO_WATERLINE : Cover.SHRINK_WRAP;
        LocalDate up = LocalDate.of(from.getYear(), 11, d.between(1, 14));
        LocalDate launch = LocalDate.of(from.getYear() + 1, 3, d.between(10, 28));
        berth(
            d,
            boat,
            yard,
            winter,
            Water.ASHORE,
            up,
            Optional.of(launch),
            true,
            Optional.empty(),
            "winter");
      }
      if (boat.key().equals(PUT_AWAY)) {
        putAway(d, boat);
      }
      if (i % 5 == 1 && boat.status() == hullalmanac.core.record.BoatStatus.ACTIVE) {
        plan(d, boat);
      }
    }
  }

  /** For good in a shed, where her coating will outlast the forecast. */
  private static void putAway(Draft d, Boat boat) {
    berth(
        d,
        boat,
        d.harbours.get(2),
        Cover.SHED,
        Water.ASHORE,
        LocalDate.of(2026, 4, 28),
        Optional.empty(),
        false,
        Optional.empty(),
        "shed");
  }

  private static void berth(
      Draft d,
      Boat boat,
      Harbour harbour,
      Cover cover,
      Water water,
      LocalDate from,
      Optional<LocalDate> until,
      boolean yearly,
      Optional<Integer> bow,
      String name) {
    boolean afloat = water != Water.ASHORE;
    Berth.Access access =
        afloat
            ? new Berth.Access(
                (char) ('A' + d.between(0, 3)) + String.valueOf(d.between(1, 40)),
                d.chance(0.5) ? "port" : "starboard",
                d.chance(0.8) ? "tap on the pontoon" : "",
                d.chance(0.7) ? "16 A, blue" : "",
                "8 to 18",
                harbour.key().equals("oyster-hard")
                    ? "dries two hours either side of low water"
                    : "",
                harbour.key().equals("quillhaven") ? "caught on the pad only" : "")
            : Berth.Access.UNKNOWN;
    Berth.Private secrets =
        afloat && d.chance(0.25)
            ? new Berth.Private(
                "under the port locker lid", String.valueOf(d.between(1000, 9999)), "")
            : Berth.Private.NOTHING;
    d.berths.add(
        new Berth(
            d.id(),
            boat.key() + "-" + name,
            boat.id(),
            harbour.id(),
            cover,
            water,
            from,
            until,
            yearly,
            Optional.empty(),
            bow,
            access,
            secrets));
  }

  private static void plan(Draft d, Boat boat) {
    d.carePlans.add(
        new CarePlan(
            d.id(),
            "plan-" + boat.key(),
            boat.id(),
            "wash down and a look over",
            4,
            List.of(Month.APRIL, Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER),
            Optional.of(new Money(d.between(45, 90) * 100L, Currency.getInstance("USD"))),
            LocalDate.of(2024, 4, 1),
            Optional.empty(),
            List.of()));
  }
}
