package hullalmanac.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the program keeps things on this computer.
 *
 * @param record the record opened when none is named
 * @param state log, crash reports and the place of the window; never owner data
 */
record AppFolders(Path record, Path state) {
  /** What is remembered of the places on this computer. */
  Places places() {
    return new Places(state.resolve("places.properties"));
  }

  /**
   * Chooses the folders usual on this system.
   *
   * @param home the person's home folder
   * @param system name of the system, as in {@code os.name}
   * @param environment the environment's variables
   */
  static AppFolders of(Path home, String system, Map<String, String> environment) {
    String os = system.toLowerCase(Locale.ROOT);
    Path state;
    if (os.contains("windows")) {
      String local = environment.get("LOCALAPPDATA");
      state =
          (local == null ? home.resolve("AppData").resolve("Local") : Path.of(local))
              .resolve("HullAlmanac");
    } else if (os.contains("mac")) {
      state = home.resolve("Library").resolve("Application Support").resolve("HullAlmanac");
    } else {
      String xdg = environment.get("XDG_STATE_HOME");
      boolean set = xdg != null && Path.of(xdg).isAbsolute();
      state =
          (set ? Path.of(xdg) : home.resolve(".local").resolve("state")).resolve("hull-almanac");
    }
    return new AppFolders(home.resolve("HullAlmanac"), state);
  }
}
