package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.PhotoSorting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The visits of a day in the order in which they were made.
 *
 * @param labels a name for each visit, none twice
 */
record Round(LocalDate day, List<Visit> visits, List<String> labels) {
  Round {
    visits = List.copyOf(visits);
    labels = List.copyOf(labels);
  }

  /**
   * The visits of a day.
   *
   * @param order those of which it is known, first to last
   */
  static Round of(Almanac almanac, LocalDate day, List<Id<Visit>> order) {
    List<Visit> visits = new ArrayList<>(PhotoSorting.visitsOn(almanac, day));
    visits.sort(
        Comparator.comparingInt(
            v -> order.contains(v.id()) ? order.indexOf(v.id()) : order.size()));
    Lookups lookups = new Lookups(almanac, day);
    List<String> labels = new ArrayList<>();
    for (Visit visit : visits) {
      String name = lookups.boat(visit.boat()).name();
      String label = name;
      for (int n = 2; labels.contains(label); n++) {
        label = name + ", visit " + n;
      }
      labels.add(label);
    }
    return new Round(day, visits, labels);
  }

  List<Id<Visit>> ids() {
    return visits.stream().map(Visit::id).toList();
  }

  String label(Id<Visit> visit) {
    int at = ids().indexOf(visit);
    return at < 0 ? "" : labels.get(at);
  }

  Optional<Visit> visit(Id<Visit> id) {
    return visits.stream().filter(v -> v.id().equals(id)).findFirst();
  }

  /** The order with a visit in another place, and the one that was there in its place. */
  List<Id<Visit>> swapped(int place, String label) {
    List<Id<Visit>> order = new ArrayList<>(ids());
    java.util.Collections.swap(order, place, labels.indexOf(label));
    return order;
  }
}
