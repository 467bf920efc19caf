package hullalmanac.present.edit;

import hullalmanac.core.entry.DateEntry;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.Texts;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.ReminderWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.Papers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the owner of a boat is to be told, was told, and said. */
public final class ReminderSheet extends ShownSheet {
  private static final String AFTER = "ask-again";
  private static final List<String> DAYS = List.of("on", "after");

  private final Id<Boat> boat;
  private final Told told;
  private int nth;
  private String words = "";
  private String on = "";
  private String after = "";

  public ReminderSheet(Desk desk, Id<Boat> boat) {
    super(desk);
    this.boat = boat;
    told = new Told(desk, boat);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Boat> her =
        fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
    if (her.isEmpty()) {
      return new SheetState("Not in the record", "", List.of(), Optional.empty());
    }
    List<Standing> standings = told.standings(fleet);
    nth = Math.min(nth, Math.max(0, standings.size() - 1));
    ReminderWords say = new ReminderWords(new AboutWords(fleet.almanac()), fleet.asOf());
    Optional<Standing> now = standings.stream().skip(nth).findFirst();
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(new SheetState.Form("which", "", which(standings, say)));
    blocks.add(new SheetState.Words(now.map(s -> stands(s, say)).orElse(nothing())));
    blocks.add(new SheetState.Words(now.map(s -> moved(s, say)).orElse(""), true));
    blocks.add(
        new SheetState.Form("said", "What was said", now.isEmpty() ? List.of() : fields(fleet)));
    blocks.add(new SheetState.Buttons(now.map(this::answers).orElse(List.of())));
    blocks.add(new SheetState.Buttons(buttons()));
    blocks.add(log(fleet, say));
    return new SheetState(
        her.get().name() + ": what her owner is told",
        now.flatMap(Standing::whom).map(ReminderSheet::reach).orElse(""),
        blocks,
        Optional.empty());
  }

  private static String nothing() {
    return "Nothing is to be told of her now.";
  }

  private static String reach(Party party) {
    return List.of(party.name(), party.phone(), party.email()).stream()
        .filter(t -> !t.isBlank())
        .collect(Collectors.joining(" · "));
  }

  private static String stands(Standing s, ReminderWords say) {
    return say.what(s) + ": " + say.state(s) + ".";
  }

  private static String moved(Standing s, ReminderWords say) {
    return s.moved().stream().map(say::moved).collect(Collectors.joining("\n"));
  }

  /** What it is said of, where there is more than one thing. */
  private List<SheetState.Field> which(List<Standing> standings, ReminderWords say) {
    if (standings.size() < 2) {
      return List.of();
    }
    List<String> all = choices(standings, say);
    return List.of(
        new SheetState.Field("of", "Of", new Input.Choice(all), all.get(nth), Said.NOTHING));
  }

  private static List<String> choices(List<Standing> standings, ReminderWords say) {
    List<String> all = new ArrayList<>();
    for (Standing s : standings) {
      String one = say.what(s) + " (" + say.state(s) + ")";
      all.add(all.contains(one) ? one + " " + (all.size() + 1) : one);
    }
    return all;
  }

  private List<SheetState.Field> fields(Fleet fleet) {
    return List.of(
        new SheetState.Field("words", "In words", new Input.Line(""), words, Said.NOTHING),
        new SheetState.Field(
            "on",
            "Said on",
            new Input.Line("empty for today; yesterday, 12/5"),
            on,
            say(new At("said", "", "on"), on, fleet)),
        new SheetState.Field(
            "after",
            "Ask again after",
            new Input.Line("12/5, +3m"),
            after,
            say(new At("said", "", "after"), after, fleet)));
  }

  /** Only what can be said as it stands. */
  private List<SheetState.Button> answers(Standing s) {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (s.state().after(ReminderEvent.TOLD).isPresent()) {
      for (Reminder.Way way : Reminder.Way.values()) {
        boolean main = buttons.isEmpty() && s.toTell();
        buttons.add(new SheetState.Button(way.code(), "Told " + way.words(), main));
      }
    }
    for (ReminderEvent event :
        List.of(
            ReminderEvent.BOOKED,
            ReminderEvent.DECLINED,
            ReminderEvent.ASK_AGAIN,
            ReminderEvent.CALLED_OFF)) {
      boolean visit = event == ReminderEvent.CALLED_OFF && s.visit().isPresent();
      if (s.state().after(event).isPresent() && !visit) {
        buttons.add(new SheetState.Button(event.code(), label(event), false));
      }
    }
    return buttons;
  }

  private static String label(ReminderEvent event) {
    return event == ReminderEvent.ASK_AGAIN
        ? "Ask again after that day"
        : Texts.capital(event.words());
  }

  private static List<SheetState.Button> buttons() {
    return List.of(
        new SheetState.Button("write", "Write a letter", false),
        new SheetState.Button("card", "On a card", false),
        new SheetState.Button("boat", "Open boat", false),
        new SheetState.Button("done", "Done", false));
  }

