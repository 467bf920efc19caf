package hullalmanac.core.record;

import java.util.UUID;

/**
 * Names of what the record tells to other programs, the same for ever and unlike any other in the
 * world: an id of the record in the form of a UUID, which says nothing to who does not have the
 * record.
 *
 * <p>Reference: RFC 9562, section 5.8 (version 8, own form).
 */
public final class Uid {
  /** "Hull" in ASCII. */
  private static final long HULL = 0x48756C6CL;

  private static final long VERSION = 8L;
  private static final long VARIANT = 0b10L;
  private static final int LOW_BITS = 51;

  private Uid() {}

  /** What is told, each with the number that stands for it in its names and never changes. */
  public enum Of {
    VISIT(1),
    REMINDER(2),
    CURE(3),
    LAY_UP_BEGINS(4),
    LAY_UP_ENDS(5),
    PARTY(6);

    private final long number;

    Of(long number) {
      this.number = number;
    }
  }

  /** The name of something that an id of the record stands for. */
  public static String of(Of what, Id<?> id) {
    long high = id.value() >>> LOW_BITS;
    long low = id.value() & ((1L << LOW_BITS) - 1);
    return new UUID(HULL << 32 | what.number << 16 | VERSION << 12 | high, VARIANT << 62 | low)
        .toString();
  }

  /** Whether a text is the name of something of a kind. */
  public static boolean is(Of what, String uid) {
    return uid.matches(
        String.format("%08x-%04x-8[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}", HULL, what.number));
  }
}
