package hullalmanac.present.edit;

import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A sheet that is shown again after each change of the record, and of itself. */
abstract class ShownSheet implements Sheet {
  protected final Desk desk;

  /** What stands over all of it because something did not go. */
  protected Optional<String> trouble = Optional.empty();

  private Consumer<SheetState> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private SheetState state = new SheetState("", "", List.of(), Optional.empty());

  ShownSheet(Desk desk) {
    this.desk = desk;
  }

  /** What is shown of a record. */
  abstract SheetState stateOf(Fleet fleet);

  /** Begins with the first record that is shown. */
  void begin(Fleet first) {}

  protected final Optional<Fleet> fleet() {
    return fleet;
  }

  /** What is shown now. */
  protected final SheetState state() {
    return state;
  }

  @Override
  public final void onChange(Consumer<SheetState> view) {
    this.view = view;
    view.accept(state);
  }

  @Override
  public void show(Fleet now) {
    boolean first = fleet.isEmpty();
    fleet = Optional.of(now);
    if (first) {
      begin(now);
    }
    publish();
  }

  /** Shows the sheet again. */
  protected final void publish() {
    fleet.ifPresent(
        f -> {
          state = stateOf(f).and(trouble);
          view.accept(state);
        });
  }

  /** Shows the sheet again if it would be another. */
  protected final void publishIfOther() {
    if (fleet.filter(f -> !stateOf(f).and(trouble).equals(state)).isPresent()) {
      publish();
    }
  }
}
