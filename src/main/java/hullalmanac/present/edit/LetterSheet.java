package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Role;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.Letters;
import hullalmanac.core.report.MailDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.LetterService;
import hullalmanac.service.LetterWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A letter about a boat: filled in, changed by hand, then it leaves the house. */
public final class LetterSheet extends ShownSheet {
  /** Ways in which a letter is told. */
  static final List<Reminder.Way> SENT =
      List.of(Reminder.Way.MAIL, Reminder.Way.MESSAGE, Reminder.Way.LETTER);

  private static final String NOTHING = "nothing";

  private final Id<Boat> boat;
  private final Told told;
  private final LetterOut out;
  private LetterKind about = LetterKind.OTHER;
  private Optional<Id<Party>> to = Optional.empty();
  private Letters.Words letter = new Letters.Words("", "");

  /** What one chose to go with it; absent: as the kind of letter has it. */
  private Optional<String> with = Optional.empty();

  private String written = "";

  public LetterSheet(Desk desk, Id<Boat> boat) {
    super(desk);
    this.boat = boat;
    told = new Told(desk, boat);
    out = new LetterOut(desk, this::take);
  }

  @Override
  void begin(Fleet first) {
    boat(first)
        .map(b -> LetterWords.of(first, b))
        .ifPresent(
            words -> {
              about = words.anything() ? LetterKind.DUE : LetterKind.OTHER;
              to = words.whom().or(() -> people(first).stream().findFirst()).map(Party::id);
            });
    fill(first);
  }

  /** As it is written down now. */
  private Optional<Party> to(Fleet fleet) {
    return fleet.almanac().parties().stream()
        .filter(p -> to.equals(Optional.of(p.id())))
        .findFirst();
  }

  private Optional<Boat> boat(Fleet fleet) {
    return fleet.almanac().boats().stream().filter(b -> b.id().equals(boat)).findFirst();
  }

  /** Those who have to do with the boat, her owner first. */
  private List<Party> people(Fleet fleet) {
    return fleet.almanac().roles().stream()
        .filter(r -> r.boat().equals(boat) && r.holdsOn(fleet.asOf()))
        .sorted(Comparator.comparing(Role::kind))
        .map(Role::party)
        .distinct()
        .flatMap(id -> fleet.almanac().parties().stream().filter(p -> p.id().equals(id)))
        .toList();
  }

  /** Words the letter anew; what was changed by hand goes. */
  private void fill(Fleet fleet) {
    written = "";
    Optional<Boat> her = boat(fleet);
    if (her.isEmpty()) {
      return;
    }
    Letters.Words words =
        Letters.of(fleet.almanac(), about, to(fleet).map(Party::language).orElse(""));
    LetterService.Outcome outcome =
        LetterService.fill(
            words, LetterWords.of(fleet, her.get()).fields(to(fleet).map(Party::name).orElse("")));
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
    Optional<Boat> her = boat(fleet);
    if (her.isEmpty()) {
      return new SheetState("Not in the record", "", List.of(), Optional.empty());
    }
    return new SheetState(
        "A letter about " + her.get().name(),
        "Change what you like. You send it yourself: as a draft that your mail program opens, copied"
            + " into a message, or on a card.",
        List.of(
            new SheetState.Form("letter", "", choices(fleet, her.get())),
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
            new SheetState.Buttons(leave()),
            new SheetState.Words(written),
            new SheetState.Answer("text", reach(fleet), "The text, for a message", letter.text()),
            new SheetState.Buttons(tell(fleet))),
        Optional.empty());
  }

  private List<SheetState.Field> choices(Fleet fleet, Boat her) {
    List<String> goes =
        Stream.concat(
                Stream.of(NOTHING),
                Enclosure.of(fleet, her, to(fleet)).stream().map(Enclosure::words))
            .toList();
    return List.of(
        choice(
            "about",
            "About",
            Arrays.stream(LetterKind.values()).map(LetterKind::words).toList(),
            about.words()),
        choice(
            "to",
            "To",
            people(fleet).stream().map(Party::name).toList(),
            to(fleet).map(Party::name).orElse("")),
        choice(
            "with", "With it", goes, enclosure(fleet, her).map(Enclosure::words).orElse(NOTHING)));
  }

