package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.life.BoatDue;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Wording;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.Letters;
import hullalmanac.core.work.NewKeys;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.LetterService;
import hullalmanac.service.LetterWords;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How letters are worded, and how one of them would read. */
public final class WordingSheet extends ShownSheet {
  private static final String WHICH = "which";
  private static final String WORDS = "words";
  private static final String SUBJECT = "subject";
  private static final String TEXT = "text";

  private final Map<String, String> refused = new HashMap<>();
  private LetterKind kind = LetterKind.DUE;
  private String language = "";
  private Optional<Id<Boat>> boat = Optional.empty();

  public WordingSheet(Desk desk) {
    super(desk);
  }

  private Letters.Words now(Fleet fleet) {
    Letters.Words kept = Letters.of(fleet.almanac(), kind, language);
    return new Letters.Words(
        refused.getOrDefault(SUBJECT, kept.subject()), refused.getOrDefault(TEXT, kept.text()));
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Letters.Words now = now(fleet);
    boolean own = Letters.own(fleet.almanac(), kind, language).isPresent();
    return new SheetState(
        "Letters",
        "What stands in two braces is filled in for each boat. You send a letter yourself; the"
            + " program sends nothing.",
        List.of(
            new SheetState.Form(
                WHICH,
                "",
                List.of(
                    new SheetState.Field(
                        "kind",
                        "A letter about",
                        new Input.Choice(
                            Arrays.stream(LetterKind.values()).map(LetterKind::words).toList()),
                        kind.words(),
                        Said.NOTHING),
                    new SheetState.Field(
                        "language",
                        "For those written to in",
                        new Input.Line("en, fr; empty for your own"),
                        refused.getOrDefault("language", language),
                        say(
                            new At(WHICH, "", "language"),
                            refused.getOrDefault("language", language))),
                    shownFor(fleet))),
            new SheetState.Form(
                WORDS, "", List.of(field(SUBJECT, "Subject", new Input.Line(""), now.subject()))),
            new SheetState.Form(
                "body", "", List.of(field(TEXT, "Text", new Input.Paragraph(), now.text()))),
            new SheetState.Words(
                Letters.FIELDS.stream()
                    .map(f -> "{{" + f.name() + "}} " + f.meaning())
                    .collect(Collectors.joining(" · "))),
            new SheetState.Buttons(
                own
                    ? List.of(new SheetState.Button("reset", "As it came with the program", false))
                    : List.of()),
            preview(fleet, now)),
        Optional.empty());
  }

  private SheetState.Field field(String id, String label, Input input, String text) {
    return new SheetState.Field(id, label, input, text, say(new At(WORDS, "", id), text));
  }

  /**
   * The boats by what they are called here, in order: by their names, and ids where it takes them.
   */
  private static Map<String, Boat> called(Fleet fleet) {
    Map<String, Long> often =
        fleet.almanac().boats().stream()
            .collect(Collectors.groupingBy(Boat::name, Collectors.counting()));
    Map<String, Boat> called = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (Boat one : fleet.almanac().boats()) {
      boolean alone = often.get(one.name()) == 1 && !called.containsKey(one.name());
      called.put(alone ? one.name() : one.name() + ", " + one.key(), one);
    }
    return called;
  }

  private SheetState.Field shownFor(Fleet fleet) {
    Map<String, Boat> called = called(fleet);
    Optional<Boat> now = shown(fleet);
    return new SheetState.Field(
        "boat",
        "Shown for",
        new Input.Choice(List.copyOf(called.keySet())),
        called.entrySet().stream()
            .filter(e -> now.equals(Optional.of(e.getValue())))
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse(""),
        Said.NOTHING);
  }

  /**
   * The boat that was chosen; otherwise the first that falls due and of which somebody is told in
   * the language, or any.
   */
  private Optional<Boat> shown(Fleet fleet) {
    List<Boat> due = fleet.due().stream().map(BoatDue::boat).toList();
    return fleet.almanac().boats().stream()
        .filter(b -> boat.equals(Optional.of(b.id())))
        .findFirst()
        .or(() -> inTheLanguage(fleet))
        .or(() -> due.stream().findFirst())
        .or(() -> fleet.almanac().boats().stream().findFirst());
  }

  private Optional<Boat> inTheLanguage(Fleet fleet) {
    return language.isEmpty()
        ? Optional.empty()
        : fleet.reminders().stream()
            .filter(s -> s.whom().filter(p -> p.language().equalsIgnoreCase(language)).isPresent())
            .map(Standing::boat)
            .findFirst();
  }

