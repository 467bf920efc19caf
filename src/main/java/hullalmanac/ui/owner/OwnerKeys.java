package hullalmanac.ui.owner;

import hullalmanac.ui.widget.Act;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/** The keys that work while a boat is shown to her owner. */
public final class OwnerKeys {
  private OwnerKeys() {}

  /**
   * Binds them.
   *
   * @param zoom makes all larger (1), smaller (−1) or as usual (0)
   */
  public static void bind(JComponent root, Runnable leave, Runnable help, IntConsumer zoom) {
    Act.inWindow(root, "ESCAPE", leave);
    Act.inWindow(root, "F11", leave);
    Act.inWindow(root, "F1", help);
    for (String plus : List.of("menu PLUS", "menu EQUALS", "menu ADD")) {
      Act.inWindow(root, plus, () -> zoom.accept(1));
    }
    for (String minus : List.of("menu MINUS", "menu SUBTRACT")) {
      Act.inWindow(root, minus, () -> zoom.accept(-1));
    }
    Act.inWindow(root, "menu 0", () -> zoom.accept(0));
  }
}