  private SheetState.Table log(Fleet fleet, ReminderWords say) {
    record Line(Reminder of, Reminder.Said said) {}
    DateWords days = new DateWords(fleet.asOf());
    List<List<String>> rows =
        fleet.almanac().reminders().stream()
            .filter(r -> r.boat().equals(boat))
            .flatMap(r -> r.log().stream().map(s -> new Line(r, s)))
            .sorted(Comparator.comparing((Line l) -> l.said().day()).reversed())
            .map(
                l ->
                    List.of(
                        days.exact(l.said().day()),
                        say.said(l.said()),
                        l.said().words(),
                        say.about().few(l.of().about())))
            .toList();
    return new SheetState.Table(
        "Said so far",
        List.of("Day", "What", "In words", "Of"),
        rows,
        "Nothing was said of her yet.");
  }

  @Override
  public Said say(At at, String text) {
    return fleet().map(f -> say(at, text, f)).orElse(Said.NOTHING);
  }

  private static Said say(At at, String text, Fleet fleet) {
    if (text.isBlank() || !DAYS.contains(at.field())) {
      return Said.NOTHING;
    }
    Entry<LocalDate> read = at.field().equals("on") ? saidOn(text, fleet) : read(text, fleet);
    if (read instanceof Entry.Read<LocalDate> day) {
      return new Said(day.echo(), false);
    }
    return read instanceof Entry.Refused<LocalDate> not
        ? new Said(not.sentence(), true)
        : Said.NOTHING;
  }

  /** The day on which something was said: today where nothing is written, none that lies ahead. */
  private static Entry<LocalDate> saidOn(String text, Fleet fleet) {
    Entry<LocalDate> entry = read(text, fleet);
    if (entry instanceof Entry.Empty<LocalDate>) {
      return new Entry.Read<>(fleet.asOf(), "");
    }
    return entry instanceof Entry.Read<LocalDate> day && day.value().isAfter(fleet.asOf())
        ? new Entry.Refused<>("That day lies ahead: write down what was said once it was said.")
        : entry;
  }

  private static Entry<LocalDate> read(String text, Fleet fleet) {
    return DateEntry.read(text, fleet.asOf(), fleet.almanac().business().dayOrder());
  }

  @Override
  public void enter(At at, String text) {
    trouble = Optional.empty();
    switch (at.field()) {
      case "words" -> words = Texts.oneLine(text);
      case "on" -> on = text;
      case "after" -> after = text;
      default -> fleet().ifPresent(f -> choose(f, text));
    }
    publish();
  }

  private void choose(Fleet fleet, String text) {
    List<String> all =
        choices(
            told.standings(fleet),
            new ReminderWords(new AboutWords(fleet.almanac()), fleet.asOf()));
    nth = Math.max(0, all.indexOf(text));
  }

  @Override
  public void press(String button) {
    trouble = Optional.empty();
    switch (button) {
      case "done" -> desk.leave();
      case "write" -> desk.open(new LetterSheet(desk, boat));
      case "card" -> card();
      case "boat" -> desk.openBoat(boat);
      default -> fleet().ifPresent(f -> press(f, button));
    }
  }

  /** The letter of the business, as it stands in Settings. */
  private void card() {
    fleet().stream()
        .flatMap(f -> f.almanac().boats().stream())
        .filter(b -> b.id().equals(boat))
        .findFirst()
        .ifPresent(
            her ->
                desk.open(
                    PaperSheet.of(
                        desk,
                        new Papers.Asked(
                            Papers.Sort.REMINDER,
                            Optional.of(her.key()),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()))));
  }

  private void press(Fleet fleet, String button) {
    if (!(saidOn(on, fleet) instanceof Entry.Read<LocalDate> day)) {
      trouble = Optional.of("Look at the day on which it was said. Nothing was written down.");
      publish();
      return;
    }
    Optional<Reminder.Said> said = said(fleet, button, day.value());
    if (said.isEmpty()) {
      trouble = Optional.of("Write the day first after which to ask again, such as +3m or 12/5.");
      publish();
      return;
    }
    trouble = told.refusal(fleet, nth, said.get());
    if (trouble.isPresent()) {
      publish();
      return;
    }
    told.write(
        fleet,
        nth,
        said.get(),
        () -> {
          words = "";
          on = "";
          after = "";
          publish();
        });
  }

  /** What a button writes down; nothing where its day is missing or lies behind. */
  private Optional<Reminder.Said> said(Fleet fleet, String button, LocalDate day) {
    if (button.equals(AFTER)) {
      return read(after, fleet) instanceof Entry.Read<LocalDate> again
              && !again.value().isBefore(fleet.asOf())
          ? Optional.of(Reminder.Said.askAgain(day, again.value(), words))
          : Optional.empty();
    }
    for (Reminder.Way way : Reminder.Way.values()) {
      if (way.code().equals(button)) {
        return Optional.of(Reminder.Said.told(day, way, words));
      }
    }
    for (ReminderEvent event : ReminderEvent.values()) {
      if (event.code().equals(button)) {
        return Optional.of(Reminder.Said.of(day, event, words));
      }
    }
    throw new IllegalArgumentException("no button is called " + button);
  }

  @Override
  public void onPaper() {
    card();
  }

  @Override
  public Topic topic() {
    return Topic.REMINDERS;
  }
}
