package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.With;
import hullalmanac.present.Look;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** How the window looks on this computer; it is no part of the record. */
public final class LookSheet implements Sheet {
  private static final String FORM = "look";

  private final Look.Looks looks;
  private Consumer<SheetState> view = s -> {};

  public LookSheet(Look.Looks looks) {
    this.looks = looks;
  }

  private static List<FieldOf<Look>> fields() {
    FieldMaker make = new FieldMaker(Business.unnamed(), LocalDate.EPOCH);
    return List.of(
        make.choice("tint", "Ground", Look.Tint.class, Look::tint),
        zoom(),
        make.yesNo("wetHands", "Large targets, for wet hands", Look::wetHands),
        make.yesNo("calm", "Calm: pages jump and do not glide", Look::calm));
  }

  private static FieldOf<Look> zoom() {
    List<String> steps = new ArrayList<>();
    for (float zoom : Look.ZOOMS) {
      steps.add(percent(zoom));
    }
    return new FieldOf<>(
        "zoom",
        "Size of everything",
        new Input.Choice(steps),
        look -> percent(look.zoom()),
        (look, typed) -> {
          Entry<String> step = FieldMaker.oneOf(steps, typed);
          return step.map(s -> With.component(look, "zoom", Look.ZOOMS.get(steps.indexOf(s))));
        });
  }

  private static String percent(float zoom) {
    return Math.round(zoom * 100) + " %";
  }

  private Draft<Look> draft() {
    return new Draft<>(FORM, looks.now());
  }

  private void publish() {
    view.accept(
        new SheetState(
            "How it looks",
            "On this computer only; your record is not touched",
            List.of(
                draft().form("", fields()),
                new SheetState.Words(
                    "Ctrl+Shift+D changes between light and dark, Ctrl and +, − or 0 the size,"
                        + " Ctrl+Shift+W the targets, from anywhere.")),
            Optional.empty()));
  }

  @Override
  public void onChange(Consumer<SheetState> view) {
    this.view = view;
    publish();
  }

  @Override
  public void show(Fleet fleet) {
    publish();
  }

  @Override
  public Said say(At at, String text) {
    return draft().say(fields(), at, text);
  }

  @Override
  public void enter(At at, String text) {
    Draft<Look> draft = draft();
    draft.enter(fields(), at, text);
    if (!draft.value().equals(looks.now())) {
      looks.become(draft.value());
    }
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.LOOKS;
  }
}
