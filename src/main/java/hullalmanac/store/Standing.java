package hullalmanac.store;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Id;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where undo and redo stand, as the change log says it, so they go on where they were after a
 * restart.
 *
 * @param done acts that hold and can be taken back, oldest first
 * @param undone undoings that can be taken back in turn (done again), oldest first
 * @param wall the newest act that is never taken back: undo stops there
 */
public record Standing(List<Act> done, List<Act> undone, Optional<Act> wall) {
  /**
   * Walks the acts in the order in which they happened.
   *
   * @param issuing acts in which an invoice was issued, which are never taken back
   */
  static Standing of(List<Act> acts, Set<Id<Act>> issuing) {
    Optional<Act> wall = Optional.empty();
    List<Act> done = new ArrayList<>();
    List<Act> undone = new ArrayList<>();
    for (Act act : acts) {
      if (issuing.contains(act.id())) {
        wall = Optional.of(act);
        done.clear();
        undone.clear();
      } else if (act.undoes().isEmpty()) {
        done.add(act);
        undone.clear();
      } else if (takesBackLastOf(done, act)) {
        done.remove(done.size() - 1);
        undone.add(act);
      } else if (takesBackLastOf(undone, act)) {
        undone.remove(undone.size() - 1);
        done.add(act);
      }
    }
    return new Standing(List.copyOf(done), List.copyOf(undone), wall);
  }

  private static boolean takesBackLastOf(List<Act> acts, Act act) {
    return last(acts).map(a -> act.undoes().equals(Optional.of(a.id()))).orElse(false);
  }

  private static Optional<Act> last(List<Act> acts) {
    return acts.isEmpty() ? Optional.empty() : Optional.of(acts.get(acts.size() - 1));
  }

  /** The act that undo would take back. */
  public Optional<Act> undo() {
    return last(done);
  }

  /** The undoing that redo would take back. */
  public Optional<Act> redo() {
    return last(undone);
  }
}
