package hullalmanac.core.work;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Party;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Two parties that may be one and the same.
 *
 * @param known of the record
 * @param other of the record as well, or from a card
 * @param signs why they may be the same, at least one
 */
public record Alike(Party known, Party other, Set<Sign> signs) {
  public Alike {
    signs = java.util.Collections.unmodifiableSet(new TreeSet<>(signs));
  }

  /**
   * Whether there is little doubt. Common practice, no source: two things in common, or a card that
   * was written here; one alone can be a shared phone or two people of a name.
   */
  public boolean certain() {
    return signs.contains(Sign.CARD) || signs.size() > 1;
  }

  /** Why they may be the same, in words. */
  public String why() {
    return (certain() ? "Surely" : "Perhaps")
        + " one and the same: "
        + signs.stream().map(Sign::words).collect(Collectors.joining(", "))
        + ".";
  }

  /** What is done with one from a card who may be known. */
  public enum Choice implements Coded {
    ONE("one", "make one of the two"),
    BOTH("both", "keep both"),
    LEAVE_OUT("leave-out", "leave out");

    private final String code;
    private final String words;

    Choice(String code, String words) {
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

  /** What is done unless somebody chooses: where it is doubtful, nothing. */
  public Choice usual() {
    return certain() ? Choice.ONE : Choice.LEAVE_OUT;
  }

  /** What two parties have in common, the surest first. */
  public enum Sign implements Coded {
    CARD("same-card"),
    MAIL("same-mail"),
    PHONE("same-phone"),
    NAME("same-name");

    private final String code;

    Sign(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
