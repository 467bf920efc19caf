package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.fixture.Bench;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder of the record goes away while it is open, as a stick that is pulled out does. */
class PulledOutTest {
  @TempDir Path home;

  @Test
  void saysThatTheRecordIsGoneAndGoesOnWhenItIsBack() throws Exception {
    Path stick = home.resolve("stick");
    Path away = home.resolve("away");
    try (Bench bench = Bench.open(stick)) {
      bench.presenter().openBoat(bench.boat("Siskin").id());
      bench.presenter().boats().change();
      bench.write("facts", "note", "before");
      Files.move(stick, away);
      bench.write("facts", "note", "meanwhile");
      assertThat(bench.shell().trouble().orElseThrow())
          .contains("is no longer where it was", "Nothing was changed", "put it back");
      bench.presenter().load();
      assertThat(stick).as("nothing is made in its place").doesNotExist();
      Files.move(away, stick);
      bench.write("facts", "note", "after");
      assertThat(bench.shell().trouble()).isEmpty();
      assertThat(bench.boat("Siskin").note()).isEqualTo("after");
    }
    try (Bench bench = Bench.open(stick)) {
      assertThat(bench.boat("Siskin").note()).isEqualTo("after");
    }
  }
}
