package hullalmanac.core.remind;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Duty;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Surface;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a reminder is about, in words. */
public final class AboutWords {
  private final Map<Id<Coat>, Coat> coats;
  private final Map<Id<Surface>, Surface> surfaces;
  private final Map<Id<Duty>, Duty> duties;
  private final Map<Id<CarePlan>, CarePlan> plans;

  public AboutWords(Almanac almanac) {
    coats = almanac.coats().stream().collect(Collectors.toMap(Coat::id, Function.identity()));
    surfaces =
        almanac.surfaces().stream().collect(Collectors.toMap(Surface::id, Function.identity()));
    duties = almanac.duties().stream().collect(Collectors.toMap(Duty::id, Function.identity()));
    plans =
        almanac.carePlans().stream().collect(Collectors.toMap(CarePlan::id, Function.identity()));
  }

  /** All of it, each once: {@code topsides, transom, maker's inspection, wash down}. */
  public String of(List<Reminder.About> about) {
    Set<String> names = new LinkedHashSet<>();
    about.forEach(a -> names.add(one(a)));
    return String.join(", ", names);
  }

  /** The first few of it: {@code topsides and transom}, {@code topsides, transom and 3 more}. */
  public String few(List<Reminder.About> about) {
    Set<String> names = new LinkedHashSet<>();
    about.forEach(a -> names.add(one(a)));
    List<String> all = List.copyOf(names);
    if (all.size() < 2) {
      return String.join("", all);
    }
    String last = all.size() <= 3 ? all.get(all.size() - 1) : (all.size() - 2) + " more";
    return String.join(", ", all.subList(0, Math.min(2, all.size() - 1))) + " and " + last;
  }

  /** One thing. */
  public String one(Reminder.About about) {
    if (about.coat().isPresent()) {
      Surface s = surfaces.get(coats.get(about.coat().get()).surface());
      return s.name().isBlank() ? s.kind().words() : s.name();
    }
    return about
        .duty()
        .map(d -> "maker’s " + duties.get(d).kind().words())
        .orElseGet(() -> plans.get(about.plan().orElseThrow()).work());
  }
}
