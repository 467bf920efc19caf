package hullalmanac.sample;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.DutyKind;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Four seasons of visits and the coats they laid. */
final class SampleHistory {
  private final Draft d;
  private final SampleWear wear;
  private final SampleFindings findings;
  private final SampleSteps steps;

  SampleHistory(Draft draft) {
    d = draft;
    wear = new SampleWear(draft);
    findings = new SampleFindings(draft, wear);
    steps = new SampleSteps(draft);
  }

  void add() {
    for (int i = 0; i < d.boats.size(); i++) {
      Boat boat = d.boats.get(i);
      met(boat, i);
      int last =
          boat.status() == BoatStatus.ACTIVE
              ? 2026
              : boat.status() == BoatStatus.SOLD ? 2025 : 2024;
      for (int year = boat.knownFrom().orElseThrow().getYear(); year <= last; year++) {
        season(boat, i, year);
      }
    }
    oddDays();
  }

  /** Coats that were there already when the boat was first met. */
  private void met(Boat boat, int i) {
    LocalDate known = boat.knownFrom().orElseThrow();
    if (i % 10 == 3) {
      Surface deck = surface(boat, SurfaceKind.CABIN_SIDES);
      coat(
          deck,
          "coating-g",
          Optional.of(known.minusMonths(5)),
          Optional.of(known),
          Optional.empty());
    }
    if (i % 20 == 11) {
      Surface deck = surface(boat, SurfaceKind.CABIN_SIDES);
      coat(deck, "sealant-b", Optional.empty(), Optional.of(known), Optional.empty());
    }
  }

  private Surface surface(Boat boat, SurfaceKind kind) {
    return d.surfacesOf(boat).stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
  }

  private void season(Boat boat, int i, int year) {
    LocalDate day = LocalDate.of(year, 4, 1).plusDays(d.between(-8, 44));
    if (year == 2026) {
      LocalDate spring = LocalDate.of(2026, 3, 20).plusDays(d.between(0, 38));
      if (i % 2 == 0) {
        protect(boat, i, spring);
      }
      if (i % 3 == 0) {
        look(boat, i % 2 == 0 ? spring.plusDays(d.between(9, 13)) : spring, VisitWhy.PLAN, year);
      }
      return;
    }
    protect(boat, i, day);
    if (i % 3 == 0 && year >= 2024) {
      look(boat, day.plusDays(d.between(9, 19)), VisitWhy.PLAN, year);
    }
    if ((i % 4 == 1 && year == 2025) || (i % 3 == 0 && year >= 2024)) {
      look(boat, LocalDate.of(year, 8, 1).plusDays(d.between(0, 60)), VisitWhy.PLAN, year);
    }
    if ((i % 4 == 3 || i % 8 == 5) && year == 2025) {
      LocalDate autumn = LocalDate.of(2025, 9, 20).plusDays(d.between(0, 30));
      protect(boat, i, autumn);
      if (i % 3 == 0) {
        look(boat, autumn.plusDays(10), VisitWhy.PLAN, year);
      }
    }
    if (i % 10 == 1 && year == 2025) {
      for (int month = 6; month <= 8; month++) {
        wash(boat, LocalDate.of(year, month, d.between(2, 27)));
      }
    }
  }

  /** The spring visit: wash, decontaminate, polish, protect. */
  private void protect(Boat boat, int i, LocalDate day) {
    List<Surface> work = toProtect(boat, i, day);
    if (work.isEmpty()) {
      return;
    }
    String key =
        String.format(
            "v-%d-%s%s", day.getYear(), boat.key(), day.getMonthValue() < 8 ? "" : "-autumn");
    boolean moved = d.chance(0.12);
    boolean left = d.chance(0.06) && work.size() > 3;
    List<Visit.Part> parts = new ArrayList<>();
    for (int n = 0; n < work.size(); n++) {
      boolean skip = left && n == work.size() - 1;
      LocalDate done = n >= 4 && work.size() > 5 ? day.plusDays(1) : day;
      parts.add(
          skip
              ? new Visit.Part(work.get(n).id(), WorkState.LEFT, Optional.empty(), "rain from noon")
              : new Visit.Part(work.get(n).id(), WorkState.DONE, Optional.of(done), ""));
    }
    Visit visit =
        new Visit(
            d.id(),
            key,
            boat.id(),
            day,
            VisitStatus.DONE,
            d.chance(0.7) ? VisitWhy.DUE : VisitWhy.OTHER,
            Optional.empty(),
            Optional.empty(),
            d.chance(0.5) ? Handover.ON_THE_SPOT : Handover.BY_MESSAGE,
            parts,
            moved
                ? List.of(
                    new Visit.Move(
                        day.minusDays(d.between(2, 9)), day, d.pick(List.of(MoveReason.values()))))
                : List.of(),
            "");
    d.visits.add(visit);
    List<Surface> done = left ? work.subList(0, work.size() - 1) : work;
    findings.before(visit, done, day);
    Function<Surface, SampleSteps.Lay> lays =
        s ->
            new SampleSteps.Lay(
                productFor(s, i, day.getYear()),
                done.indexOf(s) >= 4 && work.size() > 5 ? day.plusDays(1) : day);
    steps.spring(visit, done, day, lays);
    for (Surface s : done) {
      String product = lays.apply(s).product();
      endCoats(s, day);
      LocalDate laid = lays.apply(s).day();
      Coat coat = coat(s, product, Optional.of(laid), Optional.empty(), Optional.of(visit));
      if (product.equals("coating-c")) {
        duties(coat, laid);
        if (i % 2 == 0) {
          topper(coat, s, laid.plusMonths(5));
        }
      }
    }
  }

