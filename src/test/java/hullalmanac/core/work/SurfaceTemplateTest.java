package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Tone;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SurfaceTemplateTest {
  private static final Set<BoatType> MOTOR =
      EnumSet.of(
          BoatType.MOTOR_CRUISER,
          BoatType.EXPRESS_CRUISER,
          BoatType.CENTRE_CONSOLE,
          BoatType.TRAWLER,
          BoatType.RIB);

  @ParameterizedTest
  @EnumSource
  void everyTypeHasBothSidesOfItsHullAndNoSurfaceTwice(BoatType type) {
    assertThat(SurfaceTemplate.of(type))
        .extracting(t -> t.kind().code() + " " + t.side().code())
        .contains("topsides port", "topsides starboard", "transom both")
        .doesNotHaveDuplicates()
        .hasSizeLessThanOrEqualTo(12);
    assertThat(SurfaceTemplate.of(type))
        .filteredOn(t -> t.side() != Side.BOTH)
        .allMatch(t -> t.kind() == SurfaceKind.TOPSIDES);
  }

  @ParameterizedTest
  @EnumSource
  void sootReachesTheTransomOfMotorBoatsAlone(BoatType type) {
    assertThat(SurfaceTemplate.of(type))
        .allMatch(t -> t.soot() == (t.kind() == SurfaceKind.TRANSOM && MOTOR.contains(type)));
  }

  @ParameterizedTest
  @EnumSource
  void allIsLightGelcoatAsItUsuallyStandsButForWhatCannotBe(BoatType type) {
    for (SurfaceTemplate t : SurfaceTemplate.of(type)) {
      assertThat(t.attitude()).isEqualTo(t.kind().usualAttitude());
      assertThat(t.tone()).isEqualTo(Tone.LIGHT);
      switch (t.kind()) {
        case WINDOWS -> assertThat(t.finish()).isIn(Finish.GLASS, Finish.ACRYLIC);
        case METALWORK -> assertThat(t.finish()).isEqualTo(Finish.METAL);
        case CANVAS -> assertThat(t.finish()).isEqualTo(Finish.CANVAS);
        case CLEAR_VINYL -> assertThat(t.finish()).isEqualTo(Finish.CLEAR_VINYL);
        case TOPSIDES ->
            assertThat(t.finish())
                .isEqualTo(type == BoatType.RIB ? Finish.INFLATABLE_TUBE : Finish.GELCOAT);
        default -> assertThat(t.finish()).isEqualTo(Finish.GELCOAT);
      }
    }
  }
}
