package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.With;
import hullalmanac.core.work.NewBoat;
import hullalmanac.core.work.PhoneCall;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A boat from a phone call: five fields, and what she is like when it is known. */
public final class NewBoatSheet extends ShownSheet {
  private static final String FORM = "call";

  private static final Call NOTHING =
      new Call("", "", "", Optional.empty(), "", Optional.empty(), BoatType.SLOOP);

  private final Draft<Call> draft = new Draft<>(FORM, NOTHING);
  private final Making making;
  private boolean over;

  /**
   * What was said on the phone so far; public so that it can be copied with one component changed.
   */
  public record Call(
      String owner,
      String phone,
      String boat,
      Optional<Length> length,
      String harbour,
      Optional<Double> latitude,
      BoatType type) {}

  public NewBoatSheet(Desk desk) {
    super(desk);
    making = new Making(desk);
  }

  /** Whether something was written here that is neither in the record nor given up. */
  public boolean begun() {
    return !over && !draft.isStill(NOTHING);
  }

  private List<FieldOf<Call>> fields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    List<FieldOf<Call>> fields = new ArrayList<>();
    fields.add(
        suggest("owner", "Owner", names(fleet.almanac().parties(), Party::name), Call::owner));
    fields.add(make.line("phone", "Phone", Call::phone));
    fields.add(make.line("boat", "Boat", Call::boat));
    fields.add(make.length("length", "Length", Call::length));
    fields.add(
        suggest(
            "harbour", "Harbour", names(fleet.almanac().harbours(), Harbour::name), Call::harbour));
    fields.add(make.choice("type", "Type", BoatType.class, Call::type));
    if (isNew(fleet)) {
      fields.add(
          make.maybeNumber(
              "latitude",
              "Latitude of " + draft.value().harbour() + ", north positive",
              Call::latitude));
    }
    return fields;
  }

  private static <R> List<String> names(List<R> rows, Function<R, String> name) {
    return rows.stream().map(name).distinct().sorted().toList();
  }

  private static FieldOf<Call> suggest(
      String id, String label, List<String> words, Function<Call, String> get) {
    List<String> all = new ArrayList<>(words);
    all.add(0, "");
    return new FieldOf<>(
        id,
        label,
        new Input.Suggest(all),
        get,
        (row, typed) -> new Entry.Read<>(With.component(row, id, typed.strip()), ""));
  }

  private Optional<Id<Harbour>> known(Almanac almanac) {
    return almanac.harbours().stream()
        .filter(h -> h.name().equalsIgnoreCase(draft.value().harbour()))
        .map(Harbour::id)
        .findFirst();
  }

  private boolean isNew(Fleet fleet) {
    return !draft.value().harbour().isEmpty() && known(fleet.almanac()).isEmpty();
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    return new SheetState(
        "A new boat",
        "What one hears on the phone. Her surfaces come from the type; all can be changed later.",
        List.of(
            draft.form("", fields(fleet)),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("write", "Write her down", true),
                    new SheetState.Button("leave", "Leave it", false)))),
        Optional.empty());
  }

  @Override
  public Said say(At at, String text) {
    return fleet().map(f -> draft.say(fields(f), at, text)).orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet().ifPresent(f -> draft.enter(fields(f), at, text));
    trouble = Optional.empty();
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("leave")) {
      over = true;
      desk.leave();
      return;
    }
    fleet().ifPresent(this::write);
  }

  private void write(Fleet fleet) {
    trouble = draft.trouble(fields(fleet)).or(() -> missing(fleet));
    if (trouble.isPresent()) {
      publish();
      return;
    }
    PhoneCall heard = heard(fleet);
    making.make(
        heard.boat() + " written down",
        almanac -> NewBoat.from(almanac, desk.ids(), heard),
        Boat.class,
        boat -> {
          over = true;
          desk.openBoat(boat.id());
        });
  }

  private PhoneCall heard(Fleet fleet) {
    PhoneCall.Where where =
        known(fleet.almanac())
            .<PhoneCall.Where>map(PhoneCall.At::new)
            .orElseGet(
                () ->
                    new PhoneCall.AtNew(
                        draft.value().harbour(), draft.value().latitude().orElseThrow()));
    return new PhoneCall(
        draft.value().owner(),
        draft.value().phone(),
        draft.value().boat(),
        draft.value().length(),
        where,
        draft.value().type(),
        fleet.asOf());
  }

  private Optional<String> missing(Fleet fleet) {
    if (draft.value().boat().isEmpty()) {
      return Optional.of("Give the boat a name.");
    }
    if (draft.value().owner().isEmpty()) {
      return Optional.of("Say whose boat she is.");
    }
    if (draft.value().harbour().isEmpty()) {
      return Optional.of("Say in which harbour she lies.");
    }
    if (isNew(fleet) && draft.value().latitude().isEmpty()) {
      return Optional.of(
          draft.value().harbour()
              + " is new. Its latitude is needed for sun and wear; whole degrees do.");
    }
    return Optional.empty();
  }

  @Override
  public Topic topic() {
    return Topic.NEW_BOAT;
  }
}