  private List<Surface> toProtect(Boat boat, int i, LocalDate day) {
    List<Surface> work = new ArrayList<>();
    for (Surface s : d.surfacesOf(boat)) {
      boolean hull = s.kind() == SurfaceKind.TOPSIDES || s.kind() == SurfaceKind.TRANSOM;
      boolean never =
          s.kind() == SurfaceKind.NON_SKID
              || (s.kind() == SurfaceKind.WINDOWS && i % 7 != 2)
              || (s.kind() == SurfaceKind.METALWORK && i != 5);
      boolean spring = day.getMonthValue() < 8;
      boolean all = spring || day.getYear() == 2025;
      if (!never && (hull || all) && !lasting(s, day)) {
        work.add(s);
      }
    }
    return work;
  }

  /** Whether a silica coating on a surface is young enough to be left alone. */
  private boolean lasting(Surface s, LocalDate day) {
    return d.coats.stream()
        .filter(c -> c.surface().equals(s.id()) && c.over().isEmpty())
        .reduce((a, b) -> b)
        .filter(
            c ->
                c.product().equals(d.product("coating-c").id())
                    || c.product().equals(d.product("coating-g").id()))
        .map(c -> c.since().plusMonths(20).isAfter(day))
        .orElse(false);
  }

  private String productFor(Surface s, int i, int year) {
    String byFinish =
        switch (s.finish()) {
          case TEAK -> "teak-sealer";
          case CLEAR_VINYL -> "vinyl-care";
          case CANVAS -> "canvas-proofer";
          case GLASS -> "glass-coat";
          case ACRYLIC, METAL -> "spray-sealant-e";
          case VARNISH -> "carnauba-a";
          default -> "";
        };
    if (!byFinish.isEmpty()) {
      return byFinish;
    }
    boolean hull = s.kind() == SurfaceKind.TOPSIDES || s.kind() == SurfaceKind.TRANSOM;
    if (i % 6 == 0 && hull && year >= 2024) {
      return "coating-c";
    }
    if (i % 6 == 4 && hull && year >= 2023) {
      return "coating-g";
    }
    if (s.finish() == Finish.URETHANE_PAINT) {
      return "silica-spray-d";
    }
    return switch (i) {
      case 2, 27 -> hull ? "sealant-b" : "carnauba-a";
      case 8, 38 -> hull ? "carnauba-a" : "sealant-b";
      case 3 -> hull ? "sealant-b" : "cleaner-wax-f";
      case 14, 39 -> hull ? "sealant-b" : "silica-spray-d";
      default -> "sealant-b";
    };
  }

  private void endCoats(Surface s, LocalDate day) {
    for (int n = 0; n < d.coats.size(); n++) {
      Coat c = d.coats.get(n);
      boolean serving = c.surface().equals(s.id()) && c.ending().isEmpty();
      if (serving && c.over().isPresent()) {
        EndState seen = d.chance(0.3) ? EndState.NOT_LOOKED : state(wear.used(c, s, day));
        d.coats.set(n, ended(c, new Coat.Ending(day, CoatEnd.STRIPPED, seen, "polished off")));
      } else if (serving && d.chance(0.5)) {
        EndState seen =
            c.laidOn().isEmpty() || d.chance(0.3)
                ? EndState.NOT_LOOKED
                : state(wear.used(c, s, day));
        d.coats.set(n, ended(c, new Coat.Ending(day, CoatEnd.RENEWED, seen, "")));
      }
    }
  }

  private static EndState state(double used) {
    return used > 1 ? EndState.FLAT : used > 0.7 ? EndState.SHEETS : EndState.BEADS;
  }

  private Coat ended(Coat c, Coat.Ending ending) {
    return wear.renamed(
        c,
        new Coat(
            c.id(),
            c.key(),
            c.surface(),
            c.product(),
            c.laidOn(),
            c.knownFrom(),
            c.visit(),
            c.bottle(),
            c.batch(),
            c.layers(),
            c.over(),
            Optional.of(ending),
            c.note()));
  }

  private Coat coat(
      Surface s,
      String product,
      Optional<LocalDate> laid,
      Optional<LocalDate> known,
      Optional<Visit> visit) {
    return coat(s, product, laid, known, visit, Optional.empty());
  }

