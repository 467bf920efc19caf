package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Pixels;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What photos that are handed over become, and how cards are shown; without a display. */
class PhotosViewTest {
  private final Noting sheet = new Noting();

  /** A sheet that notes down what it is given. */
  private static final class Noting implements Sheet {
    final List<String> noted = new ArrayList<>();
    final List<Pixels> pictures = new ArrayList<>();

    @Override
    public void onChange(Consumer<SheetState> view) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void show(Fleet fleet) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {
      noted.add(at.row() + " " + at.field() + " " + text);
    }

    @Override
    public void add(String block, List<String> files) {
      noted.add(block + " " + files);
    }

    @Override
    public void add(String block, Pixels picture) {
      pictures.add(picture);
    }

    @Override
    public void picture(String file, int side, Consumer<Picture> answer) {
      noted.add("picture " + file);
      answer.accept(new Picture(Optional.empty(), "kept; cannot be shown here"));
    }

    @Override
    public void remove(String block, String row) {
      noted.add("without " + row);
    }
  }

  /** Something handed over in several flavours. */
  private record Handed(Map<DataFlavor, Object> data) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return data.keySet().toArray(DataFlavor[]::new);
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavour) {
      return data.containsKey(flavour);
    }

    @Override
    public Object getTransferData(DataFlavor flavour)
        throws UnsupportedFlavorException, IOException {
      if (data.get(flavour) instanceof IOException e) {
        throw e;
      }
      return data.get(flavour);
    }
  }

  @BeforeEach
  void theme() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  private static SheetState.PhotoCard card(String id, String moment) {
    return new SheetState.PhotoCard(
        id,
        id + ".jpg",
        id + ".jpg",
        "09:10",
        List.of(
            new SheetState.Field(
                "moment",
                "Shows",
                new Input.Choice(List.of("before", "after")),
                moment,
                Said.NOTHING)),
        "Remove");
  }

  private static SheetState.Photos block(SheetState.PhotoCard... cards) {
    return new SheetState.Photos("photos", "Photos", List.of(cards), "", true);
  }

  private boolean hand(Transferable handed) throws Exception {
    boolean[] taken = new boolean[1];
    SwingUtilities.invokeAndWait(
        () -> {
          PhotosView view = new PhotosView(block(), sheet);
          taken[0] = view.getTransferHandler().importData(new TransferSupport(view, handed));
        });
    return taken[0];
  }

  @Test
  void filesGoBeforeTheirPicture() throws Exception {
    BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_RGB);
    boolean taken =
        hand(
            new Handed(
                Map.of(
                    DataFlavor.javaFileListFlavor,
                    List.of(new File("a.jpg"), new File("b.heic")),
                    DataFlavor.imageFlavor,
                    image)));
    assertThat(taken).isTrue();
    assertThat(sheet.noted).containsExactly("photos [a.jpg, b.heic]");
    assertThat(sheet.pictures).isEmpty();
  }

  @Test
  void aPictureWithoutAFileIsHandedOnPixelByPixel() throws Exception {
    BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, 0xff0f5c5c);
    image.setRGB(1, 0, 0xfffbfaf7);
    assertThat(hand(new Handed(Map.of(DataFlavor.imageFlavor, image)))).isTrue();
    assertThat(sheet.pictures.get(0).argb()).containsExactly(0xff0f5c5c, 0xfffbfaf7);
  }

  @Test
  void textIsNotTakenNorWhatIsGoneWhenItIsAskedFor() throws Exception {
    assertThat(hand(new StringSelection("/home/bow.jpg"))).isFalse();
    assertThat(hand(new Handed(Map.of(DataFlavor.imageFlavor, new IOException("gone"))))).isFalse();
    assertThat(sheet.noted).isEmpty();
    assertThat(sheet.pictures).isEmpty();
  }

  @Test
  void aCardThatChangesStaysTheSameCellAndOneThatGoesTakesItsCellAlong() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          PhotosView view = new PhotosView(block(card("a", "before"), card("b", "before")), sheet);
          List<PhotoCell> before = all(view, PhotoCell.class);
          view.show(block(card("b", "after")));
          List<PhotoCell> after = all(view, PhotoCell.class);
          assertThat(after).hasSize(1);
          assertThat(after.get(0)).isSameAs(before.get(1));
          assertThat(all(view, JComboBox.class).get(0).getSelectedItem()).isEqualTo("after");
          assertThat(sheet.noted).isEmpty();
        });
  }

  @Test
  void aChoiceIsTakenWithItsCardAndAButtonTakesThatCardOut() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          PhotosView view = new PhotosView(block(card("a", "before")), sheet);
          all(view, JComboBox.class).get(0).setSelectedItem("after");
          view.take();
          all(view, JButton.class).stream()
              .filter(b -> "remove a".equals(b.getName()))
              .forEach(JButton::doClick);
          assertThat(sheet.noted).containsExactly("a moment after", "without a");
        });
  }

  @Test
  void aPictureIsAskedForWhenItIsPaintedOnceAndSaysWhyThereIsNone() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          PictureBox box = new PictureBox("far.heic", "far.heic", sheet);
          box.setSize(box.getPreferredSize());
          BufferedImage paper = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
          assertThat(sheet.noted).isEmpty();
          box.paint(paper.createGraphics());
          box.paint(paper.createGraphics());
          assertThat(sheet.noted).containsExactly("picture far.heic");
          assertThat(all(box, JTextArea.class).get(0).getText())
              .isEqualTo("far.heic\nkept; cannot be shown here");
        });
  }

  private static <T> List<T> all(Container in, Class<T> type) {
    List<T> all = new ArrayList<>();
    for (Component c : in.getComponents()) {
      if (type.isInstance(c)) {
        all.add(type.cast(c));
      } else if (c instanceof Container inner) {
        all.addAll(all(inner, type));
      }
    }
    return all;
  }
}
