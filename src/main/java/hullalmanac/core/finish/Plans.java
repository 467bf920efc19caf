package hullalmanac.core.finish;

import java.util.List;
import java.util.Optional;

/** What came of asking for plans. */
public sealed interface Plans {
  /**
   * Plans that reach what was agreed and that no other beats on passes, minutes and microns
   * together, fewest passes first.
   *
   * @param remarks what the reader should know of all of them, a sentence each
   */
  record Found(List<Plan> plans, List<String> remarks) implements Plans {
    public Found {
      plans = List.copyOf(plans);
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * No plan reaches it.
   *
   * @param sentence why
   * @param could what would help, a sentence each
   * @param gloss the highest whole gloss that could be agreed with all else as it is
   * @param nearest the plan that reaches that gloss
   */
  record NoneReaches(
      String sentence, List<String> could, Optional<Integer> gloss, Optional<Plan> nearest)
      implements Plans {
    public NoneReaches {
      could = List.copyOf(could);
    }
  }

  /** Not reckoned, for what was asked cannot be; a sentence. */
  record Refused(String sentence) implements Plans {}
}
