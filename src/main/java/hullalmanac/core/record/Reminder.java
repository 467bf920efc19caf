package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What somebody was told of a boat that falls due, and what came of it.
 *
 * @param party who was told; absent where nobody is known
 * @param about what they were told of, nothing twice; empty when all of it was taken out since
 * @param log what was said when, oldest first, at least one
 */
public record Reminder(
    Id<Reminder> id,
    String key,
    Id<Boat> boat,
    Optional<Id<Party>> party,
    List<About> about,
    List<Said> log)
    implements Row {
  public Reminder {
    Texts.key(key);
    about = List.copyOf(about);
    log = List.copyOf(log);
    Set<Object> once = new HashSet<>();
    for (About item : about) {
      if (!once.add(item.what())) {
        throw new IllegalArgumentException("a reminder is about each thing once");
      }
    }
    if (log.isEmpty()) {
      throw new IllegalArgumentException("a reminder says what was said");
    }
    Story.of(log);
  }

  /**
   * One thing that falls due: a coat, a maker's duty, or the turn of a care plan.
   *
   * @param by the day by which it was best done, as it was last told; of a care plan the turn's day
   */
  public record About(
      Optional<Id<Coat>> coat, Optional<Id<Duty>> duty, Optional<Id<CarePlan>> plan, LocalDate by) {
    public About {
      if (Stream.of(coat, duty, plan).filter(Optional::isPresent).count() != 1) {
        throw new IllegalArgumentException(
            "a reminder is about a coat, a duty or a care plan, each on a line of its own");
      }
    }

    /** A coat that is best renewed by a day. */
    public static About coat(Id<Coat> coat, LocalDate by) {
      return new About(Optional.of(coat), Optional.empty(), Optional.empty(), by);
    }

    /** A maker's duty. */
    public static About duty(Id<Duty> duty, LocalDate by) {
      return new About(Optional.empty(), Optional.of(duty), Optional.empty(), by);
    }

    /** A turn of a care plan. */
    public static About plan(Id<CarePlan> plan, LocalDate day) {
      return new About(Optional.empty(), Optional.empty(), Optional.of(plan), day);
    }

    /** What it is, whatever its day; a turn of a care plan is its day. */
    public Object what() {
      return plan.isPresent() ? this : List.of(coat, duty);
    }
  }

  /** How somebody was told. */
  public enum Way implements Coded {
    PHONE("phone", "by phone"),
    MESSAGE("message", "by message"),
    MAIL("mail", "by mail"),
    LETTER("letter", "by letter"),
    IN_PERSON("in-person", "in person");

    private final String code;
    private final String words;

    Way(String code, String words) {
      this.code = code;
      this.words = words;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public String words() {
      return words;
    }
  }

  /**
   * What was said on a day.
   *
   * @param what one of those that are written
   * @param way how, only when somebody was told
   * @param askAfter the day after which to ask again, only when that was agreed
   * @param words what was said, as far as it was written down
   */
  public record Said(
      LocalDate day,
      ReminderEvent what,
      Optional<Way> way,
      Optional<LocalDate> askAfter,
      String words) {
    public Said {
      if (!what.written()) {
        throw new IllegalArgumentException(
            "that a reminder is " + what.words() + " follows from the record");
      }
      if (way.isPresent() != (what == ReminderEvent.TOLD)) {
        throw new IllegalArgumentException("what was told, and only that, says how");
      }
      if (askAfter.isPresent() != (what == ReminderEvent.ASK_AGAIN)) {
        throw new IllegalArgumentException(
            "what is to be asked again, and only that, has a day after which");
      }
      if (askAfter.filter(after -> after.isBefore(day)).isPresent()) {
        throw new IllegalArgumentException(
            "nobody can ask again after " + askAfter.get() + ", before " + day);
      }
    }

    /** Somebody was told. */
    public static Said told(LocalDate day, Way way, String words) {
      return new Said(day, ReminderEvent.TOLD, Optional.of(way), Optional.empty(), words);
    }

    /** The owner wants to be asked again after a day. */
    public static Said askAgain(LocalDate day, LocalDate after, String words) {
      return new Said(day, ReminderEvent.ASK_AGAIN, Optional.empty(), Optional.of(after), words);
    }

    /** It was booked, declined or called off. */
    public static Said of(LocalDate day, ReminderEvent what, String words) {
      return new Said(day, what, Optional.empty(), Optional.empty(), words);
    }
  }

  /**
   * Where it stands by what was said up to a day, the day itself included; open before the first.
   */
  public ReminderState stateOn(LocalDate day) {
    return Story.of(log.stream().filter(s -> !s.day().isAfter(day)).toList()).on(day);
  }

  /** The last thing said up to a day. */
  public Optional<Said> lastOn(LocalDate day) {
    return log.stream().filter(s -> !s.day().isAfter(day)).reduce((a, b) -> b);
  }

  /** The last day up to a day on which somebody was told. */
  public Optional<LocalDate> toldOn(LocalDate day) {
    return log.stream()
        .filter(s -> s.what() == ReminderEvent.TOLD && !s.day().isAfter(day))
        .reduce((a, b) -> b)
        .map(Said::day);
  }

  /** The first day on which anything was said. */
  public LocalDate since() {
    return log.get(0).day();
  }

  /** How far a log has brought a reminder. */
  private record Story(ReminderState state, Optional<LocalDate> askAfter) {
    static Story of(List<Said> log) {
      Story story = new Story(ReminderState.OPEN, Optional.empty());
      LocalDate last = LocalDate.MIN;
      for (Said said : log) {
        if (said.day().isBefore(last)) {
          throw new IllegalArgumentException(
              "what was said on " + said.day() + " stands behind what was said later");
        }
        last = said.day();
        ReminderState before = story.on(said.day());
        story =
            new Story(
                before
                    .after(said.what())
                    .orElseThrow(
                        () -> new IllegalArgumentException(before.refusal(said.what()).message())),
                said.askAfter());
      }
      return story;
    }

    ReminderState on(LocalDate day) {
      boolean came = askAfter.filter(after -> !day.isBefore(after)).isPresent();
      return state == ReminderState.WAITING && came
          ? state.after(ReminderEvent.DAY_COMES).orElseThrow()
          : state;
    }
  }
}
