package hullalmanac.present.shell;

import hullalmanac.core.find.Target;

/** The way to what was found. */
record ToFound(ShellPresenter shell) {
  void open(Target target) {
    if (target instanceof Target.ToVisit found) {
      shell.openBoat(found.boat());
      shell.boats().openVisit(found.visit());
    } else if (target instanceof Target.OnBoat found) {
      shell.openBoat(found.boat());
    } else if (target instanceof Target.ToParty found) {
      shell.people().choose(found.party());
      shell.go(Place.PEOPLE);
    } else if (target instanceof Target.ToHarbour found) {
      shell.ahead().chooseHarbour(found.harbour());
      shell.go(Place.AHEAD);
    } else if (target instanceof Target.ToInvoice found) {
      shell.takings().choose(found.invoice());
      shell.go(Place.TAKINGS);
    } else if (target instanceof Target.ToEstimate found) {
      shell.takings().chooseEstimate(found.estimate());
      shell.go(Place.TAKINGS);
    } else if (target instanceof Target.ToProduct found) {
      shell.shelf().choose(found.product());
      shell.go(Place.SHELF);
    }
  }
}
