package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.With;
import hullalmanac.present.Desk;
import hullalmanac.present.house.House;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.EditService;
import hullalmanac.service.Fleet;
import hullalmanac.service.HouseService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Where the record lies, what lies there, its copies, and moving it. */
public final class RecordSheet implements Sheet {
  private static final String FORM = "record";

  private final Desk desk;
  private final Supplier<House> house;
  private Consumer<SheetState> view = s -> {};
  private Optional<Facts> facts = Optional.empty();
  private Optional<String> trouble = Optional.empty();
  private Draft<Wishes> draft;

  private record Facts(String folder, List<HouseService.Part> parts, List<String> copies) {}

  /** What is written on the sheet; public so that it can be copied with one component changed. */
  public record Wishes(String second, String folder, String copy) {}

  public RecordSheet(Desk desk, Supplier<House> house) {
    this.desk = desk;
    this.house = house;
    draft = new Draft<>(FORM, new Wishes(second(), "", ""));
  }

  private String second() {
    return house.get().secondPlace().orElse("");
  }

  @Override
  public void onChange(Consumer<SheetState> view) {
    this.view = view;
    publish();
  }

  @Override
  public void show(Fleet fleet) {
    desk.ask(RecordSheet::facts, this::arrived);
  }

  private static Facts facts(EditService edits) {
    HouseService house = edits.house();
    return new Facts(house.folder(), house.parts(), house.copies());
  }

  private void arrived(Facts now) {
    facts = Optional.of(now);
    publish();
  }

  private List<FieldOf<Wishes>> fields() {
    FieldMaker make = new FieldMaker(Business.unnamed(), LocalDate.EPOCH);
    List<String> copies = new ArrayList<>(facts.map(Facts::copies).orElse(List.of()));
    copies.add(0, "");
    return List.of(
        make.line("second", "Second place for copies, best on another disk", Wishes::second),
        make.line("folder", "Another folder, to move to or to open", Wishes::folder),
        new FieldOf<>(
            "copy",
            "A copy to put back",
            new Input.Suggest(copies),
            Wishes::copy,
            (w, typed) -> new Entry.Read<>(With.component(w, "copy", typed.strip()), "")));
  }

  private void publish() {
    view.accept(
        new SheetState(
            "The record and its copies",
            facts.map(Facts::folder).orElse("Looking …"),
            blocks(),
            trouble));
  }

  private List<SheetState.Block> blocks() {
    return List.of(
        new SheetState.Table(
            "What is in this folder",
            List.of("Name", "What it is", "Files", "Size"),
            facts.map(f -> f.parts().stream().map(RecordSheet::row).toList()).orElse(List.of()),
            "Looking …"),
        new SheetState.Words(
            "Everything is in this one folder, in forms that other programs can read, and nothing"
                + " leaves this computer. A verified copy is laid before the first change of each"
                + " day. Photos are kept as they came. All of it can be taken out as plain lists."),
        draft.form("Copies, moving and putting back", fields()),
        new SheetState.Words(
            "Moving copies the record to a new or empty folder, looks whether all came there, and"
                + " works there from then on; the old folder is left as it is. A copy that is put"
                + " back takes the place of the record; the record as it stands is kept beside"
                + " it."),
        new SheetState.Buttons(
            List.of(
                new SheetState.Button("keep second", "Copy to the second place now", false),
                new SheetState.Button("move", "Move the record to that folder", false),
                new SheetState.Button("open", "Open the record in that folder", false),
                new SheetState.Button("put back", "Put that copy back", false))));
  }

  private static List<String> row(HouseService.Part part) {
    return List.of(part.name(), part.what(), String.valueOf(part.files()), size(part.bytes()));
  }

  private static String size(long bytes) {
    return bytes < 1_000_000
        ? Math.max(1, Math.round(bytes / 1000.0)) + " kB"
        : String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
  }

  @Override
  public Said say(At at, String text) {
    return draft.say(fields(), at, text);
  }

  @Override
  public void enter(At at, String text) {
    draft.enter(fields(), at, text);
    trouble = Optional.empty();
    if (at.field().equals("second")) {
      house.get().secondPlace(Optional.of(draft.value().second()).filter(s -> !s.isBlank()));
    }
    publish();
  }

  @Override
  public void press(String button) {
    Wishes wishes = draft.value();
    switch (button) {
      case "keep second" -> needed(wishes.second(), "Write a folder first.", this::keepSecond);
      case "move" -> needed(wishes.folder(), "Write a folder first.", house.get()::moveTo);
      case "open" -> needed(wishes.folder(), "Write a folder first.", house.get()::open);
      case "put back" -> needed(wishes.copy(), "Choose a copy first.", house.get()::putInPlace);
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void needed(String text, String otherwise, Consumer<String> act) {
    if (text.isBlank()) {
      said(otherwise);
    } else {
      act.accept(text);
    }
  }

  private void keepSecond(String place) {
    desk.ask(
        edits -> {
          edits.house().bringUpToDate(place);
          return place;
        },
        done -> said("The second place is up to date: " + done));
  }

  private void said(String sentence) {
    trouble = Optional.of(sentence);
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.RECORD;
  }
}
