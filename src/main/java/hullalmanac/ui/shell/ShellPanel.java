package hullalmanac.ui.shell;

import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.present.shell.ShellState;
import hullalmanac.ui.ahead.AheadPanel;
import hullalmanac.ui.boats.BoatsPanel;
import hullalmanac.ui.help.HelpPanel;
import hullalmanac.ui.people.PeoplePanel;
import hullalmanac.ui.reckoner.ReckonerPanel;
import hullalmanac.ui.settings.SettingsPanel;
import hullalmanac.ui.sheet.SheetPanel;
import hullalmanac.ui.shelf.ShelfPanel;
import hullalmanac.ui.takings.TakingsPanel;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import javax.swing.JPanel;

/** All that is inside the window: rail, places, status line. */
final class ShellPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Rail rail;
  private final StatusLine status;
  private final NoticeBar notices;
  private final CardLayout cards = new CardLayout();
  private final JPanel places = new JPanel(cards);
  private static final String SHEET = "sheet";
  private final BoatsPanel boats;
  private final ReckonerPanel reckoner;
  private final SheetPanel sheet;
  private Place shown = Place.AHEAD;
  private boolean wasSheet;

  /**
   * @param toggleDark changes between light and dark
   */
  ShellPanel(ShellPresenter presenter, Runnable toggleDark) {
    super(new BorderLayout());
    rail = new Rail(presenter::go);
    status = new StatusLine(presenter, toggleDark);
    boats = new BoatsPanel(presenter.boats(), presenter.tables());
    place(Place.AHEAD, new AheadPanel(presenter.ahead(), presenter.tables()));
    place(Place.BOATS, boats);
    place(Place.PEOPLE, new PeoplePanel(presenter.people(), presenter.tables()));
    place(Place.SHELF, new ShelfPanel(presenter.shelf(), presenter.tables()));
    place(Place.TAKINGS, new TakingsPanel(presenter.takings(), presenter.tables()));
    reckoner = new ReckonerPanel(presenter.reckoner(), presenter.tables());
    place(Place.RECKONER, reckoner);
    place(Place.SETTINGS, new SettingsPanel(presenter.settings(), presenter.tables()));
    add(rail, BorderLayout.WEST);
    notices = new NoticeBar(presenter::press);
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(notices, BorderLayout.NORTH);
    middle.add(HelpPanel.over(places, presenter.help()));
    add(middle);
    JPanel bottom = new JPanel(new BorderLayout());
    bottom.add(new TimedLine(presenter.timed()), BorderLayout.NORTH);
    bottom.add(status);
    add(bottom, BorderLayout.SOUTH);
    sheet = new SheetPanel(presenter::leave, presenter.tables());
    places.add(sheet, SHEET);
    presenter.onChange(this::render);
  }

  private void place(Place place, JPanel panel) {
    panel.setName("place " + place.name());
    places.add(panel, place.name());
  }

  /** Lets the keys of the window work from the start. */
  void takeFocus() {
    places.setFocusable(true);
    places.requestFocusInWindow();
  }

  void startFinding() {
    boats.startFinding();
  }

  private void startIn(Place place) {
    if (place == Place.RECKONER) {
      reckoner.start();
    } else {
      places.requestFocusInWindow();
    }
  }

  private void render(ShellState state) {
    rail.show(state.place());
    if (state.sheet().isPresent()) {
      cards.show(places, SHEET);
      sheet.open(state.sheet().get());
    } else {
      sheet.close();
      cards.show(places, state.place().name());
      if (!state.place().equals(shown) || wasSheet) {
        startIn(state.place());
      }
    }
    wasSheet = state.sheet().isPresent();
    shown = state.place();
    status.show(state);
    notices.show(state.notices());
  }
}
