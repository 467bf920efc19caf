package hullalmanac.present.shell;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.present.card.CardPresenter;
import hullalmanac.present.find.FindPresenter;
import hullalmanac.present.help.HelpPresenter;
import hullalmanac.present.owner.OwnerPresenter;
import hullalmanac.present.settings.SettingsPresenter;
import hullalmanac.present.sheet.Sheet;

/** Opens the guide at what it says of what is shown; leaving it leads back there. */
record HelpHere(
    HelpPresenter help,
    OwnerPresenter owner,
    CardPresenter card,
    FindPresenter find,
    SettingsPresenter settings,
    Trail trail) {
  void open() {
    if (help.isOpen()) {
      help.open(Topic.START);
    } else if (owner.shown().isPresent()) {
      Id<Boat> boat = owner.shown().get();
      owner.leave();
      help.open(Topic.OWNER, () -> owner.open(boat));
    } else if (card.shown().isPresent()) {
      help.open(Topic.CARD, card.setAside());
    } else if (find.text().isPresent()) {
      String text = find.text().get();
      find.leave();
      help.open(Topic.FIND, () -> findAgain(text));
    } else {
      help.open(topic());
    }
  }

  private void findAgain(String text) {
    find.open();
    find.type(text);
  }

  private Topic topic() {
    return trail
        .now()
        .sheet()
        .map(Sheet::topic)
        .orElseGet(
            () ->
                trail.now().place() == Place.SETTINGS
                    ? settings.topic()
                    : trail.now().place().topic());
  }
}
