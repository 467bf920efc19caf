package hullalmanac.present;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.service.EditService;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** What one writes at: changes the record, and goes from sheet to sheet. */
public interface Desk {
  /**
   * Changes the record in one act and shows what came of it everywhere.
   *
   * @param what the act in words, such as "Merganser: length"
   * @param change reckoned from the record as it stands then
   * @param done called when it was done and is shown; not when it was refused, which is said at the
   *     bottom of the window
   */
  void change(String what, Function<Almanac, Change> change, Runnable done);

  /** The same, when nothing follows. */
  default void change(String what, Function<Almanac, Change> change) {
    change(what, change, () -> {});
  }

  /** Puts rows in and takes rows out, unless that would break a rule of the record. */
  default void edit(String what, Function<Almanac, Edit> edit) {
    edit(what, edit, () -> {});
  }

  /** The same, and something that follows when it was done. */
  default void edit(String what, Function<Almanac, Edit> edit, Runnable done) {
    change(what, almanac -> Change.checked(almanac, edit.apply(almanac)), done);
  }

  /** Reckons something that may take long and touches no file. */
  <T> void reckon(Supplier<T> work, Consumer<T> answer);

  /** Reads or writes files that are not the record's, for which nobody waits. */
  <T> void aside(Supplier<T> work, Consumer<T> answer);

  /** Asks the change log, which touches the file. */
  <T> void ask(Function<EditService, T> question, Consumer<T> answer);

  /** Lets the change log put something back, and shows what came of it everywhere. */
  void act(Consumer<EditService> act);

  /**
   * Does something to the record with a service, shows what came of it everywhere, then hands on
   * what the service says.
   */
  <T> void act(Function<EditService, T> act, Consumer<T> answer);

  /** The time by the clock on the wall. */
  ZonedDateTime now();

  /** How busy one is on a day by another calendar, in words; nothing on a day that is free. */
  Optional<String> busyOn(LocalDate day);

  /** New ids. */
  IdSource ids();

  /** What the computer offers beside the window. */
  Outside outside();

  /** Opens a sheet. */
  void open(Sheet sheet);

  /** Leaves the sheet that is open, to where one was before. */
  void leave();

  /** Shows a boat to her owner, full screen. */
  void showOwner(Id<Boat> boat);

  /** Shows the card of a visit, full screen. */
  void showCard(Id<Visit> visit);

  /** Leaves the sheet and opens a boat's page. */
  void openBoat(Id<Boat> boat);
}
