package hullalmanac.app;

import java.time.Instant;
import java.util.Set;

/**
 * What is written down when something goes wrong that should not: which program, where in it, no
 * owner data. Messages of exceptions may quote a name or a note, so only those that the machine
 * itself words are kept.
 */
record CrashReport(Instant at, String version, String machine, String thread, Throwable thrown) {
  private static final Set<Class<? extends Throwable>> WORDED_BY_THE_MACHINE =
      Set.of(
          NullPointerException.class,
          ClassCastException.class,
          ArrayIndexOutOfBoundsException.class,
          IndexOutOfBoundsException.class,
          ArithmeticException.class,
          OutOfMemoryError.class,
          StackOverflowError.class,
          NoClassDefFoundError.class,
          UnsatisfiedLinkError.class);

  /** The report as text. */
  String text() {
    StringBuilder out = new StringBuilder();
    out.append("Hull Almanac ").append(version).append(", ").append(at).append('\n');
    out.append(machine).append('\n');
    out.append("in ").append(thread).append('\n');
    for (Throwable t = thrown; t != null; t = t.getCause() == t ? null : t.getCause()) {
      out.append(t == thrown ? "" : "caused by ").append(t.getClass().getName());
      if (WORDED_BY_THE_MACHINE.contains(t.getClass())) {
        out.append(": ").append(t.getMessage());
      }
      out.append('\n');
      for (StackTraceElement frame : t.getStackTrace()) {
        out.append("  at ").append(frame).append('\n');
      }
    }
    return out.toString();
  }
}
