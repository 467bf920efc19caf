package hullalmanac.core.takings;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who owes what since when, as of a day.
 *
 * @param accounts those who owe something or for whom something is held: who owes since longest
 *     first, then those for whom only something is held
 * @param owed what all owe together
 * @param late what of it is past its last day to pay
 * @param held what is held of payments
 */
public record OpenItems(List<Account> accounts, Money owed, Money late, Money held) {
  public OpenItems {
    accounts = List.copyOf(accounts);
  }

  /**
   * One party.
   *
   * @param items invoices of which something is open, the oldest first
   */
  public record Account(Party party, List<Item> items, Money owed, Money held) {
    public Account {
      items = List.copyOf(items);
    }
  }

  /**
   * One invoice of which something is open.
   *
   * @param open below nothing where more was paid than asked
   * @param daysLate days past the last day to pay; 0 or less when that is to come
   */
  public record Item(Invoice invoice, Money total, Money open, long daysLate) {
    /** How late it is. */
    public Age age() {
      for (Age age : Age.values()) {
        if (daysLate <= age.last) {
          return age;
        }
      }
      throw new IllegalStateException("no age is " + daysLate + " days");
    }

    /** The day on which it was issued. */
    public LocalDate since() {
      return invoice.issue().orElseThrow().day();
    }
  }

  /** How late an invoice is, in the usual steps of thirty days (common practice, no source). */
  public enum Age {
    NOT_DUE("not due yet", 0),
    UP_TO_30("up to 30 days late", 30),
    UP_TO_60("31 to 60 days late", 60),
    UP_TO_90("61 to 90 days late", 90),
    OVER_90("over 90 days late", Long.MAX_VALUE);

    private final String words;
    private final long last;

    Age(String words, long last) {
      this.words = words;
      this.last = last;
    }

    /** The words on screen and paper. */
    public String words() {
      return words;
    }
  }

  /**
   * Reads a record as of a day.
   *
   * @param accounts of the record
   */
  public static OpenItems of(Almanac almanac, Accounts accounts, LocalDate today) {
    Money nothing = Money.zero(almanac.business().currency());
    Map<Id<Party>, List<Invoice>> open =
        almanac.books().invoices().stream()
            .filter(i -> i.issued() && accounts.open(i).minor() != 0)
            .collect(Collectors.groupingBy(Invoice::party));
    Map<Id<Party>, List<Payment>> paid =
        almanac.books().payments().stream().collect(Collectors.groupingBy(Payment::party));
    List<Account> all = new ArrayList<>();
    for (Party party : almanac.parties()) {
      List<Item> items =
          open.getOrDefault(party.id(), List.of()).stream()
              .map(i -> item(accounts, i, today))
              .sorted(Comparator.comparing(Item::since).thenComparing(i -> i.invoice().id()))
              .toList();
      Money held =
          paid.getOrDefault(party.id(), List.of()).stream()
              .map(Payment::held)
              .reduce(nothing, Money::plus);
      if (!items.isEmpty() || held.isPositive()) {
        all.add(
            new Account(
                party, items, items.stream().map(Item::open).reduce(nothing, Money::plus), held));
      }
    }
    all.sort(
        Comparator.comparing((Account a) -> a.items().isEmpty())
            .thenComparing(a -> a.items().isEmpty() ? LocalDate.MAX : a.items().get(0).since())
            .thenComparing(a -> a.party().name())
            .thenComparing(a -> a.party().id()));
    Money late =
        all.stream()
            .flatMap(a -> a.items().stream())
            .filter(i -> i.daysLate() > 0)
            .map(Item::open)
            .reduce(nothing, Money::plus);
    return new OpenItems(
        all,
        all.stream().map(Account::owed).reduce(nothing, Money::plus),
        late,
        all.stream().map(Account::held).reduce(nothing, Money::plus));
  }

  /**
   * What is still to be paid of the invoices of one boat to those who own her on a day, the oldest
   * first. What others owe for her is not their matter.
   *
   * @param accounts of the record
   */
  public static List<Item> ofOwner(
      Almanac almanac, Accounts accounts, Id<Boat> boat, LocalDate today) {
    Set<Id<Party>> owners =
        almanac.roles().stream()
            .filter(r -> r.boat().equals(boat) && r.kind() == RoleKind.OWNS && r.holdsOn(today))
            .map(Role::party)
            .collect(Collectors.toSet());
    return almanac.books().invoices().stream()
        .filter(i -> i.issued() && i.boat().equals(Optional.of(boat)))
        .filter(i -> owners.contains(i.party()) && accounts.open(i).isPositive())
        .map(i -> item(accounts, i, today))
        .sorted(Comparator.comparing(Item::since).thenComparing(i -> i.invoice().id()))
        .toList();
  }

  private static Item item(Accounts accounts, Invoice invoice, LocalDate today) {
    return new Item(
        invoice,
        accounts.bill(invoice).total(),
        accounts.open(invoice),
        ChronoUnit.DAYS.between(invoice.issue().orElseThrow().due(), today));
  }
}
