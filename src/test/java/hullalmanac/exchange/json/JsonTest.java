package hullalmanac.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTest {
  @Test
  void writesEachKindOfValue() {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("boat", "a");
    row.put("chance", new BigDecimal("0.250"));
    row.put("none", null);
    row.put("sure", true);
    assertThat(Json.of(List.of(row, Arrays.asList(1, 2.5))))
        .isEqualTo("[{\"boat\":\"a\",\"chance\":0.250,\"none\":null,\"sure\":true},[1,2.5]]");
  }

  /**
   * RFC 8259, section 7: quotation mark, reverse solidus and control characters must be escaped.
   */
  @Test
  void escapesWhatTheStandardDemands() {
    assertThat(Json.of("a\"b\\c\n\u0001é€")).isEqualTo("\"a\\\"b\\\\c\\u000a\\u0001é€\"");
  }

  @Test
  void refusesWhatJsonCannotSay() {
    assertThatThrownBy(() -> Json.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Json.of(new Object())).isInstanceOf(IllegalArgumentException.class);
  }
}
