package hullalmanac.present.help;

import java.util.List;
import java.util.Optional;

/** The program as it stands on this computer. Everything here touches files. */
public interface Program {
  /**
   * What is to be known of it.
   *
   * @param record the folder of the record that is open
   * @param state the folder of the log and the crash reports
   * @param crashes the files of crash reports there, the newest first
   */
  record Facts(
      String version,
      String java,
      String system,
      String record,
      String state,
      List<String> crashes) {
    public Facts {
      crashes = List.copyOf(crashes);
    }
  }

  /** What is to be known of it now. */
  Facts facts();

  /**
   * What to send to whoever looks after the program: version, Java, system, the end of the log and
   * the newest crash report, in which no owner, no boat and no name of the person is.
   */
  String report();

  /**
   * Shows a folder with the desktop's own means.
   *
   * @return why it could not be shown
   */
  Optional<String> show(String folder);

  /** A program that stands nowhere, for where there is no window. */
  static Program nowhere() {
    return new Program() {
      @Override
      public Facts facts() {
        return new Facts("unknown", "unknown", "unknown", "nowhere", "nowhere", List.of());
      }

      @Override
      public String report() {
        return "";
      }

      @Override
      public Optional<String> show(String folder) {
        return Optional.of("There is no desktop.");
      }
    };
  }
}
