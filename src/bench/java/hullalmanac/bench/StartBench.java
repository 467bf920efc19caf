package hullalmanac.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * From the start of the process to the first picture: the rows of Ahead on the sample's record,
 * against a bare frame with a table. Each start is a process of its own, one of the program and one
 * of the frame beside each other, in turns first, so that what else the machine does falls on both.
 */
final class StartBench {
  private static final int PATIENCE_S = 120;

  private final Path record;
  private final Path home;
  private final String classes;

  private StartBench(Path record, Path home, String classes) {
    this.record = record;
    this.home = home;
    this.classes = classes;
  }

  /**
   * Runs it and prints the results.
   *
   * @param arguments the record, the class path with the program's jar first, how many pairs
   */
  public static void main(String[] arguments) throws Exception {
    Path home = Files.createTempDirectory("start-bench-");
    try {
      StartBench bench = new StartBench(Path.of(arguments[0]), home, arguments[1]);
      bench.run(Integer.parseInt(arguments[2]));
    } finally {
      sweep(home);
    }
  }

  private void run(int pairs) throws Exception {
    // Once unmeasured: Java keeps what it knows of the fonts in the home folder.
    started(true);
    started(false);
    List<Double> program = new ArrayList<>();
    List<Double> bare = new ArrayList<>();
    for (int i = 0; i < pairs; i++) {
      boolean programFirst = i % 2 == 0;
      double first = started(programFirst);
      double second = started(!programFirst);
      program.add(programFirst ? first : second);
      bare.add(programFirst ? second : first);
      System.out.printf(
          Locale.ROOT, "%2d: program %.3f s, bare %.3f s%n", i + 1, program.get(i), bare.get(i));
    }
    print("rows of Ahead", program, "s");
    print("bare frame with a table", bare, "s");
    print("difference of a pair", paired(program, bare, (a, b) -> a - b), "s");
    print("ratio of a pair", paired(program, bare, (a, b) -> a / b), "");
  }

  private interface Compared {
    double of(double program, double bare);
  }

  private static List<Double> paired(List<Double> program, List<Double> bare, Compared compared) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < program.size(); i++) {
      values.add(compared.of(program.get(i), bare.get(i)));
    }
    return values;
  }

  private static void print(String what, List<Double> values, String unit) {
    Middle middle = Middle.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    System.out.printf(
        Locale.ROOT,
        "| %s | %.2f %s | %.2f to %.2f |%n",
        what,
        middle.median(),
        unit,
        middle.low(),
        middle.high());
  }

  /** Seconds from before the process was started until it said that it had painted. */
  private double started(boolean program) throws IOException, InterruptedException {
    Path copy = Files.createTempDirectory(home, "record-");
    copy(record, copy);
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Duser.home=" + home);
    command.add("-cp");
    command.add(classes);
    command.add(program ? StartedProgram.class.getName() : StartedBare.class.getName());
    command.addAll(List.of("--records", copy.toString()));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("XDG_STATE_HOME", home.toString());
    builder.environment().put("LOCALAPPDATA", home.toString());
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    Instant from = Instant.now();
    Process process = builder.start();
    Duration taken = Duration.between(from, painted(process));
    process.waitFor();
    sweep(copy);
    return taken.toNanos() / 1e9;
  }

  private static Instant painted(Process process) throws IOException, InterruptedException {
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String line = out.readLine();
      while (line != null && !line.startsWith(FirstPaint.SAID)) {
        line = out.readLine();
      }
      if (line == null || !process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IllegalStateException("nothing was painted; is there a display?");
      }
      return Instant.EPOCH.plusNanos(Long.parseLong(line.substring(FirstPaint.SAID.length())));
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target);
        }
      }
    }
  }

  private static void sweep(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
