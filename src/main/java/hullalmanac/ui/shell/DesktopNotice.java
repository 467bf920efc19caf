package hullalmanac.ui.shell;

import java.awt.AWTException;
import java.awt.Image;
import java.awt.SystemTray;
import java.awt.TrayIcon;
import java.util.Optional;
import java.util.function.Consumer;

/** Says something beside the window where the desktop has a place for it. */
final class DesktopNotice {
  private final Image image;
  private final Runnable pressed;
  private final Consumer<String> otherwise;
  private Optional<TrayIcon> icon = Optional.empty();

  /**
   * @param pressed what a press on the notice does
   * @param otherwise says it where the desktop has no place for notices
   */
  DesktopNotice(Image image, Runnable pressed, Consumer<String> otherwise) {
    this.image = image;
    this.pressed = pressed;
    this.otherwise = otherwise;
  }

  void say(String sentence) {
    if (!SystemTray.isSupported()) {
      otherwise.accept(sentence);
      return;
    }
    try {
      if (icon.isEmpty()) {
        TrayIcon made = new TrayIcon(image, "Hull Almanac");
        made.setImageAutoSize(true);
        made.addActionListener(e -> pressed.run());
        SystemTray.getSystemTray().add(made);
        icon = Optional.of(made);
      }
      icon.get().displayMessage("Hull Almanac", sentence, TrayIcon.MessageType.INFO);
    } catch (AWTException e) {
      otherwise.accept(sentence);
    }
  }

  /** Leaves the desktop as it was. */
  void close() {
    icon.ifPresent(made -> SystemTray.getSystemTray().remove(made));
    icon = Optional.empty();
  }
}
