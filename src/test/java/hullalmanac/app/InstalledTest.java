package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of the program, and what is kept out of it. */
class InstalledTest {
  @TempDir Path home;

  /** A clock that goes on by a second each time it is asked. */
  private static final class Ticking extends Clock {
    private Instant now = Instant.parse("2026-05-01T12:00:00Z");

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      now = now.plus(Duration.ofSeconds(1));
      return now;
    }
  }

  private Path state() {
    return home.resolve("state");
  }

  private AppLog log() {
    return new AppLog(state(), new Ticking(), "1.2", "a machine");
  }

  private Installed installed() {
    return new Installed("1.2", "17", "a machine", home, state());
  }

  @Test
  void reportsVersionJavaSystemTheEndOfTheLogAndTheNewestCrash() throws Exception {
    Files.createDirectories(state());
    Files.write(
        state().resolve("log-0.txt"),
        IntStream.rangeClosed(1, 500).mapToObj(n -> "line " + n).toList());
    AppLog log = log();
    log.crash("first", new IllegalStateException("Lind"));
    log.crash("lane", new IllegalArgumentException("Lind owes for Arctic Tern"));
    Path named = home.resolve("state/crash-30000101-000000-000.txt");
    Files.writeString(named, "kept in " + home.resolve("lind") + "\n");
    String report = installed().report();
    assertThat(report)
        .startsWith("Hull Almanac 1.2\nJava 17\na machine\n")
        .contains("line 421\n", "line 500\n", "Newest of 3 crash reports", "kept in ~")
        .doesNotContain("line 420\n", "Lind", home.toString());
  }

  @Test
  void reportsWithoutAnyLogAsWell() {
    assertThat(installed().report()).contains("(there is none)").doesNotContain("crash report");
    assertThat(installed().facts().crashes()).isEmpty();
    assertThat(installed().facts().record()).isEqualTo("none is open");
  }

  @Test
  void theLogKeepsNothingOfWhatALibraryWords() throws Exception {
    Logger root = Logger.getLogger("");
    Handler[] before = root.getHandlers();
    Level level = root.getLevel();
    try {
      log().start();
      Logger.getLogger("org.example")
          .log(Level.WARNING, "no such column: Lind", new Exception("x"));
      Logger.getLogger("hullalmanac.Mine")
          .log(Level.WARNING, "our own words", new Exception("Lind"));
    } finally {
      for (Handler handler : root.getHandlers()) {
        handler.close();
        root.removeHandler(handler);
      }
      for (Handler handler : before) {
        root.addHandler(handler);
      }
      root.setLevel(level);
    }
    assertThat(Files.readString(state().resolve("log-0.txt")))
        .contains("org.example (not kept)", "our own words java.lang.Exception")
        .doesNotContain("Lind");
  }

  @Test
  void aFaultThatRepeatsFillsNoDisk() throws Exception {
    AppLog log = log();
    for (int i = 0; i < 100; i++) {
      log.crash("lane", new IllegalStateException());
    }
    assertThat(AppLog.crashes(state())).hasSize(20);
    assertThat(log.crash("lane", new IllegalStateException()).file()).isEmpty();
  }

  @Test
  void whatAnyThreadThrowsIsKeptAndSaid() throws Exception {
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    AtomicReference<AppLog.Kept> said = new AtomicReference<>();
    try {
      log().catchAll(said::set);
      Thread thread =
          new Thread(
              () -> {
                throw new IllegalStateException("Lind");
              },
              "some thread");
      thread.start();
      thread.join();
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
    }
    Path file = said.get().file().orElseThrow();
    assertThat(Files.readString(file)).contains("in some thread").doesNotContain("Lind");
    assertThat(AppLog.crashes(state())).containsExactly(file);
  }

  @Test
  void theVersionIsThatOfTheBuild() throws Exception {
    Properties built = new Properties();
    built.load(Main.class.getResourceAsStream("version.properties"));
    String pom =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Path.of("pom.xml").toFile())
            .getElementsByTagName("version")
            .item(0)
            .getTextContent();
    assertThat(built.getProperty("version")).isEqualTo(pom);
  }
}
