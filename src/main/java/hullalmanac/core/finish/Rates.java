package hullalmanac.core.finish;

import hullalmanac.core.record.StepKind;
import java.util.Map;

/** Minutes and millilitres for a square metre: learned where the record taught, else usual. */
final class Rates {
  private final FinishPractice practice;
  private final Map<Key, LogRate> minutes;
  private final Map<Enum<?>, LogRate> millilitres;

  /**
   * What minutes are of.
   *
   * @param work a stage's law, or washing, decontaminating, protecting
   */
  record Key(Enum<?> work, Condition condition) {}

  Rates(FinishPractice practice, Map<Key, LogRate> minutes, Map<Enum<?>, LogRate> millilitres) {
    this.practice = practice;
    this.minutes = Map.copyOf(minutes);
    this.millilitres = Map.copyOf(millilitres);
  }

  /** Nothing but starter values. */
  static Rates starter(FinishPractice practice) {
    return new Rates(practice, Map.of(), Map.of());
  }

  static LogRate starter(FinishPractice practice, Key key) {
    double fair =
        key.work() instanceof Stage law
            ? practice.minutes(law)
            : practice.minutes((StepKind) key.work());
    return LogRate.starter(fair * key.condition().effort());
  }

  /** Person-minutes for a square metre and pass. */
  Estimate minutes(Stage stage, Condition condition) {
    return of(new Key(stage.law(), condition));
  }

  /** Person-minutes for a square metre of washing, decontaminating or protecting. */
  Estimate minutes(StepKind kind, Condition condition) {
    return of(new Key(kind, condition));
  }

  private Estimate of(Key key) {
    LogRate rate = minutes.get(key);
    return (rate == null ? starter(practice, key) : rate).next();
  }

  /** Millilitres for a square metre and pass; a paper needs none. */
  Estimate millilitres(Stage stage) {
    return stage.sands() ? new Estimate(0, 0, 0, Origin.STARTER) : millilitresOf(stage.law());
  }

  /** Millilitres of protection for a square metre. */
  Estimate protection() {
    return millilitresOf(StepKind.PROTECT);
  }

  /** Millilitres of what is washed or decontaminated with for a square metre, as mixed. */
  Estimate cleaning(StepKind kind) {
    return millilitresOf(kind);
  }

  private Estimate millilitresOf(Enum<?> work) {
    LogRate rate = millilitres.get(work);
    return (rate == null ? LogRate.starter(practice.millilitres(work)) : rate).next();
  }
}
