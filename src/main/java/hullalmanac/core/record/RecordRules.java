package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Rules that hold between the rows of a record. What a single row must keep to, the row itself
 * refuses to break.
 */
public final class RecordRules {
  private final Map<Id<Boat>, Boat> boats = new HashMap<>();
  private final Map<Id<Surface>, Surface> surfaces = new HashMap<>();
  private final Map<Id<Visit>, Visit> visits = new HashMap<>();
  private final Map<Id<Coat>, Coat> coats = new HashMap<>();
  private final Map<Id<Product>, Product> products = new HashMap<>();
  private final Map<Id<Bottle>, Bottle> bottles = new HashMap<>();
  private final Set<Id<Step>> timedBefore = new HashSet<>();
  private final Set<Id<Step>> timed = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  private RecordRules(Almanac existing, Almanac additions) {
    Stream.of(existing, additions)
        .forEach(
            a -> {
              a.boats().forEach(b -> boats.put(b.id(), b));
              a.surfaces().forEach(s -> surfaces.put(s.id(), s));
              a.visits().forEach(v -> visits.put(v.id(), v));
              a.coats().forEach(c -> coats.put(c.id(), c));
              a.products().forEach(p -> products.put(p.id(), p));
              a.bottles().forEach(b -> bottles.put(b.id(), b));
            });
    existing.steps().stream()
        .filter(s -> s.timedSince().isPresent())
        .forEach(s -> timedBefore.add(s.id()));
    timed.addAll(timedBefore);
    for (Step step : additions.steps()) {
      if (step.timedSince().isPresent()) {
        timed.add(step.id());
      } else {
        timed.remove(step.id());
      }
    }
  }

  /**
   * What is wrong with additions to a record. References resolve in one of the two.
   *
   * @return in the order of the rows; empty when all is well
   */
  public static List<Problem> problems(Almanac existing, Almanac additions) {
    RecordRules rules = new RecordRules(existing, additions);
    additions.visits().forEach(rules::visit);
    additions.steps().forEach(rules::step);
    additions.coats().forEach(rules::coat);
    additions.findings().forEach(rules::finding);
    additions.photos().forEach(rules::photo);
    additions.wordings().forEach(w -> rules.wording(existing, additions, w));
    rules.problems.addAll(BooksRules.problems(existing, additions));
    return List.copyOf(rules.problems);
  }

  /** What is wrong with taking rows out of a record: what was issued stays. */
  public static List<Problem> gone(Almanac existing, List<Row> gone) {
    return BooksRules.gone(existing, gone);
  }

  private void problem(Kind kind, String key, String field, String message, String advice) {
    problems.add(new Problem(kind, key, field, message, advice));
  }

  private void wording(Almanac existing, Almanac additions, Wording wording) {
    boolean twice =
        Stream.concat(existing.wordings().stream(), additions.wordings().stream())
            .filter(w -> !w.id().equals(wording.id()))
            .anyMatch(w -> w.kind() == wording.kind() && w.language().equals(wording.language()));
    if (twice) {
      problem(
          Kind.WORDING,
          wording.key(),
          "language",
          "a letter of this kind is worded already in that language",
          "Correct the one that is there");
    }
  }

  private void visit(Visit visit) {
    for (Visit.Part part : visit.surfaces()) {
      Surface surface = surfaces.get(part.surface());
      if (!surface.boat().equals(visit.boat())) {
        problem(
            Kind.VISIT,
            visit.key(),
            "surface",
            "the surface " + surface.key() + " belongs to another boat than the visit",
            "Correct the boat of the visit or the surface");
      }
    }
  }

  private void step(Step step) {
    timedAlone(step);
    Visit visit = visits.get(step.visit());
    for (Id<Surface> id : step.surfaces()) {
      Surface surface = surfaces.get(id);
      if (!surface.boat().equals(visit.boat())) {
        problem(
            Kind.STEP,
            step.key(),
            "surfaces",
            "the surface "
                + surface.key()
                + " belongs to another boat than the visit "
                + visit.key(),
            "Correct the surface or the visit");
      }
    }
    step.bottle()
        .map(bottles::get)
        .filter(b -> step.product().isPresent() && !b.product().equals(step.product().get()))
        .ifPresent(
            b ->
                problem(
                    Kind.STEP,
                    step.key(),
                    "bottle",
                    "the bottle " + b.key() + " holds another product than the step names",
                    "Correct the bottle or the product"));
  }

