package hullalmanac.present.shell;

import hullalmanac.core.record.RecordException;
import hullalmanac.present.house.House;
import hullalmanac.service.HouseService;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What is to be known of the record as a whole: that it is the sample, that there are two. */
final class Notices {
  private static final String SAMPLE = "sample";
  private static final String SECOND = "second place";
  private static final String CALENDAR = "calendar";

  private static final String TOLD = "told";
  private static final String CRASH = "crash";

  private Optional<String> told = Optional.empty();
  private Optional<String> crash = Optional.empty();
  private Optional<String> calendar = Optional.empty();
  private boolean sample;
  private Seen seen = new Seen(List.of(), Optional.empty(), ZoneOffset.UTC);

  /**
   * What a look around found.
   *
   * @param second why the second place could not be brought up to date
   */
  record Seen(List<HouseService.Other> others, Optional<String> second, ZoneId zone) {}

  /** Looks around; touches files. */
  static Seen look(HouseService house, ZoneId zone, Optional<String> second) {
    return new Seen(house.others(), second.flatMap(place -> refused(house, place)), zone);
  }

  private static Optional<String> refused(HouseService house, String place) {
    try {
      house.bringUpToDate(place);
      return Optional.empty();
    } catch (RecordException e) {
      return Optional.of(e.getMessage());
    }
  }

  void of(House house) {
    sample = house.isSample();
  }

  void tell(String sentence) {
    told = Optional.of(sentence);
  }

  /** One at a time: a fault that repeats does not bury the window. */
  void crashed(String sentence) {
    crash = crash.or(() -> Optional.of(sentence));
  }

  /** Why the calendar could not be written, while it cannot. */
  void calendar(Optional<String> why) {
    calendar = why;
  }

  boolean isCalendar(Notice notice) {
    return notice.id().equals(CALENDAR);
  }

  boolean isCrash(Notice notice) {
    return notice.id().equals(CRASH);
  }

  void seen(Seen now) {
    seen = now;
  }

  ZoneId zone() {
    return seen.zone();
  }

  List<Notice> all() {
    List<Notice> all = new ArrayList<>();
    if (sample) {
      all.add(
          new Notice(
              SAMPLE,
              "This is the sample, an invented business. Try anything: nothing you write here is"
                  + " kept.",
              "Leave the sample"));
    }
    for (HouseService.Other other : seen.others()) {
      all.add(
          new Notice(
              other.file(),
              "Another almanac lies in the record’s folder: two computers may have written at"
                  + " once.",
              "Compare them"));
    }
    crash.ifPresent(sentence -> all.add(new Notice(CRASH, sentence, "Show it")));
    told.ifPresent(sentence -> all.add(new Notice(TOLD, sentence, "Good")));
    seen.second().ifPresent(why -> all.add(new Notice(SECOND, why, "Try again")));
    calendar.ifPresent(why -> all.add(new Notice(CALENDAR, why, "Try again")));
    return all;
  }

  /** Does what can be done about one; trying again is for the caller. */
  void press(Notice notice, House house, Consumer<HouseService.Other> compare) {
    if (notice.id().equals(TOLD)) {
      told = Optional.empty();
    }
    if (isCrash(notice)) {
      crash = Optional.empty();
    }
    if (notice.id().equals(SAMPLE)) {
      house.leaveSample();
    }
    seen.others().stream().filter(o -> o.file().equals(notice.id())).findFirst().ifPresent(compare);
  }
}
