package hullalmanac.app.process;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Asks the system whether it is dark: a desktop's own command, since Java does not know. Where
 * there is none, or it says nothing within two seconds, the system counts as light.
 */
public final class SystemTint {
  private SystemTint() {}

  /** Asks on a thread of its own, and answers there. */
  public static void ask(Consumer<Boolean> answer) {
    List<String> command = command(System.getProperty("os.name"));
    Thread thread = new Thread(() -> answer.accept(saysDark(said(command))), "tint");
    thread.setDaemon(true);
    thread.start();
  }

  /** The command that tells, on a system. */
  static List<String> command(String system) {
    String os = system.toLowerCase(Locale.ROOT);
    if (os.contains("windows")) {
      return List.of(
          "reg",
          "query",
          "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
          "/v",
          "AppsUseLightTheme");
    }
    if (os.contains("mac")) {
      return List.of("defaults", "read", "-g", "AppleInterfaceStyle");
    }
    return List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme");
  }

  private static String said(List<String> command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      if (!process.waitFor(2, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return "";
      }
      return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "";
    }
  }

  /** Whether such an answer means dark. */
  static boolean saysDark(String answer) {
    String said = answer.strip().toLowerCase(Locale.ROOT);
    return said.equals("dark") || said.contains("prefer-dark") || said.endsWith("0x0");
  }
}
