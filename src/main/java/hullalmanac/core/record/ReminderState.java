package hullalmanac.core.record;

import java.util.Map;
import java.util.Optional;

/** Where a reminder stands, and what each event makes of it. */
public enum ReminderState implements Coded {
  /** Somebody is to be told. */
  OPEN("to-tell"),
  TOLD("told"),
  BOOKED("booked"),
  DECLINED("declined"),
  /** The owner wants to be asked again after a day that has not come yet. */
  WAITING("ask-again"),
  DONE("done"),
  /** It is over without our doing. */
  CLOSED("closed");

  private static final Map<ReminderState, Map<ReminderEvent, ReminderState>> AFTER =
      Map.of(
          OPEN,
          Map.of(
              ReminderEvent.TOLD, TOLD,
              ReminderEvent.BOOKED, BOOKED,
              ReminderEvent.DECLINED, DECLINED,
              ReminderEvent.ASK_AGAIN, WAITING,
              ReminderEvent.WORK_DONE, DONE,
              ReminderEvent.OVERTAKEN, CLOSED),
          TOLD,
          Map.of(
              ReminderEvent.TOLD, TOLD,
              ReminderEvent.BOOKED, BOOKED,
              ReminderEvent.DECLINED, DECLINED,
              ReminderEvent.ASK_AGAIN, WAITING,
              ReminderEvent.WORK_DONE, DONE,
              ReminderEvent.OVERTAKEN, CLOSED),
          BOOKED,
          Map.of(
              ReminderEvent.BOOKED, BOOKED,
              ReminderEvent.DECLINED, DECLINED,
              ReminderEvent.ASK_AGAIN, WAITING,
              ReminderEvent.CALLED_OFF, TOLD,
              ReminderEvent.WORK_DONE, DONE,
              ReminderEvent.OVERTAKEN, CLOSED),
          DECLINED,
          Map.of(
              ReminderEvent.BOOKED, BOOKED,
              ReminderEvent.ASK_AGAIN, WAITING,
              ReminderEvent.WORK_DONE, DONE,
              ReminderEvent.OVERTAKEN, CLOSED),
          WAITING,
          Map.of(
              ReminderEvent.BOOKED, BOOKED,
              ReminderEvent.DECLINED, DECLINED,
              ReminderEvent.ASK_AGAIN, WAITING,
              ReminderEvent.DAY_COMES, OPEN,
              ReminderEvent.WORK_DONE, DONE,
              ReminderEvent.OVERTAKEN, CLOSED),
          DONE,
          Map.of(),
          CLOSED,
          Map.of());

  private final String code;

  ReminderState(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether nothing more can happen to it. */
  public boolean over() {
    return this == DONE || this == CLOSED;
  }

  /**
   * What an event makes of it; absent where it cannot happen, see {@link #refusal(ReminderEvent)}.
   */
  public Optional<ReminderState> after(ReminderEvent event) {
    return Optional.ofNullable(AFTER.get(this).get(event));
  }

  /**
   * Why an event cannot happen.
   *
   * @param message what is wrong
   * @param advice what to do instead
   */
  public record Refusal(String message, String advice) {
    /** Both as sentences. */
    public String sentence() {
      return Texts.capital(message) + ". " + advice + ".";
    }
  }

  /**
   * Why an event cannot happen, and what to do.
   *
   * @throws IllegalArgumentException where it can
   */
  public Refusal refusal(ReminderEvent event) {
    if (after(event).isPresent()) {
      throw new IllegalArgumentException(event + " can happen to what is " + this);
    }
    if (over()) {
      return new Refusal("this reminder is over", "What falls due later makes one of its own");
    }
    return switch (event) {
      case TOLD -> toldNot();
      case CALLED_OFF -> new Refusal("nothing is booked", "Write what the owner said instead");
      case DECLINED -> new Refusal("the owner declined already", "Nothing is left to write down");
      case DAY_COMES ->
          new Refusal("no day was agreed after which to ask again", "Write that day down first");
      case BOOKED, ASK_AGAIN, WORK_DONE, OVERTAKEN ->
          throw new IllegalStateException(event + " in " + this);
    };
  }

  private Refusal toldNot() {
    return switch (this) {
      case BOOKED ->
          new Refusal("the work is booked", "If it was called off, write that down first");
      case DECLINED ->
          new Refusal(
              "the owner declined", "Write \"booked\", or a day after which to ask again, first");
      default ->
          new Refusal(
              "the owner wants to be asked later",
              "Write \"booked\", \"declined\" or another day after which to ask");
    };
  }
}
