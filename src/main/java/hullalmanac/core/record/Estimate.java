package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A priced offer for one boat, with one or more options beside each other.
 *
 * @param party to whom it is made
 * @param day made on
 * @param validUntil last day on which it can be accepted
 * @param expectations what the work will do, in plain words, said before it is done
 * @param options as the person names them (good, better, best), in order
 * @param deposit what is asked beforehand, of the option that is accepted
 * @param terms how taxes are reckoned in it
 * @param answer what was said to it, only when it was accepted or declined
 * @param visit the visit it became, only when it was accepted
 */
public record Estimate(
    Id<Estimate> id,
    String key,
    Id<Boat> boat,
    Optional<Id<Party>> party,
    LocalDate day,
    LocalDate validUntil,
    List<Expectation> expectations,
    List<Option> options,
    Share deposit,
    TaxTerms terms,
    State state,
    Optional<Answer> answer,
    Optional<Id<Visit>> visit,
    String note)
    implements Row {
  public Estimate {
    Texts.key(key);
    expectations = List.copyOf(expectations);
    options = List.copyOf(options);
    if (validUntil.isBefore(day)) {
      throw new IllegalArgumentException(
          "the estimate is valid until " + validUntil + ", before it was made on " + day);
    }
    if (options.stream().map(Option::name).distinct().count() < options.size()) {
      throw new IllegalArgumentException("two options have the same name");
    }
    for (Option option : options) {
      PriceLine.require(option.lines(), option.discount(), terms);
    }
    boolean answered = state == State.ACCEPTED || state == State.DECLINED;
    if (answered != answer.isPresent()) {
      throw new IllegalArgumentException(
          "an estimate that was accepted or declined, and only that, has an answer");
    }
    if (visit.isPresent() && state != State.ACCEPTED) {
      throw new IllegalArgumentException("only an accepted estimate has become a visit");
    }
    if (state == State.ACCEPTED
        && options.stream().noneMatch(o -> o.name().equals(answer.orElseThrow().option()))) {
      throw new IllegalArgumentException("an accepted estimate names the option that was chosen");
    }
  }

  /** How far it has got. */
  public enum State implements Coded {
    DRAFT("draft"),
    OFFERED("offered"),
    ACCEPTED("accepted"),
    DECLINED("declined");

    private final String code;

    State(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** What becomes of a mark or a flaw. */
  public enum Result implements Coded {
    COMES_OUT("comes-out"),
    IMPROVES("improves"),
    STAYS("stays");

    private final String code;

    Result(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /**
   * What can be expected of the work.
   *
   * @param words of what, such as "yellow stain at the waterline"
   */
  public record Expectation(Result result, String words) {
    public Expectation {
      Texts.require(words, "what is to be expected");
    }
  }

  /**
   * One of the options.
   *
   * @param steps what would be done, in order
   * @param surfaces where; empty means the whole boat
   */
  public record Option(
      String name,
      List<StepKind> steps,
      List<Id<Surface>> surfaces,
      List<PriceLine> lines,
      Share discount,
      String note) {
    public Option {
      Texts.require(name, "the name of an option");
      steps = List.copyOf(steps);
      surfaces = List.copyOf(surfaces);
      lines = List.copyOf(lines);
    }
  }

  /**
   * What was said to an estimate.
   *
   * @param option name of the option that was accepted; empty when it was declined
   * @param note what was said
   * @param signedBy the name that was typed in the place of a signature, or beside a drawn one
   */
  public record Answer(
      LocalDate day, String option, String note, String signedBy, Optional<Signature> signature) {}

  /** The option that was accepted. */
  public Optional<Option> chosen() {
    return answer.flatMap(
        a -> options.stream().filter(o -> o.name().equals(a.option())).findFirst());
  }

  /** Whether it waits for an answer that can still be given on a day. */
  public boolean openOn(LocalDate today) {
    return state == State.OFFERED && !today.isAfter(validUntil);
  }
}
