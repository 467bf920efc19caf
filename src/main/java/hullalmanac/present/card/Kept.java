package hullalmanac.present.card;

import hullalmanac.core.card.DwellTimer;
import hullalmanac.core.card.Stop;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Step;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was ticked, read, typed and timed on the card of one visit since the program was opened. */
final class Kept {
  private static final int USUAL_BOTTLE = 1000;
  Optional<Id<Step>> shown = Optional.empty();
  final Set<Id<Step>> done = new HashSet<>();
  final Set<String> ticked = new HashSet<>();
  final Map<Id<Step>, DwellTimer> timers = new LinkedHashMap<>();
  final Map<Id<Step>, DwellTimer.Phase> told = new HashMap<>();
  private final Map<Id<Step>, Map<Stop.Rule, String>> read = new HashMap<>();
  int bottleMl = USUAL_BOTTLE;
  String back = "";

  /** A stop counts as read while it says the same. */
  boolean isRead(Id<Step> step, Stop stop) {
    return stop.sentence().equals(read.getOrDefault(step, Map.of()).get(stop.rule()));
  }

  void read(Id<Step> step, Stop stop) {
    read.computeIfAbsent(step, s -> new EnumMap<>(Stop.Rule.class))
        .put(stop.rule(), stop.sentence());
  }
}
