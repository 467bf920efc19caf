package hullalmanac.present.edit;

import hullalmanac.core.record.Row;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import java.util.List;

/**
 * A row that is begun in a grid and comes into the record once it says something. Then it stands
 * there under the same id, so that who writes in it stays where they are.
 *
 * @param id of the row
 * @param draft what was written of it so far
 */
record NewRow<T extends Record & NewRow.Begun>(String id, Draft<T> draft) {
  /** What is written of a row before it is one. */
  interface Begun {
    /** The id it gets in the record. */
    String rowId();

    /** Whether it says enough to be written down. */
    boolean isWhole();
  }

  static <T extends Record & Begun> NewRow<T> of(String block, T begun) {
    return new NewRow<>(begun.rowId(), new Draft<>(block, begun));
  }

  boolean is(String block, At at) {
    return is(at.block(), at.row(), block);
  }

  boolean is(String inBlock, String row, String block) {
    return inBlock.equals(block) && row.equals(id);
  }

  SheetState.GridRow cells(List<FieldOf<T>> fields) {
    return new SheetState.GridRow(id, "new", draft.cells(fields));
  }

  /** Whether it is still to come, or holds a text that was not taken. */
  boolean waits(List<? extends Row> rows, List<FieldOf<T>> fields) {
    return draft.trouble(fields).isPresent()
        || rows.stream().noneMatch(r -> r.id().toString().equals(id));
  }
}
