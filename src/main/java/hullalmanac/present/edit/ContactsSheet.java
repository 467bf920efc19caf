package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Row;
import hullalmanac.core.work.Alike;
import hullalmanac.core.work.CardVersion;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Contacts;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.ContactsService;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * Contact cards: takes them in by one act, with who may be known already side by side, and writes
 * everyone as cards. Reading and comparing are done in the background; the newest counts.
 */
public final class ContactsSheet extends ShownSheet {
  private static final String TITLE = "Contact cards";
  private static final String OUT = "cards out";

  private final Draft<Wish> draft = new Draft<>(OUT, new Wish("", CardVersion.V3_0));
  private Optional<ContactsService.Cards> read = Optional.empty();

  /** Where new ids come from: the same ones each time the same cards are compared. */
  private List<Long> drawn = List.of();

  private Map<Id<Party>, Alike.Choice> choices = new HashMap<>();
  private Optional<ContactsBlocks> compared = Optional.empty();
  private Optional<Taken> taken = Optional.empty();
  private String doing = "";
  private String written = "";
  private long newest;

  /** Cards to write; public so that it can be copied with one component changed. */
  public record Wish(String file, CardVersion version) {}

  /**
   * Cards that came in.
   *
   * @param words how many
   * @param one of the rows that they put into the record
   */
  private record Taken(String words, Row one) {}

  public ContactsSheet(Desk desk) {
    super(desk);
  }

  @Override
  public void show(Fleet now) {
    Optional<Almanac> before = fleet().map(Fleet::almanac);
    super.show(now);
    if (taken.isPresent() && !now.almanac().rows().contains(taken.get().one())) {
      taken = Optional.empty();
      publish();
    }
    if (taken.isEmpty() && !before.equals(Optional.of(now.almanac()))) {
      compare();
    }
  }

  private static List<FieldOf<Wish>> fields() {
    FieldMaker make = new FieldMaker(Business.unnamed(), LocalDate.EPOCH);
    return List.of(
        FieldMaker.file(
            "file",
            "File to write",
            new Input.FileName("Contact cards (.vcf)", List.of("vcf"), true),
            Wish::file,
            name -> name),
        make.choice("version", "Version of vCard", CardVersion.class, Wish::version));
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    if (taken.isPresent()) {
      return done(taken.get().words());
    }
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(ContactsBlocks.file(words()));
    compared.ifPresentOrElse(c -> blocks.addAll(c.blocks()), () -> out(fleet, blocks));
    return new SheetState(
        TITLE,
        compared
            .map(ContactsBlocks::facts)
            .orElse("Nothing comes in before you say so, and one undo takes all of it back."),
        blocks,
        Optional.empty());
  }

  private String words() {
    if (!doing.isEmpty()) {
      return doing;
    }
    return compared.isPresent()
        ? "One undo takes all of it back."
        : "Cards of a phone or of a mail program, of version 2.1, 3.0 or 4.0. Who may be known already"
            + " is shown side by side before anything comes in.";
  }

  private void out(Fleet fleet, List<SheetState.Block> blocks) {
    int people = fleet.almanac().parties().size();
    blocks.add(draft.form("Write everyone as cards", fields()));
    blocks.add(new SheetState.Words(written));
    blocks.add(
        new SheetState.Buttons(
            List.of(
                new SheetState.Button(
                    ContactsBlocks.WRITE,
                    people == 1 ? "Write 1 card" : "Write " + people + " cards",
                    false),
                new SheetState.Button(ContactsBlocks.LEAVE, "Done", false))));
  }

