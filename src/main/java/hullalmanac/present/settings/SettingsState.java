package hullalmanac.present.settings;

import hullalmanac.present.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * What the place for settings shows.
 *
 * @param list its pages that hold the text looked for
 * @param found how many they are, in words
 * @param chosen the page that is open
 */
public record SettingsState(
    String find, List<Page> list, String found, Optional<Page> chosen, Optional<Sheet> sheet) {
  public SettingsState {
    list = List.copyOf(list);
  }

  /**
   * A page of settings.
   *
   * @param about what can be set on it
   */
  public record Page(String name, String about) {}
}
