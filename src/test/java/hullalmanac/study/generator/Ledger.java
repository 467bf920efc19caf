package hullalmanac.study.generator;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Entered;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Handover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the business has written down so far. */
final class Ledger {
  private final Counter counter;
  private final List<Harbour> harbours;
  private final List<Product> products = new ArrayList<>();
  private final List<Boat> boats = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();
  private final List<Berth> berths = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Id<Coat>, Coat> coats = new LinkedHashMap<>();

  Ledger(World world) {
    counter = world.counter();
    harbours = world.havens().stream().map(Haven::harbour).toList();
    world.makes().forEach(m -> products.add(m.product()));
    products.add(world.soap());
  }

  void met(Vessel vessel) {
    boats.add(vessel.boat());
    berths.addAll(vessel.berths());
    vessel.skins().forEach(s -> surfaces.add(s.surface()));
  }

  /** A visit that has been done, with work on some surfaces. */
  Sheet visit(Vessel vessel, int day, VisitWhy why, List<Skin> skins) {
    LocalDate date = Span.date(day);
    List<Visit.Part> parts =
        skins.stream()
            .map(s -> new Visit.Part(s.surface().id(), WorkState.DONE, Optional.of(date), ""))
            .toList();
    Visit visit =
        new Visit(
            counter.next(),
            counter.key(),
            vessel.boat().id(),
            date,
            VisitStatus.DONE,
            why,
            Optional.empty(),
            Optional.empty(),
            Handover.NOT_YET,
            parts,
            List.of(),
            "");
    visits.add(visit);
    return new Sheet(visit);
  }

  /** A coat laid in a visit. */
  void laid(TrueCoat coat, Sheet sheet) {
    enter(coat, Optional.empty(), Optional.of(sheet.visit.id()));
  }

  /** A coat met in service. */
  void met(TrueCoat coat, int day) {
    enter(coat, Optional.of(Span.date(day)), Optional.empty());
  }

  private void enter(TrueCoat coat, Optional<LocalDate> knownFrom, Optional<Id<Visit>> visit) {
    counter.next();
    Coat row =
        new Coat(
            coat.id(),
            counter.key(),
            coat.skin().surface().id(),
            coat.skin().make().product().id(),
            Optional.of(Span.date(coat.laid())),
            knownFrom,
            visit,
            Optional.empty(),
            "",
            1,
            Optional.empty(),
            Optional.empty(),
            "");
    coats.put(row.id(), row);
  }

  void ended(TrueCoat coat, Coat.Ending ending) {
    Coat c = coats.get(coat.id());
    Coat ended =
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
            c.note());
    coats.put(c.id(), ended);
  }

  /** The record as it stands. */
  Almanac almanac() {
    return new Almanac(
        Business.unnamed(),
        harbours,
        List.of(),
        boats,
        List.of(),
        surfaces,
        berths,
        List.of(),
        products,
        List.of(),
        visits,
        steps,
        List.copyOf(coats.values()),
        List.of(),
        findings,
        List.of());
  }

  /** A visit in which steps and findings are being written down. */
  final class Sheet {
    private final Visit visit;
    private int written;

    private Sheet(Visit visit) {
      this.visit = visit;
    }

    /** A step; no surfaces means the whole boat. */
    void step(StepKind kind, Optional<Product> product, List<Skin> skins) {
      written++;
      steps.add(
          new Step(
              counter.next(),
              counter.key(),
              visit.id(),
              written,
              kind,
              visit.day(),
              skins.stream().map(s -> s.surface().id()).toList(),
              product.map(Product::id),
              Optional.empty(),
              Optional.empty(),
              "",
              "",
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              ""));
    }

    void found(Skin skin, SurfaceState state, Entered entered, Observation seen) {
      findings.add(
          new Finding(
              counter.next(),
              counter.key(),
              skin.surface().id(),
              Optional.of(visit.id()),
              visit.day(),
              state,
              entered,
              seen,
              ""));
    }
  }
}
