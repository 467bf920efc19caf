package hullalmanac.present.edit;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Row;
import hullalmanac.core.work.Change;
import hullalmanac.present.Desk;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Makes a row in one act, then goes on with it. Asked again before that is over it does nothing, so
 * that a button pressed twice makes one.
 */
final class Making {
  private final Desk desk;
  private boolean now;

  Making(Desk desk) {
    this.desk = desk;
  }

  /**
   * Makes it.
   *
   * @param what the act in words
   * @param kind of the row that is gone on with, the first of its kind that is put in
   */
  <R extends Row> void make(
      String what, Function<Almanac, Change> change, Class<R> kind, Consumer<R> then) {
    if (now) {
      return;
    }
    now = true;
    AtomicReference<Optional<R>> made = new AtomicReference<>(Optional.empty());
    desk.change(
        what,
        almanac -> {
          Change wanted = change.apply(almanac);
          if (wanted instanceof Change.Ready ready) {
            made.set(ready.put(kind));
          }
          return wanted;
        },
        () -> {
          now = false;
          made.get().ifPresent(then);
        });
    // Asked in the same lane, so after the act; what was refused, or not written, can be asked for
    // again.
    desk.ask(
        edits -> made.get().filter(r -> !edits.history(Kind.of(r), r.id()).isEmpty()).isPresent(),
        written -> now &= written);
  }
}
