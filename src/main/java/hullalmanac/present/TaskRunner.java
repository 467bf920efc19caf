package hullalmanac.present;

import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Runs work off the event thread and brings the answer back to it. Work that touches the record
 * goes down one lane, in order; reckoning goes down another and gets values only; files that are
 * not of the record, on whatever disk, go down a third, where nobody waits for them.
 */
public interface TaskRunner {
  /** Which lane work goes down. */
  enum Lane {
    DATABASE,
    COMPUTING,
    FILES
  }

  /**
   * Runs work.
   *
   * @param work gets nothing that may change meanwhile
   * @param done called on the event thread with the answer
   * @param failed called on the event thread with what was thrown
   */
  <T> void run(Lane lane, Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed);
}
