package hullalmanac.core.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The whole of a record as values, without its change log and its photo files. Each list is in no
 * particular order; ids are unique within a list, and so are the people's own ids ({@code key}).
 *
 * @param books the rows that are about money
 */
public record Almanac(
    Business business,
    List<Harbour> harbours,
    List<Party> parties,
    List<Boat> boats,
    List<Role> roles,
    List<Surface> surfaces,
    List<Berth> berths,
    List<CarePlan> carePlans,
    List<Product> products,
    List<Bottle> bottles,
    List<Visit> visits,
    List<Step> steps,
    List<Coat> coats,
    List<Duty> duties,
    List<Finding> findings,
    List<Photo> photos,
    List<ListReading> listReadings,
    List<Wording> wordings,
    List<Reminder> reminders,
    Books books) {
  public Almanac {
    harbours = List.copyOf(harbours);
    parties = List.copyOf(parties);
    boats = List.copyOf(boats);
    roles = List.copyOf(roles);
    surfaces = List.copyOf(surfaces);
    berths = List.copyOf(berths);
    carePlans = List.copyOf(carePlans);
    products = List.copyOf(products);
    bottles = List.copyOf(bottles);
    visits = List.copyOf(visits);
    steps = List.copyOf(steps);
    coats = List.copyOf(coats);
    duties = List.copyOf(duties);
    findings = List.copyOf(findings);
    photos = List.copyOf(photos);
    listReadings = List.copyOf(listReadings);
    wordings = List.copyOf(wordings);
    reminders = List.copyOf(reminders);
  }

  /** A record without money, to which no list of a person's own was brought. */
  public Almanac(
      Business business,
      List<Harbour> harbours,
      List<Party> parties,
      List<Boat> boats,
      List<Role> roles,
      List<Surface> surfaces,
      List<Berth> berths,
      List<CarePlan> carePlans,
      List<Product> products,
      List<Bottle> bottles,
      List<Visit> visits,
      List<Step> steps,
      List<Coat> coats,
      List<Duty> duties,
      List<Finding> findings,
      List<Photo> photos) {
    this(
        business,
        harbours,
        parties,
        boats,
        roles,
        surfaces,
        berths,
        carePlans,
        products,
        bottles,
        visits,
        steps,
        coats,
        duties,
        findings,
        photos,
        List.of(),
        List.of(),
        List.of(),
        Books.EMPTY);
  }

  /** A record of a business in which nothing has been written yet. */
  public static Almanac empty(Business business) {
    return new Almanac(
        business,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Books.EMPTY);
  }

  /** Names of all picture files that belong to the record. */
  public List<String> pictures() {
    String mark = business.letterhead().mark();
    return Stream.concat(
            photos.stream().map(Photo::file), Stream.of(mark).filter(m -> !m.isEmpty()))
        .distinct()
        .toList();
  }

  /** All rows, kind after kind: each refers only to rows of kinds before it, or of its own. */
  public List<Row> rows() {
    Stream<Row> work =
        Stream.<List<? extends Row>>of(
                harbours,
                parties,
                boats,
                roles,
                surfaces,
                berths,
                carePlans,
                products,
                bottles,
                visits,
                steps,
                coats,
                duties,
                findings,
                photos,
                listReadings,
                wordings,
                reminders)
            .flatMap(List::stream);
    return Stream.concat(work, books.rows()).toList();
  }

  /** This record after a change; a list in which something changed is in order of its ids. */
  public Almanac with(Edit edit) {
    Changed changed = new Changed(edit);
    return new Almanac(
        edit.business().orElse(business),
        changed.of(Harbour.class, harbours, Harbour::id),
        changed.of(Party.class, parties, Party::id),
        changed.of(Boat.class, boats, Boat::id),
        changed.of(Role.class, roles, Role::id),
        changed.of(Surface.class, surfaces, Surface::id),
        changed.of(Berth.class, berths, Berth::id),
        changed.of(CarePlan.class, carePlans, CarePlan::id),
        changed.of(Product.class, products, Product::id),
        changed.of(Bottle.class, bottles, Bottle::id),
        changed.of(Visit.class, visits, Visit::id),
        changed.of(Step.class, steps, Step::id),
        changed.of(Coat.class, coats, Coat::id),
        changed.of(Duty.class, duties, Duty::id),
        changed.of(Finding.class, findings, Finding::id),
        changed.of(Photo.class, photos, Photo::id),
        changed.of(ListReading.class, listReadings, ListReading::id),
        changed.of(Wording.class, wordings, Wording::id),
        changed.of(Reminder.class, reminders, Reminder::id),
        changed.books(books));
  }

  /** Applies an edit to one list after the other. */
  private record Changed(Edit edit) {
    Books books(Books books) {
      return new Books(
          of(Rate.class, books.rates(), Rate::id),
          of(Estimate.class, books.estimates(), Estimate::id),
          of(Invoice.class, books.invoices(), Invoice::id),
          of(Payment.class, books.payments(), Payment::id),
          of(Trip.class, books.trips(), Trip::id),
          of(Expense.class, books.expenses(), Expense::id));
    }

    <R extends Row> List<R> of(Class<R> type, List<R> rows, Function<R, Id<R>> id) {
      Map<Id<R>, R> put = new HashMap<>();
      edit.put().stream()
          .filter(type::isInstance)
          .map(type::cast)
          .forEach(r -> put.put(id.apply(r), r));
      Set<Id<R>> away = new HashSet<>(put.keySet());
      edit.gone().stream()
          .filter(type::isInstance)
          .map(type::cast)
          .forEach(r -> away.add(id.apply(r)));
      if (away.isEmpty()) {
        return rows;
      }
      List<R> after = new ArrayList<>(rows);
      after.removeIf(r -> away.contains(id.apply(r)));
      after.addAll(put.values());
      after.sort(Comparator.comparing(id));
      return after;
    }
  }
}
