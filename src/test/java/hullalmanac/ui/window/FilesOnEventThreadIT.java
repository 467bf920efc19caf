package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.FileInputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The watchdog itself: it sees each way to a file, and only on the event thread. */
class FilesOnEventThreadIT {
  @TempDir Path home;

  private static List<String> watched(Callable<?> act, boolean onEventThread) throws Exception {
    try (FilesOnEventThread files = new FilesOnEventThread()) {
      if (onEventThread) {
        OpenWindow.onEventThread(act);
      } else {
        act.call();
      }
      return files.touched();
    }
  }

  private static void isSeen(String how, Callable<?> act) throws Exception {
    assertThat(watched(act, true)).as(how).anySatisfy(t -> assertThat(t).contains(how));
    assertThat(watched(act, false)).as(how + " on another thread").isEmpty();
  }

  @Test
  void seesAFileAskedForOpenedReadAndWritten() throws Exception {
    Path note = Files.writeString(home.resolve("note.txt"), "a note");
    File old = note.toFile();
    String named = "[" + note + "]";
    isSeen(named, () -> Files.exists(note));
    isSeen(
        "newDirectoryStream [" + home + "]",
        () -> {
          try (Stream<Path> in = Files.list(home)) {
            return in.toList();
          }
        });
    isSeen(named, () -> Files.readString(note));
    isSeen("jdk.FileRead " + named, () -> Files.readString(note));
    isSeen("jdk.FileWrite " + named, () -> Files.writeString(note, "another"));
    isSeen("java.io.File.exists " + named, old::exists);
    isSeen("java.io.File.lastModified " + named, old::lastModified);
    isSeen(
        "java.io.FileInputStream.<init> " + named,
        () -> {
          try (FileInputStream in = new FileInputStream(old)) {
            return in.read();
          }
        });
    isSeen(
        "deleteIfExists [" + home.resolve("gone.txt") + "]",
        () -> Files.deleteIfExists(home.resolve("gone.txt")));
  }

  @Test
  void seesAFileThatWasOpenedElsewhere() throws Exception {
    Path note = home.resolve("open.txt");
    try (FileChannel open =
        FileChannel.open(note, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      isSeen("FileChannelImpl.truncate", () -> open.truncate(0));
      isSeen("FileChannelImpl.write", () -> open.write(ByteBuffer.wrap(new byte[] {1})));
      isSeen(
          "jdk.FileForce",
          () -> {
            open.force(true);
            return true;
          });
    }
  }

  @Test
  void seesAStatementOnAConnectionThatWasOpenedElsewhere() throws Exception {
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("a.db"));
        Statement statement = open.createStatement()) {
      statement.execute("CREATE TABLE a (b)");
      isSeen("org.sqlite.core.", () -> statement.execute("INSERT INTO a VALUES (1)"));
      try (ResultSet rows = statement.executeQuery("SELECT b FROM a")) {
        rows.next();
        isSeen("org.sqlite.core.", () -> rows.getInt(1));
        isSeen("org.sqlite.core.", rows::next);
      }
    }
  }

  @Test
  void leavesOutWhatJavaNeedsForClassesAndLetters() throws Exception {
    assertThat(
            watched(
                () ->
                    new java.awt.image.BufferedImage(
                            1, 1, java.awt.image.BufferedImage.TYPE_INT_RGB)
                        .createGraphics()
                        .getFontMetrics()
                        .stringWidth("letters"),
                true))
        .isEmpty();
  }
}
