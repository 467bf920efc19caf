package hullalmanac.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of numbers from outside the project, kept in a resource. Its first lines are comments
 * that begin with {@code #}; one of them must say {@code # source:}, and a file without is refused.
 * The other lines are rows of fields parted by blanks.
 */
public record Reference(String source, List<List<String>> rows) {
  /** Reads the resource beside a test class. */
  public static Reference read(Class<?> test, String name) {
    List<String> lines = lines(test, name);
    String source =
        lines.stream()
            .filter(l -> l.startsWith("# source:"))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException(name + " names no source"));
    return new Reference(
        source.substring("# source:".length()).strip(),
        lines.stream()
            .filter(l -> !l.startsWith("#") && !l.isBlank())
            .map(l -> Arrays.asList(l.strip().split("\\s+")))
            .toList());
  }

  private static List<String> lines(Class<?> test, String name) {
    try (InputStream in = test.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + name + " beside " + test);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows as arguments of a parameterised test. */
  public Stream<List<String>> stream() {
    return rows.stream();
  }
}
