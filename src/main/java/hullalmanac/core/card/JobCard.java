package hullalmanac.core.card;

import hullalmanac.core.exposure.Stay;
import hullalmanac.core.exposure.Stays;
import hullalmanac.core.reckon.Dilution;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.report.Caution;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that stands on the card of a visit.
 *
 * @param place harbour and berth; empty where the record does not say
 * @param runoff where it is caught, as far as the berth says
 * @param steps in their order
 * @param checks what to see to, in the order in which it comes up; common practice, no source
 * @param tools what to bring
 */
public record JobCard(
    Visit visit,
    Boat boat,
    String place,
    Optional<String> runoff,
    List<CardStep> steps,
    List<String> checks,
    List<String> tools) {
  public JobCard {
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    tools = List.copyOf(tools);
  }

  /**
   * A step.
   *
   * @param where names of its surfaces; empty for the whole boat
   * @param bottle that was chosen for it
   * @param stops what does not go on before somebody has read it
   * @param cautions of its product
   */
  public record CardStep(
      Step step,
      List<String> where,
      Optional<Product> product,
      Optional<Bottle> bottle,
      Optional<Dilution> dilution,
      Optional<Dwell> dwell,
      List<Stop> stops,
      List<Caution> cautions) {
    public CardStep {
      where = List.copyOf(where);
      stops = List.copyOf(stops);
      cautions = List.copyOf(cautions);
    }
  }

  /** The card of a visit; absent when it is not in the record. */
  public static Optional<JobCard> of(Almanac almanac, Id<Visit> id) {
    return almanac.visits().stream()
        .filter(v -> v.id().equals(id))
        .findFirst()
        .map(v -> of(almanac, v));
  }

  private static JobCard of(Almanac almanac, Visit visit) {
    Boat boat =
        almanac.boats().stream().filter(b -> b.id().equals(visit.boat())).findFirst().orElseThrow();
    List<Surface> surfaces =
        almanac.surfaces().stream().filter(s -> s.boat().equals(boat.id())).toList();
    List<Step> steps =
        almanac.steps().stream()
            .filter(s -> s.visit().equals(visit.id()))
            .sorted(Comparator.comparing(Step::day).thenComparing(Step::order))
            .toList();
    Optional<Berth> berth = lies(almanac, boat, visit.day());
    Optional<String> runoff = berth.map(b -> b.access().runoff()).filter(text -> !text.isBlank());
    Stops stops = new Stops(almanac, visit, surfaces, steps, runoff);
    List<CardStep> all = steps.stream().map(s -> step(almanac, s, surfaces, stops)).toList();
    return new JobCard(
        visit,
        boat,
        berth.map(b -> place(almanac, b)).orElse(""),
        runoff,
        all,
        CardPractice.checks(all, berth),
        CardPractice.tools(all));
  }

  /** Where she lies that day. */
  private static Optional<Berth> lies(Almanac almanac, Boat boat, LocalDate day) {
    List<Berth> hers = almanac.berths().stream().filter(b -> b.boat().equals(boat.id())).toList();
    return Stays.of(hers, day, day.plusDays(1)).stream().findFirst().map(Stay::berth);
  }

  private static String place(Almanac almanac, Berth berth) {
    String harbour =
        almanac.harbours().stream()
            .filter(h -> h.id().equals(berth.harbour()))
            .findFirst()
            .map(Harbour::name)
            .orElse("");
    return (harbour + " " + berth.access().place()).strip();
  }

  private static CardStep step(Almanac almanac, Step step, List<Surface> surfaces, Stops stops) {
    Optional<Product> product =
        step.product()
            .flatMap(id -> almanac.products().stream().filter(p -> p.id().equals(id)).findFirst());
    Optional<Bottle> bottle =
        step.bottle()
            .flatMap(id -> almanac.bottles().stream().filter(b -> b.id().equals(id)).findFirst());
    Optional<Integer> water =
        step.partsWater().or(() -> product.flatMap(p -> p.handling().partsWater()));
    return new CardStep(
        step,
        surfaces.stream()
            .filter(s -> step.surfaces().contains(s.id()))
            .map(Surface::words)
            .toList(),
        product,
        bottle,
        water.map(Dilution::new),
        Dwell.of(step, product),
        stops.of(step),
        product.map(Caution::of).orElse(List.of()));
  }

  /** The visit whose card is looked for on a boat's page: the next that is planned. */
  public static Optional<Visit> next(Almanac almanac, Id<Boat> boat, LocalDate today) {
    Stream<Visit> planned =
        almanac.visits().stream()
            .filter(v -> v.boat().equals(boat) && v.status() == VisitStatus.PLANNED);
    return planned.min(
        Comparator.comparing((Visit v) -> v.day().isBefore(today))
            .thenComparing(Visit::day)
            .thenComparing(Visit::id));
  }
}
