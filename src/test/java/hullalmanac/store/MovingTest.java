package hullalmanac.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.RecordException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Moving house, second places, and what folders that are kept alike leave behind. */
class MovingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final Instant NOW = Instant.parse("2026-05-01T09:00:00Z");

  @TempDir Path home;
  private Path record;
  private Made made;
  private Random random;

  @BeforeEach
  void makeARecord() throws IOException {
    record = home.resolve("record");
    random = new Random(7);
    made = new Made(48.4);
    Database.create(record, setting());
    change("the harbour", Edit.put(made.harbour()));
    change("Wheatear", Edit.put(made.boat()));
    Files.writeString(record.resolve("photos").resolve("one.jpg"), "a picture");
  }

  private Database.Setting setting() {
    return Database.Setting.of("desk", random::nextLong);
  }

  private void change(String what, Edit edit) {
    changeIn(record, what, edit);
  }

  private void changeIn(Path folder, String what, Edit edit) {
    try (Database open = Database.open(folder, Database.Mode.READ_WRITE, DAY, setting())) {
      open.change(what, NOW, DAY, edit);
    }
  }

  private Almanac almanac(Path folder) {
    try (Database open = Database.open(folder, Database.Mode.READ_ONLY, DAY, setting())) {
      return open.almanac();
    }
  }

  @Test
  void movesAllOfARecordAndLeavesTheOldOneAsItIs() throws IOException {
    Path to = home.resolve("elsewhere").resolve("HullAlmanac");
    Moving.copy(record, to);
    assertThat(almanac(to)).isEqualTo(almanac(record));
    assertThat(to.resolve("photos").resolve("one.jpg")).hasContent("a picture");
    assertThat(to.resolve("copies")).isDirectoryContaining("glob:**almanac-2026-05-01.db");
  }

  @Test
  void movesIntoNoFolderThatHoldsAnythingOrLiesInside() throws IOException {
    Path full = home.resolve("full");
    Files.createDirectories(full);
    Files.writeString(full.resolve("letter.txt"), "dear");
    assertThatThrownBy(() -> Moving.copy(record, full))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("not empty");
    assertThat(full).isDirectoryContaining("glob:**letter.txt");
    assertThatThrownBy(() -> Moving.copy(record, record.resolve("inner")))
        .isInstanceOf(RecordException.class)
        .hasMessageContaining("inside");
    assertThatThrownBy(() -> Moving.copy(record, record)).hasMessageContaining("already");
  }

  @Test
  void damageOnTheWayLeavesNoRecordInTheNewFolder() throws IOException {
    byte[] bytes = Files.readAllBytes(record.resolve(Database.FILE));
    java.util.Arrays.fill(bytes, 4096, 8192, (byte) 0x5a);
    Files.write(record.resolve(Database.FILE), bytes);
    Path to = home.resolve("elsewhere");
    assertThatThrownBy(() -> Moving.copy(record, to)).isInstanceOf(RecordException.class);
    assertThat(Database.isIn(to)).isFalse();
  }

  @Test
  void aSecondPlaceIsAWholeRecordOfTheNewestCopyAndIsNotWrittenTwice() throws IOException {
    Path stick = home.resolve("stick");
    Files.createDirectories(stick);
    assertThat(SecondPlace.bringUpToDate(record, stick)).isEqualTo(2);
    assertThat(SecondPlace.bringUpToDate(record, stick)).isZero();
    assertThat(almanac(stick).harbours()).hasSize(1);
    assertThat(stick.resolve("photos").resolve("one.jpg")).hasContent("a picture");
  }

  @Test
  void aSecondPlaceThatIsNotThereOrInsideIsRefused() {
    assertThatThrownBy(() -> SecondPlace.bringUpToDate(record, home.resolve("stick")))
        .hasMessageContaining("pulled out");
    assertThatThrownBy(() -> SecondPlace.bringUpToDate(record, record.resolve("photos")))
        .hasMessageContaining("inside");
  }

  /** Both computers go on from the same record, each with an act of its own. */
  @Test
  void saysWhichActsAConflictedCopyHasAndTheRecordHasNot() throws IOException {
    Path twin = home.resolve("twin");
    Moving.copy(record, twin);
    change("done here", Edit.put(made.harbour("fallow")));
    changeIn(twin, "done there", Edit.put(new Made(48.4, 99).harbour("hard")));
    Path conflicted = record.resolve("almanac (conflicted copy of the other computer).db");
    Files.copy(twin.resolve(Database.FILE), conflicted);
    assertThat(OtherAlmanacs.in(record)).containsExactly(conflicted);
    OtherAlmanacs.Difference difference = OtherAlmanacs.compare(record, conflicted);
    assertThat(difference.onlyThere()).extracting(a -> a.what()).containsExactly("done there");
    assertThat(difference.onlyHere()).extracting(a -> a.what()).containsExactly("done here");
    Path aside = OtherAlmanacs.layAside(record, conflicted);
    assertThat(aside).exists();
    assertThat(OtherAlmanacs.in(record)).isEmpty();
  }

  @Test
  void ownFilesAndForeignOnesAreNoOtherAlmanacs() throws IOException {
    Files.writeString(record.resolve("almanac notes.db"), "not a database");
    Files.copy(record.resolve(Database.FILE), record.resolve("almanac-before-restore-1.db"));
    assertThat(OtherAlmanacs.in(record)).isEmpty();
    Files.copy(record.resolve(Database.FILE), record.resolve("almanac-DESK.db"));
    Files.copy(record.resolve(Database.FILE), record.resolve("almanac.sync-conflict-1.db"));
    assertThat(OtherAlmanacs.in(record)).hasSize(2);
  }
}
