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
      if (says(side)) {
        rows.add(
            List.of(
                side.field().words(),
                flat(side.known()),
                flat(side.other()),
                one ? becomes(side) : side.differ() ? "not the same" : ""));
      }
    }
    for (List<String> both : more) {
      if (!both.get(1).isEmpty() || !both.get(2).isEmpty()) {
        boolean kept = one && !both.get(2).isEmpty();
        rows.add(List.of(both.get(0), both.get(1), both.get(2), kept ? "come along" : ""));
      }
    }
    return new SheetState.Table(
        "",
        List.of("What", Texts.capital(here), Texts.capital(there), "What comes of it"),
        rows,
        "");
  }

  /** That both are people, or firms, need not be said. */
  private static boolean says(SideBySide side) {
    return side.field() == SideBySide.Field.KIND
        ? side.differ()
        : !side.known().isBlank() || !side.other().isBlank();
  }

  private String becomes(SideBySide side) {
    return switch (side.usual()) {
      case OTHER -> "is filled in";
      case BOTH -> "not the same; " + there + "’s is kept in the note";
      case KNOWN -> side.differ() ? "not the same; " + here + "’s stays" : "";
    };
  }

  private static String flat(String text) {
    return text.strip().replaceAll("\\s*\\R\\s*", " / ");
  }
}