  private static SheetState done(String words) {
    return new SheetState(
        TITLE,
        "",
        List.of(
            new SheetState.Words(
                "The cards are in: " + words + ". Undo (Ctrl+Z) takes all of it back at once."),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button(ContactsBlocks.LEAVE, "Done", true),
                    new SheetState.Button(ContactsBlocks.ANOTHER, "Other cards", false)))),
        Optional.empty());
  }

  @Override
  public void add(String block, List<String> files) {
    if (!files.isEmpty()) {
      String file = files.get(0);
      begin(file, () -> ContactsService.read(file));
    }
  }

  @Override
  public void add(String block, String text) {
    begin("the pasted cards", () -> ContactsService.pasted(text));
  }

  private void begin(String name, Supplier<ContactsService.Cards> how) {
    forget();
    long mine = newest;
    doing = "Reading " + name + " …";
    publish();
    desk.aside(
        how,
        cards -> {
          if (mine == newest) {
            arrived(cards);
          }
        });
  }

  private void arrived(ContactsService.Cards cards) {
    doing = "";
    if (cards.cards().isEmpty()) {
      trouble = Optional.of(String.join(" ", cards.problems()));
      publish();
      return;
    }
    IdSource ids = desk.ids();
    read = Optional.of(cards);
    drawn = cards.cards().stream().map(c -> ids.<Party>next().value() << 1).toList();
    compare();
  }

  /** The cards beside a record. */
  private static Contacts contacts(Almanac almanac, ContactsService.Cards cards, List<Long> drawn) {
    return Contacts.of(almanac, cards.cards(), new IdSource(drawn.iterator()::next));
  }

  private void compare() {
    if (fleet().isEmpty() || read.isEmpty()) {
      return;
    }
    long mine = ++newest;
    Almanac almanac = fleet().get().almanac();
    ContactsService.Cards cards = read.get();
    List<Long> ids = drawn;
    desk.reckon(
        () -> contacts(almanac, cards, ids),
        found -> {
          if (mine == newest) {
            compared = Optional.of(new ContactsBlocks(found, choices, cards.problems()));
            publish();
          }
        });
  }

  @Override
  public Said say(At at, String text) {
    return draft.say(fields(), at, text);
  }

  @Override
  public void enter(At at, String text) {
    if (at.block().equals(OUT)) {
      draft.enter(fields(), at, text);
      written = "";
      trouble = Optional.empty();
    }
    compared.ifPresent(
        c ->
            c.contacts().alike().stream()
                .map(pair -> pair.other().id())
                .filter(id -> at.block().equals(ContactsBlocks.ALIKE + id))
                .forEach(
                    id -> ContactsBlocks.chosen(text).ifPresent(chosen -> choose(id, chosen))));
    publish();
  }

  private void choose(Id<Party> id, Alike.Choice chosen) {
    choices = new HashMap<>(choices);
    choices.put(id, chosen);
    compared =
        compared.map(c -> new ContactsBlocks(c.contacts(), Map.copyOf(choices), c.problems()));
  }

  @Override
  public void press(String button) {
    switch (button) {
      case ContactsBlocks.TAKE_IN -> compared.ifPresent(this::takeIn);
      case ContactsBlocks.WRITE -> write();
      case ContactsBlocks.ANOTHER -> {
        forget();
        publish();
      }
      case ContactsBlocks.LEAVE -> {
        forget();
        desk.leave();
      }
      default -> throw new IllegalArgumentException("no button is called " + button);
    }
  }

  private void forget() {
    newest++;
    read = Optional.empty();
    compared = Optional.empty();
    taken = Optional.empty();
    choices = new HashMap<>();
    trouble = Optional.empty();
    doing = "";
    written = "";
  }

  private void takeIn(ContactsBlocks shown) {
    ContactsService.Cards cards = read.orElseThrow();
    List<Long> ids = drawn;
    AtomicReference<Optional<Row>> first = new AtomicReference<>(Optional.empty());
    desk.change(
        "contact cards",
        almanac -> {
          Change change =
              Change.checked(almanac, contacts(almanac, cards, ids).edit(almanac, shown::choice));
          if (change instanceof Change.Ready ready) {
            first.set(ready.edit().put().stream().findFirst());
          }
          return change;
        },
        () -> {
          taken = first.get().map(row -> new Taken(shown.done(), row));
          publish();
        });
  }

  private void write() {
    Wish wish = draft.value();
    trouble =
        wish.file().isBlank() ? Optional.of("Choose a file to write first.") : Optional.empty();
    if (trouble.isPresent()) {
      publish();
      return;
    }
    List<Party> parties = fleet().map(f -> f.almanac().parties()).orElse(List.of());
    desk.aside(
        () -> {
          try {
            return "Written to "
                + wish.file()
                + ": "
                + ContactsService.write(parties, wish.file(), wish.version())
                + " cards.";
          } catch (RecordException e) {
            return e.getMessage();
          }
        },
        said -> {
          written = said;
          publish();
        });
  }

  @Override
  public Topic topic() {
    return Topic.CARDS;
  }
}
