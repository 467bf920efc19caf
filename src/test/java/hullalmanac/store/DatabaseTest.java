package hullalmanac.store;

import static hullalmanac.store.Setup.DAY;
import static hullalmanac.store.Setup.NOON;
import static hullalmanac.store.Setup.SETTING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.record.With;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {
  @TempDir Path folder;

  private Database open() {
    return Database.open(folder, Database.Mode.READ_WRITE, DAY, SETTING);
  }

  private static void fails(Kind kind, ThrowingCallable act) {
    assertThatThrownBy(act)
        .isInstanceOfSatisfying(RecordException.class, e -> assertThat(e.kind()).isEqualTo(kind));
  }

  private static Almanac small() {
    Made made = new Made(48.4);
    made.topsides();
    made.open(LocalDate.of(2024, 1, 1));
    return made.almanac();
  }

  @Test
  void openingWhatIsNotThereMakesNoFile() {
    fails(
        Kind.MISSING,
        () -> Database.open(folder.resolve("typo"), Database.Mode.READ_WRITE, DAY, SETTING));
    assertThat(folder.resolve("typo")).doesNotExist();
    fails(Kind.MISSING, this::open);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void leavesWhatIsNotOursAlone() throws Exception {
    Path file = folder.resolve(Database.FILE);
    Files.writeString(file, "a shopping list");
    fails(Kind.NOT_OURS, this::open);
    assertThat(Files.readString(file)).isEqualTo("a shopping list");
    Files.delete(file);
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement s = other.createStatement()) {
      s.execute("CREATE TABLE theirs (x)");
    }
    byte[] before = Files.readAllBytes(file);
    fails(Kind.NOT_OURS, this::open);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void leavesARecordOfANewerProgramAlone() throws Exception {
    Database.create(folder, SETTING);
    Path file = folder.resolve(Database.FILE);
    byte[] bytes = Files.readAllBytes(file);
    ByteBuffer.wrap(bytes).putInt(60, 99);
    Files.write(file, bytes);
    fails(Kind.NEWER, this::open);
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
  }

  @Test
  void saysThatARecordIsDamaged() throws Exception {
    Database.create(folder, SETTING);
    Path file = folder.resolve(Database.FILE);
    byte[] bytes = Files.readAllBytes(file);
    for (int i = 4096; i < bytes.length; i++) {
      bytes[i] = (byte) (i * 31);
    }
    Files.write(file, bytes);
    fails(Kind.CORRUPT, this::open);
  }

  @Test
  void writesNothingWhenOpenedToRead() {
    Database.create(folder, SETTING);
    try (Database db = Database.open(folder, Database.Mode.READ_ONLY, DAY, SETTING)) {
      fails(Kind.READ_ONLY, () -> db.change("x", NOON, DAY, Edit.all(small())));
    }
  }

  @Test
  void saysThatTheDiskIsFullAndChangesNothing() {
    Database.create(folder, SETTING);
    Database.Setting tight =
        new Database.Setting(
            "test",
            SETTING.random(),
            SchemaStep.all(),
            connection -> {
              try (Statement s = connection.createStatement();
                  ResultSet pages = s.executeQuery("PRAGMA page_count")) {
                int most = pages.getInt(1) + 1;
                s.execute("PRAGMA max_page_count = " + most);
              } catch (java.sql.SQLException e) {
                throw new IllegalStateException(e);
              }
              return connection;
            });
    Made many = new Made(48);
    for (int i = 0; i < 400; i++) {
      many.topsides();
    }
    try (Database db = Database.open(folder, Database.Mode.READ_WRITE, DAY, tight)) {
      fails(Kind.FULL, () -> db.change("x", NOON, DAY, Edit.all(many.almanac())));
      assertThat(db.almanac()).isEqualTo(Almanac.empty(Setup.UNNAMED));
      assertThat(db.acts()).isZero();
    }
  }

  @Test
  void neverWritesOverARecord() {
    Database.create(folder, SETTING);
    fails(Kind.IN_THE_WAY, () -> Database.create(folder, SETTING));
  }

  @Test
  void aFailedActLeavesNothing() {
    Database.create(folder, SETTING);
    try (Database db = open()) {
      db.change("first", NOON, DAY, Edit.all(small()));
      Almanac before = db.almanac();
      Boat twin = new Made(48, 8).boat();
      assertThatThrownBy(() -> db.change("a second tern", NOON, DAY, Edit.put(twin)))
          .isInstanceOf(RecordException.class);
      assertThat(db.almanac()).isEqualTo(before);
      assertThat(db.acts()).isEqualTo(1);
    }
  }

  @Test
  void keepsWhetherAFindingIsOfBeforeOrAfterTheWork() {
    Database.create(folder, SETTING);
    Made made = new Made(48.4);
    Finding seen =
        made.water(
            made.topsides(), LocalDate.of(2025, 1, 1), SurfaceState.WASHED, WaterBehaviour.BEADS);
    Finding before = With.component(seen, "moment", Optional.of(Moment.BEFORE));
    try (Database db = open()) {
      db.change("first", NOON, DAY, Edit.all(made.almanac()));
      db.change("said when", NOON.plusSeconds(1), DAY, Edit.put(before));
      assertThat(db.almanac().findings()).containsExactly(before);
      assertThat(db.undo(NOON.plusSeconds(2), DAY)).isPresent();
      assertThat(db.almanac().findings()).containsExactly(seen);
    }
  }

  @Test
  void logSufficesToTakeAnActBack() {
    Database.create(folder, SETTING);
    Almanac before;
    try (Database db = open()) {
      db.change("first", NOON, DAY, Edit.all(Almanac.empty(Setup.UNNAMED)));
      before = db.almanac();
      db.change("second", NOON.plusSeconds(1), DAY, Edit.all(small()));
      assertThat(db.almanac()).isNotEqualTo(before);
    }
    try (Database db = open()) {
      assertThat(db.undo(NOON.plusSeconds(2), DAY)).isPresent();
      assertThat(db.almanac()).isEqualTo(before);
    }
  }

  @Test
  void aWriteOutsideAnActIsRefused() {
    Database.create(folder, SETTING);
    try (Database db = open()) {
      assertThatThrownBy(
              () ->
                  db.read(
                      tx -> {
                        tx.run("INSERT INTO harbour VALUES (1, 'k', 'n', 0, '', '')", Map.of());
                        return null;
                      }))
          .hasRootCauseMessage(
              "[SQLITE_CONSTRAINT_TRIGGER] A RAISE function within a trigger fired, causing the SQL statement to abort (a write outside an act)");
    }
  }

  @Test
  void laysACopyBeforeTheFirstChangeOfADayAndRestoresIt() throws Exception {
    Database.create(folder, SETTING);
    try (Database db = open()) {
      db.change("first", NOON, DAY, Edit.all(Almanac.empty(Setup.UNNAMED)));
      db.change("second", NOON.plusSeconds(1), DAY.plusDays(1), Edit.all(small()));
      db.change(
          "third", NOON.plusSeconds(2), DAY.plusDays(1), Edit.all(Almanac.empty(Setup.UNNAMED)));
    }
    List<Path> copies = new Copies(folder).all();
    assertThat(copies).hasSize(1);
    Path aside = Copies.restore(folder, copies.get(0)).orElseThrow();
    assertThat(aside).exists();
    try (Database db = open()) {
      assertThat(db.almanac().boats()).isEmpty();
    }
  }

  @Test
  void keepsSevenDaysFourWeeksAndTwelveMonths() {
    Database.create(folder, SETTING);
    try (Database db = open()) {
      for (int i = 0; i < 120; i++) {
        db.change("day " + i, NOON, DAY.plusDays(i), Edit.all(Almanac.empty(Setup.UNNAMED)));
      }
    }
    List<String> names = new ArrayList<>();
    new Copies(folder).all().forEach(c -> names.add(c.getFileName().toString()));
    assertThat(names)
        .hasSizeBetween(10, 16)
        .first()
        .isEqualTo("almanac-" + DAY.plusDays(119) + ".db");
    assertThat(names).contains("almanac-" + DAY.plusDays(113) + ".db");
  }

  @Test
  void refusesToRestoreWhatIsNoWholeRecord() throws Exception {
    Database.create(folder, SETTING);
    Path junk = Files.writeString(folder.resolve("junk.db"), "junk");
    byte[] before = Files.readAllBytes(folder.resolve(Database.FILE));
    fails(Kind.NOT_OURS, () -> Copies.restore(folder, junk));
    assertThat(Files.readAllBytes(folder.resolve(Database.FILE))).isEqualTo(before);
  }
}
