package hullalmanac.core.finish;

import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a plan leaves on a surface, in words for the owner before the work. */
final class StaysBehind {
  private StaysBehind() {}

  static List<String> of(Subject subject, List<Stage> stages, Optional<Stage> paper) {
    List<String> stays = new ArrayList<>();
    for (Defect d : Defect.values()) {
      if (subject.seen().contains(d) && d == Defect.SCRATCHES_FELT && d.reachedBy(stages, paper)) {
        stays.add("Scratches felt by a nail are improved, not gone.");
      } else if (subject.seen().contains(d) && !d.reachedBy(stages, paper)) {
        stays.add(sentence(d));
      }
    }
    boolean compoundLast =
        !stages.isEmpty() && stages.get(stages.size() - 1).compareTo(Stage.ONE_STEP) < 0;
    if (compoundLast) {
      stays.add("Fine marks of the compound stay, to be seen in low sun.");
    }
    boolean light =
        stages.stream().noneMatch(s -> s.compareTo(Stage.MEDIUM) <= 0)
            && subject.film() == Film.GELCOAT;
    if (light && !subject.seen().contains(Defect.CLOUDINESS)) {
      stays.add("Cloudiness from the mould and deeper scuffs stay, where there are any.");
    }
    if (subject.tone() == Tone.DARK && !stages.isEmpty()) {
      stays.add("A dark surface shows more of what is left than a light one.");
    }
    return stays;
  }

  private static String sentence(Defect d) {
    String what = Texts.capital(d.words());
    String verb = d == Defect.CHALKING_TRACE || d.code().startsWith("c") ? " stays" : " stay";
    return d == Defect.SCRATCHES_THROUGH
        ? what + " stay: mending them is for a qualified yard."
        : what + verb + ".";
  }
}
