package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.ReminderWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everybody who is to be told now: listed for one letter to many, then written down as told at
 * once.
 */
public final class TellAllSheet extends ShownSheet {
  private String said = "";

  /** The boats on the list that was saved last. */
  private Optional<Set<Id<Boat>>> listed = Optional.empty();

  public TellAllSheet(Desk desk) {
    super(desk);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    ToTell all = ToTell.of(fleet);
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(new SheetState.Buttons(buttons(all)));
    blocks.add(new SheetState.Buttons(tell(all)));
    blocks.add(new SheetState.Words(said));
    blocks.add(new SheetState.Words(nobody(all), true));
    blocks.add(table(fleet, all));
    return new SheetState(
        "A letter to all who are to be told",
        "The list goes into the mail merge of your text program. Once the letters are out, write"
            + " down that all of them were told.",
        blocks,
        Optional.empty());
  }

  private static SheetState.Table table(Fleet fleet, ToTell all) {
    ReminderWords words = new ReminderWords(new AboutWords(fleet.almanac()), fleet.asOf());
    return new SheetState.Table(
        "To be told",
        List.of("Who", "Boat", "What", "When", "Reached at"),
        all.boats().stream()
            .map(
                s ->
                    List.of(
                        s.whom().map(Party::name).orElse(""),
                        s.boat().name(),
                        words.about().few(s.about()),
                        words.when(s),
                        s.whom().map(TellAllSheet::reach).orElse("")))
            .toList(),
        "Nobody is to be told now.");
  }

  /** The first of the ways in which somebody is reached by a letter. */
  private static String reach(Party party) {
    return Stream.of(String.join(", ", party.address().lines().toList()), party.email())
        .filter(t -> !t.isBlank())
        .findFirst()
        .orElse("");
  }

  private static String nobody(ToTell all) {
    List<String> names =
        all.boats().stream().filter(s -> s.whom().isEmpty()).map(s -> s.boat().name()).toList();
    return names.isEmpty()
        ? ""
        : "Nobody is known who could be told of "
            + String.join(", ", names)
            + ". Write down who her owner is on her page.";
  }

  private static List<SheetState.Button> buttons(ToTell all) {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (!all.boats().isEmpty()) {
      buttons.add(new SheetState.Button("list", "Save the list as CSV …", true));
    }
    buttons.add(new SheetState.Button("done", "Done", false));
    return buttons;
  }

  private static List<SheetState.Button> tell(ToTell all) {
    return known(all).isEmpty()
        ? List.of()
        : LetterSheet.SENT.stream()
            .map(
                way ->
                    new SheetState.Button(way.code(), "Write down: all told " + way.words(), false))
            .toList();
  }

  /** Those of whom somebody is known. */
  private static List<Standing> known(ToTell all) {
    return all.boats().stream().filter(s -> s.whom().isPresent()).toList();
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    // Nothing is written here.
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    fleet().ifPresent(f -> press(f, button));
  }

  private void press(Fleet fleet, String button) {
    if (button.equals("list")) {
      list(fleet);
      return;
    }
    LetterSheet.SENT.stream()
        .filter(way -> way.code().equals(button))
        .findFirst()
        .ifPresent(way -> tell(fleet, way));
  }

  private void list(Fleet fleet) {
    ToTell all = ToTell.of(fleet);
    desk.outside()
        .where(fleet.asOf() + " To be told.csv", "CSV")
        .ifPresent(
            file ->
                desk.aside(
                    () -> all.write(file),
                    lines -> {
                      listed =
                          Optional.of(
                              all.boats().stream()
                                  .map(s -> s.boat().id())
                                  .collect(Collectors.toSet()));
                      say((lines == 1 ? "1 line" : lines + " lines") + " written to " + file + ".");
                    }));
  }

  /** Those who fell due after the list was saved got no letter. */
  private List<String> notListed(List<Standing> all) {
    return listed
        .map(
            l ->
                all.stream()
                    .filter(s -> !l.contains(s.boat().id()))
                    .map(s -> s.boat().name())
                    .toList())
        .orElse(List.of());
  }

  private void tell(Fleet fleet, Reminder.Way way) {
    List<Standing> all = known(ToTell.of(fleet));
    List<String> since = notListed(all);
    trouble =
        since.isEmpty()
            ? Optional.empty()
            : Optional.of(
                "Not on the list that was saved: "
                    + String.join(", ", since)
                    + ". Save it once more, and write to them too.");
    if (trouble.isPresent()) {
      publish();
      return;
    }
    Told.all(
        desk,
        fleet,
        all,
        Reminder.Said.told(fleet.asOf(), way, "one letter to all"),
        () ->
            say(
                "It is written down that "
                    + (all.size() == 1 ? "1 was" : all.size() + " were")
                    + " told "
                    + way.words()
                    + "."));
  }

  private void say(String words) {
    said = words;
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.LETTERS;
  }
}
