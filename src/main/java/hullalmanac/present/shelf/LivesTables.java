package hullalmanac.present.shelf;

import hullalmanac.core.life.Survival;
import hullalmanac.core.life.fit.SurvivalStep;
import hullalmanac.present.table.TableState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the picture of a product's lives shows, in numbers: months at the reference berth. */
record LivesTables(Survival survival) {
  private static final String LEFT = "Still protected, of 10";

  List<TableState> all() {
    return survival.steps().isEmpty() ? List.of(used()) : List.of(used(), seen());
  }

  /** The steps, each from its month on, with their band. */
  private TableState seen() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of(tenth(0), tenth(10), "", ""));
    for (SurvivalStep s : survival.steps()) {
      rows.add(
          List.of(
              tenth(s.until()),
              tenth(10 * s.surviving()),
              s.band().map(b -> tenth(10 * b.lower())).orElse(""),
              s.band().map(b -> tenth(10 * b.upper())).orElse("")));
    }
    return TableState.of(
        "What was seen", List.of("From month", LEFT, "95 % band from", "95 % band to"), rows);
  }

  /**
   * The smooth line: each month of the first year, then each third, after three years each sixth.
   */
  private TableState used() {
    List<List<String>> rows = new ArrayList<>();
    double last = survival.curve().get(survival.curve().size() - 1).months();
    for (int month = 0; month <= last; month += month < 12 ? 1 : month < 36 ? 3 : 6) {
      rows.add(List.of(Integer.toString(month), tenth(10 * surviving(month))));
    }
    return TableState.of("What the forecast uses", List.of("After months", LEFT), rows);
  }

  /** Straight between the points of the curve, as it is drawn. */
  private double surviving(double months) {
    List<Survival.Point> curve = survival.curve();
    int i = 1;
    while (i < curve.size() - 1 && curve.get(i).months() < months) {
      i++;
    }
    Survival.Point a = curve.get(i - 1);
    Survival.Point b = curve.get(i);
    double share = (months - a.months()) / (b.months() - a.months());
    return a.surviving() + share * (b.surviving() - a.surviving());
  }

  private static String tenth(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
