package hullalmanac.service;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.RowChange;
import hullalmanac.core.report.MailDraft;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.PlannedVisits;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Changes the record, one act at a time. Everything here but ids and the clock touches the file.
 */
public final class EditService {
  private static final int WEEKS_PLANNED_AHEAD = 8;

  private final RecordService record;

  public EditService(RecordService record) {
    this.record = record;
  }

  /**
   * What undo and redo would do.
   *
   * @param undo the act in words that undo would take back
   * @param redo the act in words that redo would do again
   */
  public record Standing(Optional<String> undo, Optional<String> redo) {}

  /**
   * Changes the record in one act, if the change is ready; says what came of it.
   *
   * @param what the act in words, for the change log
   * @param wanted reckoned from the record as it stands
   */
  public Change change(String what, Function<Almanac, Change> wanted) {
    Change change = wanted.apply(record.almanac());
    if (change instanceof Change.Ready ready && !ready.edit().isEmpty()) {
      record.change(what, ready.edit());
    }
    return change;
  }

  /** Plans what care plans make fall due in the weeks to come; nothing where that is done. */
  public Change planVisits(LocalDate today) {
    return record.readOnly()
        ? new Change.Ready(Edit.put(List.of()))
        : change(
            "visits of care plans planned",
            almanac ->
                Change.checked(
                    almanac,
                    PlannedVisits.edit(
                        almanac, ids(), today, today.plusWeeks(WEEKS_PLANNED_AHEAD))));
  }

  /**
   * Writes a letter as a mail draft into the folder {@code letters} of the record.
   *
   * @param to the name of who it is to
   * @param with papers that go with it
   */
  public MailService.Written writeLetter(
      MailDraft draft, String to, LocalDate day, List<MadePaper> with) {
    return mail().letter(draft, to, day, with, record.folder());
  }

  /** What lays papers out; it works without the record being asked. */
  public MadePaper.Maker papers() {
    return new MadePaper.Maker(record.photos());
  }

  /**
   * Writes a paper as PDF into a folder of its own in the record; one of the same name and day is
   * written over.
   *
   * @return the path of its file
   */
  public String writePaper(MadePaper paper) {
    return PaperService.inRecord(record, paper).toString();
  }

  /**
   * Writes what an accountant asks for into a file beside the record.
   *
   * @param from first day
   * @param until first day that does not count any more
   */
  public Path writeAccounts(LocalDate from, LocalDate until) {
    return AccountsService.write(record, from, until);
  }

  /** What undo and redo would do. */
  public Standing standing() {
    if (record.readOnly()) {
      return new Standing(Optional.empty(), Optional.empty());
    }
    hullalmanac.store.Standing now = record.standing();
    return new Standing(now.undo().map(Act::what), now.redo().map(Act::what));
  }

  /** Why nothing can be taken back, where an invoice was issued last; nothing otherwise. */
  public Optional<String> whyNoUndo() {
    if (record.readOnly()) {
      return Optional.empty();
    }
    hullalmanac.store.Standing now = record.standing();
    return now.wall()
        .filter(wall -> now.undo().isEmpty())
        .map(
            wall ->
                "Undo stops at \""
                    + wall.what()
                    + "\": what was issued is not taken back. Write a credit for it.");
  }

  /** Takes back the newest act; returns it in words. */
  public Optional<String> undo() {
    return record.undo();
  }

  /** Does again what was undone last; returns it in words. */
  public Optional<String> redo() {
    return record.redo();
  }

  /** What was changed of a row and of all that belongs to it, newest first. */
  public List<RowChange> history(Kind kind, Id<?> id) {
    return record.history(kind, id);
  }

  /** Acts that took out rows which are not back, newest first. */
  public List<Act> bin() {
    return record.bin();
  }

  /** Puts back what an act of the bin took out. */
  public void putBack(Act act) {
    record.putBack(act);
  }

  /** What brings photos in and shows them. */
  public PhotoService photos() {
    return new PhotoService(record);
  }

  /** What writes mail drafts. */
  public MailService mail() {
    return new MailService(record.clock());
  }

  /** What writes the calendar and reads busy days. */
  public CalendarService calendar() {
    return new CalendarService(record);
  }

  /** Where the record lies and what lies there with it. */
  public HouseService house() {
    return new HouseService(record);
  }

  /** The zone of the clock on the wall. */
  public ZoneId zone() {
    return record.zone();
  }

  /** The time by the clock on the wall; touches no file. */
  public ZonedDateTime wallTime() {
    return record.wallTime();
  }

  /** New ids. */
  public IdSource ids() {
    return record.ids();
  }
}
