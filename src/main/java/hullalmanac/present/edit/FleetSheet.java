package hullalmanac.present.edit;

import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A sheet over rows of the record, which is shown again after each change of it. */
abstract class FleetSheet extends ShownSheet {
  FleetSheet(Desk desk) {
    super(desk);
  }

  /** The rows that are written in. */
  abstract List<Rows<?>> parts();

  private Optional<Rows<?>> part(String block) {
    return parts().stream().filter(p -> p.id().equals(block)).findFirst();
  }

  @Override
  public void show(Fleet now) {
    parts().forEach(p -> p.shown(now));
    super.show(now);
  }

  @Override
  public Said say(At at, String text) {
    return fleet().flatMap(f -> part(at.block()).map(p -> p.say(f, at, text))).orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    enterAll(at.block(), List.of(new Rows.Typed(at, text)), 0);
  }

  private void enterAll(String block, List<Rows.Typed> texts, int left) {
    Optional<Rows<?>> part = part(block);
    if (fleet().isEmpty() || part.isEmpty()) {
      return;
    }
    int refused = part.get().enterAll(fleet().get(), texts);
    trouble = trouble(texts.size(), refused, left);
    publish();
  }

  /** Does what ends the work on this sheet, unless a text stands on it that was not taken. */
  protected final void whenAllTaken(Runnable end) {
    if (parts().stream().allMatch(Rows::allTaken)) {
      end.run();
    } else {
      trouble =
          Optional.of(
              "Something on this page was not taken; it is marked, with the reason. Mend it, or"
                  + " empty it, first.");
      publish();
    }
  }

  private static Optional<String> trouble(int all, int refused, int left) {
    if ((all <= 1 && left == 0) || refused + left == 0) {
      return Optional.empty();
    }
    String notTaken =
        refused == 0
            ? ""
            : refused + " of " + all + " texts were not taken; they stand as they came. ";
    String outside = left == 0 ? "" : left + " lay outside what one writes in and were left out.";
    return Optional.of((notTaken + outside).strip());
  }

  @Override
  public void paste(At corner, List<List<String>> texts) {
    for (SheetState.Block block : state().blocks()) {
      if (block instanceof SheetState.Grid grid && grid.id().equals(corner.block())) {
        List<Rows.Typed> cells = cells(grid, corner, texts);
        int all = texts.stream().mapToInt(List::size).sum();
        enterAll(corner.block(), cells, all - cells.size());
      }
    }
  }

  /** Texts that were pasted, with the cells they belong to; what lies outside is left out. */
  static List<Rows.Typed> cells(SheetState.Grid grid, At corner, List<List<String>> texts) {
    List<String> rows = grid.rows().stream().map(SheetState.GridRow::id).toList();
    List<String> columns = grid.columns().stream().map(SheetState.Column::id).toList();
    int top = rows.indexOf(corner.row());
    int left = columns.indexOf(corner.field());
    List<Rows.Typed> cells = new ArrayList<>();
    for (int r = 0; r < texts.size() && top + r < rows.size(); r++) {
      for (int c = 0; c < texts.get(r).size() && left + c < columns.size(); c++) {
        if (grid.columns().get(left + c).input().written()) {
          At at = new At(grid.id(), rows.get(top + r), columns.get(left + c));
          cells.add(new Rows.Typed(at, texts.get(r).get(c)));
        }
      }
    }
    return cells;
  }
}