  private SheetState.Block preview(Fleet fleet, Letters.Words words) {
    Optional<Boat> boat = shown(fleet);
    if (boat.isEmpty()) {
      return new SheetState.Words("Write a boat down, and a letter about her stands here.");
    }
    LetterService.Outcome letter = LetterService.fill(words, fields(fleet, boat.get()));
    return letter instanceof LetterService.Letter l
        ? new SheetState.Words(
            "For " + boat.get().name() + " it reads:\n\n" + l.subject() + "\n\n" + l.text())
        : new SheetState.Words("What stands above cannot be filled in yet.");
  }

  private static Map<String, String> fields(Fleet fleet, Boat boat) {
    LetterWords words = LetterWords.of(fleet, boat);
    return words.fields(words.whom().map(Party::name).orElse(""));
  }

  @Override
  public Said say(At at, String text) {
    return problem(at.field(), text).map(why -> new Said(why, true)).orElse(Said.NOTHING);
  }

  private Optional<String> problem(String field, String text) {
    if (field.equals("language")) {
      return text.strip().matches("|[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*")
          ? Optional.empty()
          : Optional.of("Write a language tag such as en, fr or pt-BR, or nothing.");
    }
    if (field.equals("kind") || field.equals("boat") || text.isBlank()) {
      return Optional.empty();
    }
    Map<String, String> sample = new HashMap<>();
    Letters.FIELDS.forEach(f -> sample.put(f.name(), f.name()));
    return LetterService.fill(new Letters.Words(text, text), sample)
            instanceof LetterService.Refused refusal
        ? Optional.of(refusal.sentence())
        : Optional.empty();
  }

  @Override
  public void enter(At at, String text) {
    if (fleet().isEmpty()) {
      return;
    }
    if (problem(at.field(), text).isPresent()) {
      refused.put(at.field(), text);
      publish();
      return;
    }
    refused.remove(at.field());
    switch (at.field()) {
      case "kind" -> turnTo(byWords(text), language);
      case "language" -> turnTo(kind, text.strip());
      case "boat" -> show(text);
      default -> write(at.field(), text);
    }
  }

  private void show(String text) {
    boat = fleet().map(WordingSheet::called).map(all -> all.get(text)).map(Boat::id);
    publish();
  }

  private static LetterKind byWords(String text) {
    return Arrays.stream(LetterKind.values())
        .filter(k -> k.words().equals(text))
        .findFirst()
        .orElse(LetterKind.DUE);
  }

  private void turnTo(LetterKind otherKind, String otherLanguage) {
    kind = otherKind;
    language = otherLanguage;
    refused.clear();
    publish();
  }

  /** An empty text means: as it came. */
  private void write(String field, String text) {
    LetterKind about = kind;
    String in = language;
    desk.edit("Letters, " + about.words(), almanac -> edit(almanac, about, in, field, text));
  }

  /** The one text as it was written, the other as it stands in the record by then. */
  private Edit edit(Almanac almanac, LetterKind about, String in, String field, String text) {
    Letters.Words starter = Letters.starter(about);
    Letters.Words kept = Letters.of(almanac, about, in);
    Letters.Words wanted =
        field.equals(SUBJECT)
            ? new Letters.Words(orElse(Texts.oneLine(text), starter.subject()), kept.text())
            : new Letters.Words(kept.subject(), orElse(Texts.lines(text), starter.text()));
    Optional<Wording> own = Letters.own(almanac, about, in);
    if (in.isEmpty() && wanted.equals(starter)) {
      return Edit.remove(own.stream().toList());
    }
    return Edit.put(
        new Wording(
            own.map(Wording::id).orElseGet(() -> desk.ids().next()),
            own.map(Wording::key)
                .orElseGet(() -> new NewKeys(almanac).next(Kind.WORDING, about.code(), in)),
            about,
            in,
            wanted.subject(),
            wanted.text()));
  }

  private static String orElse(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }

  @Override
  public void press(String button) {
    LetterKind about = kind;
    String in = language;
    refused.clear();
    desk.edit(
        "Letters, " + about.words() + ", as it came",
        almanac -> Edit.remove(Letters.own(almanac, about, in).stream().toList()));
  }

  @Override
  public Topic topic() {
    return Topic.LETTERS;
  }
}
