package hullalmanac.core.life;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Water;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Open berth; wrapped ashore from 20 June to 1 May. The topsides fall due in July. */
class WorkableTest {
  private static final LocalDate WRAPPED = LocalDate.of(2025, 6, 20);

  private final Scene scene = new Scene().afloat();

  private void layUp(Cover cover) {
    scene.yard.layUp(scene.boat, scene.harbour, cover, WRAPPED, LocalDate.of(2026, 5, 1), null);
  }

  private static Outcome.Dated dated(CoatForecast f) {
    return (Outcome.Dated) f.outcome();
  }

  @Test
  void movesWorkToTheLastDayBeforeTheWrap() {
    scene.coated();
    layUp(Cover.SHRINK_WRAP);
    Outcome.Dated d = dated(scene.forecast(30));
    assertThat(d.renewBy()).isAfter(WRAPPED);
    assertThat(d.workBy()).isEqualTo(WRAPPED.minusDays(1));
  }

  @Test
  void keepsTheDayWhereNothingHinders() {
    scene.coated();
    layUp(Cover.SHED);
    Outcome.Dated d = dated(scene.forecast(30));
    assertThat(d.workBy()).isEqualTo(d.renewBy());
  }

  @Test
  void keepsTheDayWhereNoDayIsWorkable() {
    scene.coated();
    layUp(Cover.SHRINK_WRAP);
    int wrapped = 85;
    Outcome.Dated d = dated(scene.forecast(wrapped));
    assertThat(d.renewBy()).isAfter(Scene.LAID.plusDays(wrapped));
    assertThat(d.workBy()).isEqualTo(d.renewBy());
  }

  @Test
  void worksAtTheWaterlineOnlyAshore() {
    Surface band = scene.yard.surface(scene.boat, SurfaceKind.WATERLINE, Side.BOTH);
    scene.yard.coat(band, scene.sealant, Scene.LAID);
    scene.yard.layUp(
        scene.boat,
        scene.harbour,
        Cover.OPEN,
        LocalDate.of(2025, 4, 10),
        LocalDate.of(2025, 4, 21),
        null);
    Outcome.Dated d = dated(scene.forecast(5));
    assertThat(d.renewBy()).isAfter(LocalDate.of(2025, 5, 1));
    assertThat(d.workBy()).isEqualTo(LocalDate.of(2025, 4, 20));
    Outcome.Dated afterwards = dated(scene.forecast(25));
    assertThat(afterwards.workBy()).isEqualTo(afterwards.renewBy());
  }

  @Test
  void leavesAPastDayWhereItIs() {
    scene.coated();
    scene.yard.berth(
        scene.boat, scene.harbour, Cover.SHRINK_WRAP, Water.ASHORE, Scene.LAID.plusDays(150));
    Outcome.Dated d = dated(scene.forecast(800));
    assertThat(d.renewBy()).isBefore(Scene.LAID.plusDays(800));
    assertThat(d.workBy()).isEqualTo(d.renewBy());
  }
}
