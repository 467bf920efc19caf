package hullalmanac.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.RecordException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lock against a second process, really started. */
class RecordLockIT {
  private static final Instant NOW = Instant.parse("2026-05-01T12:00:00Z");

  @TempDir Path folder;

  /** Takes the lock and holds it until it is killed. */
  static final class Holder {
    private Holder() {}

    public static void main(String[] arguments) throws Exception {
      RecordLock.Holder me = new RecordLock.Holder("here", ProcessHandle.current().pid(), NOW, 0);
      try (RecordLock lock = RecordLock.take(Path.of(arguments[0]), me, NOW)) {
        lock.announce(me);
        System.out.println("held");
        System.in.read();
      }
    }
  }

  @Test
  void keepsASecondProcessOutUntilTheFirstIsGone() throws Exception {
    Process first =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElseThrow(),
                "-cp",
                System.getProperty("java.class.path"),
                Holder.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    try {
      assertThat(first.inputReader().readLine()).isEqualTo("held");
      RecordLock.Holder me = new RecordLock.Holder("here", 1, NOW, 0);
      assertThatThrownBy(() -> RecordLock.take(folder, me, NOW))
          .isInstanceOf(RecordException.class)
          .hasMessageContaining("process " + first.pid());
    } finally {
      first.destroyForcibly().waitFor();
    }
    RecordLock.take(folder, new RecordLock.Holder("here", 1, NOW, 0), NOW).close();
    assertThat(folder.resolve("almanac.lock")).doesNotExist();
  }

  @Test
  void aFreshLockOfAnotherComputerKeepsOutAndAnOldOneDoesNot() throws Exception {
    RecordLock.Holder me = new RecordLock.Holder("here", 1, NOW, 0);
    Files.writeString(
        folder.resolve("almanac.lock"), "elsewhere\n7\n" + NOW.minusSeconds(60) + "\n0\n");
    assertThatThrownBy(() -> RecordLock.take(folder, me, NOW)).hasMessageContaining("elsewhere");
    Files.writeString(
        folder.resolve("almanac.lock"), "elsewhere\n7\n" + NOW.minusSeconds(86_400) + "\n0\n");
    RecordLock.take(folder, me, NOW).close();
  }
}