  /** A step that is newly timed while another is. */
  private void timedAlone(Step step) {
    if (step.timedSince().isPresent() && !timedBefore.contains(step.id()) && timed.size() > 1) {
      problem(
          Kind.STEP,
          step.key(),
          "timed_since",
          "another step is being timed, and only one is at a time",
          "Stop the other first, or write the minutes of this one");
    }
  }

  private void coat(Coat coat) {
    Boat boat = boats.get(surfaces.get(coat.surface()).boat());
    coat.laidOn().ifPresent(day -> coatDay(coat, boat, day));
    coat.visit()
        .map(visits::get)
        .filter(v -> !v.boat().equals(boat.id()))
        .ifPresent(
            v ->
                problem(
                    Kind.COAT,
                    coat.key(),
                    "visit",
                    "the visit " + v.key() + " was on another boat",
                    "Correct the visit or the surface"));
    if (!products.get(coat.product()).kind().protects()) {
      problem(
          Kind.COAT,
          coat.key(),
          "product",
          "the product " + products.get(coat.product()).key() + " is not one that protects",
          "Name what was laid on the surface, or correct the kind of the product");
    }
    coat.over().map(coats::get).ifPresent(base -> topper(coat, base));
  }

  private void coatDay(Coat coat, Boat boat, LocalDate day) {
    if (boat.built().isPresent() && day.getYear() < boat.built().get()) {
      problem(
          Kind.COAT,
          coat.key(),
          "coated_on",
          "the coat was laid on "
              + day
              + ", before the boat "
              + boat.key()
              + " was built in "
              + boat.built().get(),
          "Correct the day or the year");
    }
    Optional<LocalDate> known = boat.knownFrom();
    if (known.isPresent() && day.isBefore(known.get()) && coat.knownFrom().isEmpty()) {
      problem(
          Kind.COAT,
          coat.key(),
          "coated_on",
          "the coat was laid on "
              + day
              + ", before the boat "
              + boat.key()
              + " was known, "
              + known.get(),
          "Write in known_from on which day you met the coat, or correct the day");
    }
  }

  private void topper(Coat coat, Coat base) {
    String wrong = null;
    if (base.id().equals(coat.id())) {
      wrong = "the coat lies over itself";
    } else if (!base.surface().equals(coat.surface())) {
      wrong = "the coat " + base.key() + " lies on another surface";
    } else if (base.over().isPresent()) {
      wrong = "the coat " + base.key() + " is a topper itself";
    } else if (coat.since().isBefore(base.since())) {
      wrong = "the coat " + base.key() + " was laid later";
    }
    if (wrong != null) {
      problem(Kind.COAT, coat.key(), "over", wrong, "Name the coat that this one was laid over");
    }
  }

  private void finding(Finding finding) {
    Surface surface = surfaces.get(finding.surface());
    finding
        .visit()
        .map(visits::get)
        .filter(v -> !v.boat().equals(surface.boat()))
        .ifPresent(
            v ->
                problem(
                    Kind.FINDING,
                    finding.key(),
                    "visit",
                    "the visit " + v.key() + " was on another boat",
                    "Correct the visit or the surface"));
    boolean mirror = surface.finish() == Finish.METAL || surface.finish() == Finish.BARE_ALUMINIUM;
    if (!mirror && finding.seen() instanceof Observation.GlossRead gloss) {
      gloss.readings().stream()
          .filter(g -> g > Observation.GlossRead.HIGHEST_NON_METAL)
          .findFirst()
          .ifPresent(
              g ->
                  problem(
                      Kind.FINDING,
                      finding.key(),
                      "value",
                      "gloss " + Numbers.plain(g) + " is more than any surface but metal can have",
                      "Read it off the meter again"));
    }
  }

  private void photo(Photo photo) {
    photo
        .surface()
        .map(surfaces::get)
        .filter(s -> !s.boat().equals(photo.boat()))
        .ifPresent(
            s ->
                problem(
                    Kind.PHOTO,
                    photo.key(),
                    "surface",
                    "the surface " + s.key() + " belongs to another boat",
                    "Correct the boat or the surface"));
  }
}
