package hullalmanac.exchange.csv;

import hullalmanac.core.life.fit.Lifetime;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads lives from a file with the columns {@code lower} and {@code upper}: equal when the end was
 * seen, {@code upper} empty when it was not; units are free.
 */
public final class LivesCsv {
  private static final List<Column> COLUMNS = List.of(Column.need("lower"), Column.value("upper"));
  private static final String ADVICE = "Write a number of 0 or more, such as 85.5";

  private LivesCsv() {}

  /** The lives of a file, or every problem with it; one of the two is empty. */
  public record Read(List<Lifetime> lives, List<CsvProblem> problems) {
    public Read {
      lives = List.copyOf(lives);
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file. */
  public static Read read(Path file) {
    List<CsvProblem> problems = new ArrayList<>();
    List<Lifetime> lives = new ArrayList<>();
    CsvTable.read(file, COLUMNS, problems)
        .ifPresent(
            table -> {
              In.Context context =
                  new In.Context(table.file(), table.decimalComma(), new Keys(), problems);
              table
                  .rows()
                  .forEach(r -> life(new In(r.cells(), context, r.line())).ifPresent(lives::add));
              if (problems.isEmpty() && lives.isEmpty()) {
                problems.add(
                    new CsvProblem(table.file(), 0, "", "it holds no life", "Add a row a life"));
              }
            });
    return problems.isEmpty() ? new Read(lives, List.of()) : new Read(List.of(), problems);
  }

  private static Optional<Lifetime> life(In row) {
    Optional<Double> lower = row.maybe("lower", row::realOf, ADVICE);
    Optional<Double> upper =
        row.maybe("upper", row::realOf, ADVICE + ", or leave it empty where the end was not seen");
    if (lower.isEmpty()) {
      row.problem("lower", "it is empty or no number", ADVICE);
    }
    return row.made(
        () -> new Lifetime(lower.orElseThrow(), upper.orElse(Double.POSITIVE_INFINITY)));
  }
}
