package hullalmanac.core.record;

import java.util.List;
import java.util.stream.Stream;

/** The rows of a record that are about money. Each list is in no particular order. */
public record Books(
    List<Rate> rates,
    List<Estimate> estimates,
    List<Invoice> invoices,
    List<Payment> payments,
    List<Trip> trips,
    List<Expense> expenses) {
  /** No row at all. */
  public static final Books EMPTY =
      new Books(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public Books {
    rates = List.copyOf(rates);
    estimates = List.copyOf(estimates);
    invoices = List.copyOf(invoices);
    payments = List.copyOf(payments);
    trips = List.copyOf(trips);
    expenses = List.copyOf(expenses);
  }

  /** All rows, kind after kind. */
  Stream<Row> rows() {
    return Stream.<List<? extends Row>>of(rates, estimates, invoices, payments, trips, expenses)
        .flatMap(List::stream);
  }
}
