package hullalmanac.core.finish;

import hullalmanac.core.record.Tone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The planner's rules once more, written apart from it: a plan is a word of at most four letters, a
 * to d for papers from coarse to fine, H, M, O, F for heavy, medium, one-step and finishing; all
 * 4681 words are looked at, rules are patterns, and the best are found by holding each against
 * each.
 */
final class EveryWord {
  private static final String LETTERS = "abcdHMOF";

  private static final List<Stage> STAGES =
      List.of(
          Stage.SAND_P800,
          Stage.SAND_P1000,
          Stage.SAND_P1500,
          Stage.SAND_P2000,
          Stage.HEAVY,
          Stage.MEDIUM,
          Stage.ONE_STEP,
          Stage.FINISHING);

  /** Microns a pass in tenths, by letter. */
  private static final int[] TENTHS = {250, 150, 80, 40, 50, 25, 15, 5};

  private static final Pattern FALLING = Pattern.compile("a*b*c*d*H*M*O*F*");
  private static final Pattern NO_PAPER = Pattern.compile("[HMOF]*");
  private static final Pattern PAPER = Pattern.compile("([abc]H|d[HM])[HMOF]*");
  private static final Pattern UNFINISHED = Pattern.compile(".*[abcdH].*[^F]|[abcdH]");
  private static final Pattern UNFINISHED_DARK = Pattern.compile(".*[abcdHM].*[^F]|[abcdHM]");
  private static final Pattern MACHINE_MARKED = Pattern.compile("|.*[abcdHM]");

  private static final List<String> WORDS = words();
  private static final Map<String, List<String>> LEGAL = new LinkedHashMap<>();

  private final Job job;
  private final Planner planner;

  EveryWord(Job job, Planner planner) {
    this.job = job;
    this.planner = planner;
  }

  private static List<String> words() {
    List<String> all = new ArrayList<>(List.of(""));
    for (int from = 0, length = 1; length <= 4; length++) {
      int until = all.size();
      for (; from < until; from++) {
        for (int i = 0; i < LETTERS.length(); i++) {
          all.add(all.get(from) + LETTERS.charAt(i));
        }
      }
    }
    return all;
  }

  /** A word, and what it is compared by. */
  private record Scored(String word, int minutes, int tenths) {
    boolean beatenBy(Scored o) {
      boolean nowhereWorse =
          o.word.length() <= word.length() && o.minutes <= minutes && o.tenths <= tenths;
      boolean somewhereBetter =
          o.word.length() < word.length() || o.minutes < minutes || o.tenths < tenths;
      return nowhereWorse && somewhereBetter;
    }
  }

  /** The words that reach what was agreed and that none beats. */
  List<String> best() {
    List<Scored> good = new ArrayList<>();
    for (String word : legal()) {
      Scored scored = scored(word);
      if (takesOutAll(word) && spares(scored.tenths) && planner.chance(stages(word)) >= 0.8) {
        good.add(scored);
      }
    }
    return good.stream()
        .filter(s -> good.stream().noneMatch(s::beatenBy))
        .map(Scored::word)
        .sorted()
        .toList();
  }

  private List<String> legal() {
    Film film = job.subject().film();
    boolean papers = job.agreed().paper().isPresent() && film == Film.GELCOAT;
    Tone tone = job.subject().tone();
    return LEGAL.computeIfAbsent(
        film + " " + tone + " " + papers,
        k -> WORDS.stream().filter(w -> legal(w, film, tone, papers)).toList());
  }

  private static boolean legal(String word, Film film, Tone tone, boolean papers) {
    if (film == Film.NO_ABRASIVES) {
      return word.isEmpty();
    }
    Pattern unfinished = tone == Tone.DARK ? UNFINISHED_DARK : UNFINISHED;
    return FALLING.matcher(word).matches()
        && (NO_PAPER.matcher(word).matches() || (papers && PAPER.matcher(word).matches()))
        && !unfinished.matcher(word).matches();
  }

  private Scored scored(String word) {
    boolean thin =
        job.subject().film() == Film.BUFFABLE_URETHANE
            || job.subject().film() == Film.CLEAR_OVER_METALLIC;
    int minutes = 70;
    int tenths = 0;
    for (int i = 0; i < word.length(); i++) {
      int at = LETTERS.indexOf(word.charAt(i));
      minutes += (int) Math.round(job.effort().stages().get(STAGES.get(at)).minutes().middle());
      tenths += word.charAt(i) == 'H' && thin ? 100 : TENTHS[at];
    }
    return new Scored(word, minutes, tenths);
  }

  private boolean spares(int tenths) {
    Budget b = job.subject().budget();
    return tenths <= (job.agreed().edgesTaped() ? b.flats() : Math.min(b.flats(), b.edges()));
  }

  private boolean takesOutAll(String word) {
    return job.agreed().gone().stream().allMatch(d -> takesOut(word, d));
  }

  private boolean takesOut(String word, Defect defect) {
    boolean clean = !MACHINE_MARKED.matcher(word).matches();
    return switch (defect) {
      case BUFFER_TRAILS, LIGHT_SWIRLS -> clean;
      case SWIRLS -> clean && word.matches(".*[abcdHMO].*");
      case CHALKING_TRACE -> !word.isEmpty();
      case LIGHT_SCUFFS, ETCHED_WATER_MARKS -> word.matches(".*[abcdHMO].*");
      case SCUFFS_NOT_FELT, CHALKING_CLEAR -> word.matches(".*[abcdHM].*");
      case SCUFFS_JUST_FELT, CHALKING_HEAVY -> word.matches(".*[abcdH].*");
      case SCRATCHES_FELT ->
          job.agreed().paper().isPresent()
              && word.matches("[a-" + letter(job.agreed().paper().get()) + "].*");
      case SCRATCHES_THROUGH, CLOUDINESS -> false;
    };
  }

  static List<Stage> stages(String word) {
    return word.chars().mapToObj(c -> STAGES.get(LETTERS.indexOf(c))).toList();
  }

  private static char letter(Stage stage) {
    return LETTERS.charAt(STAGES.indexOf(stage));
  }

  static String word(List<Stage> stages) {
    StringBuilder word = new StringBuilder();
    stages.forEach(s -> word.append(letter(s)));
    return word.toString();
  }
}
