package hullalmanac.ui.shell;

import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.provider.Arguments;

/** Paints every place in the looks that {@link PanelsPaintTest} leaves out. */
@Tag("slow")
class OtherLooksPaintTest extends PanelsPaintTest {
  static Stream<Arguments> looks() {
    return Stream.of(
        Arguments.of(false, 1f),
        Arguments.of(false, 1.5f),
        Arguments.of(false, 2f),
        Arguments.of(true, 1f),
        Arguments.of(true, 1.5f));
  }
}
