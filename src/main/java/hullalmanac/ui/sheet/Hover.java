package hullalmanac.ui.sheet;

import java.awt.datatransfer.DataFlavor;
import java.awt.dnd.DropTargetAdapter;
import java.awt.dnd.DropTargetDragEvent;
import java.awt.dnd.DropTargetDropEvent;
import java.awt.dnd.DropTargetEvent;
import java.util.List;
import java.util.function.Consumer;

/** Tells whether something is held over a place where it can be dropped. */
final class Hover extends DropTargetAdapter {
  private final List<DataFlavor> taken;
  private final Consumer<Boolean> over;

  /**
   * @param taken what can be dropped
   */
  Hover(List<DataFlavor> taken, Consumer<Boolean> over) {
    this.taken = taken;
    this.over = over;
  }

  @Override
  public void dragEnter(DropTargetDragEvent e) {
    over.accept(taken.stream().anyMatch(flavour -> e.isDataFlavorSupported(flavour)));
  }

  @Override
  public void dragExit(DropTargetEvent e) {
    over.accept(false);
  }

  @Override
  public void drop(DropTargetDropEvent e) {
    over.accept(false);
  }
}
