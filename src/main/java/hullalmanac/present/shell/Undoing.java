package hullalmanac.present.shell;

import hullalmanac.service.EditService;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** Takes acts back and does them again, and says which. */
record Undoing(ShellPresenter shell, EditService edits) {
  void undo() {
    AtomicReference<Optional<String>> what = new AtomicReference<>(Optional.empty());
    shell.during(
        () -> {
          Optional<String> stops = edits.whyNoUndo();
          if (stops.isEmpty()) {
            what.set(edits.undo());
          }
          return stops;
        },
        () -> said(what.get(), "Taken back: ", "There is nothing to take back."));
  }

  void redo() {
    shell.act(
        EditService::redo, what -> said(what, "Done again: ", "There is nothing to do again."));
  }

  private void said(Optional<String> what, String does, String nothing) {
    shell.sayDone(what.map(does::concat).orElse(nothing));
  }
}
