package hullalmanac.present.edit;

import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.With;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.SheetState;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The picture on the letterhead: chosen, seen, taken off. */
record MarkBlocks(Desk desk, Consumer<String> refused) {
  /** The block for a picture that is chosen or dropped. */
  static final String CHOOSE = "mark";

  /** The block that shows the one there is. */
  static final String SHOWN = "shown mark";

  List<SheetState.Block> of(Business business) {
    String mark = business.letterhead().mark();
    List<SheetState.PhotoCard> cards =
        mark.isEmpty()
            ? List.of()
            : List.of(
                new SheetState.PhotoCard(
                    mark,
                    mark,
                    "the mark",
                    "The mark on the letterhead",
                    List.of(),
                    "Take it off"));
    return List.of(
        new SheetState.Files(
            CHOOSE,
            "The mark on the letterhead",
            "A picture at the right of the name, on all paper.",
            mark.isEmpty() ? "Choose a picture …" : "Choose another …",
            "Pictures (PNG, JPEG)",
            List.of("png", "jpg", "jpeg"),
            ""),
        new SheetState.Photos(SHOWN, "", cards, "", false));
  }

  /** Takes a picture for the mark. */
  void choose(String file) {
    desk.ask(
        edits -> edits.photos().mark(file),
        kept -> {
          kept.name().ifPresent(this::become);
          kept.refused().ifPresent(refused);
        });
  }

  /** Takes the mark off; its picture stays among the photos, for undo. */
  void takeOff() {
    become("");
  }

  private void become(String mark) {
    desk.edit(
        mark.isEmpty() ? "mark taken off the letterhead" : "mark put on the letterhead",
        almanac ->
            new Edit(
                Optional.of(With.component(almanac.business(), "letterhead.mark", mark)),
                List.of(),
                List.of()));
  }
}
