package hullalmanac.present.shell;

import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

/** Says once a day, at start and while open, whose owners are to be told; a sample keeps quiet. */
final class DueNotice {
  private Consumer<String> to = sentence -> {};
  private Optional<LocalDate> last = Optional.empty();

  void to(Consumer<String> to) {
    this.to = to;
  }

  void show(Fleet fleet) {
    boolean sample = fleet.almanac().business().asOf().isPresent();
    if (sample || last.equals(Optional.of(fleet.asOf()))) {
      return;
    }
    last = Optional.of(fleet.asOf());
    ToTell now = ToTell.of(fleet);
    if (!now.boats().isEmpty()) {
      to.accept(now.line());
    }
  }
}
