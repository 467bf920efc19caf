package hullalmanac.present.edit;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.work.Alike;
import hullalmanac.core.work.Contacts;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is shown of contact cards that are to come in.
 *
 * @param choices what was chosen for those who may be known, by the id they would have
 * @param problems what of the cards cannot be taken, a sentence each
 */
record ContactsBlocks(
    Contacts contacts, Map<Id<Party>, Alike.Choice> choices, List<String> problems) {
  static final String FILE = "cards file";
  static final String ALIKE = "alike ";
  static final String CHOICE = "choice";
  static final String TAKE_IN = "take in";
  static final String ANOTHER = "other cards";
  static final String WRITE = "write cards";
  static final String LEAVE = "leave cards";

  /** Where one takes cards in. */
  static SheetState.Files file(String words) {
    return new SheetState.Files(
        FILE,
        "Take cards in",
        words,
        "Choose a file …",
        "Contact cards (.vcf)",
        List.of("vcf"),
        "copied cards");
  }

  Alike.Choice choice(Alike pair) {
    return choices.getOrDefault(pair.other().id(), pair.usual());
  }

  private long count(Alike.Choice choice) {
    return contacts.alike().stream().filter(pair -> choice(pair) == choice).count();
  }

  /** How many people there will be more. */
  private long more() {
    return contacts.fresh().size() + count(Alike.Choice.BOTH);
  }

  private boolean nothing() {
    return more() + count(Alike.Choice.ONE) == 0;
  }

  /** What would come in, in a sentence or two. */
  String facts() {
    List<String> parts = new ArrayList<>();
    parts.add(more() == 0 ? "nobody new" : people(more()) + " new");
    if (count(Alike.Choice.ONE) > 0) {
      parts.add(count(Alike.Choice.ONE) + " made one with who is known");
    }
    if (count(Alike.Choice.LEAVE_OUT) > 0) {
      parts.add(count(Alike.Choice.LEAVE_OUT) + " left out");
    }
    int there = contacts.there().size();
    return "This would come in: "
        + String.join(", ", parts)
        + "."
        + (there == 0
            ? ""
            : there == 1
                ? " 1 card says nothing new of who is known."
                : " " + there + " cards say nothing new of who is known.");
  }

  /** What came in, in words. */
  String done() {
    List<String> parts = new ArrayList<>();
    if (more() > 0) {
      parts.add(people(more()) + " more");
    }
    if (count(Alike.Choice.ONE) > 0) {
      parts.add(count(Alike.Choice.ONE) + " made one with who was known");
    }
    return String.join(", ", parts);
  }

  private static String people(long count) {
    return count == 1 ? "1 person or firm" : count + " people and firms";
  }

  List<SheetState.Block> blocks() {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(new SheetState.Words(String.join(" ", problems), true));
    if (!contacts.fresh().isEmpty()) {
      blocks.add(
          new SheetState.Table(
              "Who is new",
              List.of("Name", "Phone", "E-mail", "Address"),
              contacts.fresh().stream().map(ContactsBlocks::row).toList(),
              ""));
    }
    Set<Id<Party>> fresh =
        new HashSet<>(contacts.fresh().stream().map(Party::id).collect(Collectors.toSet()));
    String heading = "Who may be known already";
    for (Alike pair : contacts.alike()) {
      blocks.add(
          new SheetState.Form(
              ALIKE + pair.other().id(),
              heading,
              List.of(
                  new SheetState.Field(
                      CHOICE,
                      pair.other().name(),
                      new Input.Choice(words()),
                      choice(pair).words(),
                      new Said(pair.why(), false)))));
      heading = "";
      String here = fresh.contains(pair.known().id()) ? "another card" : "the record";
      blocks.add(
          new TwoParties(pair.known(), pair.other(), here, "this card")
              .table(choice(pair) == Alike.Choice.ONE));
    }
    blocks.add(new SheetState.Buttons(buttons()));
    return blocks;
  }

  private List<SheetState.Button> buttons() {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (!nothing()) {
      buttons.add(new SheetState.Button(TAKE_IN, "Take them in", true));
    }
    buttons.add(new SheetState.Button(ANOTHER, "Other cards", false));
    buttons.add(new SheetState.Button(LEAVE, "Leave", nothing()));
    return buttons;
  }

  private static List<String> words() {
    return Arrays.stream(Alike.Choice.values()).map(Alike.Choice::words).toList();
  }

  /** What a text chooses. */
  static Optional<Alike.Choice> chosen(String text) {
    return Arrays.stream(Alike.Choice.values())
        .filter(c -> c.words().equals(text.strip()))
        .findFirst();
  }

  private static List<String> row(Party p) {
    return List.of(
        p.name(), p.phone(), p.email(), p.address().strip().replaceAll("\\s*\\R\\s*", ", "));
  }
}
