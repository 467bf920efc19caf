package hullalmanac.exchange.json;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes values as JSON text.
 *
 * <p>References: RFC 8259, sections 3 to 7.
 */
public final class Json {
  private Json() {}

  /**
   * Returns the JSON text of a value.
   *
   * @param value null, a string, a finite number, a boolean, a list of values, or a map from
   *     strings to values whose order is kept
   * @throws IllegalArgumentException for anything else
   */
  public static String of(Object value) {
    if (value == null
        || value instanceof Boolean
        || value instanceof Integer
        || value instanceof Long) {
      return String.valueOf(value);
    }
    if ((value instanceof Double d && Double.isFinite(d))
        || value instanceof java.math.BigDecimal) {
      return value.toString();
    }
    if (value instanceof String s) {
      return quoted(s);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Json::of).collect(Collectors.joining(",", "[", "]"));
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(e -> quoted((String) e.getKey()) + ":" + of(e.getValue()))
          .collect(Collectors.joining(",", "{", "}"));
    }
    throw new IllegalArgumentException("not a JSON value: " + value);
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < 0x20) {
        out.append(String.format("\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}
