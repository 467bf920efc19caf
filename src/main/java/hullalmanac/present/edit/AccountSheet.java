package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.core.takings.Receiving;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What somebody owes, has paid, and what is held for them. */
public final class AccountSheet extends FleetSheet {
  private static final int MOST_ROWS = 60;
  private static final String OPEN = "open ";
  private static final String BACK = "back ";
  private static final String USE = "use ";
  private static final String KEEP = "keep ";

  private final Id<Party> party;

  public AccountSheet(Desk desk, Id<Party> party) {
    super(desk);
    this.party = party;
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  private static List<Invoice> invoices(Almanac almanac, Id<Party> party) {
    return almanac.books().invoices().stream()
        .filter(i -> i.party().equals(party) && i.issued())
        .sorted(Comparator.comparing((Invoice i) -> i.issue().orElseThrow().day()).reversed())
        .toList();
  }

  private static List<Payment> payments(Almanac almanac, Id<Party> party) {
    return almanac.books().payments().stream()
        .filter(p -> p.party().equals(party))
        .sorted(Comparator.comparing(Payment::day).reversed().thenComparing(Payment::id))
        .toList();
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    Optional<Party> who = almanac.parties().stream().filter(p -> p.id().equals(party)).findFirst();
    if (who.isEmpty()) {
      return new SheetState(
          "Not in the record", "This person or firm was removed.", List.of(), Optional.empty());
    }
    Optional<OpenItems.Account> account =
        fleet.open().accounts().stream().filter(a -> a.party().id().equals(party)).findFirst();
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(openTable(account));
    blocks.add(new SheetState.Buttons(openButtons(account)));
    held(fleet).forEach(blocks::add);
    blocks.add(paid(almanac));
    blocks.add(all(fleet));
    return new SheetState(who.get().name(), facts(account), blocks, Optional.empty());
  }

  private static String facts(Optional<OpenItems.Account> account) {
    if (account.isEmpty()) {
      return "Nothing is open.";
    }
    OpenItems.Account a = account.get();
    String owes = a.items().isEmpty() ? "Nothing is open." : "Owes " + a.owed().words() + ".";
    return a.held().isPositive() ? owes + " " + a.held().words() + " is held." : owes;
  }

  private static SheetState.Table openTable(Optional<OpenItems.Account> account) {
    return new SheetState.Table(
        "Open",
        List.of("Invoice", "Since", "To be paid by", "Total", "Open", ""),
        account.stream()
            .flatMap(a -> a.items().stream())
            .map(
                i ->
                    List.of(
                        i.invoice().issue().orElseThrow().number(),
                        DateWords.dated(i.since()),
                        DateWords.dated(i.invoice().issue().orElseThrow().due()),
                        i.total().words(),
                        i.open().words(),
                        i.age().words()))
            .toList(),
        "Nothing is open.");
  }

  private static List<SheetState.Button> openButtons(Optional<OpenItems.Account> account) {
    List<SheetState.Button> buttons = new ArrayList<>();
    buttons.add(new SheetState.Button("pay", "Record a payment", true));
    account.stream()
        .flatMap(a -> a.items().stream())
        .forEach(
            i ->
                buttons.add(
                    new SheetState.Button(
                        OPEN + i.invoice().id().value(),
                        "Open " + i.invoice().issue().orElseThrow().number(),
                        false)));
    return buttons;
  }

  /** What is held of each payment, and what can become of it. */
  private List<SheetState.Block> held(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    Accounts accounts = fleet.accounts();
    Optional<Invoice> oldest = oldest(almanac, accounts);
    List<SheetState.Block> blocks = new ArrayList<>();
    for (Payment p : payments(almanac, party)) {
      if (!p.held().isPositive()) {
        continue;
      }
      blocks.add(
          new SheetState.Words(
              p.held().words() + " is held of the payment of " + DateWords.dated(p.day()) + "."));
      List<SheetState.Button> buttons = new ArrayList<>();
      oldest.ifPresent(
          i ->
              buttons.add(
                  new SheetState.Button(
                      USE + p.id().value(),
                      "Let it pay " + i.issue().orElseThrow().number(),
                      false)));
      buttons.add(new SheetState.Button(BACK + p.id().value(), "Given back", false));
      buttons.add(new SheetState.Button(KEEP + p.id().value(), "Kept, as agreed", false));
      blocks.add(new SheetState.Buttons(buttons));
    }
    return blocks;
  }

  private Optional<Invoice> oldest(Almanac almanac, Accounts accounts) {
    return invoices(almanac, party).stream()
        .filter(i -> accounts.open(i).isPositive())
        .reduce((newer, older) -> older);
  }

  private SheetState.Table paid(Almanac almanac) {
    Map<Id<Invoice>, String> numbers =
        almanac.books().invoices().stream()
            .filter(i -> i.issued())
            .collect(Collectors.toMap(Invoice::id, i -> i.issue().orElseThrow().number()));
    return new SheetState.Table(
        "Received",
        List.of("Day", "Amount", "How", "What became of it"),
        payments(almanac, party).stream()
            .limit(MOST_ROWS)
            .map(
                p ->
                    List.of(
                        DateWords.dated(p.day()),
                        p.amount().words(),
                        p.how().words(),
                        became(numbers, p)))
            .toList(),
        "Nothing has come yet.");
  }

  private static String became(Map<Id<Invoice>, String> numbers, Payment p) {
    List<String> parts =
        p.uses().stream()
            .map(u -> u.amount().words() + " " + u.became().words() + number(numbers, u))
            .collect(Collectors.toCollection(ArrayList::new));
    if (p.held().isPositive()) {
      parts.add(p.held().words() + " held");
    }
    return String.join(", ", parts);
  }

  private static String number(Map<Id<Invoice>, String> numbers, Payment.Use use) {
    return use.invoice().map(numbers::get).map(n -> " " + n).orElse("");
  }

  private SheetState.Table all(Fleet fleet) {
    Accounts accounts = fleet.accounts();
    return new SheetState.Table(
        "All invoices and credits",
        List.of("Number", "Day", "Total", "Open"),
        invoices(fleet.almanac(), party).stream()
            .limit(MOST_ROWS)
            .map(
                i ->
                    List.of(
                        i.issue().orElseThrow().number(),
                        DateWords.dated(i.issue().orElseThrow().day()),
                        (i.credits().isPresent()
                                ? accounts.bill(i).total().negated()
                                : accounts.bill(i).total())
                            .words(),
                        accounts.open(i).minor() == 0 ? "" : accounts.open(i).words()))
            .toList(),
        "No invoice was issued yet.");
  }

  @Override
  public void press(String button) {
    fleet().ifPresent(f -> press(button, f));
  }

  private void press(String button, Fleet fleet) {
    Almanac now = fleet.almanac();
    Optional<Payment> payment =
        payments(now, party).stream()
            .filter(p -> button.endsWith(" " + p.id().value()))
            .findFirst();
    if (button.equals("pay")) {
      desk.open(new PaymentSheet(desk, Optional.of(party), only(fleet)));
    } else if (button.startsWith(OPEN)) {
      desk.open(new InvoiceSheet(desk, new Id<>(Long.parseLong(button.substring(OPEN.length())))));
    } else if (payment.isPresent()) {
      become(button, fleet, payment.get());
    } else {
      desk.leave();
    }
  }

  /** The one open invoice, where there is just one. */
  private Optional<Id<Invoice>> only(Fleet fleet) {
    Accounts accounts = fleet.accounts();
    List<Invoice> open =
        invoices(fleet.almanac(), party).stream()
            .filter(i -> accounts.open(i).isPositive())
            .toList();
    return open.size() == 1 ? Optional.of(open.get(0).id()) : Optional.empty();
  }

  private void become(String button, Fleet fleet, Payment p) {
    Money held = p.held();
    if (button.startsWith(BACK)) {
      desk.change(
          held.words() + " given back",
          almanac -> Receiving.giveBack(almanac, p.id(), held, fleet.asOf()));
    } else if (button.startsWith(KEEP)) {
      desk.change(
          held.words() + " kept", almanac -> Receiving.keep(almanac, p.id(), held, fleet.asOf()));
    } else {
      oldest(fleet.almanac(), fleet.accounts())
          .ifPresent(
              i ->
                  desk.change(
                      held.words() + " pays " + i.words(),
                      almanac -> Receiving.apply(almanac, p.id(), i.id(), fleet.asOf())));
    }
  }

  @Override
  public Topic topic() {
    return Topic.PAYMENT;
  }
}
