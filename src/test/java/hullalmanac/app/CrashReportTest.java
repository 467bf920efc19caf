package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrashReportTest {
  private static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");

  @Test
  void namesClassAndPlaceButNoOwner() {
    Throwable cause = new IllegalStateException("Lind owes for Arctic Tern");
    CrashReport report =
        new CrashReport(
            NOON, "1", "a machine", "lane", new IllegalArgumentException("555-0100", cause));
    assertThat(report.text())
        .contains("java.lang.IllegalArgumentException\n  at hullalmanac.app.CrashReportTest")
        .contains("caused by java.lang.IllegalStateException")
        .doesNotContain("Lind", "555-0100");
  }

  @Test
  void keepsWhatTheMachineItselfWorded() {
    CrashReport report = new CrashReport(NOON, "1", "m", "t", new ArithmeticException("/ by zero"));
    assertThat(report.text()).contains("ArithmeticException: / by zero");
  }

  @Test
  void isKeptInAFileNamedAfterItsTime(@TempDir Path folder) throws Exception {
    AppLog log = new AppLog(folder.resolve("state"), Clock.fixed(NOON, ZoneOffset.UTC), "1", "m");
    String text = log.crash("main", new IllegalStateException("x")).all();
    Path file = folder.resolve("state").resolve("crash-20260501-120000-000.txt");
    assertThat(text).contains(file.toString());
    assertThat(Files.readString(file)).startsWith("Hull Almanac 1, 2026-05-01T12:00:00Z");
  }

  @Test
  void isShownEvenWhenItCannotBeKept(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("in-the-way"), "");
    AppLog log = new AppLog(file, Clock.fixed(NOON, ZoneOffset.UTC), "1", "m");
    assertThat(log.crash("main", new IllegalStateException()).all()).contains("could not be kept");
  }
}
