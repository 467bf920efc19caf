package hullalmanac.present.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.With;
import hullalmanac.fixture.Bench;
import hullalmanac.present.house.House;
import hullalmanac.present.sheet.SheetState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is to be known of the record as a whole stands above the places, and leads out. */
class NoticesTest {
  @TempDir Path home;
  private Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    folder = home.resolve("record");
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private List<String> notices() {
    return bench.shell().notices().stream().map(Notice::words).toList();
  }

  @Test
  void anAlmanacThatASyncedFolderLaidThereIsComparedAndLaidAside() throws IOException {
    assertThat(notices()).isEmpty();
    Path other = folder.resolve("almanac (conflicted copy).db");
    Files.copy(folder.resolve("almanac.db"), other);
    Boat siskin = bench.boat("Siskin");
    bench
        .presenter()
        .edit("Siskin renamed", almanac -> Edit.put(With.component(siskin, "name", "Serin")));
    bench.presenter().load();
    assertThat(notices()).singleElement().asString().contains("Another almanac");
    bench.presenter().press(bench.shell().notices().get(0));
    assertThat(tables()).contains("Only in the other: 0 acts", "Only in this record: 1 act");
    bench.sheet().press("aside");
    assertThat(notices()).isEmpty();
    assertThat(bench.shell().sheet()).isEmpty();
    assertThat(other).doesNotExist();
  }

  private List<String> tables() {
    return bench.state().blocks().stream()
        .filter(SheetState.Table.class::isInstance)
        .map(b -> ((SheetState.Table) b).heading())
        .toList();
  }

  @Test
  void aSecondPlaceThatDoesNotAnswerIsSaidUntilItDoes() throws IOException {
    Path stick = home.resolve("stick");
    House house = House.still();
    house.secondPlace(Optional.of(stick.toString()));
    bench.presenter().livesIn(house);
    bench.presenter().load();
    assertThat(notices()).singleElement().asString().contains("pulled out");
    Files.createDirectories(stick);
    bench.presenter().press(bench.shell().notices().get(0));
    assertThat(notices()).isEmpty();
  }

  @Test
  void whatCameOfAWishStandsUntilItWasTakenNoteOf() {
    bench.presenter().tell("The record is here now.");
    bench.presenter().load();
    assertThat(notices()).containsExactly("The record is here now.");
    bench.presenter().press(bench.shell().notices().get(0));
    assertThat(notices()).isEmpty();
  }
}
