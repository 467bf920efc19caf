package hullalmanac.bench;

import hullalmanac.core.paper.Paper;
import hullalmanac.exchange.pdf.PaperPdf;
import hullalmanac.fixture.LongHistory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Lays out a history of twelve pages with 24 photos as a phone takes them: the first one after the
 * start of the program, and the third.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(5)
public class PaperBench {
  private Path photos;
  private Paper paper;

  /** Makes the boat and her photos. */
  @Setup
  public void make() throws IOException {
    photos = Files.createTempDirectory("photos");
    paper = LongHistory.in(photos);
  }

  /** Takes the photos away. */
  @TearDown
  public void sweep() throws IOException {
    try (Stream<Path> files = Files.walk(photos)) {
      List<Path> all = files.sorted(Comparator.reverseOrder()).toList();
      for (Path file : all) {
        Files.delete(file);
      }
    }
  }

  /** The first paper of a day. */
  @Benchmark
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public PaperPdf.Made first() {
    return PaperPdf.of(paper, photos);
  }

  /** One after others. */
  @Benchmark
  @Warmup(iterations = 2)
  @Measurement(iterations = 1)
  public PaperPdf.Made third() {
    return PaperPdf.of(paper, photos);
  }
}
