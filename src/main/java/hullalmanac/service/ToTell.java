package hullalmanac.service;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.csv.MergeCsv;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which boats are due to be told on a day.
 *
 * @param boats the soonest first
 */
public record ToTell(Fleet fleet, List<Standing> boats) {
  private static final int MOST_NAMED = 5;

  public ToTell {
    boats = List.copyOf(boats);
  }

  /** What is to be told of a fleet. */
  public static ToTell of(Fleet fleet) {
    return new ToTell(fleet, fleet.reminders().stream().filter(Standing::toTell).toList());
  }

  /** Where it stands with telling of one boat, what is to be told first. */
  public static List<Standing> standings(Fleet fleet, Id<Boat> boat) {
    return fleet.remindersOf(boat).stream()
        .sorted(Comparator.comparing(Standing::state).thenComparing(Standing::by))
        .toList();
  }

  /** The first reminder of a boat of which somebody can be told. */
  public static Optional<Standing> first(Fleet fleet, Id<Boat> boat) {
    return standings(fleet, boat).stream()
        .filter(s -> s.state().after(ReminderEvent.TOLD).isPresent())
        .findFirst();
  }

  /** In one line: {@code 3 boats are due to be told: Siskin, Tern, Wagtail.} */
  public String line() {
    if (boats.isEmpty()) {
      return "No boat is due to be told.";
    }
    List<String> names = boats.stream().map(s -> s.boat().name()).distinct().toList();
    String some = names.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    int more = names.size() - MOST_NAMED;
    return (names.size() == 1 ? "1 boat is" : names.size() + " boats are")
        + " due to be told: "
        + some
        + (more > 0 ? " and " + more + " more." : ".");
  }

  /** A line a boat with whom to write to, as docs/formats/merge.md describes it. */
  public String mailMerge() {
    AboutWords words = new AboutWords(fleet.almanac());
    return MergeCsv.of(boats.stream().map(s -> merged(s, words)).toList());
  }

  /**
   * Writes that list into a file; one that is there is written over.
   *
   * @return how many lines it has, one a boat
   */
  public int write(String file) {
    try {
      WholeFile.write(Path.of(file), mailMerge().getBytes(StandardCharsets.UTF_8));
      return boats.size();
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The list cannot be written to "
              + file
              + ". Close it where it is open, and choose a folder that is there, with room in it.",
          e);
    }
  }

  private MergeCsv.Letter merged(Standing s, AboutWords words) {
    Optional<Party> whom = s.whom();
    return new MergeCsv.Letter(
        whom,
        s.boat().name(),
        harbour(s),
        words.of(s.about()),
        s.by(),
        fleet.almanac().business().name());
  }

  private String harbour(Standing s) {
    List<Berth> berths =
        fleet.almanac().berths().stream().filter(b -> b.boat().equals(s.boat().id())).toList();
    return Berth.home(berths, fleet.asOf())
        .flatMap(
            home ->
                fleet.almanac().harbours().stream()
                    .filter(h -> h.id().equals(home.harbour()))
                    .findFirst())
        .map(Harbour::name)
        .orElse("");
  }
}
