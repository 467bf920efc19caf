package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list of one's own brought in by real keys: looked at, mended, in, and back by one undo. */
@NeedsDisplay
class BringListIT {
  private static final String LIST =
      """
      Boat\tOwner\tPhone\tLength\tHarbour
      Wheatear\tNell Farrow\t555-8101\t9.9m\tQuillhaven
      Stonechat / Whinchat\tBo Larch\t\t32' / 28'\tQuillhaven
      Total\t\t\t2\t
      """;

  @TempDir Path home;
  private OpenWindow window;

  /** A file copied elsewhere. */
  private record CopiedFile(File file) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {DataFlavor.javaFileListFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor wanted) {
      return wanted.equals(DataFlavor.javaFileListFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor wanted) throws UnsupportedFlavorException {
      if (!isDataFlavorSupported(wanted)) {
        throw new UnsupportedFlavorException(wanted);
      }
      return List.of(file);
    }
  }

  @BeforeEach
  void open() throws Exception {
    window = OpenWindow.onSample(home);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private static void copy(Transferable given) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(given, null);
  }

  private boolean has(String name) {
    return window.almanac().boats().stream().map(Boat::name).anyMatch(name::equals);
  }

  private void openAndPaste() throws Exception {
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_I);
    window.await(() -> window.focused().equals("list file"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
    window.await(() -> window.shows("list rows"));
  }

  @Test
  void aCopiedTableComesInByThreeKeysAndGoesByOne() throws Exception {
    copy(new StringSelection(LIST));
    Almanac before = window.almanac();
    int keys = window.keys();
    openAndPaste();
    assertThat(window.says("This would come in: 3 new boats")).isTrue();
    assertThat(has("Wheatear")).as("before one says so").isFalse();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> has("Wheatear") && has("Stonechat") && has("Whinchat"));
    assertThat(window.keys() - keys).isEqualTo(3);
    window.await(() -> window.says("The list is in"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
    window.await(() -> window.almanac().equals(before));
    window.await(() -> window.shows("list rows"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_Z);
    window.await(() -> has("Whinchat"));
    assertThat(window.filesTouched()).isEmpty();
  }

  @Test
  void aFileOfAnotherTimeIsReadAndARowMendedInThePreviewAndAColumnChosenByKeys() throws Exception {
    Path list = home.resolve("Eigner.csv");
    Files.writeString(
        list,
        """
        Schiffsname;Eigner;Länge (m);Hafen;Dies und das
        Möwe;Jürgen Groß;9,75;Quillhaven;hoher Mast
        Alk;Käthe Brömel;11,2;Quillhaven;
        """,
        Charset.forName("windows-1252"));
    copy(new CopiedFile(list.toFile()));
    openAndPaste();
    assertThat(window.says("Möwe")).isTrue();
    chooseLastColumn("note on the owner");
    tabTo("list rows");
    window.press(KeyEvent.VK_RIGHT);
    window.type("mew");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> has("mew") && has("Alk"));
    assertThat(window.almanac().parties())
        .filteredOn(p -> p.name().equals("Jürgen Groß"))
        .singleElement()
        .satisfies(p -> assertThat(p.note()).contains("hoher Mast"));
    assertThat(window.filesTouched()).isEmpty();
  }

  /** Chooses by the first letter, as often as it takes. */
  private void chooseLastColumn(String words) throws Exception {
    tabTo("list columns c4");
    for (int i = 0; i < 40 && !window.focusedText().equals(words); i++) {
      window.type("n");
    }
    assertThat(window.focusedText()).isEqualTo(words);
  }

  private void tabTo(String name) throws Exception {
    for (int i = 0; i < 40 && !window.focused().startsWith(name); i++) {
      window.tab();
    }
    assertThat(window.focused()).startsWith(name);
  }
}
