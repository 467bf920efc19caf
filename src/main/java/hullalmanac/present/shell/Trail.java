package hullalmanac.present.shell;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Visit;
import hullalmanac.present.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where one has been, to go back and forward as in a browser. */
final class Trail {
  private final List<Spot> spots = new ArrayList<>();
  private int at;

  /**
   * Where one is.
   *
   * @param boat the boat chosen there
   * @param sheet the sheet open over it
   */
  record Spot(Place place, Optional<Id<Boat>> boat, Optional<Sheet> sheet) {}

  Trail() {
    spots.add(new Spot(Place.AHEAD, Optional.empty(), Optional.empty()));
  }

  Spot now() {
    return spots.get(at);
  }

  /** The visit whose sheet is open. */
  Optional<Id<Visit>> openVisit() {
    return now().sheet().flatMap(Sheet::visit);
  }

  /** Where one is, another boat was chosen: going back leads to her. */
  void choose(Id<Boat> boat) {
    spots.set(at, new Spot(now().place(), Optional.of(boat), now().sheet()));
  }

  /** Goes somewhere new; what lay ahead is forgotten. */
  void visit(Spot spot) {
    if (!now().equals(spot)) {
      spots.subList(at + 1, spots.size()).clear();
      spots.add(spot);
      at++;
    }
  }

  /** Goes back, if there is somewhere. */
  Optional<Spot> back() {
    if (at == 0) {
      return Optional.empty();
    }
    at--;
    return Optional.of(now());
  }

  /** Goes forward, if one went back before. */
  Optional<Spot> forward() {
    if (at + 1 >= spots.size()) {
      return Optional.empty();
    }
    at++;
    return Optional.of(now());
  }

  /**
   * Leaves a sheet for the newest spot before it that has none, which there always is; one that is
   * looked at in passing for what came before it.
   */
  Spot leave() {
    if (at > 0 && now().sheet().filter(Sheet::inPassing).isPresent()) {
      at--;
      return now();
    }
    while (at > 0 && now().sheet().isPresent()) {
      at--;
    }
    return now();
  }
}
