package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.Look;
import hullalmanac.present.shell.WindowLook;
import hullalmanac.present.table.TableChoice;
import hullalmanac.present.table.TableChoices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the window and its tables were left, written to a file and read again. */
class FileWindowMemoryTest {
  private static final TableChoice COATS =
      TableChoice.usual(List.of("Laid on", "Surface", "Batch"))
          .move("Batch", false)
          .show("Surface", false)
          .widths(Map.of("Laid on", 140, "Batch", 90))
          .sortedBy(Optional.of(new TableChoice.Sort("Laid on", true)));
  private static final TableChoice ODD =
      TableChoice.usual(List.of("a = b: #!", " blanks ", "½ é\t–", ""))
          .show("", false)
          .sortedBy(Optional.of(new TableChoice.Sort(" blanks ", false)));

  @TempDir Path folder;
  private FileWindowMemory memory;

  @BeforeEach
  void file() {
    memory = new FileWindowMemory(folder.resolve("state/window.properties"));
  }

  private static WindowLook look(Map<String, TableChoice> tables) {
    return new WindowLook(
        40,
        30,
        1000,
        700,
        false,
        new Look(Look.Tint.DARK, 1.5f, true, false),
        new TableChoices(tables));
  }

  @Test
  void readsBackWhatItWrote() {
    assertThat(memory.recall()).isEmpty();
    for (WindowLook look :
        List.of(look(Map.of()), look(Map.of("Coats", COATS, "When, what. = :", ODD)))) {
      memory.keep(look);
      assertThat(memory.recall()).contains(look);
    }
  }

  @Test
  void aTableWhoseLinesMakeNoSenseIsPassedOverAndTheRestIsKept() throws Exception {
    memory.keep(look(Map.of("Coats", COATS, "Visits", ODD)));
    for (String spoilt :
        List.of(
            "table.Coats.1=shown wide Laid on",
            "table.Coats.1=shown",
            "table.Coats.1=hidden 0 Laid on\ntable.Coats.2=hidden 0 Batch",
            "table.Coats.2=shown 0 Laid on",
            "table.Coats.1=shown -5 Laid on",
            "table.Coats.sort=down Price",
            "table.Coats.sort=down")) {
      String before = Files.readString(memory.file());
      Files.writeString(memory.file(), before + spoilt + "\n");
      assertThat(memory.recall()).as(spoilt).contains(look(Map.of("Visits", ODD)));
      Files.writeString(memory.file(), before);
    }
    Files.writeString(
        memory.file(), Files.readString(memory.file()) + "table.=1\ntable.x=2\ntable..1=\n");
    assertThat(memory.recall()).contains(look(Map.of("Coats", COATS, "Visits", ODD)));
  }

  @Test
  void aFileFromBeforeTablesWereRememberedStillSaysWhereTheWindowStood() throws Exception {
    Files.createDirectories(memory.file().getParent());
    Files.writeString(
        memory.file(), "x=40\ny=30\nwidth=1000\nheight=700\ntint=dark\nzoom=1.5\nwetHands=true\n");
    assertThat(memory.recall()).contains(look(Map.of()));
    Files.writeString(memory.file(), "x=forty\n");
    assertThat(memory.recall()).isEmpty();
  }
}
