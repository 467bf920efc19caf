package hullalmanac.present.people;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Role;
import hullalmanac.core.work.NewKeys;
import hullalmanac.present.Desk;
import hullalmanac.present.Invitation;
import hullalmanac.present.edit.AlikeSheet;
import hullalmanac.present.edit.ContactsSheet;
import hullalmanac.present.edit.PartySheet;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.service.Fleet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The people and firms, and the sheet of the one chosen. */
public final class PeoplePresenter {
  private final Desk desk;
  private final ContactsSheet cards;
  private Consumer<PeopleState> view = s -> {};
  private PeopleState state =
      new PeopleState(
          "",
          List.of(),
          "Reading the record …",
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
  private Optional<Fleet> fleet = Optional.empty();

  public PeoplePresenter(Desk desk) {
    this.desk = desk;
    cards = new ContactsSheet(desk);
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<PeopleState> view) {
    this.view = view;
    view.accept(state);
  }

  /** Shows a record; the one chosen stays chosen. */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    List<PeopleState.Item> list = list(state.find());
    Optional<Id<Party>> chosen =
        state
            .chosen()
            .filter(id -> fleet.almanac().parties().stream().anyMatch(p -> p.id().equals(id)))
            .or(() -> list.stream().findFirst().map(PeopleState.Item::party));
    publish(state.find(), list, chosen);
    state.sheet().ifPresent(sheet -> sheet.show(fleet));
  }

  /** Lists those whose name, phone, e-mail or boat holds a text. */
  public void find(String text) {
    publish(text, list(text), state.chosen());
  }

  /** Shows the sheet of a person or a firm. */
  public void choose(Id<Party> party) {
    if (!state.chosen().equals(Optional.of(party))) {
      publish(state.find(), state.list(), Optional.of(party));
      fleet.ifPresent(f -> state.sheet().ifPresent(sheet -> sheet.show(f)));
    }
  }

  /** Writes down a person, to be described. */
  public void add() {
    Id<Party> id = desk.ids().next();
    desk.edit("a person added", almanac -> Edit.put(unknown(id, almanac)), () -> choose(id));
  }

  /** Opens the sheet that takes contact cards in and writes them, as it was left. */
  public void openCards() {
    desk.open(cards);
  }

  /** Opens the sheet of people who may be one and the same. */
  public void openAlike() {
    desk.open(new AlikeSheet(desk));
  }

  private static Party unknown(Id<Party> id, Almanac almanac) {
    return new Party(
        id,
        new NewKeys(almanac).next(Kind.PARTY, "new person"),
        PartyKind.PERSON,
        "New person",
        "",
        "",
        "",
        "",
        Optional.empty(),
        "");
  }

  private void publish(String find, List<PeopleState.Item> list, Optional<Id<Party>> chosen) {
    Optional<Sheet> sheet =
        chosen.equals(state.chosen()) && state.sheet().isPresent()
            ? state.sheet()
            : chosen.map(id -> new PartySheet(desk, id, true));
    String found =
        list.isEmpty()
            ? find.isBlank() ? "Nobody has been written down yet." : "Nobody is called that."
            : list.size() == 1 ? "1 person or firm" : list.size() + " people and firms";
    state = new PeopleState(find, list, found, chosen, sheet, invitation());
    view.accept(state);
  }

  private Optional<Invitation> invitation() {
    return fleet
        .filter(f -> f.almanac().parties().isEmpty())
        .map(
            f ->
                new Invitation(
                    "Owners come with their boats",
                    "Whoever calls about a boat is written down with her. Somebody without a boat,"
                        + " such as a yard or a harbour office, can be added here.",
                    "New person"));
  }

  private List<PeopleState.Item> list(String find) {
    if (fleet.isEmpty()) {
      return List.of();
    }
    Fleet f = fleet.get();
    Lookups lookups = new Lookups(f.almanac(), f.asOf());
    Map<Id<Party>, List<Role>> roles =
        f.almanac().roles().stream()
            .filter(r -> r.holdsOn(f.asOf()))
            .collect(Collectors.groupingBy(Role::party));
    String wanted = find.strip().toLowerCase(Locale.ROOT);
    return f.almanac().parties().stream()
        .sorted(Comparator.comparing(Party::name, String.CASE_INSENSITIVE_ORDER))
        .map(
            p ->
                new PeopleState.Item(
                    p.id(),
                    p.name(),
                    boats(roles.getOrDefault(p.id(), List.of()), lookups),
                    p.phone().isBlank() ? p.email() : p.phone()))
        .filter(
            i ->
                Stream.of(i.name(), i.boats(), i.reach())
                    .anyMatch(t -> t.toLowerCase(Locale.ROOT).contains(wanted)))
        .toList();
  }

  private static String boats(List<Role> roles, Lookups lookups) {
    return roles.isEmpty()
        ? "no boat now"
        : roles.stream()
            .map(r -> lookups.boat(r.boat()).name())
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
  }
}
