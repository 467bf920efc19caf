package hullalmanac.ui.window;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** How long the event thread is busy at a stretch, by what was being done meanwhile. */
final class EventThreadTimes implements AutoCloseable {
  private final Queue queue = new Queue();
  private final Map<String, Busy> busy = new LinkedHashMap<>();
  private String doing = "opening";

  /** Seconds on one thing: the longest at a stretch, and all together. */
  private record Busy(double longest, double all) {
    Busy and(double more) {
      return new Busy(Math.max(longest, more), all + more);
    }
  }

  private final class Queue extends EventQueue {
    @Override
    protected void dispatchEvent(AWTEvent event) {
      long from = System.nanoTime();
      try {
        super.dispatchEvent(event);
      } finally {
        note((System.nanoTime() - from) / 1e9);
      }
    }

    void leave() {
      pop();
    }
  }

  EventThreadTimes() {
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue);
  }

  private synchronized void note(double seconds) {
    busy.merge(doing, new Busy(seconds, seconds), (had, one) -> had.and(seconds));
  }

  /** Says what is done from now on. */
  synchronized void doing(String what) {
    doing = what;
  }

  /** A line for each thing done. */
  synchronized String report() {
    StringBuilder report =
        new StringBuilder("Event thread busy, longest at a stretch and all together:\n");
    busy.forEach(
        (what, times) ->
            report.append(
                String.format(
                    Locale.ROOT, "  %7.3f s %7.3f s  %s%n", times.longest(), times.all(), what)));
    return report.toString();
  }

  @Override
  public void close() {
    queue.leave();
  }
}
