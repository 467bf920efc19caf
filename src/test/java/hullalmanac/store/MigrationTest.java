package hullalmanac.store;

import static hullalmanac.store.Setup.DAY;
import static hullalmanac.store.Setup.NOON;
import static hullalmanac.store.Setup.SETTING;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import hullalmanac.exchange.photo.PhotoFiles;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationTest {
  private static final SchemaStep NEXT =
      new SchemaStep(
          SchemaStep.all().size() + 1,
          "ALTER TABLE boat ADD COLUMN nickname TEXT NOT NULL DEFAULT '';\n");

  @TempDir Path folder;

  private static Database.Setting withNext() {
    List<SchemaStep> steps = new ArrayList<>(SchemaStep.all());
    steps.add(NEXT);
    return new Database.Setting("test", SETTING.random(), steps, UnaryOperator.identity());
  }

  private static List<String> schema(Database db) {
    return db.read(
        tx ->
            tx.list(
                "SELECT name || ': ' || coalesce(sql, '') AS line FROM sqlite_schema ORDER BY name",
                row -> row.text("line")));
  }

  @Test
  void anUpgradedRecordEqualsAFreshOneAndLosesNothing() {
    Path old = folder.resolve("old");
    Path fresh = folder.resolve("fresh");
    Database.create(old, SETTING);
    try (Database db = Database.open(old, Database.Mode.READ_WRITE, DAY, SETTING)) {
      db.change("x", NOON, DAY, Edit.all(new Made(48).almanac()));
    }
    Database.create(fresh, withNext());
    try (Database upgraded = Database.open(old, Database.Mode.READ_WRITE, DAY, withNext());
        Database made = Database.open(fresh, Database.Mode.READ_WRITE, DAY, withNext())) {
      assertThat(schema(upgraded)).isEqualTo(schema(made));
      assertThat(upgraded.almanac()).isEqualTo(new Made(48).almanac());
    }
    assertThat(new Copies(old).all())
        .singleElement()
        .asString()
        .contains("before-step-" + NEXT.number());
  }

  @Test
  void releasedStepsAreFrozen() throws Exception {
    List<String> found = new ArrayList<>();
    for (String file : SchemaStep.FILES) {
      try (InputStream in = SchemaStep.class.getResourceAsStream("/hullalmanac/store/" + file)) {
        found.add(PhotoFiles.sha256(in.readAllBytes()) + "  " + file);
      }
    }
    try (InputStream in =
        SchemaStep.class.getResourceAsStream("/hullalmanac/store/checksums.txt")) {
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList())
          .isEqualTo(found);
    }
  }
}
