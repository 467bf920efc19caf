package hullalmanac.app;

import hullalmanac.present.help.Program;
import java.awt.Desktop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The program as it stands on this computer.
 *
 * @param home the person's home folder, whose name is kept out of reports
 * @param state where log and crash reports lie
 * @param record the folder of the record that is open
 */
record Installed(
    String version, String java, String system, Path home, Path state, Optional<Path> record)
    implements Program {
  /** As many lines of the log as tell what led to it. */
  private static final int LINES = 80;

  Installed(String version, String java, String system, Path home, Path state) {
    this(version, java, system, home, state, Optional.empty());
  }

  /** The same with a record open. */
  Installed on(Path folder) {
    return new Installed(version, java, system, home, state, Optional.of(folder));
  }

  @Override
  public Facts facts() {
    return new Facts(
        version,
        java,
        system,
        record.map(r -> r.toAbsolutePath().toString()).orElse("none is open"),
        state.toString(),
        AppLog.crashes(state).stream().map(f -> f.getFileName().toString()).toList());
  }

  @Override
  public String report() {
    StringBuilder report = new StringBuilder();
    report
        .append("Hull Almanac ")
        .append(version)
        .append("\nJava ")
        .append(java)
        .append('\n')
        .append(system)
        .append("\n\nEnd of the log:\n");
    List<String> lines = lines(state.resolve(AppLog.NEWEST));
    lines
        .subList(Math.max(0, lines.size() - LINES), lines.size())
        .forEach(line -> report.append(line).append('\n'));
    List<Path> crashes = AppLog.crashes(state);
    if (!crashes.isEmpty()) {
      report.append("\nNewest of ").append(crashes.size()).append(" crash reports:\n");
      lines(crashes.get(0)).forEach(line -> report.append(line).append('\n'));
    }
    return report.toString().replace(home.toString(), "~");
  }

  private static List<String> lines(Path file) {
    try {
      return Files.isRegularFile(file)
          ? Files.readAllLines(file, StandardCharsets.UTF_8)
          : List.of("(there is none)");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Optional<String> show(String folder) {
    Optional<String> refused =
        Optional.of("The desktop does not show folders for programs. It is " + folder + ".");
    if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
      return refused;
    }
    try {
      Desktop.getDesktop().open(Path.of(folder).toFile());
      return Optional.empty();
    } catch (IOException | IllegalArgumentException e) {
      return refused;
    }
  }
}
