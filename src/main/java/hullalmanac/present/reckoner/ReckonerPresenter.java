package hullalmanac.present.reckoner;

import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.function.Consumer;

/** The small sums, and which of them is shown. */
public final class ReckonerPresenter {
  private final List<Calculator<?>> sums;
  private Consumer<ReckonerState> view = s -> {};
  private int chosen;

  public ReckonerPresenter(Desk desk) {
    sums =
        List.of(
            new DilutionSheet(),
            new SpreadSheet(),
            new AreaSheet(),
            new StationsSheet(),
            new CoatingSheet(desk),
            new DewPointSheet(),
            new HullNumberSheet(),
            new UnitsSheet(),
            new PriceSheet());
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<ReckonerState> view) {
    this.view = view;
    publish();
  }

  /** Gives the sums the boats and products of a record. */
  public void show(Fleet fleet) {
    sums.forEach(s -> s.show(fleet));
  }

  /** Looks at the clock again. */
  public void tick() {
    sums.forEach(Calculator::tick);
  }

  /**
   * Shows another sum.
   *
   * @param index from 0, in the order of the list
   */
  public void choose(int index) {
    if (index != chosen) {
      chosen = index;
      publish();
    }
  }

  /** The sheet of the sum that is shown. */
  public Sheet chosen() {
    return sums.get(chosen);
  }

  private void publish() {
    view.accept(
        new ReckonerState(sums.stream().map(Calculator::item).toList(), chosen, sums.get(chosen)));
  }
}