  private Coat coat(
      Surface s,
      String product,
      Optional<LocalDate> laid,
      Optional<LocalDate> known,
      Optional<Visit> visit,
      Optional<Coat> over) {
    Optional<Bottle> bottle =
        laid.map(day -> d.bottles.get(product + "-" + day.getYear()))
            .filter(b -> visit.isPresent());
    Coat coat =
        new Coat(
            d.id(),
            String.format("c-%04d", d.coats.size() + 1),
            s.id(),
            d.product(product).id(),
            laid,
            known,
            visit.map(Visit::id),
            bottle.map(Bottle::id),
            bottle.map(Bottle::batch).orElse(""),
            product.equals("coating-c") ? 2 : 1,
            over.map(Coat::id),
            Optional.empty(),
            "");
    d.coats.add(coat);
    wear.laid(coat, product);
    return coat;
  }

  private void duties(Coat coat, LocalDate laid) {
    LocalDate first = laid.plusYears(1);
    d.duties.add(
        new Duty(
            d.id(),
            "d-" + coat.key() + "-1",
            coat.id(),
            DutyKind.INSPECTION,
            first,
            first.isBefore(LocalDate.of(2026, 3, 1))
                ? Optional.of(first.minusDays(d.between(1, 20)))
                : Optional.empty(),
            "keeps the maker's promise"));
    d.duties.add(
        new Duty(
            d.id(),
            "d-" + coat.key() + "-2",
            coat.id(),
            DutyKind.TOPPER,
            laid.plusMonths(26),
            Optional.empty(),
            ""));
  }

  private void topper(Coat base, Surface s, LocalDate day) {
    if (day.isBefore(Draft.AS_OF)) {
      coat(
          s,
          "silica-spray-d",
          Optional.of(day),
          Optional.empty(),
          Optional.empty(),
          Optional.of(base));
    }
  }

  /** A wash and a look at what is in service. */
  private void look(Boat boat, LocalDate day, VisitWhy why, int year) {
    if (!day.isBefore(Draft.AS_OF)) {
      return;
    }
    Visit visit =
        simple(
            boat,
            String.format("v-%d-%s-look-%d", year, boat.key(), day.getMonthValue()),
            day,
            why);
    List<Surface> all = d.surfacesOf(boat);
    steps.wash(visit, day, all.size() * 9);
    findings.look(visit, all, day);
  }

  private void wash(Boat boat, LocalDate day) {
    Visit visit =
        simple(
            boat,
            String.format("v-%d-%s-wash-%d", day.getYear(), boat.key(), day.getMonthValue()),
            day,
            VisitWhy.PLAN);
    steps.wash(visit, day, 50);
    findings.twoTouch(visit, d.surfacesOf(boat), day);
  }

  private Visit simple(Boat boat, String key, LocalDate day, VisitWhy why) {
    Visit visit =
        new Visit(
            d.id(),
            key,
            boat.id(),
            day,
            VisitStatus.DONE,
            why,
            d.carePlans.stream()
                .filter(p -> p.boat().equals(boat.id()))
                .findFirst()
                .map(p -> p.id()),
            Optional.empty(),
            Handover.BY_MESSAGE,
            List.of(),
            List.of(),
            "");
    d.visits.add(visit);
    return visit;
  }

  /** What happens besides: complaints, planned and cancelled visits, a coat still curing. */
  private void oddDays() {
    for (int i : new int[] {3, 9, 17, 26}) {
      Boat boat = d.boats.get(i);
      LocalDate day = LocalDate.of(2025, 9, 3).plusDays(i);
      Visit visit = simple(boat, "v-2025-" + boat.key() + "-complaint", day, VisitWhy.COMPLAINT);
      findings.complaint(visit, d.surfacesOf(boat), day);
    }
    for (int n = 0; n < 6; n++) {
      Boat boat = d.boats.get(n * 5 + 2);
      LocalDate day = Draft.AS_OF.plusDays(1L + n * 2L);
      List<Visit.Part> parts =
          d.surfacesOf(boat).stream()
              .limit(3)
              .map(s -> new Visit.Part(s.id(), WorkState.PLANNED, Optional.empty(), ""))
              .toList();
      boolean off = n == 5;
      d.visits.add(
          new Visit(
              d.id(),
              "v-2026-" + boat.key() + "-planned",
              boat.id(),
              day,
              off ? VisitStatus.CANCELLED : VisitStatus.PLANNED,
              VisitWhy.DUE,
              Optional.empty(),
              off ? Optional.of(MoveReason.OWNER) : Optional.empty(),
              Handover.NOT_YET,
              parts,
              n == 1
                  ? List.of(new Visit.Move(day.minusDays(4), day, MoveReason.WEATHER))
                  : List.of(),
              ""));
    }
    Boat sandpiper = d.boats.get(31);
    protect(sandpiper, 31, Draft.AS_OF.minusDays(1));
    findings.bare(d.surfacesOf(d.boats.get(33)).get(3), Draft.AS_OF.minusDays(10));
    findings.bare(d.surfacesOf(d.boats.get(1)).get(3), Draft.AS_OF.minusDays(20));
  }
}
