package hullalmanac.core.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something a coat's maker demands by a day, or its promise lapses. The forecast never moves it.
 */
public record Duty(
    Id<Duty> id,
    String key,
    Id<Coat> coat,
    DutyKind kind,
    LocalDate dueOn,
    Optional<LocalDate> doneOn,
    String note)
    implements Row {
  public Duty {
    Texts.key(key);
  }
}
