package hullalmanac.present.shell;

import hullalmanac.present.edit.PaperSheet;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.service.Papers;

/** The paper of what is shown. */
record OnPaper(ShellPresenter shell) {
  void open(Trail.Spot shown) {
    shown.sheet().ifPresentOrElse(Sheet::onPaper, () -> open(shown.place()));
  }

  private void open(Place place) {
    switch (place) {
      case AHEAD -> shell.open(PaperSheet.of(shell, Papers.Asked.ofAll(Papers.Sort.DUE)));
      case BOATS -> shell.boats().papers();
      case SHELF -> shell.shelf().onPaper();
      case TAKINGS -> shell.takings().onPaper();
      default -> shell.say("There is no paper of this.");
    }
  }
}
