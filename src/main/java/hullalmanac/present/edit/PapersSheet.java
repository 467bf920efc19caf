package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Papers about a boat, and about all of them, each written as PDF by one button. */
public final class PapersSheet extends FleetSheet {
  private static final Map<Papers.Sort, String> OF_HER = new LinkedHashMap<>();
  private static final Map<Papers.Sort, String> OF_ALL = new LinkedHashMap<>();

  static {
    OF_HER.put(Papers.Sort.HISTORY, "History for the owner");
    OF_HER.put(Papers.Sort.CONDITION, "Condition report");
    OF_HER.put(Papers.Sort.CARE, "Care card");
    OF_HER.put(Papers.Sort.ESTIMATE, "Estimate");
    OF_HER.put(Papers.Sort.CARD, "Job card");
    OF_ALL.put(Papers.Sort.DUE, "What is due, by harbour");
    OF_ALL.put(Papers.Sort.LIVES, "How long products last");
    OF_ALL.put(Papers.Sort.YEAR, "Takings of this year");
  }

  private final Id<Boat> boat;
  private final PaperReply reply;

  public PapersSheet(Desk desk, Id<Boat> boat) {
    super(desk);
    this.boat = boat;
    reply = new PaperReply(desk, this::publish);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  private Optional<Boat> one(Fleet fleet) {
    return fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Words(
            "Each is written as PDF into the folder papers of the record, on the paper and with the"
                + " letterhead of Settings. The condition report and the care card are of her newest"
                + " visit that was done, the job card of the next that is planned."));
    blocks.add(buttons(OF_HER));
    blocks.add(new SheetState.Words("Of all boats:"));
    blocks.add(buttons(OF_ALL));
    blocks.add(new SheetState.Words(reply.said()));
    blocks.add(new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", false))));
    return new SheetState(
        "Papers of " + one(fleet).map(Boat::name).orElse("a boat that is gone"),
        "To save, to print, to send along",
        blocks,
        Optional.empty());
  }

  private static SheetState.Buttons buttons(Map<Papers.Sort, String> papers) {
    return new SheetState.Buttons(
        papers.entrySet().stream()
            .map(
                e ->
                    new SheetState.Button(
                        e.getKey().code(), e.getValue(), e.getKey() == Papers.Sort.HISTORY))
            .toList());
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    fleet()
        .ifPresent(
            f ->
                reply.write(
                    f,
                    new Papers.Asked(
                        Coded.parse(Papers.Sort.class, button).orElseThrow(),
                        one(f).map(Boat::key),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())));
  }

  @Override
  public Topic topic() {
    return Topic.PAPER;
  }
}
