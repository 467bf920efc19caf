package hullalmanac.core.record;

/**
 * What the machine did to us: a record that cannot be read or written. The message is a sentence
 * for people that says what happened, to which record, and what to try.
 */
public final class RecordException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What went wrong. */
  public enum Kind {
    /** Somebody else has it open. */
    LOCKED,
    /** It cannot be written to. */
    READ_ONLY,
    /** It is damaged. */
    CORRUPT,
    /** A newer program made it. */
    NEWER,
    /** It is not a record of this program. */
    NOT_OURS,
    /** The disk is full. */
    FULL,
    /** It is not there. */
    MISSING,
    /** Something is there already. */
    IN_THE_WAY,
    /** Anything else. */
    OTHER
  }

  private final Kind kind;

  public RecordException(Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  public RecordException(Kind kind, String message, Throwable cause) {
    super(message, cause);
    this.kind = kind;
  }

  /** What went wrong. */
  public Kind kind() {
    return kind;
  }
}
