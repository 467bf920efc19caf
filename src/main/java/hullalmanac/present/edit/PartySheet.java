package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All that is known of a person or a firm. */
public final class PartySheet extends FleetSheet {
  private final Id<Party> party;
  private final Rows<Party> facts;
  private final boolean inPlace;

  public PartySheet(Desk desk, Id<Party> party) {
    this(desk, party, false);
  }

  /**
   * @param inPlace whether it stands in its place in the window, so that there is nothing to leave
   */
  public PartySheet(Desk desk, Id<Party> party, boolean inPlace) {
    super(desk);
    this.inPlace = inPlace;
    this.party = party;
    facts =
        new Rows<>(
            Rows.Block.plain(
                "facts",
                "",
                f -> one(f).stream().toList(),
                Party::name,
                f -> PartyFields.of(new FieldMaker(f.almanac().business(), f.asOf()))),
            desk);
  }

  private Optional<Party> one(Fleet fleet) {
    return fleet.almanac().parties().stream().filter(p -> p.id().equals(party)).findFirst();
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Party> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "Not in the record", "This person or firm was removed.", List.of(), Optional.empty());
    }
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    List<List<String>> boats =
        fleet.almanac().roles().stream()
            .filter(r -> r.party().equals(party))
            .map(
                r -> {
                  Boat boat = lookups.boat(r.boat());
                  return List.of(
                      boat.name(),
                      r.kind().words(),
                      r.from().toString(),
                      r.until().map(Object::toString).orElse(""));
                })
            .toList();
    return new SheetState(
        now.get().name(),
        "How to reach them, and what they do for which boat",
        List.of(
            facts.form(fleet),
            new SheetState.Table(
                "Boats",
                List.of("Boat", "Does what", "From", "Until"),
                boats,
                "They have to do with no boat yet."),
            new SheetState.Buttons(buttons())),
        Optional.empty());
  }

  private List<SheetState.Button> buttons() {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (!inPlace) {
      buttons.add(new SheetState.Button("done", "Done", true));
    }
    buttons.add(new SheetState.Button("changes", "What changed", false));
    buttons.add(new SheetState.Button("remove", "Remove", false));
    return buttons;
  }

  @Override
  public void press(String button) {
    Optional<Party> now = fleet().flatMap(this::one);
    if (button.equals("changes")) {
      desk.open(new ChangesSheet(desk, Kind.PARTY, party, now.map(Party::name).orElse("")));
    } else if (button.equals("remove") && now.isPresent()) {
      desk.change(now.get().name() + " removed", almanac -> Removal.of(almanac, now.get()));
    } else {
      desk.leave();
    }
  }

  @Override
  public Topic topic() {
    return Topic.PEOPLE;
  }
}
