package hullalmanac.present.edit;

import hullalmanac.core.finish.Area;
import hullalmanac.core.finish.Budget;
import hullalmanac.core.record.Numbers;
import hullalmanac.core.record.Quantity;
import hullalmanac.core.record.Unit;

/** Numbers no more exact than what they rest on. */
final class Roughly {
  private Roughly() {}

  /** An area in a unit; whole where it is by rule of thumb, unless it is under one. */
  static String area(Area area, Unit unit) {
    Quantity exact = Quantity.of(area.squareMetres(), Unit.SQUARE_METRE).to(unit);
    double amount = exact.amount().doubleValue();
    return area.how().isRule() && amount >= 1
        ? Quantity.of((double) Math.round(amount), unit).text()
        : exact.text();
  }

  /** The same in its unit and in that of people elsewhere: "21 m² · 223 ft²". */
  static String area(Area area) {
    return area(area, Unit.SQUARE_METRE) + " · " + area(area, Unit.SQUARE_METRE.counterpart());
  }

  /** Microns of a budget; whole where it is by rule of thumb, never more than there are. */
  static String microns(double microns, Budget.Basis basis) {
    return Numbers.plain(basis.isRule() ? Math.floor(microns) : microns);
  }
}
