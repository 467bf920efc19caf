package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.With;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Receiving;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Money that came: who paid, how much, how, and which invoice it pays. */
public final class PaymentSheet extends ShownSheet {
  private static final String FORM = "payment";

  private final Optional<Id<Party>> party;
  private final Optional<Id<Invoice>> invoice;
  private final Making making;
  private Draft<Got> draft;
  private Optional<Made> made = Optional.empty();

  /** What is known of the payment; public so that it can be copied with one component changed. */
  public record Got(
      Optional<Id<Party>> party,
      Optional<Id<Invoice>> invoice,
      Optional<Money> amount,
      LocalDate day,
      Payment.How how,
      String note) {}

  /** Fields for a record, and who paid. */
  private record Made(Optional<Id<Party>> party, List<FieldOf<Got>> fields) {}

  /**
   * @param party who paid, where that is known
   * @param invoice which invoice it pays, where that is known
   */
  public PaymentSheet(Desk desk, Optional<Id<Party>> party, Optional<Id<Invoice>> invoice) {
    super(desk);
    making = new Making(desk);
    this.party = party;
    this.invoice = invoice;
  }

  @Override
  void begin(Fleet first) {
    draft = new Draft<>(FORM, begun(first));
  }

  @Override
  public void show(Fleet now) {
    made = Optional.empty();
    super.show(now);
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

  private Got got() {
    return draft.value();
  }

  /** The fields; made once for a record and who paid, for they are asked for with each key. */
  private List<FieldOf<Got>> fields(Fleet fleet) {
    if (made.filter(m -> m.party().equals(got().party())).isEmpty()) {
      made = Optional.of(new Made(got().party(), make(fleet)));
    }
    return made.get().fields();
  }

  private List<FieldOf<Got>> make(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    List<FieldOf<Got>> fields = new ArrayList<>();
    if (party.isEmpty()) {
      fields.add(withoutInvoice(make.maybeOf("party", "Who paid", parties(fleet), Got::party)));
    }
    fields.add(make.maybeOf("invoice", "Pays", open(fleet), Got::invoice));
    fields.add(make.money("amount", "Amount", Got::amount));
    fields.add(make.day("day", "Received on", Got::day));
    fields.add(make.choice("how", "How", Payment.How.class, Got::how));
    fields.add(make.line("note", "Note", Got::note));
    return fields;
  }

  /** A field that changes who paid: an invoice of another is not paid with it. */
  private static FieldOf<Got> withoutInvoice(FieldOf<Got> party) {
    return new FieldOf<>(
        party.id(),
        party.label(),
        party.input(),
        party.text(),
        (got, typed) ->
            party
                .enter()
                .apply(got, typed)
                .map(
                    now ->
                        now.party().equals(got.party())
                            ? now
                            : With.component(now, "invoice", Optional.empty())));
  }

  private static List<FieldMaker.Named<Party>> parties(Fleet fleet) {
    return fleet.almanac().parties().stream()
        .sorted(Comparator.comparing(Party::name, String.CASE_INSENSITIVE_ORDER))
        .map(p -> new FieldMaker.Named<>(p.id(), p.name()))
        .toList();
  }

  /** Invoices of who paid of which something is open, the oldest first. */
  private List<FieldMaker.Named<Invoice>> open(Fleet fleet) {
    Accounts accounts = fleet.accounts();
    return fleet.almanac().books().invoices().stream()
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

  @Override
  SheetState stateOf(Fleet fleet) {
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
            draft.form("", fields(fleet)),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("write", "Received", true),
                    new SheetState.Button("leave", "Leave it", false)))),
        Optional.empty());
  }

  @Override
  public Said say(At at, String text) {
    return fleet().map(f -> draft.say(fields(f), at, text)).orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet().ifPresent(f -> draft.enter(fields(f), at, text));
    trouble = Optional.empty();
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("leave")) {
      desk.leave();
    } else {
      fleet().ifPresent(this::write);
    }
  }

  private void write(Fleet fleet) {
    trouble = draft.trouble(fields(fleet)).or(this::missing);
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
    making.make(
        received.amount().words() + " received",
        almanac -> change(almanac, received, got.invoice()),
        Payment.class,
        p -> desk.leave());
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
