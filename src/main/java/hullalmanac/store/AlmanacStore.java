package hullalmanac.store;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import java.sql.SQLException;

/** Reads and writes the whole of a record. */
public final class AlmanacStore {
  private final PlaceStore places;
  private final BoatStore boats;
  private final ProductStore products;
  private final WorkStore work;
  private final CoatStore coats;
  private final FindingStore findings;

  public AlmanacStore(Tx tx) {
    places = new PlaceStore(tx);
    boats = new BoatStore(tx);
    products = new ProductStore(tx);
    work = new WorkStore(tx);
    coats = new CoatStore(tx);
    findings = new FindingStore(tx);
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
        findings.photos());
  }

  /**
   * Adds every row of an almanac to what is there, and writes its business in place of the one
   * there.
   */
  public void addAll(Almanac almanac) throws SQLException {
    places.write(almanac.business());
    places.addHarbours(almanac.harbours());
    boats.addParties(almanac.parties());
    boats.addBoats(almanac.boats());
    boats.addRoles(almanac.roles());
    boats.addSurfaces(almanac.surfaces());
    places.addBerths(almanac.berths());
    boats.addCarePlans(almanac.carePlans());
    products.addProducts(almanac.products());
    products.addBottles(almanac.bottles());
    work.addVisits(almanac.visits());
    work.addSteps(almanac.steps());
    coats.addCoats(almanac.coats());
    coats.addDuties(almanac.duties());
    findings.addFindings(almanac.findings());
    findings.addPhotos(almanac.photos());
  }
}
