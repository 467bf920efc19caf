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

/** Takes files that are dropped or pasted into a block of a sheet, or what has no file. */
final class SheetTransfer extends TransferHandler {
  private static final long serialVersionUID = 1L;

  /** Files before a picture: who copies a file of a picture means the file. */
  static final List<DataFlavor> PHOTOS =
      List.of(DataFlavor.javaFileListFlavor, DataFlavor.imageFlavor);

  /** Files before texts: who copies a file copies its name as a text, too. */
  static final List<DataFlavor> TABLES =
      List.of(DataFlavor.javaFileListFlavor, DataFlavor.stringFlavor);

  private final transient Sheet sheet;
  private final String block;
  private final transient List<DataFlavor> taken;

  /**
   * @param taken {@link #PHOTOS} or {@link #TABLES}
   */
  SheetTransfer(Sheet sheet, String block, List<DataFlavor> taken) {
    this.sheet = sheet;
    this.block = block;
    this.taken = taken;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    boolean known = taken.stream().anyMatch(support::isDataFlavorSupported);
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
    return canImport(support)
        && taken.stream()
            .filter(support::isDataFlavorSupported)
            .anyMatch(flavour -> add(data(support.getTransferable(), flavour)));
  }

  /** Adds what was handed over; what is of no use is left for the next flavour. */
  private boolean add(Optional<Object> given) {
    Object data = given.orElse(null);
    if (data instanceof List<?> files) {
      sheet.add(block, files.stream().map(Object::toString).toList());
    } else if (data instanceof Image image) {
      pixels(image).ifPresent(p -> sheet.add(block, p));
    } else if (data instanceof String text) {
      sheet.add(block, text);
    } else {
      return false;
    }
    return true;
  }

  private static Optional<Object> data(Transferable given, DataFlavor flavour) {
    try {
      return Optional.of(given.getTransferData(flavour));
    } catch (Exception e) {
      // Whoever offered it has gone, or it is not what it was said to be.
      Logger.getLogger(SheetTransfer.class.getName()).log(Level.INFO, "nothing was handed over", e);
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
