package hullalmanac.bench;

import hullalmanac.core.find.FindIndex;
import hullalmanac.core.find.Hit;
import hullalmanac.core.find.Roster;
import hullalmanac.core.record.Almanac;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Finds in an invented list of 10,000 boats, each with an owner, a phone, a hull number and a note;
 * sampled, so that the slow ones show.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FindBench {
  private static final int BOATS = 10_000;
  private static final int SHOWN = 50;

  /** The index, apart from what is typed. */
  @State(Scope.Benchmark)
  public static class Made {
    private Almanac almanac;
    private FindIndex index;

    /** Makes the list. */
    @Setup
    public void make() {
      almanac = Roster.of(BOATS).almanac();
      index = FindIndex.of(almanac, Roster.TODAY);
    }
  }

  /** Finding. */
  @State(Scope.Benchmark)
  public static class Typed {
    /** What is typed: one letter, a name, words of several texts, a hull number's inside, a phone. */
    @Param({"b", "black auk 7", "lark quill d1", "0734", "555 0734", "fender 12", "no such boat"})
    public String typed;
  }

  /** The first hits. */
  @Benchmark
  public List<Hit> find(Made made, Typed typed) {
    return made.index.find(typed.typed, SHOWN);
  }

  /** The index from nothing. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public FindIndex makeIndex(Made made) {
    return FindIndex.of(made.almanac, Roster.TODAY);
  }
}
