package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A piece of work on one boat over one or more days.
 *
 * @param day planned first day, or the first day on which it was done
 * @param why why it took place: a complaint is read differently by the forecast
 * @param cancelled why it was cancelled, only when it was
 * @param surfaces what became of each surface, one entry a surface
 * @param moves how its day was moved, oldest first
 */
public record Visit(
    Id<Visit> id,
    String key,
    Id<Boat> boat,
    LocalDate day,
    VisitStatus status,
    VisitWhy why,
    Optional<Id<CarePlan>> plan,
    Optional<MoveReason> cancelled,
    Handover handover,
    List<Part> surfaces,
    List<Move> moves,
    String note)
    implements Row {
  public Visit {
    Texts.key(key);
    surfaces = List.copyOf(surfaces);
    moves = List.copyOf(moves);
    if (cancelled.isPresent() != (status == VisitStatus.CANCELLED)) {
      throw new IllegalArgumentException(
          "a cancelled visit, and only that, says why it was cancelled");
    }
  }

  /**
   * One surface in a visit.
   *
   * @param doneOn the day it was done, only when it was
   * @param note why it was left, or what is to be known
   */
  public record Part(
      Id<Surface> surface, WorkState state, Optional<LocalDate> doneOn, String note) {
    public Part {
      if (doneOn.isPresent() != (state == WorkState.DONE)) {
        throw new IllegalArgumentException(
            "a surface that was done, and only that, has the day it was done");
      }
    }
  }

  /** A change of the planned day. */
  public record Move(LocalDate from, LocalDate to, MoveReason reason) {}
}
