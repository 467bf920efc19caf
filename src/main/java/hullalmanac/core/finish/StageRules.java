package hullalmanac.core.finish;

import hullalmanac.core.record.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which stages make a correction, common practice without a source: at most four, in falling order
 * of cut; one paper at most, on gelcoat, by trained hands, and heavy compound right after it, or
 * medium after P2000; a finishing polish last after paper and heavy compound, on dark surfaces also
 * after medium.
 */
final class StageRules {
  /** Most stages of a plan. */
  static final int MOST = 4;

  /** All series of at most four stages in falling order of cut, the empty one too. */
  static final List<List<Stage>> FALLING = falling();

  private StageRules() {}

  private static List<List<Stage>> falling() {
    List<List<Stage>> all = new ArrayList<>();
    extend(List.of(), all);
    return List.copyOf(all);
  }

  private static void extend(List<Stage> stages, List<List<Stage>> all) {
    all.add(stages);
    if (stages.size() == MOST) {
      return;
    }
    for (Stage next : Stage.values()) {
      if (stages.isEmpty() || next.compareTo(stages.get(stages.size() - 1)) >= 0) {
        List<Stage> longer = new ArrayList<>(stages);
        longer.add(next);
        extend(List.copyOf(longer), all);
      }
    }
  }

  /** Whether a compound takes out what a paper leaves. */
  static boolean follows(Stage paper, Stage compound) {
    return compound == Stage.HEAVY || (compound == Stage.MEDIUM && paper == Stage.SAND_P2000);
  }

  /** Why stages make no correction on such a surface, a sentence; nothing when they do. */
  static Optional<String> against(List<Stage> stages, Film film, Tone tone, boolean trained) {
    if (stages.isEmpty()) {
      return Optional.empty();
    }
    if (film == Film.NO_ABRASIVES) {
      return Optional.of("This finish takes no abrasives: it is washed and protected only.");
    }
    if (stages.size() > MOST) {
      return Optional.of("A plan has at most four stages, not " + stages.size() + ".");
    }
    for (int i = 1; i < stages.size(); i++) {
      if (stages.get(i).compareTo(stages.get(i - 1)) < 0) {
        return Optional.of(
            "Cut falls from stage to stage: no "
                + stages.get(i).words()
                + " after "
                + stages.get(i - 1).words()
                + ".");
      }
    }
    return againstPaper(stages, film, trained).or(() -> unfinished(stages, tone));
  }

  private static Optional<String> againstPaper(List<Stage> stages, Film film, boolean trained) {
    long papers = stages.stream().filter(Stage::sands).count();
    if (papers == 0) {
      return Optional.empty();
    }
    if (film != Film.GELCOAT) {
      return Optional.of("Paint and clear are too thin to sand.");
    }
    if (!trained) {
      return Optional.of("Wet sanding is for trained hands only.");
    }
    if (papers > 1) {
      return Optional.of("One paper makes a plan; finer ones after it are the hand’s own choice.");
    }
    boolean compounded = stages.size() > 1 && follows(stages.get(0), stages.get(1));
    return compounded
        ? Optional.empty()
        : Optional.of("Heavy compound follows the paper at once, or medium compound after P2000.");
  }

  private static Optional<String> unfinished(List<Stage> stages, Tone tone) {
    boolean needs =
        stages.stream().anyMatch(s -> s.compareTo(Stage.HEAVY) <= 0)
            || (tone == Tone.DARK && stages.contains(Stage.MEDIUM));
    boolean finished = stages.get(stages.size() - 1) == Stage.FINISHING;
    return needs && !finished
        ? Optional.of(
            "A finishing polish comes last after paper and heavy compound"
                + (tone == Tone.DARK ? ", on dark surfaces also after medium compound." : "."))
        : Optional.empty();
  }
}
