package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.report.Letters;
import hullalmanac.core.report.MailDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.Lookups;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.LetterWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.LetterService;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A letter about a boat: filled in, changed by hand, then copied or written as a mail draft. */
public final class LetterSheet implements Sheet {
  private final Desk desk;
  private final Id<Boat> boat;
  private Consumer<SheetState> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<LetterKind> about = Optional.empty();
  private Optional<Party> to = Optional.empty();
  private Letters.Words letter = new Letters.Words("", "");
  private String written = "";
  private Optional<String> trouble = Optional.empty();

  public LetterSheet(Desk desk, Id<Boat> boat) {
    this.desk = desk;
    this.boat = boat;
  }

  @Override
  public void onChange(Consumer<SheetState> view) {
    this.view = view;
    view.accept(
        fleet
            .map(this::stateOf)
            .orElseGet(() -> new SheetState("", "", List.of(), Optional.empty())));
  }

  @Override
  public void show(Fleet now) {
    boolean first = fleet.isEmpty();
    fleet = Optional.of(now);
    if (first) {
      about =
          Optional.of(LetterWords.due(now, boat).isPresent() ? LetterKind.DUE : LetterKind.OTHER);
      to = people(now).stream().findFirst();
      fill(now);
    }
    publish();
  }

  private void publish() {
    fleet.ifPresent(f -> view.accept(stateOf(f)));
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
    String name = to.map(Party::name).orElse("");
    Map<String, String> fields = LetterWords.of(fleet, boat, name);
    Letters.Words words =
        Letters.of(fleet.almanac(), about.orElseThrow(), to.map(Party::language).orElse(""));
    LetterService.Outcome outcome = LetterService.fill(words, fields);
    written = "";
    if (outcome instanceof LetterService.Letter made) {
      letter = new Letters.Words(made.subject(), made.text());
      trouble = Optional.empty();
    } else {
      letter = words;
      trouble = Optional.of(((LetterService.Refused) outcome).sentence());
    }
  }

  private SheetState stateOf(Fleet fleet) {
    String name = new Lookups(fleet.almanac(), fleet.asOf()).boat(boat).name();
    return new SheetState(
        "A letter about " + name,
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
                        about.map(LetterKind::words).orElse("")),
                    choice(
                        "to",
                        "To",
                        people(fleet).stream().map(Party::name).toList(),
                        to.map(Party::name).orElse("")),
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
            new SheetState.Words(written)),
        trouble);
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
    fleet.ifPresent(f -> enter(f, at.field(), text));
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
    fleet.ifPresent(f -> write(f.asOf()));
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
        edits -> edits.writeLetter(draft, day),
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
