package hullalmanac.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AppFoldersTest {
  private static final Path HOME = Path.of("/home/tern").toAbsolutePath();

  @Test
  void keepsTheRecordInPlainSightOnEverySystem() {
    for (String system : new String[] {"Linux", "Mac OS X", "Windows 11"}) {
      assertThat(AppFolders.of(HOME, system, Map.of()).record())
          .isEqualTo(HOME.resolve("HullAlmanac"));
    }
  }

  @Test
  void keepsItsOwnStateWhereTheSystemExpectsIt() {
    assertThat(AppFolders.of(HOME, "Linux", Map.of()).state())
        .isEqualTo(HOME.resolve(".local/state/hull-almanac"));
    assertThat(AppFolders.of(HOME, "Linux", Map.of("XDG_STATE_HOME", "/s")).state())
        .isEqualTo(Path.of("/s/hull-almanac"));
    assertThat(AppFolders.of(HOME, "Linux", Map.of("XDG_STATE_HOME", "not/absolute")).state())
        .isEqualTo(HOME.resolve(".local/state/hull-almanac"));
    assertThat(AppFolders.of(HOME, "Mac OS X", Map.of()).state())
        .isEqualTo(HOME.resolve("Library/Application Support/HullAlmanac"));
    assertThat(AppFolders.of(HOME, "Windows 11", Map.of("LOCALAPPDATA", "/local")).state())
        .isEqualTo(Path.of("/local/HullAlmanac"));
  }
}
