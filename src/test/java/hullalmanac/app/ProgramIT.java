package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed program in a process of its own, as a person starts it, with no display. */
class ProgramIT {
  @TempDir Path home;

  private record Ran(int code, String out, String err) {}

  private Ran run(String... arguments) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.home=" + home,
                "-Djava.awt.headless=true",
                "-jar",
                System.getProperty("hullalmanac.jar")));
    command.addAll(Arrays.asList(arguments));
    Path out = Files.createTempFile(home, "out", ".txt");
    Path err = Files.createTempFile(home, "err", ".txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Ran(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void printsWhatIsDueWhereThereIsNoDisplay() throws Exception {
    Ran ran = run("--sample");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).startsWith("There is no display");
    assertThat(ran.out().lines().filter(line -> line.contains("polymer sealant B")).count())
        .isGreaterThanOrEqualTo(15);
  }

  @Test
  void goesFromSampleToListsAndBack() throws Exception {
    Path sample = home.resolve("sample");
    assertThat(run("sample", sample.toString())).extracting(Ran::code).isEqualTo(0);
    Ran due =
        run("--records", sample.toString(), "due", "--as-of", "2026-05-01", "--format", "csv");
    assertThat(due.code()).isZero();
    assertThat(due.out().lines().findFirst())
        .contains("boat,surface,product,coated_on,renew_by,early,middle,late,chance_lapsed");
    assertThat(due.out().lines().count()).isGreaterThan(15);
    Path first = home.resolve("first");
    Path second = home.resolve("second");
    String copy = home.resolve("copy").toString();
    assertThat(run("--records", sample.toString(), "export", first.toString()).code()).isZero();
    assertThat(run("--records", copy, "import", first.toString()).code()).isZero();
    assertThat(run("--records", copy, "export", second.toString()).code()).isZero();
    List<Path> files = files(first);
    assertThat(files).hasSizeGreaterThan(15).isEqualTo(files(second));
    for (Path file : files) {
      assertThat(Files.mismatch(first.resolve(file), second.resolve(file)))
          .as(file.toString())
          .isEqualTo(-1);
    }
  }

  @Test
  void endsWithOneForWhatIsGivenWrongAndTwoForWrongUsage() throws Exception {
    Ran wrong = run("--records", home.resolve("nowhere").toString(), "due");
    assertThat(wrong.code()).isEqualTo(1);
    assertThat(wrong.err().lines()).hasSize(1);
    assertThat(run("due", "--nonsense").code()).isEqualTo(2);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile).map(folder::relativize).sorted().toList();
    }
  }
}
