package hullalmanac.ui.task;

import hullalmanac.present.TaskRunner;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** A thread for the record, one for reckoning, one for other files; answers on the event thread. */
public final class SwingTaskRunner implements TaskRunner, AutoCloseable {
  private static final int PATIENCE_SECONDS = 10;

  private final ExecutorService database = lane("record");
  private final ExecutorService computing = lane("reckoning");
  private final ExecutorService files = lane("files");

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
      of(lane)
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

  private ExecutorService of(Lane lane) {
    return switch (lane) {
      case DATABASE -> database;
      case COMPUTING -> computing;
      case FILES -> files;
    };
  }

  /**
   * Takes no more work; once the lanes of the record and of other files have finished what they
   * have, does one last thing. Does not wait.
   */
  public void close(Runnable last) {
    computing.shutdownNow();
    files.shutdown();
    database.execute(
        () -> {
          await(files);
          last.run();
        });
    database.shutdown();
  }

  /** Takes no more work, and waits until all but the reckoning has finished what it has. */
  @Override
  public void close() {
    computing.shutdownNow();
    files.shutdown();
    database.shutdown();
    await(database);
    await(files);
  }

  /** A disk that does not answer holds nobody up for ever. */
  private static void await(ExecutorService lane) {
    try {
      lane.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
