package hullalmanac.present.reckoner;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.reckon.Formula;
import hullalmanac.present.edit.Draft;
import hullalmanac.present.edit.FieldMaker;
import hullalmanac.present.edit.FieldOf;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.sheet.SheetState.Answer;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * A sum as a sheet: what is given, what comes out while one types, the formula and its source. It
 * writes nothing into the record.
 *
 * @param <T> what is given
 */
abstract class Calculator<T extends Record> implements Sheet {
  static final String GIVEN = "given";

  private final Draft<T> draft;
  private Consumer<SheetState> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<SheetState> shown = Optional.empty();

  Calculator(T nothing) {
    draft = new Draft<>(GIVEN, nothing);
  }

  abstract ReckonerState.Item item();

  abstract List<FieldOf<T>> fields(Fleet fleet, FieldMaker make);

  abstract Reckoned reckon(Fleet fleet, T given);

  abstract List<Formula> formulas();

  /** Heading and columns of the table beside it; empty where there is none. */
  List<String> table() {
    return List.of();
  }

  /** What else is on the sheet, between what comes out and the formula. */
  List<SheetState.Block> more(Fleet fleet, T given) {
    return List.of();
  }

  static Answer blank(String id) {
    return new Answer(id, "", "", "");
  }

  /** An answer that is copied as it stands. */
  static Answer answer(String id, String label, String text) {
    return new Answer(id, label, text, text);
  }

  static FieldMaker make(Fleet fleet) {
    return new FieldMaker(fleet.almanac().business(), fleet.asOf());
  }

  private List<FieldOf<T>> fields(Fleet fleet) {
    return fields(fleet, make(fleet));
  }

  final Optional<Fleet> fleet() {
    return fleet;
  }

  final T given() {
    return draft.value();
  }

  @Override
  public final void onChange(Consumer<SheetState> view) {
    this.view = view;
    view.accept(
        fleet
            .map(f -> stateOf(f, draft.value()))
            .orElse(new SheetState(item().name(), "", List.of(), Optional.empty())));
  }

  @Override
  public final void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    publish();
  }

  final void publish() {
    fleet.ifPresent(f -> publish(stateOf(f, draft.value())));
  }

  private void publish(SheetState state) {
    shown = Optional.of(state);
    view.accept(state);
  }

  /** Shows the sheet again if it would be another. */
  final void publishIfOther() {
    fleet.ifPresent(
        f -> {
          SheetState now = stateOf(f, draft.value());
          if (!shown.equals(Optional.of(now))) {
            publish(now);
          }
        });
  }

  private SheetState stateOf(Fleet fleet, T given) {
    Reckoned reckoned = reckon(fleet, given);
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(draft.form("", fields(fleet)));
    blocks.addAll(reckoned.answers());
    blocks.add(new SheetState.Words(reckoned.note()));
    blocks.add(new SheetState.Words(String.join("\n", reckoned.cautions()), true));
    if (!table().isEmpty()) {
      blocks.add(
          new SheetState.Table(
              table().get(0), table().subList(1, table().size()), reckoned.rows(), "Nothing yet."));
    }
    blocks.addAll(more(fleet, given));
    blocks.add(
        new SheetState.Words(
            formulas().stream()
                .map(f -> f.text() + "\nSource: " + f.source())
                .collect(Collectors.joining("\n\n"))));
    return new SheetState(item().name(), item().does(), blocks, Optional.empty());
  }

  /** Says what a text means, and shows what would come out with it. */
  @Override
  public Said say(At at, String text) {
    if (fleet.isEmpty() || !at.block().equals(GIVEN)) {
      return Said.NOTHING;
    }
    List<FieldOf<T>> fields = fields(fleet.get());
    publish(stateOf(fleet.get(), draft.trying(fields, at, text)));
    return draft.say(fields, at, text);
  }

  @Override
  public void enter(At at, String text) {
    fleet.filter(f -> at.block().equals(GIVEN)).ifPresent(f -> draft.enter(fields(f), at, text));
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.RECKONER;
  }
}
