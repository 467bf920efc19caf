package hullalmanac.core.finish;

import hullalmanac.core.record.StepKind;
import java.util.Map;

/** Minutes and millilitres for a square metre: learned where the record taught, else usual. */
final class Rates {
  /** Nothing but starter values. */
  static final Rates STARTER = new Rates(Map.of(), Map.of());

  private final Map<Key, LogRate> minutes;
  private final Map<Enum<?>, LogRate> millilitres;

  /**
   * What minutes are of.
   *
   * @param work a stage's law, or washing, decontaminating, protecting
   */
  record Key(Enum<?> work, Condition condition) {}

  Rates(Map<Key, LogRate> minutes, Map<Enum<?>, LogRate> millilitres) {
    this.minutes = Map.copyOf(minutes);
    this.millilitres = Map.copyOf(millilitres);
  }

  static LogRate starter(Key key) {
    double fair =
        key.work() instanceof Stage law
            ? FinishPractice.minutes(law)
            : FinishPractice.minutes((StepKind) key.work());
    return LogRate.starter(fair * key.condition().effort());
  }

  static LogRate starterMillilitres(Enum<?> work) {
    return LogRate.starter(
        work instanceof Stage law ? FinishPractice.millilitres(law) : FinishPractice.PROTECTION_ML);
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
    return (rate == null ? starter(key) : rate).next();
  }

  /** Millilitres for a square metre and pass; a paper needs none. */
  Estimate millilitres(Stage stage) {
    return stage.sands() ? new Estimate(0, 0, 0, Origin.STARTER) : millilitresOf(stage.law());
  }

  /** Millilitres of protection for a square metre. */
  Estimate protection() {
    return millilitresOf(StepKind.PROTECT);
  }

  private Estimate millilitresOf(Enum<?> work) {
    LogRate rate = millilitres.get(work);
    return (rate == null ? starterMillilitres(work) : rate).next();
  }
}
