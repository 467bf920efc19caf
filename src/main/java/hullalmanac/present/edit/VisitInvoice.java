package hullalmanac.present.edit;

import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Visit;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.Optional;

/** The way from a visit that was done to its invoice. */
final class VisitInvoice {
  private final Desk desk;
  private final Making making;

  VisitInvoice(Desk desk) {
    this.desk = desk;
    making = new Making(desk);
  }

  private static Optional<Invoice> billed(Fleet fleet, Visit visit) {
    return fleet.accounts().billed(visit.id());
  }

  static SheetState.Button button(Fleet fleet, Visit visit) {
    String words =
        billed(fleet, visit).map(i -> "Open the " + i.words()).orElse("Write its invoice");
    return new SheetState.Button("invoice", words, false);
  }

  /** Opens the invoice on which a visit stands, a new draft where there is none. */
  void open(Fleet fleet, Visit visit) {
    Optional<Invoice> there = billed(fleet, visit);
    if (there.isPresent()) {
      desk.open(new InvoiceSheet(desk, there.get().id()));
      return;
    }
    making.make(
        "invoice for the visit of " + visit.day() + " drafted",
        almanac -> InvoiceDraft.ofVisit(almanac, desk.ids(), visit.id()),
        Invoice.class,
        i -> desk.open(new InvoiceSheet(desk, i.id())));
  }
}
