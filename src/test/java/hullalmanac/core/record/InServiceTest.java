package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Coats of one day, whose ids say nothing of which came first. */
class InServiceTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 6);
  private static final Id<Surface> SURFACE = new Id<>(1);

  private static Coat coat(long id, Optional<Long> over, Optional<Coat.Ending> ending) {
    return new Coat(
        new Id<>(id),
        "c" + id,
        SURFACE,
        new Id<>(1),
        Optional.of(DAY),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "",
        1,
        over.map(Id::new),
        ending,
        "");
  }

  @Test
  void aTopperLaidTheSameDayLiesOverItsCoatWhicheverHasTheSmallerId() {
    for (long topper : List.of(2L, 8L)) {
      Coat base = coat(5, Optional.empty(), Optional.empty());
      Coat over = coat(topper, Optional.of(5L), Optional.empty());
      assertThat(new InService(List.of(base, over)).on(SURFACE, DAY)).containsExactly(base, over);
    }
  }

  @Test
  void aCoatThatEndedTheDayItWasLaidDoesNotEndTheOneThatCameAfter() {
    Coat.Ending redone = new Coat.Ending(DAY, CoatEnd.STRIPPED, EndState.NOT_LOOKED, "");
    for (long second : List.of(2L, 8L)) {
      Coat first = coat(5, Optional.empty(), Optional.of(redone));
      Coat again = coat(second, Optional.empty(), Optional.empty());
      assertThat(new InService(List.of(first, again)).on(SURFACE, DAY)).containsExactly(again);
    }
  }

  @Test
  void aNewCoatEndsTheOneBeforeWithItsTopper() {
    Coat old = coat(5, Optional.empty(), Optional.empty());
    Coat topper = coat(6, Optional.of(5L), Optional.empty());
    Coat next =
        new Coat(
            new Id<>(2),
            "c2",
            SURFACE,
            new Id<>(1),
            Optional.of(DAY.plusDays(9)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            1,
            Optional.empty(),
            Optional.empty(),
            "");
    InService coats = new InService(List.of(old, topper, next));
    assertThat(coats.on(SURFACE, DAY.plusDays(8))).containsExactly(old, topper);
    assertThat(coats.on(SURFACE, DAY.plusDays(9))).containsExactly(next);
    assertThat(coats.end(topper)).contains(DAY.plusDays(9));
  }
}
