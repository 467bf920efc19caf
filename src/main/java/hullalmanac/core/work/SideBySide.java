package hullalmanac.core.work;

import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Party;
import java.util.List;
import java.util.stream.Stream;

/**
 * One thing known of two parties that may be the same.
 *
 * @param known as the record has it; empty when it does not say
 * @param other as the other has it; empty when it does not say
 */
public record SideBySide(Field field, String known, String other) {

  /** What is laid side by side. */
  public enum Field {
    KIND("kind", false),
    NAME("name", true),
    PHONE("phone", true),
    EMAIL("email", true),
    ADDRESS("address", true),
    LANGUAGE("language", false),
    RISK("risk", false),
    NOTE("note", true);

    private final String words;
    private final boolean both;

    Field(String words, boolean both) {
      this.words = words;
      this.both = both;
    }

    /** What people call it. */
    public String words() {
      return words;
    }

    /** Whether both can be kept: the other's then stands in the note. */
    public boolean both() {
      return both;
    }
  }

  /** Which of the two is kept. */
  public enum Take {
    KNOWN,
    OTHER,
    BOTH
  }

  /** All that is known of two parties. */
  public static List<SideBySide> of(Party known, Party other) {
    return Stream.of(Field.values())
        .map(f -> new SideBySide(f, text(f, known), text(f, other)))
        .toList();
  }

  private static String text(Field field, Party p) {
    return switch (field) {
      case KIND -> p.kind().words();
      case NAME -> p.name();
      case PHONE -> p.phone();
      case EMAIL -> p.email();
      case ADDRESS -> p.address();
      case LANGUAGE -> p.language();
      case RISK -> p.risk().map(Numbers::plain).orElse("");
      case NOTE -> p.note();
    };
  }

  /**
   * Whether the two say different things, not only one of them something; a number or name that is
   * written otherwise is the same.
   */
  public boolean differ() {
    return !known.isBlank() && !other.isBlank() && !same();
  }

  private boolean same() {
    boolean alike =
        switch (field) {
          case NAME -> LikeParties.sameName(known, other);
          case PHONE -> LikeParties.samePhone(known, other);
          case EMAIL -> LikeParties.sameMail(known, other);
          default -> false;
        };
    return alike || known.strip().equals(other.strip());
  }

  /** What to keep unless somebody chooses: nothing is lost, and what the record says goes first. */
  public Take usual() {
    if (known.isBlank() && !other.isBlank()) {
      return Take.OTHER;
    }
    return differ() && field.both() ? Take.BOTH : Take.KNOWN;
  }
}
