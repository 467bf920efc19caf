package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.present.house.Calendars;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlacesTest {
  private static final Calendars BOTH =
      new Calendars(Optional.of("/synced/almanac.ics"), true, Optional.of("/synced/mine.ics"));

  @TempDir Path home;

  private Places places() {
    return new Places(home.resolve("state").resolve("places.properties"));
  }

  @Test
  void theCalendarsAreThereAfterARestartAndGoneWhenCleared() {
    Path record = home.resolve("record");
    assertThat(places().calendars(record)).isEqualTo(Calendars.NONE);
    places().calendars(record, BOTH);
    places().second(Optional.of("/stick"));
    assertThat(places().calendars(record)).isEqualTo(BOTH);
    places().calendars(record, Calendars.NONE);
    assertThat(places().calendars(record)).isEqualTo(Calendars.NONE);
    assertThat(places().second()).contains(Path.of("/stick"));
  }

  /** Into one file only one record is written: another would call off all that it tells. */
  @Test
  void aCalendarIsThatOfOneRecordAndMovesWithIt() {
    Path record = home.resolve("record");
    Path other = home.resolve("other");
    places().calendars(record, BOTH);
    Calendars read = new Calendars(Optional.empty(), false, BOTH.read());
    assertThat(places().calendars(other)).isEqualTo(read);
    places().calendars(other, Calendars.NONE);
    assertThat(places().calendars(record).written()).isEqualTo(BOTH.written());
    places().calendars(record, BOTH);
    places().moved(record, other);
    assertThat(places().calendars(other)).isEqualTo(BOTH);
    assertThat(places().calendars(record)).isEqualTo(read);
  }
}
