package hullalmanac.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Water;
import hullalmanac.fixture.Boatyard;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class StaysTest {
  private static final LocalDate FROM = LocalDate.of(2023, 1, 1);
  private static final LocalDate UNTIL = LocalDate.of(2033, 1, 1);

  private final Boatyard yard = new Boatyard();
  private final Boat boat = yard.boat(Use.WEEKENDS);
  private final Harbour harbour = yard.harbour(48.4);

  private static Berth on(List<Berth> berths, LocalDate day) {
    return Stays.of(berths, FROM, UNTIL).stream()
        .filter(s -> !day.isBefore(s.from()) && day.isBefore(s.until()))
        .findFirst()
        .orElseThrow()
        .berth();
  }

  private Berth open(LocalDate from) {
    return yard.berth(boat, harbour, Cover.OPEN, Water.SALT, from);
  }

  private Berth wrapped(LocalDate from, LocalDate until, Integer lastYear) {
    return yard.layUp(boat, harbour, Cover.SHRINK_WRAP, from, until, lastYear);
  }

  @Test
  void laysUpOverEveryTurnOfTheYear() {
    Berth slip = open(FROM);
    Berth layUp = wrapped(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 4, 1), null);
    List<Berth> berths = List.of(slip, layUp);
    for (int year = 2023; year < 2032; year++) {
      assertThat(on(berths, LocalDate.of(year, 10, 31))).isEqualTo(slip);
      assertThat(on(berths, LocalDate.of(year, 11, 1))).isEqualTo(layUp);
      assertThat(on(berths, LocalDate.of(year, 12, 31))).isEqualTo(layUp);
      assertThat(on(berths, LocalDate.of(year + 1, 1, 1))).isEqualTo(layUp);
      assertThat(on(berths, LocalDate.of(year + 1, 3, 31))).isEqualTo(layUp);
      assertThat(on(berths, LocalDate.of(year + 1, 4, 1))).isEqualTo(slip);
    }
    assertThat(on(berths, LocalDate.of(2023, 2, 1))).isEqualTo(slip);
  }

  @Test
  void beginsOnTheTwentyEighthWhereThereIsNoTwentyNinth() {
    Berth slip = open(FROM);
    Berth layUp = wrapped(LocalDate.of(2024, 2, 29), LocalDate.of(2024, 5, 1), null);
    List<Berth> berths = List.of(slip, layUp);
    assertThat(on(berths, LocalDate.of(2024, 2, 28))).isEqualTo(slip);
    assertThat(on(berths, LocalDate.of(2024, 2, 29))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2025, 2, 27))).isEqualTo(slip);
    assertThat(on(berths, LocalDate.of(2025, 2, 28))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2028, 2, 28))).isEqualTo(slip);
    assertThat(on(berths, LocalDate.of(2028, 2, 29))).isEqualTo(layUp);
  }

  @Test
  void endsOnTheTwentyEighthWhereThereIsNoTwentyNinth() {
    Berth slip = open(FROM);
    Berth layUp = wrapped(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 2, 29), null);
    List<Berth> berths = List.of(slip, layUp);
    assertThat(on(berths, LocalDate.of(2024, 2, 28))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2024, 2, 29))).isEqualTo(slip);
    assertThat(on(berths, LocalDate.of(2025, 2, 27))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2025, 2, 28))).isEqualTo(slip);
  }

  @Test
  void stopsALayUpAfterItsLastYear() {
    Berth slip = open(FROM);
    Berth layUp = wrapped(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 4, 1), 2024);
    List<Berth> berths = List.of(slip, layUp);
    assertThat(on(berths, LocalDate.of(2025, 3, 31))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2025, 11, 2))).isEqualTo(slip);
  }

  /** A wrap that went on all summer would push every date back. */
  @Test
  void returnsAfterALayUpToWhereTheBoatLayBefore() {
    Berth slip = yard.berth(boat, harbour, FROM, LocalDate.of(2023, 11, 1));
    Berth layUp = wrapped(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 4, 1), null);
    List<Berth> berths = List.of(slip, layUp);
    assertThat(on(berths, LocalDate.of(2024, 3, 1))).isEqualTo(layUp);
    assertThat(on(berths, LocalDate.of(2024, 7, 1))).isEqualTo(slip);
  }

  @Test
  void goesOnWithTheLastBerthThroughAGap() {
    Berth first = yard.berth(boat, harbour, FROM, LocalDate.of(2023, 6, 1));
    Berth second = yard.berth(boat, harbour, LocalDate.of(2024, 3, 1), LocalDate.of(2024, 9, 1));
    List<Berth> berths = List.of(second, first);
    assertThat(on(berths, LocalDate.of(2023, 12, 1))).isEqualTo(first);
    assertThat(on(berths, LocalDate.of(2024, 3, 1))).isEqualTo(second);
    assertThat(on(berths, LocalDate.of(2030, 1, 1))).isEqualTo(second);
  }

  @Test
  void letsTheBerthThatBeganLastGoBefore() {
    Berth first = open(FROM);
    Berth second = open(LocalDate.of(2024, 6, 1));
    List<Berth> berths = List.of(second, first);
    assertThat(on(berths, LocalDate.of(2024, 5, 31))).isEqualTo(first);
    assertThat(on(berths, LocalDate.of(2024, 6, 1))).isEqualTo(second);
    assertThat(on(berths, LocalDate.of(2032, 12, 31))).isEqualTo(second);
  }

  @Test
  void doesNotGuessWhereABoatLiesInSummerFromItsWinters() {
    Berth layUp = wrapped(LocalDate.of(2023, 11, 1), LocalDate.of(2024, 4, 1), null);
    assertThat(Stays.of(List.of(layUp), FROM, UNTIL)).isEmpty();
    Berth summer =
        yard.layUp(
            boat, harbour, Cover.OPEN, LocalDate.of(2024, 4, 1), LocalDate.of(2024, 11, 1), null);
    assertThat(Stays.of(List.of(layUp, summer), FROM, UNTIL)).isNotEmpty();
  }

  @Test
  void knowsNothingWithoutABerth() {
    assertThat(Stays.of(List.of(), FROM, UNTIL)).isEmpty();
  }

  @Property(tries = 200)
  void leavesNoGap(
      @ForAll @IntRange(min = 0, max = 3000) int move,
      @ForAll @IntRange(min = 0, max = 900) int hauled,
      @ForAll @IntRange(min = 1, max = 365) int weeks) {
    LocalDate haul = FROM.plusDays(hauled);
    List<Berth> berths =
        List.of(
            open(FROM.plusDays(move / 2)),
            open(FROM.plusDays(move)),
            wrapped(haul, haul.plusDays(weeks), null));
    List<Stay> stays = Stays.of(berths, FROM, UNTIL);
    assertThat(stays.get(0).from()).isEqualTo(FROM);
    assertThat(stays.get(stays.size() - 1).until()).isEqualTo(UNTIL);
    for (int i = 1; i < stays.size(); i++) {
      assertThat(stays.get(i).from()).isEqualTo(stays.get(i - 1).until());
      assertThat(stays.get(i).berth()).isNotEqualTo(stays.get(i - 1).berth());
    }
  }
}
