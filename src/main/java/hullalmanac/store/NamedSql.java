package hullalmanac.store;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A statement whose {@code :names} became question marks.
 *
 * @param text as the driver wants it
 * @param names in the order of the question marks
 */
record NamedSql(String text, List<String> names) {
  private static final Pattern NAME = Pattern.compile(":([a-z_]+)");

  static NamedSql of(String sql) {
    List<String> names = new ArrayList<>();
    Matcher matcher = NAME.matcher(sql);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return new NamedSql(matcher.replaceAll("?"), List.copyOf(names));
  }
}
