package hullalmanac.present.shell;

import hullalmanac.present.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * What the window shows around its places.
 *
 * @param place the place shown
 * @param sheet the sheet that lies over it
 * @param status the line at the bottom
 * @param trouble a sentence about what went wrong, while it stands
 * @param undo the act that undo would take back
 * @param redo the act that redo would do again
 * @param notices what is to be known as long as it stands
 */
public record ShellState(
    Place place,
    Optional<Sheet> sheet,
    String status,
    Optional<String> trouble,
    Optional<String> undo,
    Optional<String> redo,
    List<Notice> notices) {
  public ShellState {
    notices = List.copyOf(notices);
  }
}
