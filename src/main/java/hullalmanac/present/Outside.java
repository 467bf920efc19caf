package hullalmanac.present;

import hullalmanac.service.MadePaper;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the computer offers beside the window: other programs, its printers, its dialog for files.
 * What it cannot do it says in a sentence.
 */
public interface Outside {
  /**
   * Opens a file with the program that the system has for it.
   *
   * @param said called with why not, or with nothing
   */
  void open(String file, Consumer<Optional<String>> said);

  /**
   * Hands a draft to the mail program.
   *
   * @param link of RFC 6068, {@code mailto:…}
   * @param said called with why not, or with nothing
   */
  void mail(String link, Consumer<Optional<String>> said);

  /**
   * Asks for a printer with the dialog of the system, and prints.
   *
   * @param said called with why not, or with nothing once the printer has it; not called where one
   *     changed one's mind in the dialog
   */
  void print(MadePaper paper, Consumer<Optional<String>> said);

  /**
   * Asks where a file is to be written.
   *
   * @param name to begin with, such as {@code 2026-05-01 History.pdf}
   * @param kind what files of that ending are called
   * @return the path; nothing where none was chosen
   */
  Optional<String> where(String name, String kind);

  /** A computer that offers nothing, for where there is no window. */
  static Outside nothing() {
    return new Outside() {
      private static final String NONE = "There is no desktop.";

      @Override
      public void open(String file, Consumer<Optional<String>> said) {
        said.accept(Optional.of(NONE));
      }

      @Override
      public void mail(String link, Consumer<Optional<String>> said) {
        said.accept(Optional.of(NONE));
      }

      @Override
      public void print(MadePaper paper, Consumer<Optional<String>> said) {
        said.accept(Optional.of(NONE));
      }

      @Override
      public Optional<String> where(String name, String kind) {
        return Optional.empty();
      }
    };
  }
}
