package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.WorkState;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a visit left on the coats of its boat: those it laid, those it ended, and how the coats
 * would stand without it.
 *
 * <p>An ending does not name the visit that brought it about. It is taken to be this visit's when
 * it is on one of the visit's days, on a surface where the visit laid a coat or took one off, and
 * no other work of that day explains it. Where the visit no longer says that it did either, an
 * ending for which somebody wrote down a reason is left alone.
 */
final class Traces {
  private final Almanac almanac;
  private final VisitWork work;
  private final List<VisitWork> works;
  private final List<Coat> ofBoat;
  private final Set<LocalDate> days = new HashSet<>();

  Traces(Almanac almanac, Visit visit) {
    this(almanac, visit, Optional.empty());
  }

  /**
   * @param before the work as it was written down when the coats were reckoned, where it has been
   *     changed since
   */
  Traces(Almanac almanac, Visit visit, Optional<VisitWork> before) {
    this.almanac = almanac;
    work = VisitWork.of(almanac, visit);
    works = Stream.concat(Stream.of(work), before.stream()).toList();
    Set<Id<Surface>> surfaces = Set.copyOf(work.boat());
    ofBoat = almanac.coats().stream().filter(c -> surfaces.contains(c.surface())).toList();
    works.forEach(w -> days.addAll(w.days()));
    laid().forEach(c -> c.laidOn().ifPresent(days::add));
  }

  /** Coats laid in the visit; those it only met are not. */
  List<Coat> laid() {
    return ofBoat.stream().filter(this::laid).toList();
  }

  boolean laid(Coat coat) {
    return coat.visit().equals(Optional.of(work.visit().id())) && coat.knownFrom().isEmpty();
  }

  /** Whether a coat's ending is this visit's doing. */
  boolean ended(Coat coat) {
    if (work.visit().status() != VisitStatus.DONE || laid(coat) || coat.ending().isEmpty()) {
      return false;
    }
    Coat.Ending ending = coat.ending().get();
    if (!days.contains(ending.on()) || otherWork(coat, ending.on())) {
      return false;
    }
    Id<Surface> surface = coat.surface();
    return laidOn(surface).findAny().isPresent()
        || works.stream().flatMap(w -> strips(w, surface)).findAny().isPresent()
        || (ending.reason().isBlank() && works.stream().anyMatch(w -> done(w.visit(), surface)));
  }

  /** Whether the visit cut or polished a surface, as it stood when the coats were reckoned. */
  boolean stripped(Id<Surface> surface) {
    return strips(works.get(works.size() - 1), surface).findAny().isPresent();
  }

  /** The coats of the boat as they would be without the visit. */
  List<Coat> without() {
    return ofBoat.stream()
        .filter(c -> !laid(c))
        .map(c -> ended(c) ? Altered.ending(c, endingWithout(c)) : c)
        .toList();
  }

  /** Without the visit, a base coat would have gone on until what it was renewed with ended. */
  private Optional<Coat.Ending> endingWithout(Coat coat) {
    return coat.over().isPresent()
        ? Optional.empty()
        : laidOn(coat.surface())
            .filter(c -> c.over().isEmpty())
            .flatMap(c -> c.ending().stream())
            .max(Comparator.comparing(Coat.Ending::on));
  }

  private Stream<Coat> laidOn(Id<Surface> surface) {
    return ofBoat.stream().filter(c -> laid(c) && c.surface().equals(surface));
  }

  /** What lies under a topper did not end it, and no visit polishes off what it laid itself. */
  private boolean otherWork(Coat ended, LocalDate day) {
    boolean renewed =
        ofBoat.stream()
            .filter(c -> !laid(c) && !c.id().equals(ended.id()))
            .filter(c -> !ended.over().equals(Optional.of(c.id())))
            .filter(c -> c.surface().equals(ended.surface()) && c.since().equals(day))
            .anyMatch(c -> c.over().isEmpty() || c.over().equals(ended.over()));
    return renewed
        || InRecord.visits(almanac, work.visit().boat()).stream()
            .filter(v -> v.status() == VisitStatus.DONE && !v.id().equals(work.visit().id()))
            .filter(v -> !ended.visit().equals(Optional.of(v.id())))
            .flatMap(v -> strips(VisitWork.of(almanac, v), ended.surface()))
            .anyMatch(s -> s.day().equals(day));
  }

  private static Stream<Step> strips(VisitWork work, Id<Surface> surface) {
    Optional<WorkState> state =
        work.visit().surfaces().stream()
            .filter(p -> p.surface().equals(surface))
            .findFirst()
            .map(Visit.Part::state);
    return state.orElse(WorkState.DONE) == WorkState.DONE
        ? work.on(surface).stream().filter(VisitWork::strips)
        : Stream.empty();
  }

  private static boolean done(Visit visit, Id<Surface> surface) {
    return visit.surfaces().stream()
        .anyMatch(p -> p.surface().equals(surface) && p.state() == WorkState.DONE);
  }
}
