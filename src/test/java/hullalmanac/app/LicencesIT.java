package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of libraries and their licences names each jar that is shipped, and no other. */
class LicencesIT {
  private static final Pattern VERSION = Pattern.compile("-\\d[^-]*(-\\d+)?\\.jar");
  private static final Pattern NAMED = Pattern.compile("`([a-z0-9-]+)`");

  @Test
  void everyJarThatIsShippedIsNamedWithItsLicence() throws Exception {
    Set<String> shipped;
    try (Stream<Path> jars = Files.list(Path.of("target/lib"))) {
      shipped =
          jars.map(jar -> VERSION.matcher(jar.getFileName().toString()).replaceAll(""))
              .collect(Collectors.toCollection(TreeSet::new));
    }
    Set<String> named = new TreeSet<>();
    List<String> lines = Files.readAllLines(Path.of("packaging/THIRD-PARTY.md"));
    for (String line : lines.stream().filter(l -> l.startsWith("| ")).skip(2).toList()) {
      String[] cells = line.split("\\|");
      assertThat(cells).as(line).hasSize(5);
      assertThat(cells[3]).as(line).isNotBlank();
      Matcher jar = NAMED.matcher(cells[4]);
      while (jar.find()) {
        named.add(jar.group(1));
      }
    }
    assertThat(named).isEqualTo(shipped);
  }
}
