package hullalmanac.present.house;

import java.util.Optional;

/** A house with a scratch copy of the sample in it. */
record SampleHouse(House own) implements House {
  @Override
  public boolean isSample() {
    return true;
  }

  @Override
  public void leaveSample() {
    own.leaveSample();
  }

  @Override
  public void moveTo(String folder) {
    own.moveTo(folder);
  }

  @Override
  public void open(String folder) {
    own.open(folder);
  }

  @Override
  public void putInPlace(String file) {
    own.putInPlace(file);
  }

  @Override
  public Optional<String> secondPlace() {
    return own.secondPlace();
  }

  @Override
  public void secondPlace(Optional<String> folder) {
    own.secondPlace(folder);
  }

  @Override
  public Calendars calendars() {
    return own.calendars();
  }

  @Override
  public void calendars(Calendars now) {
    own.calendars(now);
  }
}
