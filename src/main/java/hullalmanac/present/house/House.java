package hullalmanac.present.house;

import java.util.Optional;

/**
 * What is done to the record as a whole. All but the second place and the calendars closes the
 * window and opens it again on what there is then; where it cannot be done the window opens again
 * as it was and says why.
 */
public interface House {
  /** Whether the record is a scratch copy of the sample. */
  boolean isSample();

  /** Leaves the sample, for one's own record or the first start. */
  void leaveSample();

  /** Copies the record to a new folder, and works there from then on. */
  void moveTo(String folder);

  /** Opens another record, and from then on that one. */
  void open(String folder);

  /** Puts a copy or another almanac in the place of the record, which is kept beside it. */
  void putInPlace(String file);

  /** The second place for copies on this computer. */
  Optional<String> secondPlace();

  /** Sets the second place for copies on this computer. */
  void secondPlace(Optional<String> folder);

  /** The calendars of this computer. */
  Calendars calendars();

  /** Sets the calendars of this computer. */
  void calendars(Calendars now);

  /** A house in which nothing can be moved, for where there is no window. */
  static House still() {
    return new House() {
      private Optional<String> second = Optional.empty();
      private Calendars calendars = Calendars.NONE;

      @Override
      public boolean isSample() {
        return false;
      }

      @Override
      public void leaveSample() {
        // There is none.
      }

      @Override
      public void moveTo(String folder) {
        throw new IllegalStateException("nothing moves without a window");
      }

      @Override
      public void open(String folder) {
        throw new IllegalStateException("nothing opens without a window");
      }

      @Override
      public void putInPlace(String file) {
        throw new IllegalStateException("nothing is put back without a window");
      }

      @Override
      public Optional<String> secondPlace() {
        return second;
      }

      @Override
      public void secondPlace(Optional<String> folder) {
        second = folder;
      }

      @Override
      public Calendars calendars() {
        return calendars;
      }

      @Override
      public void calendars(Calendars now) {
        calendars = now;
      }
    };
  }
}
