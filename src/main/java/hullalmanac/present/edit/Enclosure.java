package hullalmanac.present.edit;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.report.DateWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A paper that can go with a letter.
 *
 * @param words what it is called
 */
record Enclosure(String words, Papers.Asked asked) {
  /** What her history is called, which every boat has. */
  static final String HISTORY = "history";

  private static final int MOST_INVOICES = 12;

  /**
   * Papers there are of a boat. Estimates and invoices that were written for somebody go to nobody
   * else.
   *
   * @param to who the letter is to
   */
  static List<Enclosure> of(Fleet fleet, Boat boat, Optional<Party> to) {
    List<Enclosure> all = new ArrayList<>();
    all.add(new Enclosure(HISTORY, asked(Papers.Sort.HISTORY, boat, Optional.empty())));
    newest(fleet, boat, v -> true)
        .ifPresent(day -> all.add(of(fleet, "condition report", Papers.Sort.CONDITION, boat, day)));
    Set<Id<Visit>> laying =
        fleet.almanac().coats().stream()
            .map(Coat::visit)
            .flatMap(Optional::stream)
            .collect(Collectors.toSet());
    newest(fleet, boat, v -> laying.contains(v.id()))
        .ifPresent(day -> all.add(of(fleet, "care card", Papers.Sort.CARE, boat, day)));
    estimate(fleet, boat, to).ifPresent(all::add);
    to.ifPresent(p -> all.addAll(invoices(fleet, boat, p)));
    return all;
  }

  private static Optional<LocalDate> newest(Fleet fleet, Boat boat, Predicate<Visit> fit) {
    return fleet.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.DONE)
        .filter(fit)
        .map(Visit::day)
        .max(Comparator.naturalOrder());
  }

  private static Enclosure of(
      Fleet fleet, String what, Papers.Sort sort, Boat boat, LocalDate day) {
    return new Enclosure(
        what + " of " + new DateWords(fleet.asOf()).exact(day),
        asked(sort, boat, Optional.of(day)));
  }

  private static Papers.Asked asked(Papers.Sort sort, Boat boat, Optional<LocalDate> visit) {
    return new Papers.Asked(
        sort, Optional.of(boat.key()), visit, Optional.empty(), Optional.empty());
  }

  /** The newest of the boat, unless it was written for somebody else. */
  private static Optional<Enclosure> estimate(Fleet fleet, Boat boat, Optional<Party> to) {
    return fleet.almanac().books().estimates().stream()
        .filter(e -> e.boat().equals(boat.id()))
        .max(Comparator.comparing(Estimate::day).thenComparing(Estimate::key))
        .filter(e -> e.party().isEmpty() || e.party().equals(to.map(Party::id)))
        .map(
            e ->
                new Enclosure(
                    (e.state() == Estimate.State.DRAFT ? "draft of the estimate" : "estimate")
                        + " of "
                        + new DateWords(fleet.asOf()).exact(e.day()),
                    asked(Papers.Sort.ESTIMATE, boat, Optional.empty())));
  }

  /** Those that were issued to somebody for this boat, or for none; the newest first. */
  private static List<Enclosure> invoices(Fleet fleet, Boat boat, Party to) {
    return fleet.almanac().books().invoices().stream()
        .filter(i -> i.issued() && i.party().equals(to.id()))
        .filter(i -> i.boat().filter(b -> !b.equals(boat.id())).isEmpty())
        .sorted(
            Comparator.comparing((Invoice i) -> i.issue().orElseThrow().day())
                .thenComparing(i -> i.issue().orElseThrow().number())
                .reversed())
        .limit(MOST_INVOICES)
        .map(
            i ->
                new Enclosure(
                    i.words(),
                    new Papers.Asked(
                        Papers.Sort.INVOICE,
                        Optional.empty(),
                        Optional.empty(),
                        i.issue().map(Invoice.Issue::number),
                        Optional.empty())))
        .toList();
  }
}
