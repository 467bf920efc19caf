package hullalmanac.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Climate;
import java.time.LocalDate;
import java.time.LocalDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClimateEntryTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final LocalDateTime NOW = DAY.atTime(11, 20, 41);

  private static Climate read(String typed) {
    return ((Entry.Read<Climate>) ClimateEntry.read(typed, DAY, NOW)).value();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10:30 | 10:30",
        "10.30 | 10:30",
        "1030 | 10:30",
        "7 | 07:00",
        "14h05 | 14:05",
        "2:30 pm | 14:30",
        "12 am | 00:00",
        "12:15 p.m. | 12:15",
        "10:30:59 | 10:30"
      })
  void readsTimes(String typed, String time) {
    assertThat(((Entry.Read<LocalDateTime>) TimeEntry.read(typed, DAY)).echo()).isEqualTo(time);
  }

  @ParameterizedTest
  @ValueSource(strings = {"24:00", "13 pm", "0 pm", "103", "10:60", "noon", "2026-02-30 10:00"})
  void refusesTimesThatAreNone(String typed) {
    assertThat(TimeEntry.read(typed, DAY)).isInstanceOf(Entry.Refused.class);
  }

  @Test
  void aTimeOfAnotherDayKeepsItsDay() {
    LocalDateTime read =
        ((Entry.Read<LocalDateTime>) TimeEntry.read("2026-05-02T09:15:00", DAY)).value();
    assertThat(read).isEqualTo(LocalDateTime.of(2026, 5, 2, 9, 15));
    assertThat(TimeEntry.write(read, DAY)).isEqualTo("2026-05-02 09:15");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "18.5 62 21 10:30",
        "18,5 62% 21 10.30",
        "18.5c 62 % 21 c 1030",
        "18.5; 62; 21; 10:30",
        "18.5, 62, 21, 10:30"
      })
  void readsAirHumiditySurfaceAndTime(String typed) {
    assertThat(read(typed)).isEqualTo(new Climate(18.5, 62, 21, DAY.atTime(10, 30)));
  }

  @Test
  void readsFahrenheitToTheTenthOfADegree() {
    assertThat(read("65f 62 70 f 10:30"))
        .isEqualTo(new Climate(18.3, 62, 21.1, DAY.atTime(10, 30)));
  }

  @Test
  void withoutATimeItIsTakenNowButNotOnAnotherDay() {
    assertThat(read("18.5 62 21").takenAt()).isEqualTo(DAY.atTime(11, 20));
    Entry<Climate> other = ClimateEntry.read("18.5 62 21", DAY.minusDays(1), NOW);
    assertThat(((Entry.Refused<Climate>) other).sentence()).startsWith("Say when it was taken");
  }

  @Test
  void saysBothUnits() {
    Entry.Read<Climate> read = (Entry.Read<Climate>) ClimateEntry.read("20 50 25 10:30", DAY, NOW);
    assertThat(read.echo())
        .isEqualTo("air 20 °C · 68 °F, humidity 50 %, surface 25 °C · 77 °F, at 10:30");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18.5 | \"18.5\" is too short; ",
        "18.5 62 | \"18.5 62\" is too short; ",
        "18.5 wet 21 10:30 | \"wet\" is not a humidity in %; ",
        "18.5 62 m 10:30 | \"18.5 62 m 10:30\" has no two temperatures; ",
        "70 62 21 10:30 | The air is -40 to 60 °C, not 70",
        "18.5 0 21 10:30 | Relative humidity is over 0 and at most 100 %, not 0",
        "18.5 62 21 soon | \"soon\" is not a time; "
      })
  void saysWhatIsWrong(String typed, String sentence) {
    Entry<Climate> entry = ClimateEntry.read(typed, DAY, NOW);
    assertThat(((Entry.Refused<Climate>) entry).sentence()).startsWith(sentence);
  }

  @Property
  void whatIsWrittenReadsBackAsTheSame(
      @ForAll @IntRange(min = -400, max = 600) int air,
      @ForAll @IntRange(min = 1, max = 1000) int humidity,
      @ForAll @IntRange(min = -400, max = 900) int surface,
      @ForAll @IntRange(max = 2880) int minute) {
    Climate climate =
        new Climate(
            air / 10.0, humidity / 10.0, surface / 10.0, DAY.atStartOfDay().plusMinutes(minute));
    assertThat(read(ClimateEntry.write(climate, DAY))).isEqualTo(climate);
  }
}
