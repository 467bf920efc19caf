package hullalmanac.core.record;

/**
 * What can happen to a reminder. The first five somebody writes down; the rest follows from the day
 * and from the rows of the record, and is written nowhere.
 */
public enum ReminderEvent implements Coded {
  TOLD("told", true),
  BOOKED("booked", true),
  DECLINED("declined", true),
  ASK_AGAIN("ask-again", true),
  CALLED_OFF("called-off", true),
  /** The day came on which the owner wanted to be asked again. */
  DAY_COMES("day-comes", false),
  /** A visit did what it was about. */
  WORK_DONE("work-done", false),
  /** What it was about is not there any more: renewed by others, stripped, taken out. */
  OVERTAKEN("overtaken", false);

  private final String code;
  private final boolean written;

  ReminderEvent(String code, boolean written) {
    this.code = code;
    this.written = written;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether somebody writes it down. */
  public boolean written() {
    return written;
  }
}
