package hullalmanac.ui.sheet;

import hullalmanac.core.record.Pixels;
import hullalmanac.present.sheet.Sheet;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.ImageIcon;
import javax.swing.TransferHandler;

/** Takes files, or a picture without a file, that are dropped or pasted. */
final class PhotoTransfer extends TransferHandler {
  private static final long serialVersionUID = 1L;

  /** Files before a picture: who copies a file of a picture means the file. */
  static final List<DataFlavor> TAKEN =
      List.of(DataFlavor.javaFileListFlavor, DataFlavor.imageFlavor);

  private final transient Sheet sheet;
  private final String block;

  PhotoTransfer(Sheet sheet, String block) {
    this.sheet = sheet;
    this.block = block;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    boolean known = TAKEN.stream().anyMatch(support::isDataFlavorSupported);
    if (known && support.isDrop()) {
      // The files stay where they are, whatever the other side proposes.
      boolean copies = (support.getSourceDropActions() & COPY) == COPY;
      if (copies) {
        support.setDropAction(COPY);
      }
      return copies;
    }
    return known;
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!canImport(support)) {
      return false;
    }
    Transferable given = support.getTransferable();
    if (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
        && data(given, DataFlavor.javaFileListFlavor).orElse(null) instanceof List<?> files) {
      sheet.add(block, files.stream().map(Object::toString).toList());
      return true;
    }
    if (data(given, DataFlavor.imageFlavor).orElse(null) instanceof Image image) {
      pixels(image).ifPresent(p -> sheet.add(block, p));
      return true;
    }
    return false;
  }

  private static Optional<Object> data(Transferable given, DataFlavor flavour) {
    try {
      return Optional.of(given.getTransferData(flavour));
    } catch (Exception e) {
      // Whoever offered it has gone, or it is not what it was said to be.
      Logger.getLogger(PhotoTransfer.class.getName()).log(Level.INFO, "nothing was handed over", e);
      return Optional.empty();
    }
  }

  private static Optional<Pixels> pixels(Image given) {
    Image whole = new ImageIcon(given).getImage();
    int width = whole.getWidth(null);
    int height = whole.getHeight(null);
    if (width < 1 || height < 1) {
      return Optional.empty();
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.createGraphics().drawImage(whole, 0, 0, null);
    return Optional.of(
        new Pixels(width, height, image.getRGB(0, 0, width, height, null, 0, width)));
  }
}
