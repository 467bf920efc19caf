package hullalmanac.present.edit;

import hullalmanac.core.record.Party;
import hullalmanac.core.record.Texts;
import hullalmanac.core.work.SideBySide;
import hullalmanac.present.sheet.SheetState;
import java.util.ArrayList;
import java.util.List;

/**
 * Two parties that may be one, side by side, and what becomes of each thing known of them.
 *
 * @param known who stays where they are made one
 * @param here what stands over what is known of the one that stays
 * @param there what stands over what is known of the other
 */
record TwoParties(Party known, Party other, String here, String there) {
  /** A row for each thing that one of them says. */
  SheetState.Table table(boolean one) {
    return table(one, List.of());
  }

  /**
   * The same with more rows.
   *
   * @param one whether they are made one
   * @param more what else is known of both, a label and two texts each
   */
  SheetState.Table table(boolean one, List<List<String>> more) {
    List<List<String>> rows = new ArrayList<>();
    for (SideBySide side : SideBySide.of(known, other)) {
      if (!side.known().isBlank() || !side.other().isBlank()) {
        rows.add(
            List.of(
                side.field().words(),
                flat(side.known()),
                flat(side.other()),
                one ? becomes(side) : side.differ() ? "not the same" : ""));
      }
    }
    more.forEach(m -> rows.add(List.of(m.get(0), m.get(1), m.get(2), one ? "both" : "")));
    return new SheetState.Table(
        "", List.of("What", Texts.capital(here), Texts.capital(there), "What becomes"), rows, "");
  }

  private String becomes(SideBySide side) {
    return switch (side.usual()) {
      case OTHER -> "is filled in";
      case BOTH -> "not the same; " + there + " goes into the note";
      case KNOWN -> side.differ() ? "not the same; " + here + " stays" : "";
    };
  }

  private static String flat(String text) {
    return text.strip().replaceAll("\\s*\\R\\s*", " / ");
  }
}
