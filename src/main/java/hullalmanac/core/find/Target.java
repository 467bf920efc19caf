package hullalmanac.core.find;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Visit;

/** Where a hit leads. */
public sealed interface Target {
  /** Whether what it leads to is in a record. */
  default boolean isIn(Almanac almanac) {
    Id<?> row =
        this instanceof OnBoat found
            ? found.boat()
            : this instanceof ToInvoice found
                ? found.invoice()
                : this instanceof ToEstimate found
                    ? found.estimate()
                    : this instanceof ToParty found
                        ? found.party()
                        : this instanceof ToHarbour found
                            ? found.harbour()
                            : ((ToProduct) this).product();
    return almanac.rows().stream().anyMatch(r -> r.id().equals(row));
  }

  /** Where a hit leads that is a boat, or a part of one. */
  sealed interface OnBoat extends Target {
    /** The boat. */
    Id<Boat> boat();
  }

  /** A boat. */
  record ToBoat(Id<Boat> boat) implements OnBoat {}

  /** A visit to a boat. */
  record ToVisit(Id<Visit> visit, Id<Boat> boat) implements OnBoat {}

  /** A finding on a boat. */
  record ToFinding(Id<Finding> finding, Id<Boat> boat) implements OnBoat {}

  /** A photo of a boat. */
  record ToPhoto(Id<Photo> photo, Id<Boat> boat) implements OnBoat {}

  /** An invoice or a credit, also as a draft. */
  record ToInvoice(Id<Invoice> invoice) implements Target {}

  /** An estimate. */
  record ToEstimate(Id<Estimate> estimate) implements Target {}

  /** A person or a firm. */
  record ToParty(Id<Party> party) implements Target {}

  /** A harbour. */
  record ToHarbour(Id<Harbour> harbour) implements Target {}

  /** A product. */
  record ToProduct(Id<Product> product) implements Target {}
}
