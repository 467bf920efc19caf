package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.RecordRules;
import hullalmanac.core.record.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of asking for a piece of work: an edit of the record, or why it cannot be done. */
public sealed interface Change {
  /** It can be done so. */
  record Ready(Edit edit) implements Change {
    /** The first row of a kind that it puts in. */
    public <R extends Row> Optional<R> put(Class<R> kind) {
      return edit.put().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }
  }

  /**
   * It cannot be done.
   *
   * @param problems at least one
   */
  record Refused(List<Problem> problems) implements Change {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("nothing is refused without a reason");
      }
    }
  }

  /** Refuses for one reason. */
  static Change refused(Problem problem) {
    return new Refused(List.of(problem));
  }

  /** An edit, unless it would break a rule between the rows of the record. */
  static Change checked(Almanac almanac, Edit edit) {
    List<Problem> problems = new ArrayList<>(RecordRules.gone(almanac, edit.gone()));
    problems.addAll(
        RecordRules.problems(
            almanac.with(Edit.remove(edit.gone())),
            Almanac.empty(almanac.business())
                .with(new Edit(edit.business(), edit.put(), List.of()))));
    return problems.isEmpty() ? new Ready(edit) : new Refused(problems);
  }
}
