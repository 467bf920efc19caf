package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class TextOrderTest {
  private static final List<String> IN_ORDER =
      List.of(
          "",
          "-2",
          "1 in 20",
          "7½ months",
          "9.5",
          "10.25",
          "12 in 20",
          "150",
          "900.00 USD",
          "1,250.00 USD",
          "12,000.00 USD",
          "2024-09-23",
          "2026-04-20",
          "2026-10-06",
          "élan",
          "foredeck",
          "Transom");

  @Test
  void sortsNumbersByTheirValueDaysByTheCalendarAndWordsByTheAlphabet() {
    List<String> mixed = new ArrayList<>(IN_ORDER);
    Collections.shuffle(mixed, new Random(7));
    mixed.sort(new TextOrder());
    assertThat(mixed).isEqualTo(IN_ORDER);
  }

  /** What sorting relies on: java.util.Comparator, "Note", JDK 17 documentation. */
  @Property(tries = 2000)
  void neverContradictsItself(
      @ForAll @CharRange(from = '-', to = ':') @StringLength(max = 5) String a,
      @ForAll @CharRange(from = '-', to = ':') @StringLength(max = 5) String b,
      @ForAll @CharRange(from = '-', to = ':') @StringLength(max = 5) String c) {
    TextOrder order = new TextOrder();
    assertThat(Integer.signum(order.compare(a, b))).isEqualTo(-Integer.signum(order.compare(b, a)));
    assertThat(order.compare(a, b) == 0).isEqualTo(a.equals(b));
    if (order.compare(a, b) < 0 && order.compare(b, c) < 0) {
      assertThat(order.compare(a, c)).isNegative();
    }
  }
}
