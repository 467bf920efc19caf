package hullalmanac.reference;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ReferenceTest {
  @Test
  void refusesATableWithoutASource() {
    assertThatThrownBy(() -> Reference.read(ReferenceTest.class, "without-source.txt"))
        .hasMessage("without-source.txt names no source");
  }
}
