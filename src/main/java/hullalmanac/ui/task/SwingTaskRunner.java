package hullalmanac.ui.task;

import hullalmanac.present.TaskRunner;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** One thread for the record, one for reckoning; answers on the event thread. */
public final class SwingTaskRunner implements TaskRunner, AutoCloseable {
  private static final int PATIENCE_SECONDS = 10;

  private final ExecutorService database = lane("record");
  private final ExecutorService computing = lane("reckoning");

  private static ExecutorService lane(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  @Override
  public <T> void run(
      Lane lane, Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed) {
    try {
      (lane == Lane.DATABASE ? database : computing)
          .execute(
              () -> {
                try {
                  T answer = work.get();
                  SwingUtilities.invokeLater(() -> done.accept(answer));
                } catch (RuntimeException e) {
                  SwingUtilities.invokeLater(() -> failed.accept(e));
                }
              });
    } catch (RejectedExecutionException e) {
      // The window is closing: nobody waits for this any more.
      return;
    }
  }

  /**
   * Takes no more work; once the record's lane has finished what it has, does one last thing on it.
   * Does not wait.
   */
  public void close(Runnable last) {
    computing.shutdownNow();
    database.execute(last);
    database.shutdown();
  }

  /** Takes no more work, and waits until the record's lane has finished what it has. */
  @Override
  public void close() {
    computing.shutdownNow();
    database.shutdown();
    try {
      database.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
