package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.Sheet;
import java.awt.datatransfer.DataFlavor;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.TransferHandler;

/** Takes files, or a text, that are dropped or pasted. */
final class FileTransfer extends TransferHandler {
  private static final long serialVersionUID = 1L;

  /** Files before texts: who copies a file copies its name as a text, too. */
  static final List<DataFlavor> TAKEN =
      List.of(DataFlavor.javaFileListFlavor, DataFlavor.stringFlavor);

  private final transient Sheet sheet;
  private final String block;

  FileTransfer(Sheet sheet, String block) {
    this.sheet = sheet;
    this.block = block;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    boolean known = TAKEN.stream().anyMatch(support::isDataFlavorSupported);
    if (known && support.isDrop()) {
      // The file stays where it is, whatever the other side proposes.
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
    try {
      if (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
        List<?> files =
            (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
        sheet.add(block, files.stream().map(Object::toString).toList());
      } else {
        sheet.add(
            block,
            String.valueOf(support.getTransferable().getTransferData(DataFlavor.stringFlavor)));
      }
      return true;
    } catch (Exception e) {
      // Whoever offered it has gone, or it is not what it was said to be.
      Logger.getLogger(FileTransfer.class.getName()).log(Level.INFO, "nothing was handed over", e);
      return false;
    }
  }
}
