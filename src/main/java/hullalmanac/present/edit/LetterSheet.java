package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.ReminderEvent;
import hullalmanac.core.record.Role;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.Letters;
import hullalmanac.core.report.MailDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.LetterWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.LetterService;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A letter about a boat: filled in, changed by hand, then copied or written as a mail draft. */
public final class LetterSheet extends ShownSheet {
  private static final List<Reminder.Way> SENT =
      List.of(Reminder.Way.MAIL, Reminder.Way.MESSAGE, Reminder.Way.LETTER);

  private final Id<Boat> boat;
  private Optional<LetterKind> about = Optional.empty();
  private Optional<Party> to = Optional.empty();
  private Letters.Words letter = new Letters.Words("", "");
  private String written = "";
  private final Told told;

  public LetterSheet(Desk desk, Id<Boat> boat) {
    super(desk);
    this.boat = boat;
    told = new Told(desk, boat);
  }

  @Override
  void begin(Fleet first) {
    about =
        Optional.of(LetterWords.due(first, boat).isPresent() ? LetterKind.DUE : LetterKind.OTHER);
    to = people(first).stream().findFirst();
    fill(first);
  }

  private Optional<Boat> boat(Fleet fleet) {
    return fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
  }

  /** Those who have to do with the boat, her owner first. */
  private List<Party> people(Fleet fleet) {
    return fleet.almanac().roles().stream()
        .filter(r -> r.boat().equals(boat) && r.holdsOn(fleet.asOf()))
        .sorted(java.util.Comparator.comparing(Role::kind))
        .map(Role::party)
        .distinct()
        .flatMap(id -> fleet.almanac().parties().stream().filter(p -> p.id().equals(id)))
        .toList();
  }

  /** Words the letter anew; what was changed by hand goes. */
  private void fill(Fleet fleet) {
    written = "";
    if (boat(fleet).isEmpty()) {
      return;
    }
    String name = to.map(Party::name).orElse("");
    Map<String, String> fields = LetterWords.of(fleet, boat, name);
    Letters.Words words =
        Letters.of(fleet.almanac(), about.orElseThrow(), to.map(Party::language).orElse(""));
    LetterService.Outcome outcome = LetterService.fill(words, fields);
    if (outcome instanceof LetterService.Letter made) {
      letter = new Letters.Words(made.subject(), made.text());
      trouble = Optional.empty();
    } else {
      letter = words;
      trouble = Optional.of(((LetterService.Refused) outcome).sentence());
    }
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Boat> about = boat(fleet);
    if (about.isEmpty()) {
      return new SheetState("Not in the record", "", List.of(), Optional.empty());
    }
    return new SheetState(
        "A letter about " + about.get().name(),
        "Change what you like. You send it yourself: copy it into a message, or write it as a draft"
            + " that your mail program opens.",
        List.of(
            new SheetState.Form(
                "letter",
                "",
                List.of(
                    choice(
                        "about",
                        "About",
                        Arrays.stream(LetterKind.values()).map(LetterKind::words).toList(),
                        this.about.map(LetterKind::words).orElse("")),
                    choice(
                        "to",
                        "To",
                        people(fleet).stream().map(Party::name).toList(),
                        to.map(Party::name).orElse("")))),
            new SheetState.Form(
                "subject",
                "",
                List.of(
                    new SheetState.Field(
                        "subject", "Subject", new Input.Line(""), letter.subject(), Said.NOTHING))),
            new SheetState.Form(
                "body",
                "",
                List.of(
                    new SheetState.Field(
                        "text", "Text", new Input.Paragraph(), letter.text(), Said.NOTHING))),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("draft", "Write a mail draft", true),
                    new SheetState.Button("done", "Done", false))),
            new SheetState.Answer("text", reach(), "The text, for a message", letter.text()),
            new SheetState.Words(written),
            new SheetState.Buttons(tell(fleet))),
        Optional.empty());
  }

  /** What was sent by hand can be written down as told, while there is something to tell. */
  private List<SheetState.Button> tell(Fleet fleet) {
    if (!about.equals(Optional.of(LetterKind.DUE))
        || told.first(fleet, ReminderEvent.TOLD).isEmpty()) {
      return List.of();
    }
    return SENT.stream()
        .map(way -> new SheetState.Button(way.code(), "Write down: told " + way.words(), false))
        .toList();
  }

  private void tell(Fleet fleet, Reminder.Way way) {
    Optional<Standing> standing = told.first(fleet, ReminderEvent.TOLD);
    if (standing.isPresent()) {
      told.write(
          fleet,
          told.standings(fleet).indexOf(standing.get()),
          Reminder.Said.told(fleet.asOf(), way, letter.subject()),
          () -> {
            written = "It is written down that this was told " + way.words() + ".";
            publish();
          });
    }
  }

  private String reach() {
    return to.map(p -> (p.phone() + "  " + p.email()).strip()).orElse("");
  }

  private static SheetState.Field choice(
      String id, String label, List<String> words, String chosen) {
    return new SheetState.Field(id, label, new Input.Choice(words), chosen, Said.NOTHING);
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    written = "";
    fleet().ifPresent(f -> enter(f, at.field(), text));
    publish();
  }

  private void enter(Fleet fleet, String field, String text) {
    switch (field) {
      case "about" -> {
        about = Arrays.stream(LetterKind.values()).filter(k -> k.words().equals(text)).findFirst();
        fill(fleet);
      }
      case "to" -> {
        to = people(fleet).stream().filter(p -> p.name().equals(text)).findFirst();
        fill(fleet);
      }
      case "subject" -> letter = new Letters.Words(text, letter.text());
      default -> letter = new Letters.Words(letter.subject(), text);
    }
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    Optional<Reminder.Way> way = SENT.stream().filter(w -> w.code().equals(button)).findFirst();
    fleet().ifPresent(f -> way.ifPresentOrElse(w -> tell(f, w), () -> write(f.asOf())));
  }

  private void write(LocalDate day) {
    MailDraft draft =
        new MailDraft(
            to
                .filter(p -> !p.email().isBlank())
                .map(p -> new MailDraft.Recipient(p.name(), p.email()))
                .stream()
                .toList(),
            letter.subject(),
            letter.text());
    desk.ask(
        edits -> edits.writeLetter(draft, to.map(Party::name).orElse(""), day),
        outcome -> {
          written = outcome.file().map(f -> "Written to " + f + ". Open it to send it.").orElse("");
          trouble = outcome.refused();
          publish();
        });
  }

  @Override
  public Topic topic() {
    return Topic.LETTERS;
  }
}
