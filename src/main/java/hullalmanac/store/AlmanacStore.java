package hullalmanac.store;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Books;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import java.sql.SQLException;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/** Reads and writes the whole of a record. */
public final class AlmanacStore {
  private final Tx tx;
  private final PlaceStore places;
  private final BoatStore boats;
  private final ProductStore products;
  private final WorkStore work;
  private final CoatStore coats;
  private final FindingStore findings;
  private final BillStore bills;
  private final BooksStore books;
  private final ListStore lists;
  private final ReminderStore reminders;

  public AlmanacStore(Tx tx) {
    this.tx = tx;
    places = new PlaceStore(tx);
    boats = new BoatStore(tx);
    products = new ProductStore(tx);
    work = new WorkStore(tx);
    coats = new CoatStore(tx);
    findings = new FindingStore(tx);
    bills = new BillStore(tx);
    books = new BooksStore(tx);
    lists = new ListStore(tx);
    reminders = new ReminderStore(tx);
  }

  /** Reads all there is, each list in order of its ids. */
  public Almanac readAll() throws SQLException {
    Business business = places.business().orElseGet(Business::unnamed);
    return new Almanac(
        business,
        places.harbours(),
        boats.parties(),
        boats.boats(),
        boats.roles(),
        boats.surfaces(),
        places.berths(),
        boats.carePlans(business.currency()),
        products.products(),
        products.bottles(),
        work.visits(),
        work.steps(),
        coats.coats(),
        coats.duties(),
        findings.findings(),
        findings.photos(),
        lists.readings(),
        lists.wordings(),
        reminders.reminders(),
        books(business.currency()));
  }

  private Books books(Currency currency) throws SQLException {
    return new Books(
        books.rates(currency),
        bills.estimates(currency),
        bills.invoices(currency),
        books.payments(currency),
        books.trips(),
        books.expenses(currency));
  }

  /** Applies a change. */
  public void apply(Edit edit) throws SQLException {
    if (edit.business().isPresent()) {
      places.write(edit.business().get());
    }
    Almanac put = Almanac.empty(Business.unnamed()).with(Edit.put(edit.put()));
    places.putHarbours(put.harbours());
    boats.putParties(put.parties());
    boats.putBoats(put.boats());
    boats.putRoles(put.roles());
    boats.putSurfaces(put.surfaces());
    places.putBerths(put.berths());
    boats.putCarePlans(put.carePlans());
    products.putProducts(put.products());
    products.putBottles(put.bottles());
    work.putVisits(put.visits());
    work.putSteps(put.steps());
    coats.putCoats(put.coats());
    coats.putDuties(put.duties());
    findings.putFindings(put.findings());
    findings.putPhotos(put.photos());
    books.putRates(put.books().rates());
    bills.putEstimates(put.books().estimates());
    bills.putInvoices(put.books().invoices());
    books.putPayments(put.books().payments());
    books.putTrips(put.books().trips());
    books.putExpenses(put.books().expenses());
    lists.putReadings(put.listReadings());
    lists.putWordings(put.wordings());
    reminders.putReminders(put.reminders());
    remove(edit.gone());
  }

  private void remove(List<Row> gone) throws SQLException {
    for (Row row : gone) {
      tx.run("DELETE FROM " + Acts.table(Kind.of(row)) + " WHERE id = :id", Map.of("id", row.id()));
    }
  }
}
