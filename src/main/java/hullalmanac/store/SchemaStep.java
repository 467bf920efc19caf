package hullalmanac.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * One forward step of the schema. A released one is never edited: its checksum is frozen in {@code
 * checksums.txt}.
 *
 * @param number from 1
 * @param sql statements, each ending with a semicolon at the end of a line
 */
public record SchemaStep(int number, String sql) {
  /** File names of all steps, in order. */
  static final List<String> FILES =
      List.of(
          "0001-initial.sql",
          "0002-risk-of-a-party.sql",
          "0003-order-of-acts.sql",
          "0004-settings.sql",
          "0005-timed-and-told.sql",
          "0006-climate-of-a-step.sql",
          "0007-moment-of-a-finding.sql",
          "0008-list-readings.sql",
          "0009-money.sql",
          "0010-wordings.sql",
          "0011-supplies.sql",
          "0012-reminders.sql",
          "0013-mark.sql");

  /** All steps of this program, in order. */
  public static List<SchemaStep> all() {
    return FILES.stream()
        .map(f -> new SchemaStep(Integer.parseInt(f.substring(0, 4)), read(f)))
        .toList();
  }

  private static String read(String file) {
    try (InputStream in = SchemaStep.class.getResourceAsStream("/hullalmanac/store/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The statements one by one, without comments. */
  List<String> statements() {
    String bare = sql.replaceAll("(?m)^--.*$", "");
    return Arrays.stream(bare.split(";\\s*(\\n|$)"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .toList();
  }
}
