package hullalmanac.present.takings;

import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.OpenItems;
import hullalmanac.present.takings.TakingsState.Item;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The list at the left of Takings. */
final class TakingsList {
  private final Fleet fleet;
  private final Almanac almanac;
  private final Accounts accounts;
  private final OpenItems open;
  private final Map<Object, Party> parties;
  private final Map<Object, Boat> boats;
  private final DateWords words;
  private final List<Findable> toDo;
  private Optional<List<Findable>> others = Optional.empty();

  TakingsList(Fleet fleet) {
    this.fleet = fleet;
    almanac = fleet.almanac();
    accounts = fleet.accounts();
    open = fleet.open();
    parties = almanac.parties().stream().collect(Collectors.toMap(Party::id, Function.identity()));
    boats = almanac.boats().stream().collect(Collectors.toMap(Boat::id, Function.identity()));
    words = new DateWords(fleet.asOf());
    toDo = toDo().stream().map(Findable::of).toList();
  }

  /** A line, and what one finds it by. */
  private record Findable(Item item, String text) {
    static Findable of(Item item) {
      return new Findable(
          item,
          String.join("\n", item.name(), item.status(), item.detail()).toLowerCase(Locale.ROOT));
    }
  }

  /**
   * What needs doing about money; where something is looked for, issued invoices and answered
   * estimates too. The lines are made once, for this is asked with each key.
   */
  List<Item> items(String find) {
    String wanted = find.strip().toLowerCase(Locale.ROOT);
    if (wanted.isEmpty()) {
      return toDo.stream().map(Findable::item).toList();
    }
    if (others.isEmpty()) {
      others = Optional.of(others().map(Findable::of).toList());
    }
    return Stream.concat(toDo.stream(), others.get().stream())
        .filter(f -> f.text().contains(wanted))
        .map(Findable::item)
        .toList();
  }

  private List<Item> toDo() {
    List<Item> items = new ArrayList<>();
    items.add(standing());
    items.add(
        new Item(
            new TakingsState.Pricing(), "What it costs", "by length and by time", "also by phone"));
    items.add(new Item(new TakingsState.Spending(), "Trips and expenses", "driven and spent", ""));
    open.accounts().forEach(a -> items.add(account(a)));
    invoices(false).forEach(i -> items.add(draft(i)));
    estimates().filter(e -> e.answer().isEmpty()).forEach(e -> items.add(estimate(e)));
    return items;
  }

  private Stream<Item> others() {
    return Stream.concat(
        invoices(true).map(this::issued),
        estimates().filter(e -> e.answer().isPresent()).map(this::estimate));
  }

  /** What there is to do, in words. */
  String summary() {
    List<String> parts = new ArrayList<>();
    long owing = open.accounts().stream().filter(a -> !a.items().isEmpty()).count();
    parts.add(owing + " open");
    long held = open.accounts().size() - owing;
    if (held > 0) {
      parts.add(held + " only held");
    }
    parts.add(invoices(false).count() + " to issue");
    parts.add(estimates().filter(e -> e.answer().isEmpty()).count() + " to answer");
    return String.join(", ", parts);
  }

  private Item standing() {
    return new Item(
        new TakingsState.Standing(),
        "How it stands",
        open.owed().words() + " outstanding",
        "by month, service and harbour");
  }

  private static Item account(OpenItems.Account a) {
    long late = a.items().stream().mapToLong(OpenItems.Item::daysLate).max().orElse(0);
    String held = a.held().isPositive() ? a.held().words() + " held" : "";
    if (a.items().isEmpty()) {
      return new Item(new TakingsState.OfParty(a.party().id()), a.party().name(), held, "");
    }
    String since =
        late > 0
            ? late + (late == 1 ? " day late" : " days late")
            : "since " + DateWords.dated(a.items().get(0).since());
    return new Item(
        new TakingsState.OfParty(a.party().id()),
        a.party().name(),
        "owes " + a.owed().words(),
        held.isEmpty() ? since : since + " · " + held);
  }

  private Stream<Invoice> invoices(boolean issued) {
    return almanac.books().invoices().stream()
        .filter(i -> i.issued() == issued)
        .sorted(
            Comparator.comparing(
                    (Invoice i) -> i.issue().map(x -> x.day()).orElse(java.time.LocalDate.MIN))
                .reversed()
                .thenComparing(Invoice::key));
  }

  private String boat(Invoice i) {
    return i.boat().map(boats::get).map(Boat::name).orElse("several boats");
  }

  private Item draft(Invoice i) {
    Money total = accounts.bill(i).total();
    return new Item(
        new TakingsState.OfInvoice(i.id()),
        boat(i),
        (i.credits().isPresent() ? "credit to issue, " : "draft to issue, ") + total.words(),
        parties.get(i.party()).name());
  }

  private Item issued(Invoice i) {
    Money left = accounts.open(i);
    return new Item(
        new TakingsState.OfInvoice(i.id()),
        i.issue().orElseThrow().number() + ", " + boat(i),
        left.isPositive() ? "open " + left.words() : i.credits().isPresent() ? "credit" : "settled",
        parties.get(i.party()).name() + " · " + DateWords.dated(i.issue().orElseThrow().day()));
  }

  private Stream<Estimate> estimates() {
    return almanac.books().estimates().stream()
        .sorted(Comparator.comparing(Estimate::validUntil).thenComparing(Estimate::key));
  }

  private Item estimate(Estimate e) {
    String until =
        e.state() != Estimate.State.OFFERED
            ? ""
            : fleet.asOf().isAfter(e.validUntil())
                ? ", ran out on " + words.exact(e.validUntil())
                : ", until " + words.exact(e.validUntil());
    String prices =
        e.options().stream()
            .filter(o -> !o.lines().isEmpty())
            .map(o -> Bill.of(o, e.terms(), almanac.business().currency()).total())
            .sorted()
            .map(Money::words)
            .collect(Collectors.joining(" / "));
    return new Item(
        new TakingsState.OfEstimate(e.id()),
        boats.get(e.boat()).name(),
        "estimate " + e.state().words() + until,
        prices);
  }
}
