package hullalmanac.ui.shell;

import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.WindowKey;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import javax.swing.JComponent;

/** The keys that work everywhere in the window. */
final class Keys {
  private final JComponent root;
  private final ShellPresenter presenter;
  private final Runnable find;
  private final Runnable toggleDark;

  Keys(JComponent root, ShellPresenter presenter, Runnable find, Runnable toggleDark) {
    this.root = root;
    this.presenter = presenter;
    this.find = find;
    this.toggleDark = toggleDark;
  }

  void bind() {
    for (WindowKey key : WindowKey.values()) {
      Runnable act = act(key);
      key.strokes().forEach(stroke -> Act.inWindow(root, stroke, act));
    }
  }

  private Runnable act(WindowKey key) {
    return switch (key) {
      case AHEAD, BOATS, PEOPLE, SHELF, TAKINGS, RECKONER, SETTINGS -> {
        Place place = Place.valueOf(key.name());
        yield () -> presenter.go(place);
      }
      case HELP -> presenter::openHelp;
      case BACK -> presenter::back;
      case FORWARD -> presenter::forward;
      case FIND -> presenter::startFinding;
      case FILTER -> find;
      case UNDO -> presenter::undo;
      case REDO -> presenter::redo;
      case CATCH_UP -> presenter::openCatchUp;
      case TIMED -> presenter.timed()::open;
      case CARD -> presenter::openCard;
      case PAPER -> presenter::onPaper;
      case SUPPLIES -> presenter.shelf()::supplies;
      case BIN -> presenter::openBin;
      case LIST -> presenter::openList;
      case AGAIN -> presenter::load;
      case DARK -> toggleDark;
      case WET_HANDS -> () -> Theme.wetHands(!Theme.wetHands());
      case LARGER -> () -> Theme.zoom(1);
      case SMALLER -> () -> Theme.zoom(-1);
      case USUAL -> () -> Theme.zoom(0);
      case NEW_BOAT, VISIT, WASHED, CHANGE, PASSES, OWNER -> onBoats(key);
    };
  }

  private Runnable onBoats(WindowKey key) {
    return switch (key) {
      case NEW_BOAT -> presenter.boats()::newBoat;
      case VISIT -> () -> presenter.onBoat(presenter.boats()::beginVisit);
      case WASHED -> () -> presenter.onBoat(presenter.boats()::washed);
      case CHANGE -> () -> presenter.onBoat(presenter.boats()::change);
      case PASSES -> () -> presenter.onBoat(presenter.boats()::fewestPasses);
      case OWNER -> () -> presenter.onBoat(presenter.boats()::showOwner);
      default -> throw new IllegalArgumentException(key + " is for the whole window");
    };
  }
}
