package hullalmanac.app.process;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What desktops answer when asked whether they are dark (known from memory). */
class SystemTintTest {
  @ParameterizedTest
  @CsvSource({
    "prefer-dark, true",
    "default, false",
    "Dark, true",
    "'', false",
    "AppsUseLightTheme    REG_DWORD    0x0, true",
    "AppsUseLightTheme    REG_DWORD    0x1, false",
    "The domain/default pair of (kCFPreferencesAnyApplication) does not exist, false"
  })
  void readsTheAnswer(String answer, boolean dark) {
    assertThat(SystemTint.saysDark(answer)).isEqualTo(dark);
  }

  @ParameterizedTest
  @CsvSource({"Windows 11, reg", "Mac OS X, defaults", "Linux, gsettings"})
  void asksEachSystemInItsOwnWay(String system, String command) {
    assertThat(SystemTint.command(system).get(0)).isEqualTo(command);
  }
}
