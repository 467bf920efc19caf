package hullalmanac.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.exchange.photo.DrawnPhotos;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An evening by keys alone: open, paste, put in. */
@NeedsDisplay
class PhotosIT {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  @TempDir Path home;
  private OpenWindow window;

  /** Something copied elsewhere. */
  private record Copied(DataFlavor flavour, Object data) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {flavour};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor wanted) {
      return wanted.equals(flavour);
    }

    @Override
    public Object getTransferData(DataFlavor wanted) throws UnsupportedFlavorException {
      if (!isDataFlavorSupported(wanted)) {
        throw new UnsupportedFlavorException(wanted);
      }
      return data;
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

  private Boat siskin() {
    return window.almanac().boats().stream()
        .filter(b -> b.name().equals("Siskin"))
        .findFirst()
        .orElseThrow();
  }

  private boolean washedToday() {
    return window.almanac().visits().stream()
        .anyMatch(v -> v.boat().equals(siskin().id()) && v.day().equals(TODAY));
  }

  private static void copy(Copied copied) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(copied, null);
  }

  private List<File> files() throws Exception {
    List<File> files = new ArrayList<>();
    for (int n = 0; n < 5; n++) {
      Path file = home.resolve("p" + n + ".jpg");
      Files.write(file, DrawnPhotos.jpeg(n, TODAY.atTime(9 + n * n / 2, 10 + n)));
      files.add(file.toFile());
    }
    return files;
  }

  @Test
  void photosPastedInTheEveningGoInWithoutAFileTouchedOnTheEventThread() throws Exception {
    Boat boat = siskin();
    window.run(
        () -> {
          window.presenter().openBoat(boat.id());
          window.presenter().boats().washed();
          window.presenter().boats().washed(Optional.empty());
        });
    window.await(this::washedToday);
    int before = window.almanac().photos().size();
    copy(new Copied(DataFlavor.javaFileListFlavor, files()));
    int keys = window.keys();
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_E);
    window.await(() -> window.focused().equals("photos"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
    window.await(() -> window.shows("put"));
    window.await(() -> window.focused().equals("photos"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
    window.await(() -> window.almanac().photos().size() == before + 5);
    assertThat(window.keys() - keys).isEqualTo(3);
    copy(new Copied(DataFlavor.imageFlavor, DrawnPhotos.hull(9, 60, 40)));
    window.await(() -> window.focused().equals("photos"));
    window.press(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
    window.await(() -> window.says("time not known"));
    assertThat(window.filesTouched()).isEmpty();
  }
}
