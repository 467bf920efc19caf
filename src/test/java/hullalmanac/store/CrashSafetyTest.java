package hullalmanac.store;

import static hullalmanac.store.Setup.DAY;
import static hullalmanac.store.Setup.NOON;
import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Made;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that dies at any statement of an act or of a schema step leaves the record as it was
 * before or as it is after. The death is real: a child process halts itself.
 */
@Tag("slow")
class CrashSafetyTest {
  private static final int DIED = 77;
  private static final int NEWEST = SchemaStep.all().size();

  @TempDir Path folder;

  private static Almanac additions() {
    Made made = new Made(48.4);
    made.topsides();
    made.open(LocalDate.of(2024, 1, 1));
    return made.almanac();
  }

  private static List<SchemaStep> oneStepMore() {
    List<SchemaStep> steps = new ArrayList<>(SchemaStep.all());
    steps.add(
        new SchemaStep(
            NEWEST + 1,
            """
            ALTER TABLE boat ADD COLUMN nickname TEXT NOT NULL DEFAULT '';
            CREATE TABLE extra (id INTEGER PRIMARY KEY) STRICT;
            UPDATE boat SET nickname = name;
            """));
    return steps;
  }

  /** Does one piece of work and dies at the n-th statement. */
  static final class Child {
    private static int left;

    private Child() {}

    public static void main(String[] arguments) {
      Path folder = Path.of(arguments[0]);
      left = Integer.parseInt(arguments[2]);
      boolean step = arguments[1].equals("step");
      Database.Setting setting =
          new Database.Setting(
              "child",
              new Random(5)::nextLong,
              step ? oneStepMore() : SchemaStep.all(),
              Child::dying);
      try (Database db = Database.open(folder, Database.Mode.READ_WRITE, DAY, setting)) {
        if (!step) {
          db.change("an import", NOON.plusSeconds(9), DAY, Edit.all(additions()));
        }
      }
    }

    private static void count() {
      if (--left <= 0) {
        Runtime.getRuntime().halt(DIED);
      }
    }

    private static Connection dying(Connection real) {
      return proxy(Connection.class, real);
    }

    @SuppressWarnings("unchecked")
    private static <T> T proxy(Class<T> type, Object real) {
      return (T)
          Proxy.newProxyInstance(
              Child.class.getClassLoader(),
              new Class<?>[] {type},
              (self, method, args) -> {
                if (method.getName().startsWith("execute") || method.getName().equals("commit")) {
                  count();
                }
                try {
                  Object result = method.invoke(real, args);
                  if (result instanceof PreparedStatement) {
                    return proxy(PreparedStatement.class, result);
                  }
                  return result instanceof Statement ? proxy(Statement.class, result) : result;
                } catch (InvocationTargetException e) {
                  throw e.getCause();
                }
              });
    }
  }

  private int runChild(Path record, String work, int n) throws Exception {
    Process child =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElseThrow(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Child.class.getName(),
                record.toString(),
                work,
                String.valueOf(n))
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    return child.waitFor();
  }

  private Path base() throws Exception {
    Path record = folder.resolve("base");
    Database.create(record, Setup.SETTING);
    try (Database db = Database.open(record, Database.Mode.READ_WRITE, DAY, Setup.SETTING)) {
      db.change("before", NOON, DAY, Edit.all(Almanac.empty(Setup.UNNAMED)));
    }
    return record;
  }

  private Path copyOf(Path base, String name) throws Exception {
    Path copy = folder.resolve(name);
    Files.createDirectories(copy.resolve("copies"));
    Files.copy(base.resolve(Database.FILE), copy.resolve(Database.FILE));
    return copy;
  }

  private static String integrity(Path record, Database.Setting setting) {
    try (Database db = Database.open(record, Database.Mode.READ_WRITE, DAY, setting)) {
      return db.read(
          tx -> tx.list("PRAGMA integrity_check", row -> row.text("integrity_check")).get(0));
    }
  }

  @Test
  void anImportThatDiesAtAnyStatementIsWholeOrNotAtAll() throws Exception {
    Path base = base();
    Almanac after = additions();
    int died = 0;
    for (int n = 1; ; n++) {
      Path record = copyOf(base, "import-" + n);
      int code = runChild(record, "import", n);
      assertThat(code).isIn(0, DIED);
      assertThat(integrity(record, Setup.SETTING)).isEqualTo("ok");
      try (Database db = Database.open(record, Database.Mode.READ_ONLY, DAY, Setup.SETTING)) {
        boolean whole = db.almanac().equals(after) && db.acts() == 2;
        boolean nothing = db.almanac().equals(Almanac.empty(Setup.UNNAMED)) && db.acts() == 1;
        assertThat(whole || nothing).as("after death at statement " + n).isTrue();
        if (code == 0) {
          assertThat(whole).isTrue();
          break;
        }
        died++;
      }
    }
    assertThat(died).as("statements at which it died").isGreaterThan(60);
  }

  @Test
  void aSchemaStepThatDiesAtAnyStatementIsDoneOrNotAtAll() throws Exception {
    Path base = base();
    Database.Setting both =
        new Database.Setting("parent", new Random(6)::nextLong, oneStepMore(), c -> c);
    int died = 0;
    int undone = 0;
    for (int n = 1; ; n++) {
      Path record = copyOf(base, "step-" + n);
      int code = runChild(record, "step", n);
      int version = Header.read(record.resolve(Database.FILE)).userVersion();
      assertThat(version).isIn(NEWEST, NEWEST + 1);
      assertThat(integrity(record, both)).isEqualTo("ok");
      if (code == 0) {
        assertThat(version).isEqualTo(NEWEST + 1);
        break;
      }
      died++;
      undone += version == NEWEST ? 1 : 0;
    }
    assertThat(died).as("statements at which it died").isGreaterThan(undone);
    assertThat(undone).as("deaths before the step was whole").isGreaterThan(3);
  }
}