  /** With a reminder goes her history, where nothing else was chosen. */
  private Optional<Enclosure> enclosure(Fleet fleet, Boat her) {
    String wanted = with.orElse(about == LetterKind.DUE ? Enclosure.HISTORY : NOTHING);
    return Enclosure.of(fleet, her, to(fleet)).stream()
        .filter(e -> e.words().equals(wanted))
        .findFirst();
  }

  private List<SheetState.Button> leave() {
    List<SheetState.Button> buttons = new ArrayList<>();
    buttons.add(new SheetState.Button("draft", "Write a mail draft", true));
    buttons.add(new SheetState.Button("link", "Open in the mail program", false));
    if (about == LetterKind.DUE) {
      buttons.add(new SheetState.Button("card", "On a card", false));
    }
    buttons.add(new SheetState.Button("done", "Done", false));
    return buttons;
  }

  /** What was sent by hand can be written down as told, while there is something to tell. */
  private List<SheetState.Button> tell(Fleet fleet) {
    if (about != LetterKind.DUE || told.first(fleet).isEmpty()) {
      return List.of();
    }
    return SENT.stream()
        .map(way -> new SheetState.Button(way.code(), "Write down: told " + way.words(), false))
        .toList();
  }

  private void tell(Fleet fleet, Reminder.Way way) {
    Optional<Standing> standing = told.first(fleet);
    if (standing.isPresent()) {
      told.write(
          fleet,
          told.standings(fleet).indexOf(standing.get()),
          Reminder.Said.told(fleet.asOf(), way, letter.subject()),
          () ->
              take(new Said("It is written down that this was told " + way.words() + ".", false)));
    }
  }

  private void take(Said said) {
    written = said.refused() ? "" : said.words();
    trouble = said.refused() ? Optional.of(said.words()) : Optional.empty();
    publish();
  }

  private String reach(Fleet fleet) {
    return to(fleet).map(p -> (p.phone() + "  " + p.email()).strip()).orElse("");
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
        Arrays.stream(LetterKind.values())
            .filter(k -> k.words().equals(text))
            .findFirst()
            .ifPresent(kind -> about = kind);
        fill(fleet);
      }
      case "to" -> {
        to = people(fleet).stream().filter(p -> p.name().equals(text)).findFirst().map(Party::id);
        fill(fleet);
      }
      case "with" -> with = Optional.of(text);
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
    fleet().ifPresent(f -> boat(f).ifPresent(her -> press(f, her, button)));
  }

  private void press(Fleet fleet, Boat her, String button) {
    switch (button) {
      case "draft" ->
          out.draft(
              fleet, draft(fleet), to(fleet).map(Party::name).orElse(""), enclosure(fleet, her));
      case "link" -> out.link(draft(fleet), enclosure(fleet, her));
      case "card" -> card();
      default ->
          SENT.stream()
              .filter(w -> w.code().equals(button))
              .findFirst()
              .ifPresent(way -> tell(fleet, way));
    }
  }

  private MailDraft draft(Fleet fleet) {
    return new MailDraft(
        to(fleet)
            .filter(p -> !p.email().isBlank())
            .map(p -> new MailDraft.Recipient(p.name(), p.email()))
            .stream()
            .toList(),
        letter.subject(),
        letter.text());
  }

  /** As it stands here, changed by hand or not. */
  private void card() {
    String text = letter.text();
    desk.open(
        PaperSheet.of(
            desk,
            fleet -> boat(fleet).map(her -> LetterWords.of(fleet, her).card(to(fleet), text)),
            Topic.LETTERS));
  }

  @Override
  public void onPaper() {
    if (about == LetterKind.DUE) {
      card();
    }
  }

  @Override
  public Topic topic() {
    return Topic.LETTERS;
  }
}
