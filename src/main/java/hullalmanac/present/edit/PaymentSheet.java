package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Receiving;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Money that came: who paid, how much, how, and which invoice it pays. */
public final class PaymentSheet implements Sheet {
  private static final String FORM = "payment";

  private final Desk desk;
  private final Optional<Id<Party>> party;
  private final Optional<Id<Invoice>> invoice;
  private Consumer<SheetState> view = s -> {};
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<String> trouble = Optional.empty();
  private Optional<Draft<Got>> draft = Optional.empty();

  /** What is known of the payment; public so that it can be copied with one component changed. */
  public record Got(
      Optional<Id<Party>> party,
      Optional<Id<Invoice>> invoice,
      Optional<Money> amount,
      LocalDate day,
      Payment.How how,
      String note) {}

  /**
   * @param party who paid, where that is known
   * @param invoice which invoice it pays, where that is known
   */
  public PaymentSheet(Desk desk, Optional<Id<Party>> party, Optional<Id<Invoice>> invoice) {
    this.desk = desk;
    this.party = party;
    this.invoice = invoice;
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
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    if (draft.isEmpty()) {
      draft = Optional.of(new Draft<>(FORM, begun(fleet)));
    }
    publish();
  }

  /** What is most likely: all that is open, today. */
  private Got begun(Fleet fleet) {
    Accounts accounts = fleet.accounts();
    Optional<Money> open =
        fleet.almanac().books().invoices().stream()
            .filter(i -> invoice.equals(Optional.of(i.id())))
            .map(accounts::open)
            .filter(Money::isPositive)
            .findFirst();
    return new Got(party, invoice, open, fleet.asOf(), Payment.How.BANK_TRANSFER, "");
  }

  private void publish() {
    fleet.ifPresent(f -> view.accept(stateOf(f)));
  }

  private Got got() {
    return draft.orElseThrow().value();
  }

  private List<FieldOf<Got>> fields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    List<FieldOf<Got>> fields = new ArrayList<>();
    if (party.isEmpty()) {
      fields.add(make.maybeOf("party", "Who paid", parties(fleet.almanac()), Got::party));
    }
    fields.add(make.maybeOf("invoice", "Pays", open(fleet.almanac()), Got::invoice));
    fields.add(make.money("amount", "Amount", Got::amount));
    fields.add(make.day("day", "Received on", Got::day));
    fields.add(make.choice("how", "How", Payment.How.class, Got::how));
    fields.add(make.line("note", "Note", Got::note));
    return fields;
  }

  private static List<FieldMaker.Named<Party>> parties(Almanac almanac) {
    return almanac.parties().stream()
        .sorted(Comparator.comparing(Party::name, String.CASE_INSENSITIVE_ORDER))
        .map(p -> new FieldMaker.Named<>(p.id(), p.name()))
        .toList();
  }

  /** Invoices of who paid of which something is open, the oldest first. */
  private List<FieldMaker.Named<Invoice>> open(Almanac almanac) {
    Accounts accounts = Accounts.of(almanac);
    return almanac.books().invoices().stream()
        .filter(i -> got().party().equals(Optional.of(i.party())))
        .filter(i -> accounts.open(i).isPositive())
        .sorted(Comparator.comparing(i -> i.issue().orElseThrow().day()))
        .map(
            i ->
                new FieldMaker.Named<>(
                    i.id(),
                    i.issue().orElseThrow().number() + ", open " + accounts.open(i).words()))
        .toList();
  }

  private SheetState stateOf(Fleet fleet) {
    if (draft.isEmpty()) {
      return new SheetState("", "", List.of(), Optional.empty());
    }
    String from =
        fleet.almanac().parties().stream()
            .filter(p -> got().party().equals(Optional.of(p.id())))
            .map(p -> "From " + p.name() + ". ")
            .findFirst()
            .orElse("");
    return new SheetState(
        "Money received",
        from
            + "What is more than the invoice asks, or pays none, is held: as a deposit, or to be"
            + " given back.",
        List.of(
            draft.get().form("", fields(fleet)),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("write", "Received", true),
                    new SheetState.Button("leave", "Leave it", false)))),
        trouble);
  }

  @Override
  public Said say(At at, String text) {
    return fleet
        .filter(f -> draft.isPresent())
        .map(f -> draft.get().say(fields(f), at, text))
        .orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet.filter(f -> draft.isPresent()).ifPresent(f -> draft.get().enter(fields(f), at, text));
    trouble = Optional.empty();
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("leave")) {
      desk.leave();
    } else {
      fleet.ifPresent(this::write);
    }
  }

  private void write(Fleet fleet) {
    trouble = draft.orElseThrow().trouble(fields(fleet)).or(this::missing);
    if (trouble.isPresent()) {
      publish();
      return;
    }
    Got got = got();
    Receiving.Received received =
        new Receiving.Received(
            got.party().orElseThrow(),
            got.day(),
            got.amount().orElseThrow(),
            got.how(),
            Optional.empty(),
            got.note());
    desk.change(
        received.amount().words() + " received",
        almanac -> change(almanac, received, got.invoice()),
        desk::leave);
  }

  private Change change(Almanac almanac, Receiving.Received received, Optional<Id<Invoice>> pays) {
    return pays.map(i -> Receiving.paying(almanac, desk.ids(), received, i))
        .orElseGet(() -> Receiving.held(almanac, desk.ids(), received));
  }

  private Optional<String> missing() {
    if (got().party().isEmpty()) {
      return Optional.of("Say who paid.");
    }
    return got().amount().isEmpty() ? Optional.of("Write how much came.") : Optional.empty();
  }

  @Override
  public Topic topic() {
    return Topic.PAYMENT;
  }
}
