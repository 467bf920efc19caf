package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Proposes to which visit of a day each photo belongs, and whether it shows before or after.
 *
 * <p>Visits have no clock times, so the pauses between photos speak: with n visits the day is split
 * at its n − 1 longest pauses, and the runs go to the visits in their order. Of a run of {@value
 * #ENOUGH} photos or more those before its longest pause show before, those behind it after (common
 * practice, no source: one takes pictures, works, and takes pictures). Of pauses of one length the
 * earlier counts as longer.
 */
public final class PhotoSorting {
  /** So many photos make a run that can show before and after; common practice, no source. */
  private static final int ENOUGH = 4;

  private PhotoSorting() {}

  /** What is proposed for one photo. */
  public sealed interface Proposal {}

  /** It belongs to a visit. */
  public record Sorted(Id<Visit> visit, Moment moment) implements Proposal {}

  /** Nothing is proposed. */
  public record Unsorted(Reason reason) implements Proposal {}

  /** Why nothing is proposed. */
  public enum Reason implements Coded {
    NO_TIME("no-time", "the photo does not say when it was taken"),
    OTHER_DAY("other-day", "the photo was taken on another day"),
    NO_VISIT("no-visit", "there is no visit on that day"),
    TOO_FEW("too-few", "there are too few pauses between the photos to tell the visits apart");

    private final String code;
    private final String words;

    Reason(String code, String words) {
      this.code = code;
      this.words = words;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public String words() {
      return words;
    }
  }

  /**
   * The visits of a day: begun, or worked on as a surface or a step says, and not cancelled. Those
   * begun earlier come first, then by the person's own ids; who knows the true order gives it to
   * {@link #propose}.
   */
  public static List<Visit> visitsOn(Almanac almanac, LocalDate day) {
    List<Id<Visit>> stepped =
        almanac.steps().stream().filter(s -> s.day().equals(day)).map(Step::visit).toList();
    return almanac.visits().stream()
        .filter(v -> v.status() != VisitStatus.CANCELLED)
        .filter(v -> v.day().equals(day) || doneOn(v, day) || stepped.contains(v.id()))
        .sorted(Comparator.comparing(Visit::day).thenComparing(Visit::key))
        .toList();
  }

  private static boolean doneOn(Visit visit, LocalDate day) {
    return visit.surfaces().stream().anyMatch(p -> p.doneOn().equals(Optional.of(day)));
  }

  /**
   * Proposes a visit for each photo.
   *
   * @param visits those of the day, in the order in which they were done
   * @param taken when each photo was taken, local time, in any order
   * @return what is proposed for each photo, in the order of {@code taken}
   */
  public static List<Proposal> propose(
      LocalDate day, List<Visit> visits, List<Optional<LocalDateTime>> taken) {
    List<Proposal> proposals = new ArrayList<>();
    for (Optional<LocalDateTime> at : taken) {
      proposals.add(new Unsorted(without(day, at)));
    }
    List<Shot> shots =
        IntStream.range(0, taken.size())
            .filter(i -> taken.get(i).filter(t -> t.toLocalDate().equals(day)).isPresent())
            .mapToObj(i -> new Shot(i, taken.get(i).orElseThrow()))
            .sorted(Comparator.comparing(Shot::at))
            .toList();
    if (visits.isEmpty()) {
      return List.copyOf(proposals);
    }
    List<Integer> cuts = longestPauses(shots, visits.size() - 1);
    if (cuts.size() < visits.size() - 1) {
      shots.forEach(s -> proposals.set(s.index(), new Unsorted(Reason.TOO_FEW)));
      return List.copyOf(proposals);
    }
    int from = 0;
    for (int n = 0; n < visits.size(); n++) {
      int to = n < cuts.size() ? cuts.get(n) : shots.size();
      sort(visits.get(n).id(), shots.subList(from, to), proposals);
      from = to;
    }
    return List.copyOf(proposals);
  }

  private record Shot(int index, LocalDateTime at) {}

  private static Reason without(LocalDate day, Optional<LocalDateTime> at) {
    return at.map(t -> t.toLocalDate().equals(day) ? Reason.NO_VISIT : Reason.OTHER_DAY)
        .orElse(Reason.NO_TIME);
  }

  private static void sort(Id<Visit> visit, List<Shot> run, List<Proposal> proposals) {
    List<Integer> middle = run.size() < ENOUGH ? List.of() : longestPauses(run, 1);
    for (int i = 0; i < run.size(); i++) {
      Moment moment =
          middle.isEmpty() ? Moment.OTHER : i < middle.get(0) ? Moment.BEFORE : Moment.AFTER;
      proposals.set(run.get(i).index(), new Sorted(visit, moment));
    }
  }

  /** Where the longest pauses end, in their order in the day; photos of one second have none. */
  private static List<Integer> longestPauses(List<Shot> shots, int most) {
    return IntStream.range(1, shots.size())
        .boxed()
        .filter(i -> pause(shots, i).compareTo(Duration.ZERO) > 0)
        .sorted(Comparator.comparing((Integer i) -> pause(shots, i)).reversed())
        .limit(most)
        .sorted()
        .toList();
  }

  private static Duration pause(List<Shot> shots, int before) {
    return Duration.between(shots.get(before - 1).at(), shots.get(before).at());
  }
}
