package hullalmanac.ui.card;

import hullalmanac.present.card.CardPresenter;
import hullalmanac.ui.widget.Act;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/** The keys that work while a card is shown. */
public final class CardKeys {
  private CardKeys() {}

  /**
   * Binds them.
   *
   * @param zoom makes all larger (1), smaller (−1) or as usual (0)
   */
  public static void bind(
      JComponent root, CardPresenter presenter, Runnable help, IntConsumer zoom) {
    Act.inWindow(root, "ESCAPE", presenter::leave);
    Act.inWindow(root, "F9", presenter::leave);
    Act.inWindow(root, "F1", help);
    Act.inWindow(root, "PAGE_DOWN", () -> presenter.go(1));
    Act.inWindow(root, "PAGE_UP", () -> presenter.go(-1));
    Act.inWindow(root, "ctrl ENTER", presenter::tickStep);
    Act.inWindow(root, "ctrl M", presenter::time);
    Act.inWindow(root, "menu P", presenter::print);
    for (String plus : List.of("menu PLUS", "menu EQUALS", "menu ADD")) {
      Act.inWindow(root, plus, () -> zoom.accept(1));
    }
    for (String minus : List.of("menu MINUS", "menu SUBTRACT")) {
      Act.inWindow(root, minus, () -> zoom.accept(-1));
    }
    Act.inWindow(root, "menu 0", () -> zoom.accept(0));
  }
}
