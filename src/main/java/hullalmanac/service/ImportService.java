package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.takings.SumRules;
import hullalmanac.exchange.csv.CsvProblem;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.exchange.photo.PhotoFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Brings a folder of lists into a record: all of it, or nothing and every problem. */
public final class ImportService {
  private final RecordService.Surroundings surroundings;

  public ImportService(RecordService.Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** What came of an import. */
  public sealed interface Outcome {}

  /**
   * All was brought in.
   *
   * @param rows how many rows
   */
  public record Done(int rows) implements Outcome {}

  /** Nothing was brought in. */
  public record Refused(List<CsvProblem> problems) implements Outcome {
    public Refused {
      problems = List.copyOf(problems);
    }

    /** One line a problem, for people. */
    public List<String> lines() {
      return problems.stream().map(CsvProblem::text).toList();
    }
  }

  /** Brings lists into the record in a folder, which is made if there is none. */
  public Outcome into(Path record, Path lists) {
    if (RecordService.isIn(record)) {
      try (RecordService open = RecordService.open(record, surroundings)) {
        return into(open, lists);
      }
    }
    IdSource ids = new IdSource(surroundings.random());
    CsvSet.ReadResult read = CsvSet.read(lists, Almanac.empty(Business.unnamed()), ids);
    List<CsvProblem> problems = problems(read, Almanac.empty(Business.unnamed()), lists);
    if (!problems.isEmpty()) {
      return new Refused(problems);
    }
    RecordService.create(record, surroundings);
    try (RecordService open = RecordService.open(record, surroundings)) {
      return add(open, lists, read.additions());
    }
  }

  private Outcome into(RecordService open, Path lists) {
    CsvSet.ReadResult read = CsvSet.read(lists, open.almanac(), open.ids());
    List<CsvProblem> problems = problems(read, open.almanac(), lists);
    return problems.isEmpty() ? add(open, lists, read.additions()) : new Refused(problems);
  }

  /** Photo files go first and rows second, so that a row never names a file that is not there. */
  private static Outcome add(RecordService open, Path lists, Almanac additions) {
    PhotoFiles.copy(lists.resolve("photos"), open.photos(), pictures(open.almanac(), additions));
    open.change("import of " + lists.getFileName(), Edit.all(additions));
    return new Done(rows(additions));
  }

  private static List<CsvProblem> problems(CsvSet.ReadResult read, Almanac existing, Path lists) {
    List<CsvProblem> problems = new ArrayList<>(read.problems());
    if (problems.isEmpty()) {
      List<Problem> rules = new ArrayList<>(RecordRules.problems(existing, read.additions()));
      if (rules.isEmpty()) {
        rules.addAll(SumRules.problems(existing, read.additions()));
      }
      rules.forEach(p -> problems.add(placed(p, read)));
      Map<String, String> missing =
          PhotoFiles.missing(lists.resolve("photos"), pictures(existing, read.additions()));
      read.additions().photos().stream()
          .filter(p -> missing.containsKey(p.file()))
          .map(p -> noPicture(Kind.PHOTO, p.key(), "file", missing.get(p.file())))
          .forEach(p -> problems.add(placed(p, read)));
      Optional.ofNullable(missing.get(read.additions().business().letterhead().mark()))
          .map(why -> noPicture(Kind.BUSINESS, "", "mark", why))
          .ifPresent(p -> problems.add(placed(p, read)));
    }
    return problems;
  }

  /** Files that are to come; not the mark where the lists say nothing new of it. */
  private static List<String> pictures(Almanac existing, Almanac additions) {
    String there = existing.business().letterhead().mark();
    return additions.pictures().stream()
        .filter(
            f ->
                !f.equals(there)
                    || additions.photos().stream().anyMatch(p -> p.file().equals(there)))
        .toList();
  }

  private static Problem noPicture(Kind kind, String key, String field, String why) {
    return new Problem(
        kind, key, field, why, "Put the picture into the folder photos beside the lists");
  }

  private static CsvProblem placed(Problem p, CsvSet.ReadResult read) {
    CsvSet.Place place =
        read.lines()
            .getOrDefault(p.kind(), Map.of())
            .getOrDefault(p.key(), new CsvSet.Place(p.kind().code() + ".csv", 0));
    return new CsvProblem(place.file(), place.line(), p.field(), p.message(), p.advice());
  }

  private static int rows(Almanac a) {
    return a.rows().size();
  }
}
