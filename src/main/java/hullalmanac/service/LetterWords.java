package hullalmanac.service;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.paper.Block;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.paper.ReminderPaper;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Texts;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Reminding;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.ForecastWords;
import hullalmanac.core.report.Letters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a letter or a card about a boat says: the same as the first reminder of her that can be
 * told; where there is none, of the coat that falls due first.
 */
public final class LetterWords {
  private final Fleet fleet;
  private final Boat boat;
  private final Optional<Standing> standing;
  private final AboutWords names;
  private final List<Reminder.About> about;

  private LetterWords(Fleet fleet, Boat boat, Optional<Standing> standing) {
    this.fleet = fleet;
    this.boat = boat;
    this.standing = standing;
    names = new AboutWords(fleet.almanac());
    about =
        standing.map(Standing::about).orElseGet(this::dueFirst).stream()
            .sorted(Comparator.comparing(Reminder.About::by))
            .toList();
  }

  /** Reads what there is to say of a boat of the record. */
  public static LetterWords of(Fleet fleet, Boat boat) {
    return new LetterWords(fleet, boat, ToTell.first(fleet, boat.id()));
  }

  private List<Reminder.About> dueFirst() {
    return fleet.due().stream()
        .filter(d -> d.boat().id().equals(boat.id()))
        .findFirst()
        .map(BoatDue::coats)
        .orElse(List.of())
        .stream()
        .flatMap(f -> f.bestBy().map(by -> Reminder.About.coat(f.coat().id(), by)).stream())
        .toList();
  }

  /** Whether anything falls due of her. */
  public boolean anything() {
    return !about.isEmpty();
  }

  /** Who is told of her. */
  public Optional<Party> whom() {
    return standing
        .flatMap(Standing::whom)
        .or(() -> Reminding.whom(fleet.almanac(), boat.id(), fleet.asOf()));
  }

  /**
   * The fields.
   *
   * @param name of the person written to; empty where nobody is known
   * @return by the names of {@link Letters#FIELDS}
   */
  public Map<String, String> fields(String name) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name.isBlank() ? "owner of " + boat.name() : name);
    fields.put("boat", boat.name());
    fields.put("harbour", new Lookups(fleet.almanac(), fleet.asOf()).harbour(boat.id()));
    fields.put("surfaces", about.isEmpty() ? "" : Texts.capital(names.few(about)));
    fields.put("when", about.isEmpty() ? "" : whenFirst());
    fields.put("business", fleet.almanac().business().name());
    return fields;
  }

  /** The time of what comes first, which is not that of what comes after. */
  private String whenFirst() {
    return (lines().size() > 1 ? "the first " : "") + when(about.get(0));
  }

  /** What is due, all of it, with what each says of its time; what says the same is one line. */
  private List<Block.Fact> lines() {
    Map<String, Set<String>> byTime = new LinkedHashMap<>();
    for (Reminder.About one : about) {
      byTime.computeIfAbsent(when(one), w -> new LinkedHashSet<>()).add(names.one(one));
    }
    List<Block.Fact> lines = new ArrayList<>();
    byTime.forEach(
        (when, what) -> lines.add(new Block.Fact(Texts.capital(String.join(", ", what)), when)));
    return lines;
  }

  private String when(Reminder.About one) {
    DateWords days = new DateWords(fleet.asOf());
    if (one.plan().isPresent()) {
      return "from " + days.exact(one.by());
    }
    if (one.duty().isPresent()) {
      return (one.by().isBefore(fleet.asOf()) ? "due since " : "by ") + days.exact(one.by());
    }
    return fleet.coats().stream()
        .filter(f -> one.coat().equals(Optional.of(f.coat().id())))
        .findFirst()
        .map(f -> new ForecastWords(fleet.asOf()).due(f))
        .orElseGet(() -> days.bestWhen(one.by()));
  }

  /**
   * A card to her owner.
   *
   * @param to to whom it goes, where somebody is known
   * @param text the letter, filled in
   */
  public Paper card(Optional<Party> to, String text) {
    boolean forecast = about.stream().anyMatch(a -> a.coat().isPresent());
    return ReminderPaper.of(
        fleet.almanac().business(), boat, to, new ReminderPaper.Due(lines(), forecast), text);
  }
}
