package hullalmanac.app;

import hullalmanac.cli.Cli;
import hullalmanac.cli.CliContext;
import hullalmanac.service.RecordService;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Properties;

/** Reads the arguments and builds the program. */
public final class Main {
  private Main() {}

  /** Runs the program; see {@link Cli} for its exit codes. */
  public static void main(String[] arguments) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    AppFolders folders =
        AppFolders.of(
            Path.of(System.getProperty("user.home")),
            System.getProperty("os.name"),
            System.getenv());
    Clock clock = Clock.system(ZoneId.systemDefault());
    AppLog log = new AppLog(folders.state(), clock, version(), machine());
    SecureRandom random = new SecureRandom();
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(
            clock, random::nextLong, host(), ProcessHandle.current().pid());
    Installed installed =
        new Installed(
            version(), java(), system(), Path.of(System.getProperty("user.home")), folders.state());
    WindowStart window = new WindowStart(surroundings, folders, log, installed, out, System::exit);
    CliContext context = new CliContext(surroundings, window.usual(), version(), window::open);
    int code;
    try {
      code = Cli.run(context, out, err, arguments);
    } catch (RuntimeException e) {
      err.println("Something went wrong that should not.");
      err.println(log.crash("main", e).all());
      code = 1;
    }
    err.flush();
    if (code != WindowStart.STAYS_OPEN) {
      System.exit(code);
    }
  }

  private static PrintWriter writer(java.io.PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  private static String version() {
    Properties built = new Properties();
    try (InputStream in = Main.class.getResourceAsStream("version.properties")) {
      built.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return built.getProperty("version");
  }

  private static String machine() {
    return system() + ", Java " + System.getProperty("java.version");
  }

  private static String system() {
    return System.getProperty("os.name")
        + " "
        + System.getProperty("os.version")
        + " "
        + System.getProperty("os.arch");
  }

  private static String java() {
    return System.getProperty("java.version") + ", " + System.getProperty("java.vendor");
  }

  private static String host() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return "this computer";
    }
  }
}
