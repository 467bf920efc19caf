package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Act;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was removed and can be put back. */
public final class BinSheet extends FleetSheet {
  private static final int MOST = 100;

  private Optional<List<Act>> removed = Optional.empty();

  public BinSheet(Desk desk) {
    super(desk);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  @Override
  public void show(Fleet fleet) {
    super.show(fleet);
    desk.ask(
        hullalmanac.service.EditService::bin,
        answer -> {
          removed = Optional.of(answer);
          publish();
        });
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    List<Act> acts = removed.orElse(List.of()).stream().limit(MOST).toList();
    if (acts.isEmpty()) {
      blocks.add(new SheetState.Words(removed.isEmpty() ? "Reading …" : "The bin is empty."));
    }
    for (Act act : acts) {
      blocks.add(
          new SheetState.Buttons(
              List.of(
                  new SheetState.Button(act.id().toString(), "Put back: " + act.what(), false))));
    }
    blocks.add(new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", true))));
    return new SheetState(
        "Bin",
        "What was removed and is not back. Nothing here is ever emptied.",
        blocks,
        Optional.empty());
  }

  @Override
  public void press(String button) {
    Optional<Act> chosen =
        removed.orElse(List.of()).stream()
            .filter(a -> a.id().toString().equals(button))
            .findFirst();
    if (chosen.isPresent()) {
      desk.act(edits -> edits.putBack(chosen.get()));
    } else {
      desk.leave();
    }
  }

  @Override
  public Topic topic() {
    return Topic.WRITING_DOWN;
  }
}
