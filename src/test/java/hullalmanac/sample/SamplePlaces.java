package hullalmanac.sample;

import hullalmanac.core.record.Harbour;
import java.util.List;

/** The four harbours of the invented Maren Sound. */
final class SamplePlaces {
  private static final List<Double> SUN =
      List.of(0.28, 0.36, 0.42, 0.48, 0.52, 0.54, 0.62, 0.60, 0.52, 0.38, 0.28, 0.24);

  private SamplePlaces() {}

  static void add(Draft draft) {
    add(
        draft,
        "quillhaven",
        "Quillhaven",
        48.40,
        "Wash-down pad behind the crane; runoff is caught there.");
    add(draft, "oyster-hard", "Oyster Hard", 48.36, "Dries at low water; no acid on the hard.");
    add(
        draft,
        "st-brannock",
        "St Brannock",
        48.47,
        "Sheds for the winter; ask the yard before working in one.");
    add(draft, "fallow-creek", "Fallow Creek", 48.31, "Brackish. Two covered rows.");
  }

  private static void add(Draft draft, String key, String name, double latitude, String note) {
    List<Double> sun = key.equals("fallow-creek") ? List.of() : SUN;
    draft.harbours.add(new Harbour(draft.id(), key, name, latitude, sun, note));
  }
}
