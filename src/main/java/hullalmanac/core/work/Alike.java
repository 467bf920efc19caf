package hullalmanac.core.work;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Party;
import java.util.Set;
import java.util.TreeSet;

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
