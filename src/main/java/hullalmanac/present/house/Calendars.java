package hullalmanac.present.house;

import java.util.Optional;

/**
 * The calendars of a computer.
 *
 * @param written the file into which the record is written as a calendar
 * @param withPrivate whether keys, gate codes and absences go into it
 * @param read the file of another calendar whose busy days are read
 */
public record Calendars(Optional<String> written, boolean withPrivate, Optional<String> read) {
  /** Where nobody has said. */
  public static final Calendars NONE = new Calendars(Optional.empty(), false, Optional.empty());
}
