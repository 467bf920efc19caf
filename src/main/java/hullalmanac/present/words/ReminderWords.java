package hullalmanac.present.words;

import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Texts;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.DateWords;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where it stands with telling an owner, in words.
 *
 * @param about names what reminders are about
 * @param today the day from which it is seen
 */
public record ReminderWords(AboutWords about, LocalDate today) {
  /** Where it stands, short: "told by phone on 22 April". */
  public String state(Standing s) {
    DateWords days = new DateWords(today);
    Optional<Reminder.Said> last = s.last(today);
    return switch (s.state()) {
      case OPEN ->
          s.notBefore()
              .map(until -> "left in peace until " + days.exact(until))
              .orElse(last.isPresent() ? "to be asked again" : "to be told");
      case TOLD ->
          last.filter(l -> l.way().isPresent())
              .map(l -> "told " + l.way().get().words() + " on " + days.exact(l.day()))
              .orElse("told");
      case BOOKED ->
          s.visit()
              .map(day -> "a visit is planned on " + days.exact(day))
              .orElseGet(() -> "booked" + on(last, days));
      case DECLINED -> "declined" + on(last, days);
      case WAITING ->
          "ask again after "
              + last.flatMap(Reminder.Said::askAfter).map(days::exact).orElse("a day");
      case DONE, CLOSED -> s.state().words();
    };
  }

  private static String on(Optional<Reminder.Said> last, DateWords days) {
    return last.map(l -> " on " + days.exact(l.day())).orElse("");
  }

  /** What it is about and by when: "Topsides and transom, by 14 May". */
  public String what(Standing s) {
    return Texts.capital(about.few(s.about())) + ", " + when(s);
  }

  /** By when the first of it is best done: "by 14 May", "due since 3 April". */
  public String when(Standing s) {
    DateWords days = new DateWords(today);
    return s.by().isBefore(today) ? "due since " + days.exact(s.by()) : days.bestWhen(s.by());
  }

  /** That a date moved since it was told. */
  public String moved(Standing.Moved m) {
    DateWords days = new DateWords(today);
    return Texts.capital(about.one(m.told()))
        + ": "
        + days.exact(m.told().by())
        + " was told, now it is "
        + days.exact(m.now())
        + m.after().map(f -> ", after what was seen on " + seen(f, days)).orElse("")
        + ".";
  }

  private static String seen(Finding finding, DateWords days) {
    return days.exact(finding.day());
  }

  /** What was said, as a line of the log. */
  public String said(Reminder.Said said) {
    String more =
        said.way()
            .map(w -> " " + w.words())
            .or(() -> said.askAfter().map(a -> " after " + new DateWords(today).exact(a)))
            .orElse("");
    return Texts.capital(said.what().words()) + more;
  }
}
